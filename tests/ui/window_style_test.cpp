// The signs of title bars and of bars too short are drawn as lines, in the palette's ink, and no picture file is read
// to show the window.
#include <QApplication>
#include <QDockWidget>
#include <QMenuBar>
#include <QToolButton>

#include "tests/ui/open_window.h"
#include "tests/ui/window_tests.h"
#include "ui/session/appearance.h"
#include "ui/session/window_style.h"

using namespace ribwright;

namespace {

constexpr QStyle::StandardPixmap signs[] = {
    QStyle::SP_TitleBarCloseButton, QStyle::SP_DockWidgetCloseButton, QStyle::SP_TitleBarNormalButton,
    QStyle::SP_ToolBarHorizontalExtensionButton, QStyle::SP_ToolBarVerticalExtensionButton};

QImage drawn(QStyle::StandardPixmap sign, int side) {
  return QApplication::style()->standardIcon(sign).pixmap(QSize(side, side), 1.0).toImage();
}

// The strongest ink in a picture.
QColor inkOf(const QImage& picture) {
  QColor ink = Qt::transparent;
  for (int y = 0; y < picture.height(); ++y) {
    for (int x = 0; x < picture.width(); ++x) {
      if (const QColor here = picture.pixelColor(x, y); here.alpha() > ink.alpha()) ink = here;
    }
  }
  return ink;
}

bool isNear(const QColor& a, const QColor& b) {
  return std::abs(a.red() - b.red()) < 40 && std::abs(a.green() - b.green()) < 40 && std::abs(a.blue() - b.blue()) < 40;
}

}  // namespace

class WindowStyleTest : public QObject {
  Q_OBJECT

 private slots:
  void initTestCase() { applyKeptAppearance(); }
  void windowReadsNoPictures();  // first: what is read once stays
  void signsHaveThePalettesInk();
  void signsAreSharpAtAnySize();
  void styleStaysThroughAppearances();
};

// Qt's readers of pictures are libraries of their own, looked for and loaded with the first picture: it would be time
// between a person's click and the window.
void WindowStyleTest::windowReadsNoPictures() {
  const OpenWindow open;
  QVERIFY(open->openJob(workshop()));
  QTest::qWait(50);
  QVERIFY(!open.window->grab().isNull());
  QFile maps(QStringLiteral("/proc/self/maps"));
  if (!maps.open(QIODevice::ReadOnly)) QSKIP("this system does not say which libraries are loaded");
  const QByteArray loaded = maps.readAll();
  QVERIFY(loaded.contains("libQt6Gui"));
  QVERIFY(!loaded.contains("imageformats"));
  QVERIFY(!loaded.contains("iconengines"));
}

void WindowStyleTest::signsHaveThePalettesInk() {
  const OpenWindow open;
  for (const Appearance appearance : {Appearance::Light, Appearance::Dark}) {
    chooseAppearance(appearance);
    for (const auto sign : signs) {
      const QColor ink = inkOf(drawn(sign, 32));
      QVERIFY2(ink.alpha() > 200, qPrintable(QString::number(sign)));
      QVERIFY2(isNear(ink, QApplication::palette().color(QPalette::WindowText)), qPrintable(ink.name()));
    }
  }
  QVERIFY(drawn(QStyle::SP_TitleBarCloseButton, 32) != drawn(QStyle::SP_TitleBarNormalButton, 32));
  QVERIFY(drawn(QStyle::SP_ToolBarHorizontalExtensionButton, 32) !=
          drawn(QStyle::SP_ToolBarVerticalExtensionButton, 32));
}

// Drawn anew for each size: a larger one has more than the pixels of a smaller one.
void WindowStyleTest::signsAreSharpAtAnySize() {
  const OpenWindow open;
  chooseAppearance(Appearance::Light);
  for (const auto sign : signs) {
    const QImage small = drawn(sign, 16), large = drawn(sign, 64);
    QCOMPARE(small.size(), QSize(16, 16));
    QCOMPARE(large.size(), QSize(64, 64));
    QVERIFY(large != small.scaled(64, 64, Qt::IgnoreAspectRatio, Qt::FastTransformation));
  }
}

void WindowStyleTest::styleStaysThroughAppearances() {
  const OpenWindow open;
  for (const Appearance appearance : {Appearance::Dark, Appearance::System, Appearance::Light}) {
    chooseAppearance(appearance);
    const auto* style = dynamic_cast<const WindowStyle*>(QApplication::style());
    QVERIFY(style);
    if (appearance != Appearance::System) QCOMPARE(style->drawnAs(), QStringLiteral("fusion"));
  }
}

WINDOW_TEST(WindowStyleTest)
#include "window_style_test.moc"
