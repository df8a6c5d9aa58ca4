// Clipping to clipping: the sheets of a building 1,000 x 400 ft with 60 openings, laid out here against GEOS cutting
// the same sheets by their own openings; and how layout time grows with the wall. Prints ratios; judges nothing.
#include <geos_c.h>

#include <chrono>
#include <cmath>
#include <cstdio>

#include "core/layout/lay_out_wall.h"
#include "core/plan/plan.h"
#include "tests/bench/large_building.h"

using namespace ribwright;
using namespace ribwright::bench;

namespace {

GEOSGeometry* polygon(GEOSContextHandle_t geos, const std::vector<FaceVertex>& ring) {
  GEOSCoordSequence* sequence = GEOSCoordSeq_create_r(geos, static_cast<unsigned>(ring.size()) + 1, 2);
  for (unsigned i = 0; i <= ring.size(); ++i) {
    const FaceVertex& vertex = ring[i % ring.size()];
    GEOSCoordSeq_setXY_r(geos, sequence, i, vertex.u.inMillimetres(), vertex.z.inMillimetres());
  }
  return GEOSGeom_createPolygon_r(geos, GEOSGeom_createLinearRing_r(geos, sequence), nullptr, 0);
}

using Outline = std::vector<FaceVertex>;

struct Strip {
  Outline metal;  // a rectangle from below the wall to above it
  std::vector<Outline> cuts;
};

struct FaceWithStrips {
  Outline face;
  std::vector<Strip> strips;
};

Outline box(Length left, Length right, Length low, Length high) {
  return {{left, low}, {left, high}, {right, high}, {right, low}};
}

// The same sheets and their own openings, as a general clipper is given them.
FaceWithStrips stripsOf(const WallLayout& wall) {
  FaceWithStrips all;
  const SheetRun& run = wall.runs.front();
  const Length left = run.faceLeft, right = run.faceRight;
  all.face.push_back({left, run.bottom.heightAt(left, Beside::Right)});
  all.face.push_back({left, run.top.heightAt(left, Beside::Right)});
  for (const FaceVertex& vertex : run.top.vertices()) {
    if (vertex.u > left && vertex.u < right) all.face.push_back(vertex);
  }
  all.face.push_back({right, run.top.heightAt(right, Beside::Left)});
  all.face.push_back({right, run.bottom.heightAt(right, Beside::Left)});
  const Length below = run.bottom.lowest(left, right) - Length::feet(1),
               above = run.top.highest(left, right) + Length::feet(1);
  for (const Module& module : run.modules) {
    Strip strip{box(module.metalLeft, module.metalRight, below, above), {}};
    for (const CutRegion& cut : wall.cuts) {
      if (cut.right <= module.metalLeft || cut.left >= module.metalRight) continue;
      strip.cuts.push_back(box(cut.left, cut.right, cut.reachesFloor ? below : cut.bottom, cut.top));
    }
    all.strips.push_back(std::move(strip));
  }
  return all;
}

// Strip and face, less each opening: the pieces of every sheet. Returns their area in mm2.
double clippedByGeos(GEOSContextHandle_t geos, const FaceWithStrips& wall) {
  double area = 0;
  GEOSGeometry* face = polygon(geos, wall.face);
  for (const Strip& strip : wall.strips) {
    GEOSGeometry* metal = polygon(geos, strip.metal);
    GEOSGeometry* left = GEOSIntersection_r(geos, metal, face);
    GEOSGeom_destroy_r(geos, metal);
    for (const Outline& cut : strip.cuts) {
      GEOSGeometry* hole = polygon(geos, cut);
      GEOSGeometry* rest = GEOSDifference_r(geos, left, hole);
      GEOSGeom_destroy_r(geos, left);
      GEOSGeom_destroy_r(geos, hole);
      left = rest;
    }
    double one = 0;
    GEOSArea_r(geos, left, &one);
    area += one;
    GEOSGeom_destroy_r(geos, left);
  }
  GEOSGeom_destroy_r(geos, face);
  return area;
}

void againstGeos() {
  const Job job = building(Length::feet(1000), 60);
  const Plan planned = plan(job);
  std::vector<FaceWithStrips> walls;
  std::size_t sheets = 0, cut = 0;
  double ourArea = 0, theirArea = 0;
  for (const auto& wall : planned.walls) {
    walls.push_back(stripsOf(wall->layout));
    for (const Strip& strip : walls.back().strips) cut += strip.cuts.empty() ? 0 : 1;
    sheets += walls.back().strips.size();
    ourArea += wall->layout.runs.front().pieces.inSquareMetres();
  }
  GEOSContextHandle_t geos = GEOS_init_r();
  for (const FaceWithStrips& wall : walls) theirArea += clippedByGeos(geos, wall) / 1e6;
  const double theirs = seconds(
      [&] {
        for (const FaceWithStrips& wall : walls) clippedByGeos(geos, wall);
      },
      21);
  const double ours = seconds(
      [&] {
        for (const Wall& wall : job.walls) (void)layOutWall(job, wall);
      },
      21);
  const double whole = seconds([&] { (void)plan(job); }, 21);
  std::printf("1,000 x 400 ft, 60 openings: %zu sheets, %zu of them cut\n", sheets, cut);
  std::printf("  area of pieces: GEOS %.3f m2, here %.3f m2 (less the legs cut away beside jambs)\n", theirArea,
              ourArea);
  std::printf("  GEOS: strip and face, less openings   %8.3f ms\n", theirs * 1e3);
  std::printf("  layout whole: cells, pieces, outlines %8.3f ms   ratio GEOS/layout %.1f\n", ours * 1e3, theirs / ours);
  std::printf("  plan whole: with order and findings   %8.3f ms   ratio GEOS/plan   %.1f\n", whole * 1e3,
              theirs / whole);
  GEOS_finish_r(geos);
}

void growth() {
  std::printf("growth of layout with the building (openings 6 per 100 ft)\n");
  double firstTime = 0, lastTime = 0;
  const int sizes[] = {500, 1000, 2000, 4000, 8000};
  for (const int feet : sizes) {
    const Job job = building(Length::feet(feet), feet * 6 / 100);
    lastTime = seconds(
        [&] {
          for (const Wall& wall : job.walls) (void)layOutWall(job, wall);
        },
        7);
    if (firstTime == 0) firstTime = lastTime;
    std::printf("  %5d ft  %8.3f ms\n", feet, lastTime * 1e3);
  }
  std::printf("  exponent %.3f\n", std::log(lastTime / firstTime) / std::log(sizes[4] / double(sizes[0])));
}

}  // namespace

int main() {
  againstGeos();
  growth();
}
