// Stitch screws along the side laps: through the crowns of both sheets, even spaces between the structural screws that
// go through the lap, or to its ends.
#include <algorithm>

#include "core/fastening/run_screws.h"
#include "core/fastening/spacing_limits.h"

namespace ribwright {
namespace {

class StitchWalk {
 public:
  StitchWalk(RunScrews& screws)
      : screws_(screws),
        line_(screws.chosen().line(HoleKind::Stitch, false)),
        limits_(spacingLimits(*screws.chosen().pattern)),
        limited_(screws.chosen().pattern->spacingApproval.empty()) {}

  void walk() {
    for (std::size_t m = 1; m < screws_.sheets().size(); ++m) {
      const StandingSheet &before = screws_.sheets()[m - 1], &sheet = screws_.sheets()[m];
      if (sheet.from >= before.to) continue;
      if (const std::optional<Length> t = crownOfLap(before, sheet)) {
        stitchLap(m, *t);
      } else if (!toldNoCrown_) {
        tellNoCrown(m);
      }
    }
  }

 private:
  Place placeAt(std::size_t module, Length t, Length z) const {
    Place place;
    place.kind = HoleKind::Stitch;
    place.module = module;
    place.line = &line_;
    place.t = t;
    place.z = z;
    return place;
  }

  // The middle of the widest crown that both sheets have in common, clear of both metal edges.
  std::optional<Length> crownOfLap(const StandingSheet& before, const StandingSheet& sheet) const {
    const Length r = fromEdge(screws_.screwOf(line_));
    const Flat clear{sheet.from + r, before.to - r};
    std::optional<Length> middle;
    Length widest;
    for (const Flat& upper : screws_.sheets().crowns()) {
      for (const Flat& lower : screws_.sheets().crowns()) {
        const Flat both{std::max(sheet.line + upper.from, before.line + lower.from),
                        std::min(sheet.line + upper.to, before.line + lower.to)};
        const Flat cut{std::max(both.from, clear.from), std::min(both.to, clear.to)};
        if (both.from > both.to || cut.from > cut.to || (middle && cut.to - cut.from <= widest)) continue;
        widest = cut.to - cut.from;
        middle = std::clamp(both.from + half(both.to - both.from), cut.from, cut.to);
      }
    }
    return middle;
  }

  void tellNoCrown(std::size_t module) {
    toldNoCrown_ = true;
    const StandingSheet &before = screws_.sheets()[module - 1], &sheet = screws_.sheets()[module];
    const Piece* piece = sheet.pieces.empty() ? nullptr : sheet.pieces.front().shape;
    const Length t = sheet.from + half(before.to - sheet.from);
    screws_.refuse(Refusal::Why::NoCrown, placeAt(module, t, piece ? piece->bottom : Length()),
                   piece ? sheet.pieces.front().piece : -1);
  }

  std::vector<Upright> metalAt(const StandingSheet& sheet, Length t) const {
    const HangingFrame& frame = screws_.sheets().frame();
    std::vector<Upright> left, right;
    for (const SheetMetal& metal : sheet.pieces) {
      appendUprights(*metal.shape, frame.toFace(t), false, left);
      appendUprights(*metal.shape, frame.toFace(t), true, right);
    }
    // On an upright edge there is no metal, whichever side it lies.
    if (left == right) return joined(std::move(left));
    return common(joined(std::move(left)), joined(std::move(right)));
  }

  // Heights of the structural screws through both sheets, rising.
  std::vector<Length> structuralThrough(std::size_t module) const {
    std::vector<Length> heights;
    for (const std::int32_t index : screws_.taken().of(module)) {
      const Hole& hole = screws_.holes().holes[static_cast<std::size_t>(index)];
      if (hole.kind != HoleKind::Stitch && hole.throughLap && goesThrough(hole, module - 1)) heights.push_back(hole.z);
    }
    std::sort(heights.begin(), heights.end());
    return heights;
  }

  bool goesThrough(const Hole& hole, std::size_t module) const {
    const auto& pieces = screws_.sheets()[module].pieces;
    return std::any_of(pieces.begin(), pieces.end(), [&](const SheetMetal& metal) {
      return std::find(hole.pieces.begin(), hole.pieces.end(), metal.piece) != hole.pieces.end();
    });
  }

  void stitchLap(std::size_t module, Length t) {
    const auto lap = common(metalAt(screws_.sheets()[module - 1], t), metalAt(screws_.sheets()[module], t));
    const std::vector<Length> through = structuralThrough(module);
    for (const Upright& part : lap) {
      std::vector<Length> fixed = {part.low};
      for (const Length z : through) {
        if (z > fixed.back() && z < part.high) fixed.push_back(z);
      }
      fixed.push_back(part.high);
      std::vector<Length> served = fixed;
      for (std::size_t i = 0; i + 1 < fixed.size(); ++i) stitchBetween(module, t, fixed[i], fixed[i + 1], served);
      if (limited_ && limits_.atSideLaps) judge(t, std::move(served));
    }
  }

  void stitchBetween(std::size_t module, Length t, Length from, Length to, std::vector<Length>& served) {
    const Length length = to - from;
    const std::int64_t spaces = evenSpaces(length, *screws_.chosen().pattern->stitchSpacing);
    for (std::int64_t i = 1; i < spaces; ++i) {
      const Place place = placeAt(module, t, from + scaled(length, i, spaces));
      const Came came = screws_.place(place);
      if (came == Came::Taken || came == Came::Merged) served.push_back(place.z);
    }
  }

  void judge(Length t, std::vector<Length> served) {
    std::sort(served.begin(), served.end());
    for (std::size_t i = 0; i + 1 < served.size(); ++i) {
      if (served[i + 1] - served[i] <= *limits_.atSideLaps) continue;
      screws_.holes().wideSpaces.push_back({HoleKind::Stitch, -1, screws_.sheets().index(), served[i], served[i + 1],
                                            screws_.sheets().frame().toFace(t), *limits_.atSideLaps});
    }
  }

  RunScrews& screws_;
  const ScrewLine& line_;
  SpacingLimits limits_;
  bool limited_;
  bool toldNoCrown_ = false;
};

}  // namespace

void placeStitches(RunScrews& screws, const WallLayout&) {
  if (screws.chosen().line(HoleKind::Stitch, false).stated) StitchWalk(screws).walk();
}

}  // namespace ribwright
