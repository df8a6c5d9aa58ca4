#include "core/output/sharing_table.h"

#include "core/output/columns.h"
#include "core/output/figures.h"
#include "core/takeoff/shared_blanks.h"

namespace ribwright {
namespace {

std::string yes(bool is) { return is ? "yes" : "no"; }

std::vector<std::string> partRow(const Plan& plan, const NumberedBlank& numbered, std::size_t i, UnitSystem units) {
  const auto small = [units](Length length) { return smallLength(length, units); };
  const Blank& blank = numbered.blank;
  const BlankCuts& cuts = numbered.cuts;
  const BlankPart& part = cuts.parts[i].part;
  return {std::to_string(numbered.number),
          wayWord(blank.way),
          blank.sheet.profile,
          small(blank.sheet.thickness),
          blank.sheet.translucent ? "translucent" : blank.sheet.colour,
          exactText(cuts.length, units),
          small(cuts.length),
          std::to_string(i + 1),
          numbered.marks[i],
          plan.walls[static_cast<std::size_t>(part.piece.wall)]->layout.letter,
          yes(part.turned),
          yes(part.upsideDown),
          small(part.left - cuts.left),
          small(part.right - cuts.left),
          small(part.from),
          small(part.to),
          i == 0 ? small(blank.saved) : "",
          std::to_string(numbered.line)};
}

}  // namespace

std::string wayWord(Blank::Way way) {
  switch (way) {
    case Blank::Way::Alone:
      return "alone";
    case Blank::Way::RakePair:
      return "rake pair";
    case Blank::Way::RipPair:
      return "rip pair";
    case Blank::Way::Drop:
      return "drop";
    case Blank::Way::Gang:
      return "gang";
  }
  return "";
}

Table sharingTable(const Job& job, const Plan& plan, UnitSystem units) {
  Table table;
  table.columns = columnsIn(
      units, {"blank", "way", "profile", "thickness_in", "colour", "length", "length_in", "part", "mark", "wall",
              "turned", "upside_down", "left_in", "right_in", "from_in", "to_in", "saved_in", "line"});
  for (const NumberedBlank& blank : sharedBlanks(job, plan.layouts(), plan.order)) {
    for (std::size_t i = 0; i < blank.marks.size(); ++i) table.rows.push_back(partRow(plan, blank, i, units));
  }
  return table;
}

}  // namespace ribwright
