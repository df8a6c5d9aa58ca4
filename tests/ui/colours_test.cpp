// The board's colours are told apart by any eye: reckoned for usual sight and the three common deficiencies, light and
// dark. Nothing is told by colour alone; this holds the colours besides.
//
// Deficiencies: G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, "A Physiologically-based Model for Simulation of
// Color Vision Deficiency", IEEE TVCG 15 (2009), matrices of full severity for linear RGB (typed from memory).
// Difference: CIE 1976 L*a*b* (a just noticeable one is about 2.3). Contrast: WCAG 2.1, 1.4.3 (text 4.5 : 1) and 1.4.11
// (lines 3 : 1).
#include <QApplication>
#include <QSettings>
#include <QTemporaryDir>
#include <QtTest>
#include <array>
#include <cmath>

#include "tests/ui/window_tests.h"
#include "ui/painting/board_inks.h"
#include "ui/session/appearance.h"

using namespace ribwright;

namespace {

using Triple = std::array<double, 3>;
using Matrix = std::array<Triple, 3>;

struct Eye {
  const char* name;
  Matrix sees;
};

const std::array<Eye, 4> eyes{{
    {"usual", {{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}}},
    {"protanopia",
     {{{0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}}}},
    {"deuteranopia",
     {{{0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}}}},
    {"tritanopia",
     {{{1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602}, {0.004733, 0.691367, 0.303900}}}},
}};

double linear(double share) { return share <= 0.04045 ? share / 12.92 : std::pow((share + 0.055) / 1.055, 2.4); }

Triple seen(const QColor& colour, const Matrix& sees) {
  const Triple light{linear(colour.redF()), linear(colour.greenF()), linear(colour.blueF())};
  Triple made{};
  for (std::size_t i = 0; i < 3; ++i)
    made[i] = std::clamp(sees[i][0] * light[0] + sees[i][1] * light[1] + sees[i][2] * light[2], 0.0, 1.0);
  return made;
}

double luminance(const Triple& light) { return 0.2126 * light[0] + 0.7152 * light[1] + 0.0722 * light[2]; }

double contrast(const Triple& a, const Triple& b) {
  const auto [low, high] = std::minmax({luminance(a), luminance(b)});
  return (high + 0.05) / (low + 0.05);
}

Triple labOf(const Triple& light) {
  const auto share = [](double t) { return t > 0.008856 ? std::cbrt(t) : 7.787 * t + 16.0 / 116; };
  const double x = share((0.4124 * light[0] + 0.3576 * light[1] + 0.1805 * light[2]) / 0.95047);
  const double y = share(luminance(light));
  const double z = share((0.0193 * light[0] + 0.1192 * light[1] + 0.9505 * light[2]) / 1.08883);
  return {116 * y - 16, 500 * (x - y), 200 * (y - z)};
}

double difference(const Triple& a, const Triple& b) {
  const Triple p = labOf(a), q = labOf(b);
  return std::hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]);
}

}  // namespace

class ColoursTest : public QObject {
  Q_OBJECT

 private slots:
  void theBoardsColoursAreToldApartByAnyEye_data() {
    QTest::addColumn<int>("appearance");
    QTest::newRow("light") << static_cast<int>(Appearance::Light);
    QTest::newRow("dark") << static_cast<int>(Appearance::Dark);
  }

  void theBoardsColoursAreToldApartByAnyEye() {
    QTemporaryDir folder;
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder.path());
    QFETCH(int, appearance);
    chooseAppearance(static_cast<Appearance>(appearance));
    const BoardInks inks = boardInks(QApplication::palette());
    for (const Eye& eye : eyes) {
      const auto as = [&](const QColor& colour) { return seen(colour, eye.sees); };
      const auto apart = [&](const QColor& a, const QColor& b, double least, const char* which) {
        const double is = difference(as(a), as(b));
        QVERIFY2(is >= least, qPrintable(QStringLiteral("%1, %2: %3").arg(eye.name, which).arg(is)));
      };
      const auto plain = [&](const QColor& a, const QColor& b, double least, const char* which) {
        const double is = contrast(as(a), as(b));
        QVERIFY2(is >= least, qPrintable(QStringLiteral("%1, %2: %3 : 1").arg(eye.name, which).arg(is)));
      };
      plain(inks.line, inks.ground, 4.5, "words on the ground");
      plain(inks.line, inks.sheet, 4.5, "words on a sheet");
      plain(inks.line, inks.translucent, 4.5, "words on a translucent sheet");
      plain(inks.steel, inks.sheet, 3, "steel on a sheet");
      plain(inks.chosen, inks.sheet, 3, "what is chosen on a sheet");
      apart(inks.chosen, inks.steel, 12, "what is chosen and steel");
      apart(inks.chosen, inks.line, 12, "what is chosen and a line");
      apart(inks.steel, inks.line, 12, "steel and a line");
      apart(inks.quiet, inks.sheet, 12, "ribs and a sheet");
      apart(inks.translucent, inks.sheet, 8, "translucent and other sheets");
    }
  }
};

WINDOW_TEST(ColoursTest)
#include "colours_test.moc"
