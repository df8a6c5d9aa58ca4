#include "core/drawing/trim_pages.h"

#include "core/drawing/trim_lists.h"
#include "core/job/length_style.h"

namespace ribwright {
namespace {

constexpr const char* trimFigures = "paper.trim-figures";

std::vector<BarePage> pagesOf(const std::vector<PageBlock>& blocks, const std::string& rule, const std::string& subject,
                              const TrimLook& look) {
  const PageBlock top = together(paragraph(rule, look.work));
  std::vector<BarePage> pages = barePages(flowed(blocks, top, look.work), subject, trimFigures);
  for (BarePage& page : pages) page.wall = BarePage::wholeJob;
  return pages;
}

}  // namespace

std::vector<BarePage> trimPages(const Job& job, const Plan& plan, const PageFrame& frame) {
  const TrimTakeoff takeoff = trimTakeoff(job, plan.layouts());
  if (takeoff.pieces.empty()) return {};
  const std::vector<TrimBatch> batches = trimBatches(job, takeoff);
  PageFrame own = frame;
  own.figures = trimFigures;
  const TrimLook look{job, takeoff, batches, {frame.words, styleOf(job)}, workArea(own)};
  std::vector<PageBlock> pieces = trimKinds(look);
  addBlocks(pieces, trimSettingOrder(look));
  std::vector<BarePage> pages =
      pagesOf(pieces, look.words.say("trim.pieces.rule"), look.words.say("trim.pieces.subject"), look);
  const std::string rule = look.words.say("trim.cuts.rule", {{"kerf", job.settings.kerf}});
  for (BarePage& page : pagesOf(trimCutPlan(look), rule, look.words.say("trim.cuts.subject"), look))
    pages.push_back(std::move(page));
  return pages;
}

}  // namespace ribwright
