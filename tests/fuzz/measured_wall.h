// Where every hole that is drilled in a stack may be, by what was measured: the checker's own reckoning from the
// statements of the job, the sheets' outlines and the list of holes. Nothing of core/fastening is called.
//
// Units: nanometres. Heights are z, ordinates s from a sheet's lowest end.
#pragma once

#include <optional>
#include <vector>

#include "core/fastening/drill_batches.h"
#include "core/job/job.h"
#include "tests/fuzz/screwed_wall.h"

namespace ribwright::fuzz {

// What of a sheet's hole must be equal to be one row with another sheet's.
struct DrilledRow {
  HoleKind kind = HoleKind::Girt;
  int screw = 0;
  Nm height = 0;  // z by the plans; base: 0
  int level = 0;  // base: which of the sheet's base rows, from the lowest
  auto operator<=>(const DrilledRow&) const = default;
};

// One hole of one sheet that is drilled before the sheet hangs.
struct DrilledHole {
  DrilledRow row;
  int hole = -1;         // index into WallHoles::holes
  Nm offset = 0;         // from the sheet's starting metal edge
  Nm planned = 0;        // s
  Nm low = 0, high = 0;  // s at which it holds; mean nothing where the steel is upright
  bool upright = false;  // on steel that runs upright past it: any s
  bool known = true;     // the girt's cross-section is stated
  bool measured = true;  // its steel was measured there
};

// The highest and the lowest that a measured edge may stand above the plans.
struct MeasuredShift {
  Nm least = 0, most = 0;
};

// What some holes of one row allow together.
struct Room {
  std::optional<Nm> low, high;  // absent: upright steel alone
  void keep(const DrilledHole& hole);
  // A mark of the tape lies in it.
  bool hasMark(Nm step) const;
};

class MeasuredWall {
 public:
  MeasuredWall(const Job& job, const Wall& wall, const WallLayout& layout, const WallHoles& holes);

  // Of each piece, by row and offset.
  const std::vector<std::vector<DrilledHole>>& sheets() const { return sheets_; }
  const std::vector<DrilledHole>& sheet(int piece) const { return sheets_[static_cast<std::size_t>(piece)]; }
  const Piece& piece(int index) const { return layout_.pieces[static_cast<std::size_t>(index)]; }
  const Module& moduleOf(int piece) const;
  // Pieces that follow one another in a stack, in hanging order; hung ones and those without such holes left out.
  std::vector<std::vector<int>> lanes() const;

  // 1/16 in or 1 mm.
  Nm tapeStep() const;
  // 1.5 d + drift, square to the row.
  Nm margin(int screw) const;
  Nm fromEdge(int screw) const;
  Nm chalkAt(Nm u) const;

  // z of the sheet's lowest end as it will hang: at the chalk line where sheets overhang to it on one level.
  Nm endAsHung(int piece) const;

  // Every row of the sheets has a mark that all of them allow.
  bool rowsHold(const std::vector<int>& pieces) const;
  // Bottoms and starting edges flush: each hole of one is a hole of the other, or misses its metal.
  bool agree(int a, int b) const;
  bool mayShareAStack(const std::vector<int>& pieces) const;
  // The drill through a hole of that row, at its planned ordinate, bites into the sheet.
  bool bites(const DrilledRow& row, Nm offset, Nm planned, int piece) const;

  // Nothing where it was not measured.
  std::optional<MeasuredShift> shiftOfGirt(int girt, Nm u) const;

  const Job& job() const { return job_; }
  const Wall& wall() const { return wall_; }
  const WallLayout& layout() const { return layout_; }
  const WallHoles& holes() const { return holes_; }
  const StatedFace& face() const { return face_; }

 private:
  struct Line {
    Nm from = 0, to = 0;
    StatedLine least, most;
  };
  struct Steel {
    Nm low = 0, high = 0;  // z
    bool upright = false, known = true, measured = false;
  };

  template <class Planned>
  std::optional<Line> lineOf(const std::vector<GirtReading>& readings, const Planned& planned) const;
  static std::optional<MeasuredShift> shiftAt(const std::optional<Line>& line, Nm u);
  Steel steelAt(const Hole& hole) const;
  Steel girtAt(const Stretch& stretch, Nm u) const;
  Nm marginOf(const Hole& hole) const;
  bool drillsBoth(int run) const;
  void addHole(int index);
  void numberBaseRows();
  Nm startOf(int piece) const;
  bool covers(int a, int b) const;

  const Job& job_;
  const Wall& wall_;
  const WallLayout& layout_;
  const WallHoles& holes_;
  StatedFace face_;
  std::vector<std::optional<Line>> girts_;
  std::optional<Line> eave_, slab_;
  std::vector<std::vector<DrilledHole>> sheets_;
};

}  // namespace ribwright::fuzz
