// One statement about screws changed.
#include "tests/core/tape_lengths.h"
#include "tests/fuzz/random_building.h"
#include "tests/fuzz/random_screws.h"

namespace ribwright::fuzz {
namespace {

void editPattern(ScrewPattern& pattern, Dice& dice) {
  if (pattern.rows.empty()) return;
  PatternRow& row =
      pattern.rows[static_cast<std::size_t>(dice.between(0, static_cast<std::int64_t>(pattern.rows.size()) - 1))];
  switch (dice.between(0, 5)) {
    case 0:
      row.offsets.push_back(in(dice.between(1, 11)));
      break;
    case 1:
      row.drilledInPlace = !row.drilledInPlace.value_or(false);
      break;
    case 2:
      pattern.rows.pop_back();
      break;
    case 3:
      pattern.stitchSpacing = in(dice.between(6, 30));
      break;
    case 4:
      pattern.limits = ScrewPattern::Limits::Ufgs07413;
      pattern.spacingApproval.clear();
      break;
    default:
      pattern.jambSpacingLimit += in(1);
  }
}

void editSteel(const Job& job, Wall& wall, Dice& dice) {
  switch (dice.between(0, 4)) {
    case 0:
      wall.girtSetting = wall.girtSetting == GirtSetting::Flush ? GirtSetting::Bypass : GirtSetting::Flush;
      break;
    case 1:
      wall.baseAngle.row += in(0, 2);
      break;
    case 2:
      if (!wall.girts.empty()) wall.girts.back().member = dice.of(job.members).id;
      break;
    case 3:
      if (!wall.openings.empty()) wall.openings.front().frame.face += in(1);
      break;
    default:
      wall.pattern = dice.of(job.patterns).id;
  }
}

}  // namespace

Job withScrewEdit(Job job, Dice& dice) {
  switch (dice.between(0, 4)) {
    case 0:
      job.screws.front().washer += in(0, 1);
      break;
    case 1:
      job.members.front().bendRadius += in(0, 1);
      break;
    case 2:
      job.settings.drift += in(0, 1);
      break;
    case 3:
      editPattern(job.patterns.front(), dice);
      break;
    default: {
      const auto wall = dice.between(0, static_cast<std::int64_t>(job.walls.size()) - 1);
      const Job stated = job;
      editSteel(stated, job.walls[static_cast<std::size_t>(wall)], dice);
    }
  }
  return job;
}

}  // namespace ribwright::fuzz
