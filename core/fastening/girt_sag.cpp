#include "core/fastening/girt_sag.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "core/fastening/continuous_beam.h"
#include "core/fastening/girt_spans.h"
#include "core/job/by_id.h"

namespace ribwright {
namespace {

using Taken = GirtSag::Taken;

constexpr double gravity = 9.80665;  // m/s2, standard (CGPM 1901)

// What one length of girt weighs and what it bends against.
std::optional<BeamSpan> spanOf(const Member* member, double length, ModulusBy by) {
  if (!member || length <= 0) return std::nullopt;
  const auto properties = memberProperties(*member);
  if (!properties) return std::nullopt;
  const double newtonsPerMillimetre = properties->kilogramsPerMetre * gravity / 1000;
  return BeamSpan{length, newtonsPerMillimetre, modulusOf(*member, by) * inertiaUnderOwnWeight(*properties)};
}

struct LoadedGirt {
  std::vector<std::int32_t> girts;  // of each span
  std::vector<BeamSpan> spans;
};

std::optional<LoadedGirt> loaded(const Job& job, const Wall& wall, const ContinuousGirt& girt, ModulusBy by) {
  LoadedGirt all;
  for (std::size_t i = 0; i + 1 < girt.holds.size(); ++i) {
    const Length from = girt.holds[i].u, to = girt.holds[i + 1].u;
    const std::int32_t index = girt.girtAt(from + half(to - from));
    const Member* member = byId(job.members, wall.girts[static_cast<std::size_t>(index)].member);
    const auto span = spanOf(member, (to - from).inMillimetres(), by);
    if (!span) return std::nullopt;
    all.girts.push_back(index);
    all.spans.push_back(*span);
  }
  return all;
}

bool allEqual(const LoadedGirt& girt, const ContinuousGirt& stands) {
  for (std::size_t i = 1; i < girt.spans.size(); ++i) {
    const Length first = stands.holds[1].u - stands.holds[0].u;
    const bool equal = stands.holds[i + 1].u - stands.holds[i].u == first &&
                       girt.spans[i].stiffness == girt.spans[0].stiffness && girt.spans[i].load == girt.spans[0].load;
    if (!equal) return false;
  }
  return true;
}

Taken takenAs(std::size_t spans, bool equal, std::size_t bay) {
  if (spans == 1) return Taken::Simple;
  if (spans == 2 && equal) return Taken::TwoEqual;
  if (spans == 3 && equal && bay != 1) return Taken::ThreeEqual;
  return Taken::Continuous;
}

// In mm.
double sagBy(Taken taken, const BeamSpan& span, const BeamSag& solved) {
  const double l = span.length, whole = span.load * l * l * l * l / span.stiffness;
  switch (taken) {
    case Taken::Simple:
      return 5 * whole / 384;
    case Taken::TwoEqual:
      return whole / 185;
    case Taken::ThreeEqual:
      return .0069 * whole;
    case Taken::Continuous:
      return solved.down;
  }
  return solved.down;
}

Length toMicrometre(double millimetres, Length most) {
  const double capped = std::clamp(millimetres, 0.0, most.inMillimetres());
  return Length::nanometres(1000) * std::llround(capped * 1000);
}

std::int32_t bayBetween(const GirtHold& left, const GirtHold& right) {
  const bool columns = left.column > 0 && right.column == left.column + 1;
  return columns ? left.column : 0;
}

void append(std::vector<GirtSag>& sags, const ContinuousGirt& stands, const LoadedGirt& girt) {
  const std::vector<BeamSag> solved = beamSags(girt.spans);
  const bool equal = allEqual(girt, stands);
  for (std::size_t i = 0; i < girt.spans.size(); ++i) {
    const GirtHold &left = stands.holds[i], &right = stands.holds[i + 1];
    const Length span = right.u - left.u;
    GirtSag sag;
    sag.girt = girt.girts[i];
    sag.bay = bayBetween(left, right);
    sag.from = left.u;
    sag.to = right.u;
    sag.spans = static_cast<std::int32_t>(girt.spans.size());
    sag.taken = takenAs(girt.spans.size(), equal, i);
    sag.sag = toMicrometre(sagBy(sag.taken, girt.spans[i], solved[i]), span);
    const bool middle = sag.taken == Taken::Simple;
    sag.at = left.u + (middle ? half(span) : Length::millimetres(std::llround(solved[i].at)));
    sags.push_back(sag);
  }
}

}  // namespace

std::string_view formulaOf(GirtSag::Taken taken) {
  switch (taken) {
    case Taken::Simple:
      return "5wL^4/384EI";
    case Taken::TwoEqual:
      return "wL^4/185EI";
    case Taken::ThreeEqual:
      return ".0069wL^4/EI";
    case Taken::Continuous:
      return "";
  }
  return "";
}

std::string sagSource(GirtSag::Taken taken, ModulusBy by) {
  std::string source = taken == Taken::Continuous ? "three-moment equation" : "AISC Manual Table 3-23";
  return source.append(by == ModulusBy::American ? "; E of AISI S100, AISC 360" : "; E of EN 1993-1-1 3.2.6");
}

std::vector<GirtSag> girtSags(const Job& job, const Wall& wall, const WallLayout& layout, const WallSupports& supports,
                              ModulusBy by) {
  std::vector<GirtSag> sags;
  for (const ContinuousGirt& stands : continuousGirts(wall, layout, supports)) {
    const auto girt = loaded(job, wall, stands, by);
    if (girt) append(sags, stands, *girt);
  }
  return sags;
}

Length sagWorthProps(UnitSystem units) {
  return units == UnitSystem::Millimetres ? Length::millimetres(3) : Length::inches(0, 8);
}

}  // namespace ribwright
