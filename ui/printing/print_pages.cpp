#include "ui/printing/print_pages.h"

#include <algorithm>

#include "ui/printing/paged_device.h"

namespace ribwright {

namespace {

// fromPage and toPage count from 1; 0: from the first, to the last.
std::vector<Page> inRange(const QPrinter& printer, const std::vector<Page>& pages) {
  const int count = static_cast<int>(pages.size());
  const int first = std::max(printer.fromPage(), 1) - 1;
  const int end = printer.toPage() == 0 ? count : std::min(printer.toPage(), count);
  if (first >= end) return {};
  return {pages.begin() + first, pages.begin() + end};
}

// A printer may say yes and put in another paper.
bool takes(QPrinter& printer, const Page& page) {
  if (!printer.setPageLayout(lying(page))) return false;
  const PaperExtent wanted = extentOf(page.paper);
  const QSizeF taken = printer.pageLayout().fullRect(QPageLayout::Millimeter).size();
  return std::abs(taken.width() - wanted.width) < 1 && std::abs(taken.height() - wanted.height) < 1;
}

}  // namespace

Printed printPages(QPrinter& printer, const std::vector<Page>& pages) {
  const std::vector<Page> some = inRange(printer, pages);
  if (some.empty()) return Printed::NoPages;
  printer.setFullPage(true);
  if (!std::all_of(some.begin(), some.end(), [&](const Page& page) { return takes(printer, page); }))
    return Printed::NoPaper;
  return paintPages(printer, printer.resolution(), some, lying) ? Printed::Yes : Printed::Failed;
}

}  // namespace ribwright
