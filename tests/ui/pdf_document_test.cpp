// The PDF as a document, read by other programs (poppler and MuPDF): page sizes, fonts, bookmarks, page labels, what it
// says of itself, and the same bytes for the same pages.
#include <QHashFunctions>
#include <QRegularExpression>
#include <QtTest>

#include "tests/ui/paper_samples.h"
#include "tests/ui/window_tests.h"

using namespace ribwright;
using namespace ribwright::papertest;

class PdfDocumentTest : public QObject {
  Q_OBJECT

 private slots:
  void pagesHaveTheSizeOfTheirPaper();
  void papersMayDifferFromPageToPage();
  void theFontIsEmbeddedAndTextStaysText();
  void everyWallHasItsBookmark();
  void everyPageHasItsBookmarkUnderItsWall();
  void pageLabelsCountFromOne();
  void itSaysWhatItIs();
  void aDateIsOneOnlyAsYearMonthAndDay();
  void itIsPrintedAtItsOwnSize();
  void noProgramComplainsOfIt();
  void theSamePagesGiveTheSameBytes();
  void anotherPageOrTitleGivesAnotherDocument();
  void nothingComesOfNoPages();
  void workIsStoppedBetweenPages();

 private:
  std::vector<Page> pagesOf(const Sample& sample, PaperSize paper) {
    return elevationPages(sample.job, sample.plan, paper);
  }
  QString written(const std::vector<Page>& pages, const PdfDocument& document = {"Sample", "", ""}) {
    return writtenPdf(folder_, pages, document);
  }
  QString info(const PdfDocument& document) {
    return QString::fromUtf8(
        told("pdfinfo", {"-rawdates", written(pagesOf(samples_.front(), PaperSize::A4), document)}));
  }

  QTemporaryDir folder_;
  std::vector<Sample> samples_ = paperSamples();
};

namespace {

void compareSizes(const QString& path, const std::vector<Page>& pages) {
  const QString info = told("pdfinfo", {"-f", "1", "-l", "999", path});
  const QRegularExpression size("Page +\\d+ size: +([\\d.]+) x ([\\d.]+) pts");
  std::size_t count = 0;
  for (auto found = size.globalMatch(info); found.hasNext(); ++count) {
    const auto match = found.next();
    QVERIFY(count < pages.size());
    const PaperExtent extent = extentOf(pages[count].paper);
    QVERIFY2(qAbs(match.captured(1).toDouble() - extent.width / 25.4 * 72) < 0.002, qPrintable(match.captured()));
    QVERIFY2(qAbs(match.captured(2).toDouble() - extent.height / 25.4 * 72) < 0.002, qPrintable(match.captured()));
  }
  QCOMPARE(count, pages.size());
}

// A bookmark as MuPDF shows it: how deep it stands, its words, and the number of the page that it opens.
struct Bookmark {
  int depth = 0;
  QString title;
  int page = 0;
};

std::vector<Bookmark> bookmarksOf(const QString& path) {
  std::vector<Bookmark> found;
  const QRegularExpression form("^[+|-](\\t+)\"(.*)\"\\t#page=(\\d+)");
  for (const QString& line : QString::fromUtf8(told("mutool", {"show", path, "outline"})).split('\n')) {
    const auto match = form.match(line);
    if (match.hasMatch()) found.push_back({int(match.capturedLength(1)), match.captured(2), match.captured(3).toInt()});
  }
  return found;
}

}  // namespace

void PdfDocumentTest::pagesHaveTheSizeOfTheirPaper() {
  QVERIFY(!samples_.empty());
  for (const Sample& sample : samples_) {
    for (const PaperSize paper : papers) {
      const auto pages = pagesOf(sample, paper);
      compareSizes(written(pages), pages);
    }
  }
}

void PdfDocumentTest::papersMayDifferFromPageToPage() {
  std::vector<Page> pages;
  for (const PaperSize paper : papers) pages.push_back(pagesOf(samples_.front(), paper).front());
  compareSizes(written(pages), pages);
}

