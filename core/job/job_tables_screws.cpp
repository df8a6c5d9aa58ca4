// Tables of screws and hole patterns.
#include "core/job/job_tables.h"

namespace ribwright {
namespace {

constexpr std::string_view supportKinds[] = {"base", "girt", "eave", "rake", "jamb", "head", "sill", "end lap"};
constexpr std::string_view zones[] = {"field", "corner"};
constexpr std::string_view limitSets[] = {"plan", "UFGS 07413", "NZ code of practice", "BRANZ Build 146"};
constexpr std::string_view lapHoles[] = {"upper sheet only", "both sheets"};

}  // namespace

void describe(Fields<Screw>& screw) {
  screw.required("id", &Screw::id, "its dimensions, as 12-24x1.25", idText);
  screw.required("diameter", &Screw::diameter, "nominal, over the thread", positive);
  screw.member("washer", &Screw::washer, "diameter of washer or head", notNegative);
  screw.required("length", &Screw::length, "under the head", positive);
  screw.member("pilot", &Screw::pilot, "pilot hole in the sheet; 0: none", notNegative);
}

void describe(Fields<ScrewPattern>& pattern) {
  pattern.required("id", &ScrewPattern::id, "what the pattern is called", idText);
  pattern.member("profile", &ScrewPattern::profile, "id of the profile that it is for", lineText);
  pattern.member("example", &ScrewPattern::example, "no plan stands behind it yet");
  pattern.member("rows", &ScrewPattern::rows, "per kind of support and zone");
  pattern.member("stitch_spacing", &ScrewPattern::stitchSpacing, "along the side laps; absent: none", positive);
  pattern.member("stitch_screw", &ScrewPattern::stitchScrew, "id of the stitch screw", lineText);
  pattern.member("lap_holes", &ScrewPattern::lapHoles, "which sheets get the holes in a lap", ChoiceWords(lapHoles));
  pattern.member("limits", &ScrewPattern::limits, "whose limits on spacing hold", ChoiceWords(limitSets));
  pattern.member("spacing_approval", &ScrewPattern::spacingApproval,
                 "who approved wider spacing than the limits, and where it is written", lineText);
  pattern.member("spacing_limit", &ScrewPattern::spacingLimit, "between screws in a row, beside the limits; 0: none",
                 notNegative);
  pattern.member("jamb_spacing_limit", &ScrewPattern::jambSpacingLimit, "between screws along a jamb", positive);
  pattern.member("confirmation", &ScrewPattern::confirmation, "who held the numbers against which plan sheet");
}

void describe(Fields<PatternRow>& row) {
  row.member("support", &PatternRow::support, "kind of support", ChoiceWords(supportKinds));
  row.member("zone", &PatternRow::zone, "part of the wall", ChoiceWords(zones));
  row.member("offsets", &PatternRow::offsets, "from the module line toward the leading edge, less than the cover",
             notNegative);
  row.member("screw", &PatternRow::screw, "id of the screw", lineText);
  row.member("drilled_in_place", &PatternRow::drilledInPlace,
             "drilled where it hangs; absent: rake, jamb, head, sill and end-lap rows are");
}

void describe(Fields<Confirmation>& confirmation) {
  confirmation.required("plan_sheet", &Confirmation::planSheet, "which sheet of the plans", lineText);
  confirmation.required("by", &Confirmation::by, "who confirmed", lineText);
  confirmation.required("date", &Confirmation::date, "when", lineText);
  confirmation.required("numbers", &Confirmation::numbers, "digest of the pattern's numbers at that time", lineText);
}

}  // namespace ribwright
