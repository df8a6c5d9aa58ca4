// The pieces of the sample jobs against GEOS, a geometry library that knows nothing of sheets: https://libgeos.org
// Areas agree within 1e-9 of themselves: GEOS counts in floating point, and an outline leaves out vertices within a
// nanometre of its straight sides. Unit: nanometres.
#include <algorithm>
#include <cmath>
#include <filesystem>

#include "core/job/job_file.h"
#include "core/plan/plan.h"
#include "tests/outside/geos_shapes.h"

namespace ribwright {

using namespace outside;

namespace {

constexpr double kAgree = 1e-9;

double inSquareNanometres(Area area) { return static_cast<double>(area.halfSquareNanometres()) / 2; }

double areaOf(const Shape& shape) {
  double area = 0;
  REQUIRE(GEOSArea_r(geos(), shape.get(), &area) == 1);
  return area;
}

// The line from left to right of what is sheeted at least: its end segments go straight on.
std::vector<Corner> lengthened(const HeightLine& line, double left, double right) {
  std::vector<Corner> corners = cornersOf(line.vertices());
  const auto onward = [](const Corner& end, const Corner& inner, double u) {
    const double slope = end.u == inner.u ? 0 : (inner.z - end.z) / (inner.u - end.u);
    return Corner{u, end.z + slope * (u - end.u)};
  };
  const Corner first = corners.front(), last = corners.back();
  const Corner second = corners[std::min<std::size_t>(1, corners.size() - 1)];
  const Corner lastButOne = corners[corners.size() - std::min<std::size_t>(2, corners.size())];
  if (left < first.u) corners.insert(corners.begin(), onward(first, second, left));
  if (right > last.u) corners.push_back(onward(last, lastButOne, right));
  return corners;
}

Shape box(double left, double right, double bottom, double top) {
  return polygonOf({{left, bottom}, {left, top}, {right, top}, {right, bottom}});
}

Shape faceOf(const SheetRun& run) {
  const double left = at(run.faceLeft), right = at(run.faceRight);
  std::vector<Corner> corners = lengthened(run.bottom, left, right);
  const std::vector<Corner> above = lengthened(run.top, left, right);
  corners.insert(corners.end(), above.rbegin(), above.rend());
  const Shape whole = polygonOf(corners);
  const Shape window = box(left, right, run.floor ? at(*run.floor) : -kFar, run.ceiling ? at(*run.ceiling) : kFar);
  return kept(GEOSIntersection_r(geos(), whole.get(), window.get()));
}

Shape unionOf(std::vector<Shape> shapes) {
  std::vector<GEOSGeometry*> loose;
  for (Shape& shape : shapes) loose.push_back(shape.release());
  const Shape all = kept(
      GEOSGeom_createCollection_r(geos(), GEOS_GEOMETRYCOLLECTION, loose.data(), static_cast<unsigned>(loose.size())));
  return kept(GEOSUnaryUnion_r(geos(), all.get()));
}

void checkPiece(const Piece& piece, const Shape& cuts) {
  INFO(piece.mark);
  const Shape shape = shapeOf(piece);
  const double own = inSquareNanometres(piece.area);
  CHECK(GEOSisValid_r(geos(), shape.get()) == 1);
  CHECK(std::abs(areaOf(shape) - own) <= kAgree * own);
  const Shape inCut = kept(GEOSIntersection_r(geos(), shape.get(), cuts.get()));
  CHECK(areaOf(inCut) <= kAgree * own);
}

void checkRun(const WallLayout& layout, std::size_t index, const Shape& cuts) {
  const SheetRun& run = layout.runs[index];
  INFO("run " << index);
  std::vector<Shape> pieces;
  double sum = 0;
  for (const Piece& piece : layout.pieces) {
    if (piece.run != static_cast<int>(index)) continue;
    pieces.push_back(shapeOf(piece));
    sum += areaOf(pieces.back());
  }
  const Shape face = faceOf(run), covered = unionOf(std::move(pieces));
  const Shape net = kept(GEOSDifference_r(geos(), face.get(), cuts.get()));
  const double allowed = kAgree * areaOf(face);
  CHECK(std::abs(areaOf(face) - inSquareNanometres(run.face)) <= allowed);
  CHECK(std::abs(areaOf(net) - inSquareNanometres(run.net)) <= allowed);
  CHECK(std::abs(sum - areaOf(covered) - inSquareNanometres(run.laps)) <= allowed);
  const Shape apart = kept(GEOSSymDifference_r(geos(), net.get(), covered.get()));
  CHECK(std::abs(areaOf(apart) - inSquareNanometres(run.uncovered)) <= allowed);
}

void checkWall(const WallLayout& layout) {
  INFO("wall " << layout.letter);
  std::vector<Shape> regions;
  for (const CutRegion& cut : layout.cuts) regions.push_back(shapeOf(cut));
  const Shape cuts = unionOf(std::move(regions));
  for (const Piece& piece : layout.pieces) checkPiece(piece, cuts);
  for (std::size_t run = 0; run < layout.runs.size(); ++run) checkRun(layout, run, cuts);
}

}  // namespace

// The trade's rules: pieces = net face + laps, net face = face - union of cut regions
TEST_CASE("GEOS finds the areas of the sample jobs' pieces, and nothing uncovered or in an opening") {
  int jobs = 0;
  for (const auto& entry : std::filesystem::directory_iterator(std::filesystem::path(RIBWRIGHT_ROOT) / "sample-jobs")) {
    if (entry.path().extension() != ".json") continue;
    INFO(entry.path().filename().string());
    const auto job = loadJob(entry.path().string());
    REQUIRE(job.ok());
    const Plan plan = ribwright::plan(job.value());
    for (const WallLayout* layout : plan.layouts()) checkWall(*layout);
    ++jobs;
  }
  CHECK(jobs > 0);
}

}  // namespace ribwright
