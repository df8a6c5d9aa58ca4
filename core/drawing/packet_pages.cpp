#include "core/drawing/packet_pages.h"

#include "core/drawing/drill_pages.h"
#include "core/drawing/elevation.h"
#include "core/drawing/schedule_pages.h"
#include "core/job/fingerprint.h"

namespace ribwright {

std::vector<Page> packetPages(const Job& job, const Plan& plan, PaperSize paper, const Words& words) {
  const PageFrame frame{paper, &job, &words, fingerprintOf(job).text()};
  std::vector<BarePage> pages;
  const auto add = [&pages](std::vector<BarePage> more) {
    for (BarePage& page : more) pages.push_back(std::move(page));
  };
  for (std::size_t wall = 0; wall < job.walls.size() && wall < plan.walls.size(); ++wall) {
    add(bareElevation(job, plan, wall, frame, static_cast<int>(pages.size())));
    add(bareDrillPages(job, plan, wall, frame));
  }
  add(bareSchedulePages(job, plan, frame));
  return framed(frame, std::move(pages));
}

std::vector<Page> packetPages(const Job& job, const Plan& plan, std::string_view letter, PaperSize paper,
                              const Words& words) {
  std::vector<Page> pages = packetPages(job, plan, paper, words);
  std::erase_if(pages, [&](const Page& page) { return page.wall != letter; });
  return pages;
}

}  // namespace ribwright
