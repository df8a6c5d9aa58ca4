// Tables of a wall: its edges, its sheets and how they hang.
#include <algorithm>

#include "core/job/job_tables.h"

namespace ribwright {
namespace {

constexpr std::string_view claddings[] = {"sheeted", "by others", "open"};
constexpr std::string_view hangWords[] = {"by rule", "left to right", "right to left"};
constexpr std::string_view rakeCuts[] = {"before hanging", "in place"};
constexpr std::string_view girtSettings[] = {"bypass", "flush"};
constexpr std::string_view baseForms[] = {"overhang", "notch", "base trim", "on wall"};
constexpr std::string_view startRules[] = {"flush",          "module line",  "equal rips", "seam on ridge",
                                           "sheet on ridge", "seam at jamb", "typed",      "best of search"};
constexpr std::string_view sides[] = {"left", "right"};
constexpr std::string_view lapPlaces[] = {"where needed", "at girts", "none"};
constexpr std::string_view lapOrders[] = {"column by column", "tier by tier"};

void topRules(Fields<Wall>& wall) {
  const std::vector<FacePoint>& top = wall.read().top;
  wall.eachAfter("top", top, "z", [](const FacePoint& before, const FacePoint& point) -> std::string_view {
    const Length level = point.u - before.u;
    const Length rise = std::max(point.z - before.z, before.z - point.z);
    const bool needle = level > Length() && rise > level * steepestLine;
    return needle ? "makes a slope steeper than 1000 in 1; for a step write the same u twice" : "";
  });
  wall.eachAfter("top", top, "u", [](const FacePoint& before, const FacePoint& point) -> std::string_view {
    return point.u >= before.u ? "" : "lies left of the point before; list the points from left to right";
  });
}

void jointRules(Fields<Wall>& wall) {
  wall.eachAfter("expansion_joints", wall.read().expansionJoints, "",
                 [](Length before, Length joint) -> std::string_view {
                   return joint > before ? "" : "does not lie right of the joint before; list them from left to right";
                 });
}

void wallRules(Fields<Wall>& wall) {
  const Wall& read = wall.read();
  topRules(wall);
  jointRules(wall);
  if (read.line && read.width) {
    wall.wrong("width", "stands beside line, and each gives the width; state one of them");
  }
  if (read.cladding == Cladding::Sheeted && read.bands.empty() && wall.sound("bands", "cladding")) {
    wall.wrong("bands", "is missing or empty; a sheeted wall has at least one band, [{}] if no profile is chosen yet");
  }
  wall.eachDiffers("girts", read.girts, &Girt::id, "id");
  wall.eachDiffers("openings", read.openings, &Opening::id, "id");
  wall.eachDiffers("penetrations", read.penetrations, &Penetration::id, "id");
}

void edges(Fields<Wall>& wall) {
  wall.member("line", &Wall::line, "a free wall's place in the plan");
  wall.member("width", &Wall::width, "of a free wall without a line in the plan; then hang is typed", positive);
  wall.member("top", &Wall::top, "points of the steel line from left to right; absent: from the roof");
  wall.member("eave_hold_down", &Wall::eaveHoldDown, "sheet ends this far below a level steel line", notNegative);
  wall.member("rake_hold_down", &Wall::rakeHoldDown, "sheet ends this far below a sloped steel line, upright",
              notNegative);
  wall.member("base", &Wall::base, "where the sheets end at the bottom");
  wall.member("slab_offset", &Wall::slabOffset, "slab edge against sheeting line, outward positive", anyLength);
  wall.member("reach_left", &Wall::reachLeft, "how far metal may reach around the left corner", notNegative);
  wall.member("reach_right", &Wall::reachRight, "how far metal may reach around the right corner", notNegative);
}

void sheets(Fields<Wall>& wall) {
  wall.member("expansion_joints", &Wall::expansionJoints, "places along the wall, from left to right", positive);
  wall.member("hang", &Wall::hang, "which way the sheets are hung", ChoiceWords(hangWords));
  wall.member("start", &Wall::start, "where the first module line stands");
  wall.member("bands", &Wall::bands, "horizontal zones with their own sheets, the lowest first");
  wall.member("rake_cut", &Wall::rakeCut, "when sheets under a rake are cut", ChoiceWords(rakeCuts));
  wall.member("shares", &Wall::shares, "its pieces may share blanks, where that goes wall by wall");
  wall.member("end_laps", &Wall::endLaps, "where sheets lap end over end");
}

void steel(Fields<Wall>& wall) {
  wall.member("girt_setting", &Wall::girtSetting, "girts pass the columns, or stand between them",
              ChoiceWords(girtSettings));
  wall.member("girts", &Wall::girts, "from the lowest up");
  wall.member("base_angle", &Wall::baseAngle, "support along the bottom");
  wall.member("eave_purlin", &Wall::eavePurlin, "support along a level top");
  wall.member("rake_angle", &Wall::rakeAngle, "support along a sloped top");
  wall.member("columns", &Wall::columns, "columns along the wall");
}

}  // namespace

void describe(Fields<Wall>& wall) {
  wall.required("letter", &Wall::letter, "letter of the wall, A for the outline's first edge", letterText);
  wall.member("name", &Wall::name, "what the wall is called", lineText);
  wall.member("cladding", &Wall::cladding, "what is hung on it", ChoiceWords(claddings));
  edges(wall);
  sheets(wall);
  steel(wall);
  wall.member("openings", &Wall::openings, "doors, windows, louvres");
  wall.member("penetrations", &Wall::penetrations, "pipes, beams, flues");
  wall.member("pattern", &Wall::pattern, "id of its hole pattern", lineText);
  wall.member("survey", &Wall::survey, "what was measured on the steel as built");
  wallRules(wall);
}

void describe(Fields<Base>& base) {
  base.member("form", &Base::form, "how sheets end at the bottom", ChoiceWords(baseForms));
  base.member("drop", &Base::drop, "overhang: sheet end below the top of concrete", notNegative);
  base.member("depth", &Base::depth, "notch: ledge below the top of concrete", notNegative);
  base.member("shelf", &Base::shelf, "base trim: height of its shelf; on wall: height of the wall's top", anyLength);
  base.member("gap", &Base::gap, "notch, base trim, on wall: sheet end above ledge, shelf or wall", notNegative);
  base.member("steps", &Base::steps, "from u on, the concrete stands at z");
  base.member("grade", &Base::grade, "height of finished grade along the wall", anyLength);
  base.eachAfter(
      "steps", base.read().steps, "u", [](const FacePoint& before, const FacePoint& step) -> std::string_view {
        return step.u > before.u ? "" : "does not lie right of the step before; list them from left to right";
      });
}

void describe(Fields<Start>& start) {
  start.member("rule", &Start::rule, "how the first module line is placed", ChoiceWords(startRules));
  start.member("offset", &Start::offset, "typed: first module line from the start corner", notNegative);
  start.member("opening", &Start::opening, "seam at jamb: id of the opening", lineText);
  start.member("side", &Start::side, "seam at jamb: which jamb", ChoiceWords(sides));
}

void describe(Fields<Band>& band) {
  band.member("from", &Band::from, "height of its lower limit; absent for the lowest", anyLength);
  band.member("gap", &Band::gap, "its sheets end this far above the limit", notNegative);
  band.member("profile", &Band::profile, "id of its sheet profile", lineText);
  band.member("colour", &Band::colour, "colour as ordered", lineText);
  band.member("directional_finish", &Band::directionalFinish, "metallic or textured: sheets are not turned");
  band.member("thickness", &Band::thickness, "base steel, if other than the profile's",
              LengthRange{Length(), Length::millimetres(25), true});
  band.member("start", &Band::start, "if other than the wall's");
  band.member("pattern", &Band::pattern, "id of its hole pattern, if other than the wall's", lineText);
  band.member("translucent", &Band::translucent, "modules, in hanging order, that are translucent sheets",
              WholeRange{1, 1'000'000});
  std::vector<int> sorted = band.read().translucent;
  std::sort(sorted.begin(), sorted.end());
  const auto twice = std::adjacent_find(sorted.begin(), sorted.end());
  if (twice != sorted.end() && band.sound("translucent")) {
    band.wrong("translucent", joined("names module ", *twice, " twice; name it once"));
  }
}

void describe(Fields<EndLaps>& laps) {
  laps.member("where", &EndLaps::where, "where sheets lap end over end", ChoiceWords(lapPlaces));
  laps.member("girts", &EndLaps::girts, "at girts: their ids", idText);
  laps.member("lap", &EndLaps::lap, "the lower sheet rises this far above the upper sheet's end", notNegative);
  laps.member("end_below_row", &EndLaps::endBelowRow, "the upper sheet ends this far below the hole row", notNegative);
  laps.member("order", &EndLaps::order, "how tiers are hung", ChoiceWords(lapOrders));
}

}  // namespace ribwright
