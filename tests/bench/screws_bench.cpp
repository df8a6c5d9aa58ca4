// Where every screw of a building 1,000 x 400 ft with 60 openings goes: layout, screws and findings together, against
// GEOS asking of each hole whether its sheet's outline contains it and how far its edge is; and how the time grows with
// the building. Prints ratios; judges nothing.
#include <geos_c.h>

#include <cmath>
#include <cstdio>
#include <vector>

#include "core/layout/lay_out_wall.h"
#include "core/plan/plan.h"
#include "tests/bench/screwed_building.h"

using namespace ribwright;
using namespace ribwright::bench;

namespace {

// Every hole on every sheet it goes through: contained, and how far from the outline.
class GeosHoles {
 public:
  explicit GeosHoles(const Plan& plan) : geos_(GEOS_init_r()) {
    for (const auto& wall : plan.walls) {
      std::vector<Sheet> sheets;
      for (const Piece& piece : wall->layout.pieces) {
        Sheet sheet;
        sheet.outline = polygon(piece.rings);
        sheet.edge = GEOSBoundary_r(geos_, sheet.outline);
        sheet.prepared = GEOSPrepare_r(geos_, sheet.outline);
        sheets.push_back(sheet);
      }
      for (const Hole& hole : wall->holes.holes) {
        for (int i = 0; i < hole.sheets; ++i) {
          asked_.push_back({sheets[static_cast<std::size_t>(hole.pieces[static_cast<std::size_t>(i)])],
                            point(hole.u.inMillimetres(), hole.z.inMillimetres())});
        }
      }
    }
  }

  std::size_t ask() const {
    std::size_t inside = 0;
    for (const Asked& one : asked_) {
      double away = 0;
      GEOSDistance_r(geos_, one.sheet.edge, one.point, &away);
      if (GEOSPreparedContains_r(geos_, one.sheet.prepared, one.point) == 1 && away > 5) ++inside;
    }
    return inside;
  }
  std::size_t size() const { return asked_.size(); }

 private:
  struct Sheet {
    GEOSGeometry *outline = nullptr, *edge = nullptr;
    const GEOSPreparedGeometry* prepared = nullptr;
  };
  struct Asked {
    Sheet sheet;
    GEOSGeometry* point;
  };

  GEOSGeometry* point(double x, double y) const { return GEOSGeom_createPointFromXY_r(geos_, x, y); }
  GEOSGeometry* ringOf(const Ring& ring) const {
    GEOSCoordSequence* sequence = GEOSCoordSeq_create_r(geos_, static_cast<unsigned>(ring.size()) + 1, 2);
    for (unsigned i = 0; i <= ring.size(); ++i) {
      const FaceVertex& vertex = ring[i % ring.size()];
      GEOSCoordSeq_setXY_r(geos_, sequence, i, vertex.u.inMillimetres(), vertex.z.inMillimetres());
    }
    return GEOSGeom_createLinearRing_r(geos_, sequence);
  }
  GEOSGeometry* polygon(const std::vector<Ring>& rings) const {
    std::vector<GEOSGeometry*> inner;
    for (std::size_t i = 1; i < rings.size(); ++i) inner.push_back(ringOf(rings[i]));
    return GEOSGeom_createPolygon_r(geos_, ringOf(rings.front()), inner.data(), static_cast<unsigned>(inner.size()));
  }

  GEOSContextHandle_t geos_;
  std::vector<Asked> asked_;
};

std::size_t holesIn(const Plan& plan) {
  std::size_t count = 0;
  for (const auto& wall : plan.walls) count += wall->holes.holes.size();
  return count;
}

void againstGeos() {
  const Job job = screwed(Length::feet(1000), 60);
  const Plan planned = plan(job);
  const std::size_t holes = holesIn(planned);
  std::size_t refused = 0;
  for (const auto& wall : planned.walls) refused += wall->holes.refusals.size();
  const GeosHoles geos(planned);
  const std::size_t inside = geos.ask();
  const double theirs = seconds([&] { (void)geos.ask(); }, 5);
  const double whole = seconds([&] { (void)plan(job); }, 21);
  const double screws = seconds(
      [&] {
        for (std::size_t i = 0; i < job.walls.size(); ++i) (void)holesOf(job, job.walls[i], planned.walls[i]->layout);
      },
      21);
  std::printf("1,000 x 400 ft, 60 openings: %zu screws, %zu places refused\n", holes, refused);
  std::printf("  GEOS: contained and distance, %zu of %zu asked in  %8.3f ms\n", inside, geos.size(), theirs * 1e3);
  std::printf("  screws                                %8.3f ms   ratio GEOS/screws %.1f, %.0f holes a second\n",
              screws * 1e3, theirs / screws, static_cast<double>(holes) / screws);
  std::printf("  layout, screws, findings, order       %8.3f ms   ratio GEOS/plan   %.1f, %.0f holes a second\n",
              whole * 1e3, theirs / whole, static_cast<double>(holes) / whole);
}

void growth() {
  std::printf("growth of the whole plan with the building (openings 6 per 100 ft)\n");
  double firstTime = 0, lastTime = 0;
  const int sizes[] = {500, 1000, 2000, 4000, 8000};
  for (const int feet : sizes) {
    const Job job = screwed(Length::feet(feet), feet * 6 / 100);
    std::size_t holes = 0;
    lastTime = seconds([&] { holes = holesIn(plan(job)); }, 7);
    if (firstTime == 0) firstTime = lastTime;
    std::printf("  %5d ft  %8.3f ms  %7zu holes\n", feet, lastTime * 1e3, holes);
  }
  std::printf("  exponent %.3f\n", std::log(lastTime / firstTime) / std::log(sizes[4] / double(sizes[0])));
}

}  // namespace

int main() {
  againstGeos();
  growth();
}
