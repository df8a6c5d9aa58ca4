#include "core/drawing/drill_template.h"

#include <algorithm>

#include "core/checks/batch_words.h"
#include "core/drawing/offset_line.h"
#include "core/drawing/shown_length.h"
#include "core/drawing/template_picture.h"
#include "core/drawing/text_extent.h"

namespace ribwright {
namespace {

constexpr const char* templateFigures = "paper.template-figures";
// Ten millimetres high at the left, what it is of beside it.
PageBlock shouted(const std::string& loud, const std::vector<std::string>& beside) {
  const auto draw = [loud, beside](Sketch& sketch, const Box& room) {
    sketch.text({{room.left, room.top - 1 + ascentOf(shoutedText)}, shoutedText, TextAnchor::Start, 0, true, loud, -1});
    const double left = room.left + widthOf(loud, shoutedText, true) + 8;
    double y = room.top + ascentOf(siteText);
    for (const std::string& line : beside) {
      sketch.text({{left, y},
                   siteText,
                   TextAnchor::Start,
                   0,
                   line == beside.front(),
                   shortened(line, siteText, line == beside.front(), room.right - left),
                   -1});
      y += siteLine;
    }
  };
  return {lineOf(shoutedText) - 0.5, draw};
}

std::string join(const std::vector<std::string>& words, const char* between) {
  std::string all;
  for (const std::string& one : words) all.append(all.empty() ? "" : between).append(one);
  return all;
}

// The pilot holes of its screws: nearly always one size.
std::string pilotWords(const DrillWall& wall, const std::vector<OffsetSet>& sets) {
  std::vector<std::string> sizes;
  for (const OffsetSet& set : sets) {
    const Screw& screw = wall.job->screws[static_cast<std::size_t>(set.screw)];
    std::string size = wall.say("template.pilot", {{"size", cutText(screw.pilot, wall.style)}, {"screw", screw.id}});
    if (std::find(sizes.begin(), sizes.end(), size) == sizes.end()) sizes.push_back(std::move(size));
  }
  return join(sizes, "; ");
}

// "a: base, g1, g3".
std::string setHeading(const DrillWall& wall, const DrillBatch& batch, const OffsetSet& set, std::size_t index,
                       bool startsAtLeft) {
  std::vector<std::string> rows;
  for (const std::size_t row : set.rows) rows.push_back(rowName(wall, batch.rows[row]));
  return wall.say(startsAtLeft ? "template.offsets.left" : "template.offsets.right",
                  {{"set", setLetter(index)}, {"rows", join(rows, ", ")}, {"count", std::int64_t(set.offsets.size())}});
}

// From the top of the stack down.
std::vector<PageBlock> stackBlocks(const DrillWall& wall, const DrillBatch& batch) {
  std::vector<PageBlock> blocks = paragraph(wall.say("template.stack"), wall.work, 0, true);
  for (PageBlock& block : blocks) block.keepsNext = true;
  std::vector<std::string> lines;
  for (std::size_t i = batch.stack.size(); i-- > 0;) {
    const Piece& piece = wall.piece(batch.stack[i]);
    lines.push_back(wall.say("template.stack.sheet", {{"place", std::int64_t(batch.stack.size() - i)},
                                                      {"mark", piece.mark},
                                                      {"length", cutText(piece.blankLength, wall.style)}}));
  }
  blocks.push_back(inColumns(lines, wall.work));
  blocks.push_back(clearPaper(1));
  return blocks;
}

PageBlock signOff(const DrillWall& wall) {
  const std::string date = wall.say("template.sign.date");
  return toFillIn({wall.say("template.sign.checked"), date, wall.say("template.sign.drilled"), date});
}

// Rows whose steel was not measured: a cleared batch has only those that hold by the plans.
std::string plannedRows(const DrillWall& wall, const DrillBatch& batch) {
  std::vector<std::string> rows;
  for (const BatchRow& row : batch.rows) {
    if (!row.surveyed) rows.push_back(rowName(wall, row));
  }
  return join(rows, ", ");
}

// What to do, in its order, and who answers for it.
std::vector<PageBlock> stepBlocks(const DrillWall& wall, const DrillBatch& batch, const std::vector<OffsetSet>& sets) {
  std::string words = wall.say("template.steps", {{"pilot", pilotWords(wall, sets)}});
  if (!batch.inPlace.empty())
    words += " " + wall.say("template.in-place", {{"count", std::int64_t(batch.inPlace.size())}});
  if (const std::string rows = plannedRows(wall, batch); !rows.empty())
    words += " " + wall.say("template.by-plan", {{"rows", rows}});
  return {together(paragraph(words, wall.work)), signOff(wall)};
}

// How many holes the stack is drilled with.
std::int64_t holesOf(const DrillBatch& batch) {
  std::int64_t count = 0;
  for (const BatchRow& row : batch.rows) count += std::int64_t(row.offsets.size());
  return count;
}

// One held batch: which sheets, why, what to do.
std::vector<PageBlock> heldBlocks(const DrillWall& wall, const DrillBatch& batch) {
  std::vector<PageBlock> blocks =
      paragraph(wall.say("template.held.batch", {{"batch", batch.id},
                                                 {"sheets", sheetsOf(batch, wall.layout())},
                                                 {"count", std::int64_t(batch.pieces.size())}}),
                wall.work, 0, true);
  blocks.back().keepsNext = true;
  for (const HoldReason& reason : batch.reasons)
    addBlocks(blocks, paragraph("– " + wall.say(whyHeld(batch, reason)), wall.work, 4));
  std::int64_t number = 0;
  for (const Remedy& remedy : batch.remedies) {
    const std::string words = wall.say("template.held.do", {{"number", ++number}, {"what", whatToDo(batch, remedy)}});
    addBlocks(blocks, paragraph(words, wall.work, 4));
  }
  blocks.push_back(clearPaper(4));
  const PageBlock whole = together(blocks);
  if (whole.height > wall.work.height() * 0.6) return blocks;
  return {whole};
}

}  // namespace

std::vector<BarePage> templatePages(const DrillWall& wall, const DrillBatch& batch, Lying lying) {
  const std::vector<OffsetSet> sets = offsetSets(batch);
  const StackedSheet sheet = stackedSheet(wall, batch);
  const bool startsAtLeft = startsUppermost(wall.layout().direction.hand, lying);
  const PageBlock top =
      shouted(wall.say(lying == Lying::FaceUp ? "template.face-up" : "template.face-down"),
              {wall.say("template.batch", {{"batch", batch.id}, {"sheets", sheetsOf(batch, wall.layout())}}),
               wall.say("template.count", {{"count", std::int64_t(batch.pieces.size())}, {"holes", holesOf(batch)}})});
  std::vector<PageBlock> blocks = templatePictures(wall, batch, sets, lying);
  for (std::size_t i = 0; i < sets.size(); ++i) {
    blocks.push_back(offsetLine(wall, sheet, sets[i], setHeading(wall, batch, sets[i], i, startsAtLeft), startsAtLeft));
  }
  addBlocks(blocks, stackBlocks(wall, batch));
  addBlocks(blocks, stepBlocks(wall, batch, sets));
  return barePages(flowed(blocks, top, wall.work), wall.say("template.subject", {{"batch", batch.id}}),
                   templateFigures);
}

std::vector<BarePage> heldPages(const DrillWall& wall) {
  std::vector<PageBlock> blocks;
  for (const DrillBatch& batch : wall.plan->batches) {
    if (!batch.isCleared()) addBlocks(blocks, heldBlocks(wall, batch));
  }
  if (blocks.empty()) return {};
  const PageBlock top =
      shouted(wall.say("template.held"), {wall.say("template.held.why"), wall.say("template.held.from-plan")});
  return barePages(flowed(blocks, top, wall.work), wall.say("template.held.subject"), templateFigures);
}

}  // namespace ribwright
