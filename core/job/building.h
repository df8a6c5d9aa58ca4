// The building as a person states it: plan, roof, and each wall's own particulars.
//
// Plan coordinates: x east and y north in the plan's own grid; `trueNorth` turns it. Wall A is the front, from (0,0) to
// (L,0); B, C, D follow counter-clockwise, so that seen from outside left to right is A -> B -> C -> D. Corners are the
// sheeting line.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/job/opening.h"
#include "core/job/supports.h"
#include "core/job/survey.h"
#include "core/units/angle.h"
#include "core/units/length.h"

namespace ribwright {

struct PlanPoint {
  Length x, y;
  bool operator==(const PlanPoint&) const = default;
};

// u from the left corner, z from the top of concrete.
struct FacePoint {
  Length u, z;
  bool operator==(const FacePoint&) const = default;
};

struct SightPoint {
  std::string name;  // "road"
  PlanPoint at;
  int weight = 1;  // 1 .. 100
  bool operator==(const SightPoint&) const = default;
};

struct Site {
  Angle trueNorth;                // true north, clockwise from the plan's +y
  std::optional<Angle> windFrom;  // prevailing wind blows from here: clockwise from true north
  std::vector<SightPoint> sightPoints;
  bool operator==(const Site&) const = default;
};

// Heights of the steel line (outside top of eave purlin and rake angle) over a rectangular outline.
struct Roof {
  enum class Kind {
    None,         // each wall states its own top
    Level,        // eave height all round
    SingleSlope,  // `eave` at the first side, `farEave` (or a slope) at the other
    Gable,        // `eave` at the first side, ridge, `farEave` (or far slope) at the other
  };
  enum class Ends { AC, BD };  // which walls are the end walls (gables or slopes)
  // With ends AC the first side is wall D (x = 0) and the other wall B; with ends BD it is wall A (y = 0) and the other
  // wall C.
  Kind kind = Kind::None;
  Ends ends = Ends::BD;
  Length eave;
  std::optional<Length> ridgeAt;      // level distance of the ridge from the first side; absent: the middle
  std::optional<Length> ridgeHeight;  // of the steel line; absent: from `slope`
  std::optional<Slope> slope;     // at the first side; one of ridgeHeight and slope (single slope: farEave or slope)
  std::optional<Length> farEave;  // absent: from farSlope; both absent: gable: the same slope as the first side
  std::optional<Slope> farSlope;
  bool operator==(const Roof&) const = default;
};

// Where the sheets of a wall end at the bottom.
struct Base {
  enum class Form { Overhang, Notch, BaseTrim, OnWall };
  Form form = Form::Overhang;
  Length drop = Length::inches(1, 48);   // Overhang: below concrete (1-3/4 in, common practice)
  Length depth = Length::inches(1, 32);  // Notch: of the ledge below concrete
  Length shelf;  // BaseTrim: z of its shelf from concrete; OnWall: z of the wall's or wainscot's top
  Length gap = Length::inches(0, 16);  // Notch, BaseTrim, OnWall: sheet end above ledge, shelf or wall (1/4 in)
  // Steps: from u on, the concrete stands at z; level runs, u rising. Empty: one run at z = 0.
  std::vector<FacePoint> steps;
  std::optional<Length> grade;  // z of finished grade along the wall; absent: not stated
  bool operator==(const Base&) const = default;
};

// Where the first module line of a run stands.
struct Start {
  enum class Rule {
    Flush,       // factory edge of the first sheet on the corner
    ModuleLine,  // module line on the corner
    EqualRips,   // as many full sheets as leave each end a rip of at least half a cover
    SeamOnRidge,
    SheetOnRidge,
    SeamAtJamb,  // of `opening`, `side`
    Typed,       // first module line `offset` from the start corner
    BestOfSearch,
  };
  enum class Side { Left, Right };
  Rule rule = Rule::Flush;
  Length offset;
  std::string opening;
  Side side = Side::Left;
  bool operator==(const Start&) const = default;
};

// A horizontal zone of a wall with its own sheets; the lowest comes first. One band is the ordinary case.
struct Band {
  std::optional<Length> from;  // z of its lower limit; absent for the lowest
  Length gap;                  // its sheets end this far above the limit, on the transition trim
  std::string profile;         // a Profile's id
  std::string colour;
  bool directionalFinish = false;   // metallic, textured: no turning within one plane
  std::optional<Length> thickness;  // other than the profile's
  std::optional<Start> start;       // other than the wall's
  std::vector<int> translucent;     // modules of the run (1, 2 ... in hanging order) that are translucent sheets
  std::string pattern{};            // a ScrewPattern's id; empty: the wall's
  bool operator==(const Band&) const = default;
};

struct EndLaps {
  enum class Where { WhereNeeded, AtGirts, None };
  enum class Order { ColumnByColumn, TierByTier };
  Where where = Where::WhereNeeded;
  std::vector<std::string> girts;  // with AtGirts
  Length lap = Length::inches(4);  // the lower sheet rises this far above the upper sheet's end (common practice)
  Length endBelowRow = Length::inches(2);  // UFGS 07413: screws about 2 in from the end of the overlapping sheet
  Order order = Order::ColumnByColumn;
  bool operator==(const EndLaps&) const = default;
};

enum class Hang { ByRule, LeftToRight, RightToLeft };
enum class RakeCut { BeforeHanging, InPlace };
enum class Cladding { Sheeted, ByOthers, Open };

struct PlanLine {
  PlanPoint from, to;  // seen from outside: left corner, right corner
  bool operator==(const PlanLine&) const = default;
};

struct Wall {
  std::string letter;  // "A" ... ; of a building's outline, or free
  std::string name;    // "front"
  Cladding cladding = Cladding::Sheeted;
  std::optional<PlanLine> line;                 // a free wall's place in the plan
  std::optional<Length> width;                  // a free wall without a plan line: then `hang` is typed
  std::vector<FacePoint> top;                   // steel line; empty: from the roof
  Length eaveHoldDown = Length::inches(0, 32);  // level top (common practice)
  Length rakeHoldDown = Length::inches(0, 32);  // sloped top (common practice), measured upright
  Base base;
  Length slabOffset;                    // slab edge against sheeting line, outward positive
  Length reachLeft, reachRight;         // how far metal may reach around each corner, under the corner trim
  std::vector<Length> expansionJoints;  // u
  Hang hang = Hang::ByRule;
  Start start;
  std::vector<Band> bands;  // never empty on a sheeted wall
  RakeCut rakeCut = RakeCut::BeforeHanging;
  bool shares = false;  // its pieces may share blanks, where that goes wall by wall
  EndLaps endLaps;
  GirtSetting girtSetting = GirtSetting::Bypass;
  std::vector<Girt> girts;
  EdgeSupport baseAngle, eavePurlin, rakeAngle;
  ColumnGrid columns;
  std::vector<Opening> openings;
  std::vector<Penetration> penetrations;
  std::string pattern;  // a ScrewPattern's id; may be empty
  WallSurvey survey;
  bool operator==(const Wall&) const = default;
};

struct Building {
  std::string name;
  std::vector<PlanPoint>
      outline;  // counter-clockwise; empty: only free walls. Four points of a rectangle may carry a roof
  Roof roof;
  bool operator==(const Building&) const = default;
};

}  // namespace ribwright
