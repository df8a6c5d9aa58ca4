// What the checks of one wall look at, and the checks themselves: independent functions over a finished layout.
#pragma once

#include <vector>

#include "core/checks/finding.h"
#include "core/fastening/drill_batches.h"
#include "core/fastening/holes.h"
#include "core/job/job.h"
#include "core/job/section.h"
#include "core/layout/hanging_frame.h"
#include "core/layout/wall_layout.h"

namespace ribwright {

struct RunLook {
  const SheetRun* run = nullptr;
  const Profile* profile = nullptr;
  Section section;
  HangingFrame frame;
  bool lowest = false;  // of its section: no band below
};

struct WallLook {
  const Job& job;
  const Wall& wall;
  const WallLayout& layout;
  const WallHoles& holes;
  const std::vector<DrillBatch>& batches;
  std::vector<RunLook> runs;  // parallel to layout.runs

  WallLook(const Job& job, const Wall& wall, const WallLayout& layout, const WallHoles& holes,
           const std::vector<DrillBatch>& batches);
  const RunLook& runOf(const Piece& piece) const { return runs[static_cast<std::size_t>(piece.run)]; }
  Finding finding(Grade grade, std::string id, std::string mark, WordValues values, std::string source) const;
};

using WallCheck = void (*)(const WallLook&, std::vector<Finding>&);

// What is stated of the wall and cannot be followed, or sits oddly.
void checkStatements(const WallLook& look, std::vector<Finding>& findings);
void checkHungSheets(const WallLook& look, std::vector<Finding>& findings);
// Where openings stand, and how sheets meet their jambs.
void checkOpeningPlaces(const WallLook& look, std::vector<Finding>& findings);
void checkJambs(const WallLook& look, std::vector<Finding>& findings);
// The ends of runs: rips, corners.
void checkRunEnds(const WallLook& look, std::vector<Finding>& findings);
// Single pieces: too long, heavy, fragile.
void checkPieces(const WallLook& look, std::vector<Finding>& findings);
// Steel behind the sheets.
void checkSupports(const WallLook& look, std::vector<Finding>& findings);
// Lower ends: grade, slab edge.
void checkLowerEnds(const WallLook& look, std::vector<Finding>& findings);
// Which hole pattern the sheets go by, and what it leaves unsaid here.
void checkScrewPattern(const WallLook& look, std::vector<Finding>& findings);
// Places where a screw is asked for and cannot be: off the flats, near metal edges, off the steel, near another screw.
void checkScrewFlats(const WallLook& look, std::vector<Finding>& findings);
void checkScrewEdges(const WallLook& look, std::vector<Finding>& findings);
void checkScrewFaces(const WallLook& look, std::vector<Finding>& findings);
void checkScrewsApart(const WallLook& look, std::vector<Finding>& findings);
// Steel whose screw face is not stated, so that holes on it are not tested.
void checkFacesStated(const WallLook& look, std::vector<Finding>& findings);
// Limits on how far apart screws and rows may be; sheets without a screw.
void checkScrewSpacing(const WallLook& look, std::vector<Finding>& findings);
// Id of the finding that tells of the batches' own reason Chalk.
inline constexpr std::string_view chalkFinding = "chalk-off-sheets";
// What was measured: girts that the wall has not, girts far off the plans, readings that do not reach, the chalk line.
void checkSurvey(const WallLook& look, std::vector<Finding>& findings);
// Girts that sag without props.
void checkGirtSag(const WallLook& look, std::vector<Finding>& findings);
// The measured slab edge where sheets leave it open.
void checkSlabEdge(const WallLook& look, std::vector<Finding>& findings);
// A wall that leans along itself, or is not as wide as planned, by its diagonals.
void checkDiagonals(const WallLook& look, std::vector<Finding>& findings);
// Batches whose rows do not hold, and screw lines that are not straight.
void checkBatches(const WallLook& look, std::vector<Finding>& findings);
void checkStraightness(const WallLook& look, std::vector<Finding>& findings);
void checkLapHoles(const WallLook& look, std::vector<Finding>& findings);

}  // namespace ribwright
