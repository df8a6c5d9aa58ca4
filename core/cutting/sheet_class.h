// What makes two sheets the same to order but for their length.
#pragma once

#include <compare>
#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/layout/wall_layout.h"

namespace ribwright {

struct SheetClass {
  std::string profile;  // a Profile's id
  Length thickness;     // base steel
  std::string colour;   // empty for translucent sheets, which have no paint
  bool translucent = false;
  auto operator<=>(const SheetClass&) const = default;
};

// Of a piece. Throws std::invalid_argument when the layout's wall or the band's profile is not in the job, and
// std::out_of_range when the piece's run, module or band is not in its layout.
SheetClass sheetClassOf(const Job& job, const WallLayout& layout, const Piece& piece);

}  // namespace ribwright
