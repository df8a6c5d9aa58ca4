#include "core/drawing/steel_page.h"

#include <algorithm>
#include <map>

#include "core/checks/sag_words.h"
#include "core/drawing/page_flow.h"
#include "core/drawing/shown_length.h"
#include "core/drawing/text_extent.h"
#include "core/fastening/survey_results.h"

namespace ribwright {
namespace {

void addHeading(std::vector<PageBlock>& blocks, const DrillWall& wall, const char* id) {
  addBlocks(blocks, paragraph(wall.say(id), wall.work, 0, true));
  blocks.back().keepsNext = true;
}

void addLine(std::vector<PageBlock>& blocks, const DrillWall& wall, const std::string& words) {
  addBlocks(blocks, {together(paragraph(words, wall.work, 4))});
}

// Of each girt the bay that sags most, the girts from the lowest up.
std::vector<GirtSag> worstOfEach(const std::vector<GirtSag>& sags) {
  std::vector<GirtSag> worst;
  for (const GirtSag& sag : sags) {
    const auto same =
        std::find_if(worst.begin(), worst.end(), [&](const GirtSag& one) { return one.girt == sag.girt; });
    if (same == worst.end()) {
      worst.push_back(sag);
    } else if (sag.sag > same->sag) {
      *same = sag;
    }
  }
  return worst;
}

// The source says which equation it is; here it is said but once.
Phrase howTaken(const GirtSag& sag) {
  if (sag.taken != GirtSag::Taken::Continuous) return takenWords(sag);
  return {"steel.sag.continuous", {{"spans", std::int64_t(sag.spans)}}};
}

void addSags(std::vector<PageBlock>& blocks, const DrillWall& wall, const std::vector<GirtSag>& sags) {
  if (sags.empty()) return;
  const bool inPlace = wall.wall->survey.propsInPlace;
  addHeading(blocks, wall, inPlace ? "steel.props.in-place" : "steel.props.missing");
  const Length mark = tapeMark(wall.style.units);
  for (const GirtSag& sag : worstOfEach(sags)) {
    const Girt& girt = wall.wall->girts[static_cast<std::size_t>(sag.girt)];
    addLine(blocks, wall,
            wall.say("steel.sag", {{"girt", girt.id},
                                   {"member", girt.member},
                                   {"sag", roundTo(sag.sag, mark)},
                                   {"at", roundTo(sag.at, mark)},
                                   {"from", sag.from},
                                   {"to", sag.to},
                                   {"taken", howTaken(sag)},
                                   {"source", sagSource(sag.taken, ModulusBy::American)}}));
  }
  addLine(blocks, wall, wall.say("steel.sag.note"));
  blocks.push_back(clearPaper(4));
}

// How far below the edge the line is at each place.
PageBlock markBlock(const DrillWall& wall, const ChalkSnaps& snaps) {
  std::vector<std::string> lines;
  for (const ChalkMark& mark : snaps.marks) {
    const std::string place = mark.column > 0 ? wall.say("blank.column", {{"number", std::int64_t(mark.column)}})
                                              : dimensionText(mark.u, wall.style);
    lines.push_back(wall.say("steel.chalk.mark", {{"place", place}, {"below", mark.below()}}));
  }
  return inColumns(lines, wall.work, 4);
}

void addChalk(std::vector<PageBlock>& blocks, const DrillWall& wall, const SurveyResults& results) {
  if (!results.chalk) return;
  const ChalkSnaps& snaps = *results.chalk;
  addHeading(blocks, wall, "steel.chalk");
  for (const ChalkRun& run : snaps.runs) {
    const Phrase side{run.line < Length() ? "stick.below" : "stick.above"};
    addLine(blocks, wall,
            wall.say("steel.chalk.run",
                     {{"from", run.from}, {"to", run.to}, {"line", absolute(run.line)}, {"side", side}}));
  }
  blocks.push_back(markBlock(wall, snaps));
  for (const OpenEdge& open : snaps.open)
    addLine(blocks, wall, wall.say("steel.chalk.open", {{"from", open.from}, {"to", open.to}, {"by", open.by}}));
  if (!results.shortSheets.empty()) {
    std::string marks;
    for (const ShortSheet& one : results.shortSheets)
      marks.append(marks.empty() ? "" : ", ").append(wall.piece(one.piece).mark);
    addLine(blocks, wall, wall.say("steel.chalk.short", {{"marks", marks}}));
  }
  blocks.push_back(clearPaper(4));
}

void addSquare(std::vector<PageBlock>& blocks, const DrillWall& wall, const SurveyResults& results) {
  if (!results.square) return;
  const Squareness& square = *results.square;
  addHeading(blocks, wall, "steel.square");
  addLine(blocks, wall,
          wall.say("steel.square.width", {{"width", square.width}, {"planned", wall.layout().face.width}}));
  const char* id = square.lean == Length()  ? "steel.square.plumb"
                   : square.lean < Length() ? "steel.square.left"
                                            : "steel.square.right";
  addLine(blocks, wall, wall.say(id, {{"lean", absolute(square.lean)}, {"height", square.height}}));
}

}  // namespace

std::vector<BarePage> steelPages(const DrillWall& wall) {
  const SurveyResults results = surveyResults(*wall.job, *wall.wall, wall.layout(), wall.plan->holes.supports);
  std::vector<PageBlock> blocks;
  addSags(blocks, wall, results.sags);
  addChalk(blocks, wall, results);
  addSquare(blocks, wall, results);
  if (blocks.empty()) return {};
  return barePages(flowed(blocks, clearPaper(0), wall.work), wall.say("steel.subject"), "paper.steel-figures");
}

}  // namespace ribwright
