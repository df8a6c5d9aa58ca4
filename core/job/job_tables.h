// The tables of all types that stand in a job file (see job_file_form.h), and the limits they share.
#pragma once

#include <string_view>

#include "core/job/job.h"
#include "core/job/job_file_form.h"

namespace ribwright {

// No building is longer; sums and multiples of such lengths stay far inside 64 bits.
inline constexpr Length farthest = Length::millimetres(10'000'000);
inline constexpr LengthRange anyLength{-farthest, farthest, false};
inline constexpr LengthRange notNegative{Length(), farthest, false};
inline constexpr LengthRange positive{Length(), farthest, true};
inline constexpr AngleRange anyDirection{Angle::degrees(-360), Angle::degrees(360)};

// A line of steel or a roof steeper than this is a slip of the pen (a step is upright: two points at one u); it also
// keeps every height that follows from it far inside 64 bits.
inline constexpr int steepestLine = 1000;

inline constexpr TextRule lineText{0, 200, TextRule::Holds::Line};
inline constexpr TextRule noteText{0, 10'000, TextRule::Holds::Lines};
inline constexpr TextRule idText{1, 100, TextRule::Holds::Id};
inline constexpr TextRule keyText{1, 300, TextRule::Holds::Id};
inline constexpr TextRule letterText{1, 3, TextRule::Holds::Letters};  // marks are letter + number: no digits in it

// What a type is called in the schema.
constexpr std::string_view typeName(const Anchor&) { return "anchor"; }
constexpr std::string_view typeName(const Band&) { return "band"; }
constexpr std::string_view typeName(const Base&) { return "base"; }
constexpr std::string_view typeName(const Building&) { return "building"; }
constexpr std::string_view typeName(const Bundles&) { return "bundles"; }
constexpr std::string_view typeName(const Clearances&) { return "clearances"; }
constexpr std::string_view typeName(const ColumnGrid&) { return "columns"; }
constexpr std::string_view typeName(const Confirmation&) { return "confirmation"; }
constexpr std::string_view typeName(const CornerZones&) { return "corner_zones"; }
constexpr std::string_view typeName(const EdgeSupport&) { return "edge_support"; }
constexpr std::string_view typeName(const EndLaps&) { return "end_laps"; }
constexpr std::string_view typeName(const FacePoint&) { return "face_point"; }
constexpr std::string_view typeName(const FrameSteel&) { return "frame_steel"; }
constexpr std::string_view typeName(const Girt&) { return "girt"; }
constexpr std::string_view typeName(const GirtReading&) { return "girt_reading"; }
constexpr std::string_view typeName(const GirtSurvey&) { return "girt_survey"; }
constexpr std::string_view typeName(const HungSheet&) { return "hung_sheet"; }
constexpr std::string_view typeName(const Job&) { return "job"; }
constexpr std::string_view typeName(const Member&) { return "member"; }
constexpr std::string_view typeName(const Opening&) { return "opening"; }
constexpr std::string_view typeName(const PatternRow&) { return "pattern_row"; }
constexpr std::string_view typeName(const Penetration&) { return "penetration"; }
constexpr std::string_view typeName(const PlacedOrder&) { return "placed_order"; }
constexpr std::string_view typeName(const PlanLine&) { return "plan_line"; }
constexpr std::string_view typeName(const PlanPoint&) { return "plan_point"; }
constexpr std::string_view typeName(const Price&) { return "price"; }
constexpr std::string_view typeName(const Prices&) { return "prices"; }
constexpr std::string_view typeName(const Profile&) { return "profile"; }
constexpr std::string_view typeName(const Roof&) { return "roof"; }
constexpr std::string_view typeName(const Screw&) { return "screw"; }
constexpr std::string_view typeName(const ScrewPattern&) { return "pattern"; }
constexpr std::string_view typeName(const SectionPoint&) { return "section_point"; }
constexpr std::string_view typeName(const Settings&) { return "settings"; }
constexpr std::string_view typeName(const Sharing&) { return "sharing"; }
constexpr std::string_view typeName(const SheetLengths&) { return "sheet_lengths"; }
constexpr std::string_view typeName(const SheetLot&) { return "sheet_lot"; }
constexpr std::string_view typeName(const SightPoint&) { return "sight_point"; }
constexpr std::string_view typeName(const SilencedFinding&) { return "silenced_finding"; }
constexpr std::string_view typeName(const Site&) { return "site"; }
constexpr std::string_view typeName(const SiteFacts&) { return "facts"; }
constexpr std::string_view typeName(const SlabReading&) { return "slab_reading"; }
constexpr std::string_view typeName(const Spares&) { return "spares"; }
constexpr std::string_view typeName(const Start&) { return "start"; }
constexpr std::string_view typeName(const Trim&) { return "trim"; }
constexpr std::string_view typeName(const TrimRule&) { return "trim_rule"; }
constexpr std::string_view typeName(const Wall&) { return "wall"; }
constexpr std::string_view typeName(const WallSurvey&) { return "survey"; }

// job_tables_job.cpp
void describe(Fields<Job>& job);
void describe(Fields<Settings>& settings);
void describe(Fields<CornerZones>& zones);
void describe(Fields<SilencedFinding>& silenced);
// job_tables_references.cpp: what a job names, it must hold.
void references(Fields<Job>& job);
// job_tables_building.cpp
void describe(Fields<Site>& site);
void describe(Fields<SightPoint>& point);
void describe(Fields<Building>& building);
void describe(Fields<Roof>& roof);
void describe(Fields<PlanPoint>& point);
void describe(Fields<PlanLine>& line);
void describe(Fields<FacePoint>& point);
// job_tables_wall.cpp
void describe(Fields<Wall>& wall);
void describe(Fields<Base>& base);
void describe(Fields<Start>& start);
void describe(Fields<Band>& band);
void describe(Fields<EndLaps>& laps);
// job_tables_opening.cpp
void describe(Fields<Anchor>& anchor);
void describe(Fields<Clearances>& clearances);
void describe(Fields<FrameSteel>& frame);
void describe(Fields<Opening>& opening);
void describe(Fields<Penetration>& penetration);
// job_tables_supports.cpp
void describe(Fields<Member>& member);
void describe(Fields<Girt>& girt);
void describe(Fields<EdgeSupport>& support);
void describe(Fields<ColumnGrid>& columns);
// job_tables_profile.cpp
void describe(Fields<Profile>& profile);
void describe(Fields<SectionPoint>& point);
void describe(Fields<SheetLengths>& lengths);
// job_tables_ordering.cpp
void describe(Fields<Sharing>& sharing);
void describe(Fields<Spares>& spares);
void describe(Fields<Bundles>& bundles);
void describe(Fields<Trim>& trim);
void describe(Fields<TrimRule>& rule);
void describe(Fields<Prices>& prices);
void describe(Fields<Price>& price);
// job_tables_screws.cpp
void describe(Fields<Screw>& screw);
void describe(Fields<ScrewPattern>& pattern);
void describe(Fields<PatternRow>& row);
void describe(Fields<Confirmation>& confirmation);
// job_tables_survey.cpp
void describe(Fields<WallSurvey>& survey);
void describe(Fields<GirtSurvey>& girt);
void describe(Fields<GirtReading>& reading);
void describe(Fields<SlabReading>& reading);
void describe(Fields<SiteFacts>& facts);
void describe(Fields<HungSheet>& sheet);
void describe(Fields<PlacedOrder>& order);
void describe(Fields<SheetLot>& lot);

}  // namespace ribwright