void PdfDocumentTest::theFontIsEmbeddedAndTextStaysText() {
  for (const Sample& sample : samples_) {
    const QString path = written(pagesOf(sample, PaperSize::A4));
    const QStringList fonts = QString(told("pdffonts", {path})).split('\n', Qt::SkipEmptyParts).mid(2);
    QCOMPARE(fonts.size(), 2);
    for (const QString& font : fonts) {
      QVERIFY2(QRegularExpression("^[A-Z]{6}\\+LiberationSans").match(font).hasMatch(), qPrintable(font));
      // Embedded, a part of the whole font, and told which letters it stands for.
      QVERIFY2(QRegularExpression(" yes +yes +yes +\\d+ +\\d+$").match(font).hasMatch(), qPrintable(font));
    }
    const QString text = QString::fromUtf8(told("pdftotext", {path, "-"}));
    for (const auto& wall : sample.plan.walls) {
      for (const Piece& piece : wall->layout.pieces) {
        QVERIFY2(text.contains(QString::fromStdString(piece.mark)), piece.mark.c_str());
      }
    }
  }
}

void PdfDocumentTest::everyWallHasItsBookmark() {
  for (const Sample& sample : samples_) {
    const auto pages = pagesOf(sample, PaperSize::Letter);
    std::vector<Bookmark> walls = bookmarksOf(written(pages));
    std::erase_if(walls, [](const Bookmark& bookmark) { return bookmark.depth > 1; });
    QCOMPARE(walls.size(), sample.job.walls.size());
    for (std::size_t i = 0; i < walls.size(); ++i) {
      const std::string& letter = sample.job.walls[i].letter;
      const auto first =
          std::find_if(pages.begin(), pages.end(), [&](const Page& page) { return page.wall == letter; });
      QCOMPARE(walls[i].page, int(first - pages.begin()) + 1);
      QVERIFY2(walls[i].title.startsWith(QString::fromStdString("Wall " + letter)), qPrintable(walls[i].title));
    }
  }
}

void PdfDocumentTest::everyPageHasItsBookmarkUnderItsWall() {
  for (const Sample& sample : samples_) {
    const auto pages = pagesOf(sample, PaperSize::A3);
    const std::vector<Bookmark> bookmarks = bookmarksOf(written(pages));
    std::size_t at = 0;
    for (std::size_t page = 0; page < pages.size(); ++page) {
      const auto isOf = [&](std::size_t other) {
        return other < pages.size() && pages[other].wall == pages[page].wall;
      };
      const bool first = page == 0 || !isOf(page - 1), alone = first && !isOf(page + 1);
      if (first && !alone) {
        QVERIFY(at < bookmarks.size());
        QCOMPARE(bookmarks[at].title, QString::fromStdString(pages[page].heading));
        QCOMPARE(bookmarks[at++].depth, 1);
      }
      QVERIFY(at < bookmarks.size());
      QCOMPARE(bookmarks[at].title, QString::fromStdString(pages[page].title));
      QCOMPARE(bookmarks[at].depth, alone ? 1 : 2);
      QCOMPARE(bookmarks[at++].page, int(page) + 1);
    }
    QCOMPARE(at, bookmarks.size());
  }
}

void PdfDocumentTest::pageLabelsCountFromOne() {
  const QString path = written(pagesOf(samples_.front(), PaperSize::A4));
  const QString labels = QString(told("mutool", {"show", path, "trailer/Root/PageLabels"})).simplified().remove(' ');
  QCOMPARE(labels, QString("<</Nums[0<</S/D>>]>>"));
}

void PdfDocumentTest::itSaysWhatItIs() {
  const QString said = info({"Halle Süd – Übergang", "2026-03-02", "es"});
  QVERIFY2(said.contains(QRegularExpression("^Title: +Halle Süd – Übergang$", QRegularExpression::MultilineOption)),
           qPrintable(said));
  QVERIFY2(said.contains(QRegularExpression("^Creator: +Ribwright$", QRegularExpression::MultilineOption)),
           qPrintable(said));
  QVERIFY2(said.contains(QRegularExpression("^Producer: +Ribwright$", QRegularExpression::MultilineOption)),
           qPrintable(said));
  QVERIFY2(said.contains(QRegularExpression("^CreationDate: +D:20260302000000Z$", QRegularExpression::MultilineOption)),
           qPrintable(said));
  QVERIFY2(said.contains(QRegularExpression("^Metadata Stream: +no$", QRegularExpression::MultilineOption)),
           qPrintable(said));
  QCOMPARE(told("mutool", {"show", folder_.filePath("pages.pdf"), "trailer/Root/Lang"}).trimmed(), QByteArray("(es)"));
}

