// Pages on a printer, which here prints into a file: true to size, the range that was asked for, the same words in the
// same places as in the packet's PDF (poppler reads both), and no page on a paper that it would not measure right on.
#include <QRegularExpression>
#include <QtTest>

#include "tests/ui/paper_samples.h"
#include "tests/ui/window_tests.h"
#include "ui/printing/print_pages.h"
#include "ui/session/print_job.h"

using namespace ribwright;
using namespace ribwright::papertest;

class PrintTest : public QObject {
  Q_OBJECT

 private slots:
  void everyPaperIsPrintedAtItsOwnSize();
  void wordsStandWhereTheyStandInThePdf();
  void aRangeIsPrintedAlone();
  void aWallsPagesAreOffered();
  void whatCannotBePrintedIsSaid();

 private:
  QString pathOf(const char* name) const { return folder_.filePath(QLatin1String(name)); }
  Printed print(const std::vector<Page>& pages, const QString& path, int from = 0, int to = 0) {
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(path);
    if (from > 0) printer.setFromTo(from, to);
    return printPages(printer, pages);
  }

  QTemporaryDir folder_;
  std::vector<Sample> samples_ = paperSamples();
};

void PrintTest::everyPaperIsPrintedAtItsOwnSize() {
  for (const PaperSize paper : papers) {
    const auto pages = elevationPages(samples_.front().job, samples_.front().plan, paper);
    QCOMPARE(print(pages, pathOf("printed.pdf")), Printed::Yes);
    const QString info = QString::fromUtf8(told("pdfinfo", {pathOf("printed.pdf")}));
    const auto size = QRegularExpression("Page size: +([0-9.]+) x ([0-9.]+) pts").match(info);
    QVERIFY2(size.hasMatch(), qPrintable(info));
    const PaperExtent wanted = extentOf(paper);
    QVERIFY(std::abs(size.captured(1).toDouble() / 72 * 25.4 - wanted.width) < 0.3);
    QVERIFY(std::abs(size.captured(2).toDouble() / 72 * 25.4 - wanted.height) < 0.3);
    QVERIFY(info.contains(QRegularExpression(QStringLiteral("Pages: +%1\n").arg(pages.size()))));
  }
}

// Each word and the left and lower edge of its box, in points.
static QVector<std::tuple<QString, double, double>> wordsIn(const QString& path) {
  QVector<std::tuple<QString, double, double>> all;
  const QString page = QString::fromUtf8(told("pdftotext", {"-bbox", path, "-"}));
  auto found =
      QRegularExpression("xMin=\"([0-9.-]+)\" yMin=\"[0-9.-]+\" xMax=\"[0-9.-]+\" yMax=\"([0-9.-]+)\">([^<]*)<")
          .globalMatch(page);
  while (found.hasNext()) {
    const auto word = found.next();
    all.push_back({word.captured(3), word.captured(1).toDouble(), word.captured(2).toDouble()});
  }
  return all;
}

void PrintTest::wordsStandWhereTheyStandInThePdf() {
  const auto pages = elevationPages(samples_.front().job, samples_.front().plan, PaperSize::Letter);
  QCOMPARE(print(pages, pathOf("printed.pdf")), Printed::Yes);
  const auto printed = wordsIn(pathOf("printed.pdf")), packet = wordsIn(writtenPdf(folder_, pages));
  QVERIFY(packet.size() > 100);
  QCOMPARE(printed.size(), packet.size());
  for (qsizetype i = 0; i < packet.size(); ++i) {
    const auto& [word, x, y] = packet[i];
    const auto& [other, otherX, otherY] = printed[i];
    QCOMPARE(other, word);
    // 0.1 mm
    QVERIFY2(std::abs(otherX - x) < 0.28 && std::abs(otherY - y) < 0.28, qPrintable(word));
  }
}

void PrintTest::aRangeIsPrintedAlone() {
  const auto pages = elevationPages(samples_.front().job, samples_.front().plan, PaperSize::Letter);
  QVERIFY(pages.size() > 3);
  QCOMPARE(print(pages, pathOf("printed.pdf"), 2, 3), Printed::Yes);
  const QString text = QString::fromUtf8(told("pdftotext", {pathOf("printed.pdf"), "-"}));
  QVERIFY(text.contains(QStringLiteral("page 2 of %1").arg(pages.size())));
  QVERIFY(text.contains(QStringLiteral("page 3 of %1").arg(pages.size())));
  QVERIFY(!text.contains(QStringLiteral("page 1 of")));
}

void PrintTest::aWallsPagesAreOffered() {
  const auto pages = elevationPages(samples_.front().job, samples_.front().plan, PaperSize::Letter);
  const auto [first, last] = pagesOfWall(pages, "B");
  QVERIFY(first > 1 && last >= first);
  QCOMPARE(pages[std::size_t(first) - 1].wall, std::string("B"));
  QVERIFY(pages[std::size_t(first) - 2].wall != "B");
  QCOMPARE(pagesOfWall(pages, "Z"), (std::pair<int, int>(0, 0)));
}

void PrintTest::whatCannotBePrintedIsSaid() {
  const auto pages = elevationPages(samples_.front().job, samples_.front().plan, PaperSize::Letter);
  QCOMPARE(print({}, pathOf("none.pdf")), Printed::NoPages);
  QCOMPARE(print(pages, pathOf("none.pdf"), 1000, 1001), Printed::NoPages);
  QCOMPARE(print(pages, folder_.filePath("no such folder/none.pdf")), Printed::Failed);
  QVERIFY(!QFile::exists(pathOf("none.pdf")));
  const Session session;
  for (const Printed printed : {Printed::NoPages, Printed::NoPaper, Printed::Failed})
    QVERIFY(!wordsOf(printed, session).isEmpty());
  QVERIFY(wordsOf(Printed::Yes, session).isEmpty());
}

WINDOW_TEST(PrintTest)
#include "print_test.moc"
