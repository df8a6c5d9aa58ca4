#include "core/output/sharing_table.h"

#include "core/cutting/blank_cuts.h"
#include "core/cutting/bought_length.h"
#include "core/cutting/share_blanks.h"
#include "core/job/by_id.h"
#include "core/output/columns.h"
#include "core/output/figures.h"

namespace ribwright {
namespace {

std::string yes(bool is) { return is ? "yes" : "no"; }

class Rows {
 public:
  Rows(const Job& job, const Plan& plan, UnitSystem units) : job_(job), layouts_(plan.layouts()), units_(units) {}

  std::vector<std::vector<std::string>> all() {
    for (const Blank& blank : shareBlanks(job_, layouts_)) {
      if (blank.parts.size() > 1) add(blank);
    }
    return std::move(rows_);
  }

 private:
  void add(const Blank& blank) {
    ++number_;
    const Length bought = boughtLength(byId(job_.profiles, blank.sheet.profile)->lengths, blank.length);
    const BlankCuts cuts = blankCuts(job_, layouts_, blank, bought);
    for (std::size_t i = 0; i < cuts.parts.size(); ++i) {
      const BlankPart& part = cuts.parts[i].part;
      const WallLayout& layout = *layouts_[static_cast<std::size_t>(part.piece.wall)];
      rows_.push_back({std::to_string(number_), wayWord(blank.way), blank.sheet.profile, small(blank.sheet.thickness),
                       blank.sheet.translucent ? "translucent" : blank.sheet.colour, exactText(bought, units_),
                       small(bought), std::to_string(i + 1),
                       layout.pieces[static_cast<std::size_t>(part.piece.piece)].mark, layout.letter, yes(part.turned),
                       yes(part.upsideDown), small(part.left - cuts.left), small(part.right - cuts.left),
                       small(part.from), small(part.to), i == 0 ? small(blank.saved) : ""});
    }
  }

  std::string small(Length length) const { return smallLength(length, units_); }

  const Job& job_;
  std::vector<const WallLayout*> layouts_;
  UnitSystem units_;
  int number_ = 0;
  std::vector<std::vector<std::string>> rows_;
};

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
  table.columns =
      columnsIn(units, {"blank", "way", "profile", "thickness_in", "colour", "length", "length_in", "part", "mark",
                        "wall", "turned", "upside_down", "left_in", "right_in", "from_in", "to_in", "saved_in"});
  table.rows = Rows(job, plan, units).all();
  return table;
}

}  // namespace ribwright
