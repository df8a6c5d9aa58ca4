#include "core/drawing/sharing_pages.h"

#include "core/drawing/blank_picture.h"
#include "core/drawing/text_extent.h"
#include "core/job/length_style.h"

namespace ribwright {
namespace {

constexpr const char* sharingFigures = "paper.sharing-figures";
constexpr double betweenPictures = 3;

// What holds for all blanks of the page.
PageBlock topOf(const BlankWords& words, const Box& work) {
  const auto say = [&](const char* id) { return words.words->say(id, {{"kerf", words.kerf}}, words.style); };
  const std::string loud = say("template.face-up"), rule = say("sharing.rule");
  const double left = widthOf(loud, shoutedText, true) + 8;
  const auto lines = wrapped(rule, siteText, false, work.width() - left);
  const auto draw = [loud, lines, left](Sketch& sketch, const Box& room) {
    sketch.text({{room.left, room.top - 1 + ascentOf(shoutedText)}, shoutedText, TextAnchor::Start, 0, true, loud, -1});
    double y = room.top + ascentOf(siteText);
    for (const std::string& line : lines) {
      sketch.text({{room.left + left, y}, siteText, TextAnchor::Start, 0, false, line, -1});
      y += siteLine;
    }
  };
  const double tall = siteLine * static_cast<double>(lines.size());
  return {std::max(lineOf(shoutedText), tall) + 2, draw};
}

PageBlock blankBlock(const NumberedBlank& blank, const BlankWords& words, const Box& work) {
  std::vector<PageBlock> blocks = paragraph(blankHeading(blank, words), work, 0, true);
  blocks.push_back(blankPicture(blank, words));
  blocks.push_back(clearPaper(1));
  blocks.push_back(inColumns(cutLines(blank, words), work));
  blocks.push_back(clearPaper(betweenPictures));
  return together(blocks);
}

}  // namespace

std::vector<BarePage> sharingPages(const Job& job, const Plan& plan, const PageFrame& frame) {
  const BlankWords words{frame.words, styleOf(job), job.settings.kerf};
  PageFrame own = frame;
  own.figures = sharingFigures;
  const Box work = workArea(own);
  std::vector<PageBlock> blocks;
  for (const NumberedBlank& blank : sharedBlanks(job, plan.layouts(), plan.order))
    blocks.push_back(blankBlock(blank, words, work));
  if (blocks.empty()) return {};
  std::vector<BarePage> pages = barePages(flowed(blocks, topOf(words, work), work),
                                          words.words->say("sharing.subject", {}, words.style), sharingFigures);
  for (BarePage& page : pages) page.wall = BarePage::wholeJob;
  return pages;
}

}  // namespace ribwright
