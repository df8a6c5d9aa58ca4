#include "core/drawing/schedule_pages.h"

#include "core/drawing/delta_pages.h"
#include "core/drawing/order_pages.h"
#include "core/drawing/sharing_pages.h"
#include "core/drawing/trim_pages.h"
#include "core/job/fingerprint.h"

namespace ribwright {

// Each kind of page adds its own here.
std::vector<BarePage> bareSchedulePages(const Job& job, const Plan& plan, const PageFrame& frame) {
  std::vector<BarePage> pages;
  const auto add = [&pages](std::vector<BarePage> more) {
    for (BarePage& page : more) pages.push_back(std::move(page));
  };
  add(orderPages(job, plan, frame));
  add(bundlePages(job, plan, frame));
  add(sharingPages(job, plan, frame));
  add(trimPages(job, plan, frame));
  add(deltaPages(job, plan, frame));
  return pages;
}

std::vector<Page> schedulePages(const Job& job, const Plan& plan, PaperSize paper, const Words& words) {
  const PageFrame frame{paper, &job, &words, fingerprintOf(job).text()};
  return framed(frame, bareSchedulePages(job, plan, frame));
}

}  // namespace ribwright
