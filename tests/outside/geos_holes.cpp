// Every hole of the sample jobs against GEOS: it lies in the metal of each sheet that the hole goes through, in no
// other sheet, in no opening, and at least 1.5 d (AISI S100-16) from every edge of every sheet of its run. GEOS counts
// in floating point; a nanometre is allowed. Unit: nanometres.
#include <algorithm>
#include <filesystem>

#include "core/job/job_file.h"
#include "core/plan/plan.h"
#include "tests/outside/geos_shapes.h"

namespace ribwright {

using namespace outside;

namespace {

constexpr double kNanometre = 1;

Shape pointAt(double u, double z) {
  GEOSCoordSequence* place = GEOSCoordSeq_create_r(geos(), 1, 2);
  GEOSCoordSeq_setXY_r(geos(), place, 0, u, z);
  return kept(GEOSGeom_createPoint_r(geos(), place));
}

struct Metal {
  const Piece* piece;
  Shape shape, edges;
};

std::vector<Metal> metalOf(const WallLayout& layout) {
  std::vector<Metal> all;
  for (const Piece& piece : layout.pieces) {
    Shape shape = shapeOf(piece);
    Shape edges = kept(GEOSBoundary_r(geos(), shape.get()));
    all.push_back({&piece, std::move(shape), std::move(edges)});
  }
  return all;
}

bool holds(const Shape& shape, const Shape& point) { return GEOSContains_r(geos(), shape.get(), point.get()) == 1; }

double farOff(const Shape& shape, const Shape& point) {
  double apart = 0;
  REQUIRE(GEOSDistance_r(geos(), shape.get(), point.get(), &apart) == 1);
  return apart;
}

bool isNear(const Piece& piece, const Hole& hole, double by) {
  return at(hole.u) >= at(piece.left) - by && at(hole.u) <= at(piece.right) + by &&
         at(hole.z) >= at(piece.bottom) - by && at(hole.z) <= at(piece.top) + by;
}

bool goesThrough(const Hole& hole, std::size_t piece) {
  const auto end = hole.pieces.begin() + hole.sheets;
  return std::find(hole.pieces.begin(), end, static_cast<std::int32_t>(piece)) != end;
}

// What is wrong with one hole; empty: nothing.
std::string faultOf(const Hole& hole, const std::vector<Metal>& metal, const std::vector<Shape>& cuts, Length d) {
  const Shape point = pointAt(at(hole.u), at(hole.z));
  const double least = 1.5 * at(d) - kNanometre;
  for (std::size_t i = 0; i < metal.size(); ++i) {
    const Piece& piece = *metal[i].piece;
    if (goesThrough(hole, i) != (piece.run == hole.run && isNear(piece, hole, 0) && holds(metal[i].shape, point)))
      return goesThrough(hole, i) ? "off its sheet " + piece.mark : "not said to go through " + piece.mark;
    if (piece.run == hole.run && isNear(piece, hole, least) && farOff(metal[i].edges, point) < least)
      return "near an edge of " + piece.mark;
  }
  const bool inCut = std::any_of(cuts.begin(), cuts.end(), [&](const Shape& cut) { return holds(cut, point); });
  return inCut ? "in an opening" : "";
}

std::string shown(const Hole& hole, const std::string& fault) {
  return fault + ": kind " + std::to_string(static_cast<int>(hole.kind)) + " at u " +
         std::to_string(hole.u.nanometres()) + ", z " + std::to_string(hole.z.nanometres());
}

std::vector<std::string> faultsOf(const Job& job, const WallPlan& wall) {
  const std::vector<Metal> metal = metalOf(wall.layout);
  std::vector<Shape> cuts;
  for (const CutRegion& cut : wall.layout.cuts) cuts.push_back(shapeOf(cut));
  std::vector<std::string> faults;
  for (const Hole& hole : wall.holes.holes) {
    const Length d = job.screws.at(static_cast<std::size_t>(hole.screw)).diameter;
    const std::string fault = faultOf(hole, metal, cuts, d);
    if (!fault.empty()) faults.push_back(shown(hole, fault));
  }
  return faults;
}

}  // namespace

TEST_CASE("GEOS finds every hole of the sample jobs in metal, off every edge and out of every opening") {
  std::size_t holes = 0;
  for (const auto& entry : std::filesystem::directory_iterator(std::filesystem::path(RIBWRIGHT_ROOT) / "sample-jobs")) {
    if (entry.path().extension() != ".json") continue;
    const auto job = loadJob(entry.path().string());
    REQUIRE(job.ok());
    const Plan plan = ribwright::plan(job.value());
    for (const auto& wall : plan.walls) {
      INFO(entry.path().filename().string() << ", wall " << wall->layout.letter);
      CHECK(faultsOf(job.value(), *wall) == std::vector<std::string>{});
      holes += wall->holes.holes.size();
    }
  }
  CHECK(holes > 5000);
}

// 36 in of metal, 8 ft high, with a window 10 in to 20 in across and 3 ft to 5 ft up; 0.216 in screws: 1.5 d is 0.324
// in.
TEST_CASE("GEOS finds a hole in a window, off its sheet, near an edge and in a sheet that it does not name") {
  const auto in = [](std::int64_t whole, std::int64_t more = 0) { return Length::inches(whole, more); };
  const auto box = [](Length left, Length right, Length bottom, Length top) {
    return Ring{{left, bottom}, {left, top}, {right, top}, {right, bottom}};
  };
  Piece piece;
  piece.mark = "A1";
  piece.right = in(36);
  piece.top = in(96);
  piece.rings = {box(in(0), in(36), in(0), in(96)), box(in(10), in(20), in(36), in(60))};
  WallLayout layout;
  layout.pieces = {piece};
  const std::vector<Metal> metal = metalOf(layout);
  std::vector<Shape> cuts;
  cuts.push_back(polygonOf({{at(in(4)), 0}, {at(in(4)), at(in(8))}, {at(in(8)), at(in(8))}, {at(in(8)), 0}}));
  const auto fault = [&](Length u, Length z, std::int32_t through) {
    Hole hole;
    hole.u = u;
    hole.z = z;
    hole.pieces[0] = through;
    if (through < 0) hole.sheets = 0;
    return faultOf(hole, metal, cuts, Length::nanometres(5'486'400));
  };
  CHECK(fault(in(2), in(12), 0).empty());
  CHECK(fault(in(15), in(48), 0) == "off its sheet A1");
  CHECK(fault(in(40), in(48), 0) == "off its sheet A1");
  CHECK(fault(in(2), in(12), -1) == "not said to go through A1");
  CHECK(fault(in(0, 20), in(12), 0) == "near an edge of A1");
  CHECK(fault(in(0, 21), in(12), 0).empty());
  CHECK(fault(in(20, 20), in(48), 0) == "near an edge of A1");
  CHECK(fault(in(6), in(4), 0) == "in an opening");
}

}  // namespace ribwright
