// Core places text by a table of advances; the painter paints with the font itself. Here the two are compared.
#include <QtTest>

#include "core/drawing/letter_widths.h"
#include "core/drawing/text_extent.h"
#include "tests/ui/window_tests.h"
#include "ui/painting/paper_font.h"

using namespace ribwright;

class LetterWidthsTest : public QObject {
  Q_OBJECT

 private slots:
  void theShippedFontIsLoaded();
  void everyLetterAdvancesAsTheTableSays();
  void capitalsAreAsHighAsTheTableSays();
};

void LetterWidthsTest::theShippedFontIsLoaded() {
  QCOMPARE(paperFontFamily(), QStringLiteral("Liberation Sans"));
  for (const bool bold : {false, true}) {
    const QRawFont font = paperFont(unitsOfEm, bold);
    QVERIFY(font.isValid());
    QCOMPARE(font.unitsPerEm(), qreal(unitsOfEm));
    QCOMPARE(font.weight(), bold ? int(QFont::Bold) : int(QFont::Normal));
  }
}

void LetterWidthsTest::everyLetterAdvancesAsTheTableSays() {
  for (const bool bold : {false, true}) {
    const QRawFont font = paperFont(unitsOfEm, bold);
    int letters = 0;
    for (const LetterRun& run : letterRuns) {
      for (char32_t letter = run.first; letter <= run.last; ++letter) {
        const auto glyphs = font.glyphIndexesForString(QString::fromUcs4(&letter, 1));
        QCOMPARE(glyphs.size(), 1);
        QVERIFY2(glyphs.front() != 0, qPrintable(QString::number(letter, 16)));
        const double advance = font.advancesForGlyphIndexes(glyphs).front().x();
        QVERIFY2(qAbs(advance - advanceOf(letter, bold)) < 0.5, qPrintable(QString::number(letter, 16)));
        ++letters;
      }
    }
    QCOMPARE(letters, int(regularWidths.size()));
  }
}

void LetterWidthsTest::capitalsAreAsHighAsTheTableSays() {
  for (const bool bold : {false, true}) {
    const QRawFont font = paperFont(unitsOfEm, bold);
    QCOMPARE(qRound(font.capHeight()), unitsOfCapital);
    const auto glyphs = font.glyphIndexesForString(QStringLiteral("H"));
    QCOMPARE(qRound(-font.boundingRect(glyphs.front()).top()), unitsOfCapital);
  }
}

WINDOW_TEST(LetterWidthsTest)
#include "letter_widths_test.moc"
