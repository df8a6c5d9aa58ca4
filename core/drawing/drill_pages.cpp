#include "core/drawing/drill_pages.h"

#include "core/drawing/drill_template.h"
#include "core/drawing/full_scale_strip.h"
#include "core/drawing/marking_stick.h"
#include "core/drawing/module_mark_page.h"
#include "core/drawing/steel_page.h"
#include "core/drawing/survey_blank.h"
#include "core/job/fingerprint.h"
#include "core/job/length_style.h"

namespace ribwright {
namespace {

void addPages(std::vector<BarePage>& pages, std::size_t wall, std::vector<BarePage> more) {
  for (BarePage& page : more) {
    page.wall = wall;
    pages.push_back(std::move(page));
  }
}

}  // namespace

std::vector<BarePage> bareDrillPages(const Job& job, const Plan& plan, std::size_t wall, const PageFrame& frame,
                                     Lying lying) {
  DrillWall of{&job, &job.walls[wall], plan.walls[wall].get(), frame.words, styleOf(job), {}};
  std::vector<BarePage> pages;
  if (!of.layout().sheeted) return pages;
  // What is said about figures differs in length from page to page; the least room is taken for all.
  of.work = workArea(frame);
  for (const char* figures : {"paper.template-figures", "paper.marks-figures", "paper.stick-figures",
                              "paper.strip-figures", "paper.steel-figures"}) {
    PageFrame own = frame;
    own.figures = figures;
    of.work.bottom = std::min(of.work.bottom, workArea(own).bottom);
  }
  addPages(pages, wall, steelPages(of));
  addPages(pages, wall, surveyBlankPages(of));
  addPages(pages, wall, markingStickPages(of));
  addPages(pages, wall, heldPages(of));
  for (const DrillBatch& batch : of.plan->batches) {
    if (batch.isCleared()) addPages(pages, wall, templatePages(of, batch, lying));
  }
  addPages(pages, wall, stripPages(of, lying));
  addPages(pages, wall, moduleMarkPages(of));
  return pages;
}

std::vector<Page> drillPages(const Job& job, const Plan& plan, PaperSize paper, const Words& words, Lying lying) {
  const PageFrame frame{paper, &job, &words, fingerprintOf(job).text()};
  std::vector<BarePage> pages;
  for (std::size_t wall = 0; wall < job.walls.size() && wall < plan.walls.size(); ++wall) {
    for (BarePage& page : bareDrillPages(job, plan, wall, frame, lying)) pages.push_back(std::move(page));
  }
  return framed(frame, std::move(pages));
}

}  // namespace ribwright
