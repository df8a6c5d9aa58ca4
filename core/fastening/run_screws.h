// Screws of one run: each place that a row asks for becomes a hole, merges into one that is taken, or is refused.
#pragma once

#include <vector>

#include "core/fastening/chosen_pattern.h"
#include "core/fastening/run_sheets.h"
#include "core/fastening/taken_holes.h"

namespace ribwright {

// A place where a screw is asked for, in hanging coordinates.
struct Place {
  HoleKind kind = HoleKind::Girt;
  std::int32_t row = -1, stretch = -1;
  std::size_t module = 0;  // whose sheet asks
  const ScrewLine* line = nullptr;
  Length t, z;
  bool onFace = true;  // the support's screw face takes it
};

enum class Came { NoMetal, Taken, Merged, Refused };

class RunScrews {
 public:
  RunScrews(const Job& job, const Wall& wall, const ChosenPattern& chosen, RunSheets sheets, WallHoles& holes);

  Came place(const Place& place);
  void refuse(Refusal::Why why, const Place& place, std::int32_t piece);
  // A kind of support is there, with metal over it, and the pattern states no screws for it.
  void noteUnstated(HoleKind kind);
  bool hasMetal(std::size_t module, Length t, Length z) const;

  const Job& job() const { return job_; }
  const ChosenPattern& chosen() const { return chosen_; }
  RunSheets& sheets() { return sheets_; }
  WallHoles& holes() { return holes_; }
  const Wall& wall() const { return wall_; }
  const TakenHoles& taken() const { return taken_; }
  const Screw& screwOf(const ScrewLine& line) const { return job_.screws[static_cast<std::size_t>(line.screw)]; }
  // From an end or edge of a screw face: 1.5 d and the drill's drift.
  Length margin(const ScrewLine& line) const { return fromEdge(screwOf(line)) + job_.settings.drift; }

 private:
  // The pieces that a place goes through, and whether it is too near an edge of any.
  struct Metal {
    std::vector<const SheetMetal*> through;
    bool nearEdge = false;
  };
  void lookAt(const Place& place, Metal& metal);
  void putOwnerFirst(std::size_t module, Metal& metal) const;
  bool isSeated(const Place& place, const Metal& metal);
  Hole holeAt(const Place& place, const Metal& metal) const;

  const Job& job_;
  const Wall& wall_;
  const ChosenPattern& chosen_;
  RunSheets sheets_;
  WallHoles& holes_;
  TakenHoles taken_;
  Metal metal_;                        // kept to spare its making at every place
  std::vector<std::int32_t> modules_;  // likewise
};

// Rows on base, eave, rake, girts, end laps, heads and sills.
void placeRows(RunScrews& screws, const WallLayout& layout);
// Rows up the jambs.
void placeJambs(RunScrews& screws, const WallLayout& layout);
// Along the side laps, no steel behind.
void placeStitches(RunScrews& screws, const WallLayout& layout);

}  // namespace ribwright