void PdfDocumentTest::aDateIsOneOnlyAsYearMonthAndDay() {
  for (const char* date : {"", "March 2026", "2026-13-01", "2026-00-10", "2026-02-32", "2026-2-3", "02/03/2026",
                           "2026-03-02 10:00", "20x6-03-02"}) {
    QVERIFY2(!info({"Sample", date, ""}).contains("CreationDate"), date);
  }
  QVERIFY(info({"Sample", "2026-12-31", ""}).contains("D:20261231000000Z"));
}

// ISO 32000-1, table 150.
void PdfDocumentTest::itIsPrintedAtItsOwnSize() {
  const QString path = written(pagesOf(samples_.front(), PaperSize::A4));
  const QByteArray scaling = told("mutool", {"show", path, "trailer/Root/ViewerPreferences/PrintScaling"});
  QCOMPARE(scaling.trimmed(), QByteArray("/None"));
}

void PdfDocumentTest::noProgramComplainsOfIt() {
  for (const Sample& sample : samples_) {
    const QString path = written(pagesOf(sample, PaperSize::A4), {"Sample", "2026-03-02", "en"});
    QByteArray complaint;
    told("pdftotext", {path, "-"}, &complaint);
    QCOMPARE(complaint, QByteArray());
    // MuPDF mends a broken table of objects, and says so; that it was built without colour profiles is its own matter.
    told("mutool", {"draw", "-q", "-F", "trace", "-o", "/dev/null", path}, &complaint);
    complaint.replace("warning: ICC support is not available", "");
    QVERIFY2(!complaint.contains("error") && !complaint.contains("warning"), complaint.constData());
  }
}

void PdfDocumentTest::theSamePagesGiveTheSameBytes() {
  const PdfDocument document{"Sample", "2026-03-02", "en"};
  for (const Sample& sample : samples_) {
    const auto pages = pagesOf(sample, PaperSize::A4);
    const std::string first = pagesPdf(pages, document);
    if (&sample == &samples_.front()) QTest::qWait(1100);  // into another second of the clock
    qputenv("TZ", "Asia/Tokyo");
    for (int round = 0; round < 4; ++round) {
      QHashSeed::resetRandomGlobalSeed();  // as in another process
      QVERIFY2(first == pagesPdf(pages, document), qPrintable(sample.name));
    }
    qunsetenv("TZ");
  }
}

void PdfDocumentTest::anotherPageOrTitleGivesAnotherDocument() {
  std::vector<Page> pages = pagesOf(samples_.front(), PaperSize::A4);
  const std::string first = pagesPdf(pages, {"Sample", "", ""});
  QVERIFY(first != pagesPdf(pages, {"Another", "", ""}));
  pages.front().drawing.items.pop_back();
  const std::string less = pagesPdf(pages, {"Sample", "", ""});
  // The number by which a viewer knows a document again.
  const auto number = [](const std::string& pdf) { return pdf.substr(pdf.rfind("/ID ["), 70); };
  QVERIFY(number(first).size() == 70 && number(first) != number(less));
}

void PdfDocumentTest::nothingComesOfNoPages() { QVERIFY(pagesPdf({}, {"Sample", "", ""}).empty()); }

void PdfDocumentTest::workIsStoppedBetweenPages() {
  const auto pages = pagesOf(samples_.front(), PaperSize::A4);
  QVERIFY(pages.size() > 2);
  int asked = 0;
  QVERIFY(pagesPdf(pages, {"Sample", "", ""}, [&] { return ++asked < 3; }).empty());
  QCOMPARE(asked, 3);
  asked = 0;
  QVERIFY(!pagesPdf(pages, {"Sample", "", ""}, [&] { return ++asked > 0; }).empty());
  QCOMPARE(asked, int(pages.size()));
}

WINDOW_TEST(PdfDocumentTest)
#include "pdf_document_test.moc"
