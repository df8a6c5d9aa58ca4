// The sheets of one run as screws meet them: where each stands along the hanging direction, and its metal.
#pragma once

#include <map>
#include <utility>
#include <vector>

#include "core/fastening/seats.h"
#include "core/fastening/sheet_metal.h"
#include "core/layout/hanging_frame.h"

namespace ribwright {

// One sheet of the run; t as in hanging_frame.h.
struct StandingSheet {
  Length line, lead;               // t of its module lines
  Length from, to;                 // t of its metal, clipped to the wall
  bool corner = false;             // its cover reaches into a corner zone
  std::vector<SheetMetal> pieces;  // in hanging order
  std::vector<Length> lapRows;     // z of end-lap rows at which one of its pieces has its lower end, rising
};

class RunSheets {
 public:
  RunSheets(const WallLayout& layout, int run, const Profile& profile, Length endBelowRow, Length cornerZone);

  const SheetRun& run() const { return *run_; }
  const HangingFrame& frame() const { return frame_; }
  const Profile& profile() const { return *profile_; }
  int index() const { return index_; }
  std::size_t size() const { return sheets_.size(); }
  const StandingSheet& operator[](std::size_t module) const { return sheets_[module]; }
  // First and last of the modules whose metal may lie within `reach` of this one's, itself among them.
  std::pair<std::size_t, std::size_t> beside(std::size_t module, Length reach) const;
  // The first module whose metal ends beyond t; size() when there is none.
  std::size_t firstBeyond(Length t) const;
  // Each sheet begins and ends beyond the one before; hung ones may not.
  bool inOrder() const { return inOrder_; }
  const std::vector<Flat>& crowns() const { return crowns_; }
  // For a washer of this diameter.
  const std::vector<Flat>& seats(Length washer);

 private:
  const SheetRun* run_;
  const Profile* profile_;
  int index_;
  HangingFrame frame_;
  std::vector<StandingSheet> sheets_;
  std::vector<Flat> crowns_;
  std::map<Length, std::vector<Flat>> seats_;
  bool inOrder_ = true;
};

}  // namespace ribwright
