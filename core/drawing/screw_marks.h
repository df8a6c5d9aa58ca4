// Screws on an elevation: a small mark each, by its shape structural, stitch or of a jamb. Unit: mm.
#pragma once

#include <array>
#include <vector>

#include "core/drawing/sketch.h"
#include "core/drawing/wall_view.h"
#include "core/fastening/chosen_pattern.h"

namespace ribwright {

enum class ScrewMark { Structural, Stitch, Jamb };  // a dot, a dash across the lap, a cross
ScrewMark markOf(HoleKind kind);

// Rings of a mark with its middle at `at`, none over another.
std::vector<PaperPoint> markRing(ScrewMark mark, const PaperPoint& at);
// Half its width; also half its height, but of a dash, which is lower.
double reachOf(ScrewMark mark);

struct ScrewsShown {
  std::array<int, kHoleKinds> here{};  // screws on this drawing, by HoleKind
  int marksLeftOut = 0;                // of them without a mark: a text stands there, or another mark
  int all() const;
};

// A screw stands on this drawing: each on one page only.
bool isShownHere(const WallView& view, const Hole& hole);

// Marks every screw where neither a text nor another mark is; to be drawn after all texts. A mark is where its screw
// is, never moved.
ScrewsShown drawScrewMarks(Sketch& sketch, const WallView& view);

}  // namespace ribwright
