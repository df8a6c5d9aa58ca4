#include "core/drawing/schedule_pages.h"

#include "core/drawing/trim_pages.h"
#include "core/job/fingerprint.h"

namespace ribwright {

// Each kind of page adds its own here.
std::vector<BarePage> bareSchedulePages(const Job& job, const Plan& plan, const PageFrame& frame) {
  return trimPages(job, plan, frame);
}

std::vector<Page> schedulePages(const Job& job, const Plan& plan, PaperSize paper, const Words& words) {
  const PageFrame frame{paper, &job, &words, fingerprintOf(job).text()};
  return framed(frame, bareSchedulePages(job, plan, frame));
}

}  // namespace ribwright
