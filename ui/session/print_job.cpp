#include "ui/session/print_job.h"

#include <QCoreApplication>
#include <QMessageBox>
#include <QPrintDialog>

#include "core/drawing/packet_pages.h"
#include "ui/panels/paper_text.h"
#include "ui/printing/paged_device.h"

namespace ribwright {

namespace {

struct PrintJobTexts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::PrintJob)
};

}  // namespace

std::pair<int, int> pagesOfWall(const std::vector<Page>& pages, const std::string& wall) {
  std::pair<int, int> found{0, 0};
  for (std::size_t i = 0; i < pages.size(); ++i) {
    if (pages[i].wall != wall) continue;
    found.second = static_cast<int>(i) + 1;
    if (found.first == 0) found.first = found.second;
  }
  return found;
}

QString wordsOf(Printed printed, const Session& session) {
  switch (printed) {
    case Printed::Yes:
      return {};
    case Printed::NoPages:
      return PrintJobTexts::tr("There is no page in the range that was asked for.");
    case Printed::NoPaper:
      return PrintJobTexts::tr(
                 "The printer has no paper of the size %1, and a page on another paper would measure wrong. Choose "
                 "another paper in the menu View, or another printer.")
          .arg(paperText(session.paper()).remove(QLatin1Char('&')));
    case Printed::Failed:
      return PrintJobTexts::tr("The printer could not be printed on. Is it switched on and connected?");
  }
  return {};
}

void askAndPrint(const Session& session, QWidget* parent) {
  const auto pages = packetPages(session.job(), session.plan(), session.paper(), session.words());
  QPrinter printer(QPrinter::HighResolution);
  printer.setDocName(QString::fromStdString(session.job().name));
  if (!pages.empty()) printer.setPageLayout(lying(pages.front()));
  QPrintDialog dialog(&printer, parent);
  dialog.setOption(QAbstractPrintDialog::PrintPageRange);
  dialog.setMinMax(1, static_cast<int>(pages.size()));
  const auto [first, last] = pagesOfWall(pages, session.wall() < 0 ? std::string() : session.chosenWall().letter);
  if (first > 0) dialog.setFromTo(first, last);
  if (dialog.exec() != QDialog::Accepted) return;
  const QString words = wordsOf(printPages(printer, pages), session);
  if (!words.isEmpty()) QMessageBox::warning(parent, PrintJobTexts::tr("Print"), words);
}

}  // namespace ribwright
