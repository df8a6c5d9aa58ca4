// Tables of the site, the plan and the roof.
#include <algorithm>

#include "core/job/job_tables.h"

namespace ribwright {
namespace {

constexpr std::string_view roofKinds[] = {"none", "level", "single slope", "gable"};
constexpr std::string_view roofEnds[] = {"A and C", "B and D"};

// Twice the area that the outline goes around, positive when counter-clockwise. 10^4 products of 10^13 by 10^13 fit 128
// bits.
Int128 twiceArea(const std::vector<PlanPoint>& outline) {
  Int128 sum = 0;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const PlanPoint& a = outline[i];
    const PlanPoint& b = outline[(i + 1) % outline.size()];
    sum += Int128(a.x.nanometres()) * b.y.nanometres() - Int128(b.x.nanometres()) * a.y.nanometres();
  }
  return sum;
}

void ridgeRule(Fields<Roof>& roof) {
  const Roof& read = roof.read();
  if (!read.ridgeAt || !read.ridgeHeight || !roof.sound("eave", "ridge_at", "ridge_height")) return;
  const Length rise = std::max(*read.ridgeHeight - read.eave, read.eave - *read.ridgeHeight);
  if (rise > *read.ridgeAt * steepestLine) {
    roof.wrong("ridge_at", "makes a roof steeper than 1000 in 1; put the ridge farther from the first side");
  }
}

}  // namespace

void describe(Fields<Site>& site) {
  site.member("true_north", &Site::trueNorth, "degrees clockwise from the plan's +y to true north", anyDirection);
  site.member("wind_from", &Site::windFrom, "prevailing wind blows from here: degrees clockwise from true north",
              anyDirection);
  site.member("sight_points", &Site::sightPoints, "from where the building is normally seen");
}

void describe(Fields<SightPoint>& point) {
  point.member("name", &SightPoint::name, "what stands there", lineText);
  point.required("at", &SightPoint::at, "place in the plan");
  point.member("weight", &SightPoint::weight, "how much it counts", WholeRange{1, 100});
}

void describe(Fields<Building>& building) {
  building.member("name", &Building::name, "what the building is called", lineText);
  building.member("outline", &Building::outline,
                  "corners of the sheeting line, counter-clockwise from the left corner of wall A");
  building.member("roof", &Building::roof, "heights of the steel line");

  const std::vector<PlanPoint>& outline = building.read().outline;
  if (outline.empty() || !building.sound("outline")) return;
  if (outline.size() < 3) {
    building.wrong("outline", joined("has ", outline.size(), " of the corners; it needs at least 3, or none"));
  } else if (twiceArea(outline) <= 0) {
    building.wrong("outline", "runs clockwise or goes around nothing; list the corners counter-clockwise");
  }
}

void describe(Fields<Roof>& roof) {
  roof.member("kind", &Roof::kind, "none: each wall states its own top", ChoiceWords(roofKinds));
  roof.member("ends", &Roof::ends, "which walls are the end walls", ChoiceWords(roofEnds));
  roof.member("eave", &Roof::eave, "height of the steel line at the first side (wall D, or A with ends B and D)",
              notNegative);
  roof.member("ridge_at", &Roof::ridgeAt, "level distance of the ridge from the first side; absent: the middle",
              positive);
  roof.member("ridge_height", &Roof::ridgeHeight, "of the steel line; or state slope", notNegative);
  roof.member("slope", &Roof::slope, "at the first side");
  roof.member("far_eave", &Roof::farEave, "height of the steel line at the other side; or state far_slope",
              notNegative);
  roof.member("far_slope", &Roof::farSlope, "at the other side");

  ridgeRule(roof);
  const Roof& read = roof.read();
  if (read.ridgeHeight && read.slope) {
    roof.wrong("ridge_height", "stands beside slope, and each gives the ridge; state one of them");
  }
  if (read.farEave && read.farSlope) {
    roof.wrong("far_eave", "stands beside far_slope, and each gives the other side; state one of them");
  }
}

void describe(Fields<PlanPoint>& point) {
  point.required("x", &PlanPoint::x, "to the east in the plan's grid", anyLength);
  point.required("y", &PlanPoint::y, "to the north in the plan's grid", anyLength);
}

void describe(Fields<PlanLine>& line) {
  line.required("from", &PlanLine::from, "left corner, seen from outside");
  line.required("to", &PlanLine::to, "right corner, seen from outside");
  if (line.sound("from", "to") && line.read().from == line.read().to) {
    line.wrong("to", "is the same point as from; a wall has a width");
  }
}

void describe(Fields<FacePoint>& point) {
  point.required("u", &FacePoint::u, "to the right from the wall's left corner", anyLength);
  point.required("z", &FacePoint::z, "up from the top of concrete", anyLength);
}

}  // namespace ribwright
