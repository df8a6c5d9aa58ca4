// The part of a wall's face that one drawing shows, and where each of its points comes to lie on paper.
//
// x = 0 at `from`, y = 0 at the top of concrete (z = 0); mm, y down, so heights above concrete are negative.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/drawing/drawing.h"
#include "core/drawing/drawing_scale.h"
#include "core/fastening/holes.h"
#include "core/job/job.h"
#include "core/layout/wall_layout.h"
#include "core/plan/plan.h"
#include "core/words/words.h"

namespace ribwright {

struct WallView {
  const Wall* wall = nullptr;
  const WallLayout* layout = nullptr;
  const WallHoles* holes = nullptr;                // absent: no screws are shown
  const std::vector<Profile>* profiles = nullptr;  // the job's; absent: no ribs are shown
  const Words* words = nullptr;
  LengthStyle style;
  bool bays = true;        // the chain of bays is drawn; without it a picture is lower
  bool topIsEave = false;  // the wall's top comes from the roof: its corners are eaves
  DrawingScale scale;
  Length from, to;  // u; the whole wall, or what stands between two match lines

  double size(Length length) const { return onPaper(length, scale); }
  double x(Length u) const { return size(u - from); }
  double y(Length z) const { return -size(z); }
  PaperPoint at(Length u, Length z) const { return {x(u), y(z)}; }
  bool hasLeftCorner() const { return from == Length(); }
  bool hasRightCorner() const { return to == layout->face.width; }
  std::string say(std::string_view id, const WordValues& values = {}) const { return words->say(id, values, style); }
  bool shows(Length u) const { return u >= from && u <= to; }
};

// The whole of a wall, without a scale. `plan` must be of `job`; it, the job and the words must outlive the view.
WallView wholeWall(const Job& job, const Plan& plan, std::size_t wall, const Words& words);

// "Wall A, front".
std::string wallTitle(const Wall& wall, const Words& words);

// A height in words: "eave 14' 0"".
std::string heightWords(const WallView& view, const char* id, Length height);

bool isTranslucent(const WallView& view, const Piece& piece);

// The profile of a piece's band; null where the view has none.
const Profile* profileOf(const WallView& view, const Piece& piece);

// A height line from the view's left limit to its right one, steps and all.
std::vector<PaperPoint> pointsOf(const WallView& view, const HeightLine& line);
std::vector<PaperPoint> pointsOf(const WallView& view, const Ring& ring);

// What of a piece is seen from outside: not what the next sheet or an upper one lies over, nor what is on another page.
struct SeenPart {
  Length left, right;  // left >= right: nothing
  Length top;          // z
  bool empty() const { return left >= right; }
};
SeenPart seenPart(const WallView& view, const Piece& piece);

// The sheet stands on this drawing: the middle of what it covers does. So each is named on one page only.
bool isNamedHere(const WallView& view, const Piece& piece);

// Highest and lowest z of face and concrete on this drawing.
Length highestSeen(const WallView& view);
Length lowestSeen(const WallView& view);

}  // namespace ribwright
