// Rows of screws, to see where neighbours stand wider apart than the limits allow.
#pragma once

#include <map>
#include <vector>

#include "tests/fuzz/complaints.h"
#include "tests/fuzz/stated_places.h"

namespace ribwright::fuzz {

class ScrewRows {
 public:
  explicit ScrewRows(const ScrewedWall& wall) : wall_(wall) {}

  // A place that is taken, or merged into another.
  void add(const AskedPlace& place);
  // Along one lap, from end to end of its metal.
  void lapStarts(const ScrewedRun& run, const LapLine& lap, const Stand& stand);
  void inLap(Nm z) { lapHoles_.push_back(z); }
  void lapEnds();

  // Against the wall's own list: none missing, none too much.
  void check(Complaints& complaints);

 private:
  struct Wide {
    HoleKind kind = HoleKind::Girt, orKind = HoleKind::Girt;
    int row = -1, run = 0;
    Nm from = 0, to = 0, at = 0, orAt = 0, limit = 0;
    Nm slack = 0;
  };

  void lookAt(const std::vector<AskedPlace>& places);
  bool broken(const AskedPlace& a, const AskedPlace& b) const;
  Nm betweenAt(const SupportRow& row, const AskedPlace& a, const AskedPlace& b, Nm u) const;
  bool hasStretchAllAlong(const SupportRow& row, Nm from, Nm to) const;
  bool fits(const Wide& wide, const WideSpace& found) const;

  const ScrewedWall& wall_;
  std::map<std::pair<int, int>, std::vector<AskedPlace>> rows_;  // run, row
  Wide lap_;
  std::vector<Nm> lapHoles_;
  std::vector<Wide> wide_;
};

}  // namespace ribwright::fuzz
