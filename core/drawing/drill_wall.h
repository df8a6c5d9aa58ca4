// What the pages of one wall's drilling are made from.
#pragma once

#include <string>
#include <string_view>

#include "core/drawing/box.h"
#include "core/plan/plan.h"
#include "core/words/words.h"

namespace ribwright {

struct DrillWall {
  const Job* job = nullptr;
  const Wall* wall = nullptr;
  const WallPlan* plan = nullptr;  // of that wall
  const Words* words = nullptr;
  LengthStyle style;
  Box work;  // mm on paper, y down: what a page's frame leaves

  const WallLayout& layout() const { return plan->layout; }
  const Piece& piece(std::int32_t index) const { return layout().pieces[static_cast<std::size_t>(index)]; }
  std::string say(std::string_view id, const WordValues& values = {}) const { return words->say(id, values, style); }
  std::string say(const Phrase& phrase) const { return words->say(phrase, style); }
};

}  // namespace ribwright
