// Where the leading edge of each sheet comes to stand, running from the corner that its run starts at: marked on base
// and top girt before the first sheet hangs, so that neither end of the sheets runs ahead of the other.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/layout/wall_layout.h"

namespace ribwright {

struct ModuleMark {
  std::string mark;      // of the sheet, without a part: "B7"
  std::int32_t run = 0;  // index into WallLayout::runs
  Length u;              // of its leading metal edge
  Length running;        // the same from the corner or joint that the run starts at
  bool hung = false;     // it hangs: a fact from site
  bool plumb = false;    // here the sheet is held against a plumb line
};

// A sheet in so many is checked (common practice); counted from the start of each run.
inline constexpr int plumbCheckEvery = 5;

// Run by run in hanging order.
std::vector<ModuleMark> moduleMarks(const WallLayout& layout);

}  // namespace ribwright
