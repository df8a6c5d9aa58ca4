// A wall with all that its screws go by: its runs in hanging coordinates, each module's line, metal, zone and pattern.
// Read from the job and from the layout's results; nothing of core/fastening is called.
#pragma once

#include <optional>
#include <set>
#include <vector>

#include "core/fastening/holes.h"
#include "core/job/job.h"
#include "core/plan/plan.h"
#include "tests/fuzz/run_metal.h"
#include "tests/fuzz/stated_run.h"
#include "tests/fuzz/stated_zone.h"

namespace ribwright::fuzz {

inline constexpr Nm kInch = 25'400'000;

struct ScrewedModule {
  int index = 0;
  Nm line = 0, next = 0;          // t of its module lines
  Nm metalFrom = 0, metalTo = 0;  // t of its metal edges, clipped
  bool corner = false;            // its cover enters a corner zone: it takes the corner pattern whole
  std::set<Nm> lapRows;           // z of the rows at which its own sheets lap end over end
};

// What a pattern asks of one kind of support in one zone.
struct Asked {
  const PatternRow* row = nullptr;
  int screw = -1;
};

struct ScrewedRun {
  ScrewedRun(const Job& job, const Wall& wall, const WallLayout& layout, int index, const std::optional<Nm>& zone);

  // Absent where the pattern states no usable row.
  std::optional<Asked> asked(SupportKind kind, bool corner) const;

  int index = 0;
  const SheetRun* run = nullptr;
  Along along;
  const Profile* profile = nullptr;
  std::string patternId;
  const ScrewPattern* pattern = nullptr;  // null: none, unknown, or for another profile
  bool otherProfile = false;
  std::vector<ScrewedModule> modules;  // in hanging order
  RunMetal metal;
  const Job* job = nullptr;
};

struct ScrewedWall {
  ScrewedWall(const Job& job, const Wall& wall, const WallPlan& plan);

  const Piece& piece(int index) const { return layout.pieces[static_cast<std::size_t>(index)]; }
  const Screw& screw(int index) const { return job.screws[static_cast<std::size_t>(index)]; }
  // 1.5 d, an odd nanometre rounded up; and with the drill's drift.
  Nm fromEdge(int screw) const;
  Nm margin(int screw) const { return fromEdge(screw) + job.settings.drift.nanometres(); }
  // The steel line over u, as the stretch from..to of it goes.
  const Segment& steelOver(const Stretch& stretch, Nm u) const;
  // z of a stretch's row at u.
  Nm rowAt(const SupportRow& row, const Stretch& stretch, Nm u) const;

  const Job& job;
  const Wall& wall;
  const WallLayout& layout;
  const WallHoles& holes;
  StatedFace face;
  std::optional<Nm> zone;
  std::vector<ScrewedRun> runs;
};

int screwIndex(const Job& job, const std::string& id);
const Member* memberOf(const Job& job, const std::string& id);

// z of a girt's screw face and of the row in it.
struct GirtFace {
  Nm low = 0, high = 0, row = 0;
  bool known = false;
};
GirtFace statedGirtFace(const Job& job, const Girt& girt);

// The usable part of an opening's frame flange: from the heel at the opening outwards.
struct FrameFace {
  Nm width = 0, heel = 0, edge = 0;
};
FrameFace statedFrame(const Job& job, const FrameSteel& frame);

// An odd nanometre falls to the lower side.
inline Nm halved(Nm length) { return length / 2 - (length % 2 < 0 ? 1 : 0); }

// Fewest equal spaces of at most `limit`, at least 1 for a length above 0.
std::int64_t spacesOver(Nm length, Nm limit);
// The end of space i of n over `length`.
inline Nm spaceEnd(Nm length, std::int64_t i, std::int64_t n) {
  return static_cast<Nm>(toNearestEven(Int128(length) * i, n));
}

}  // namespace ribwright::fuzz
