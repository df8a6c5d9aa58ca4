// A Job is what a person stated, and nothing that follows from it. A plain value: compare it, copy it, keep it for
// undo.
#pragma once

#include <string>
#include <vector>

#include "core/job/building.h"
#include "core/job/ordering.h"
#include "core/job/profile.h"
#include "core/job/screws.h"
#include "core/job/survey.h"
#include "core/job/trim.h"
#include "core/units/length.h"
#include "core/units/length_text.h"

namespace ribwright {

// Numbers of the trade that ship as settings. "Common practice" means: no published source; plans and local code
// govern.
struct Settings {
  Length jambClearance = Length::inches(0, 16);  // common practice
  Length headClearance = Length::inches(0, 32);  // common practice
  Length sillClearance = Length();               // common practice
  Length narrowLeg = Length::inches(3);          // an uncovered leg narrower than this is a finding
  Length seamFromJamb = Length::inches(3);       // a seam nearer to a jamb than this is a finding
  Length cornerTrimLeg = Length::inches(3);      // a rip is narrow below this + 2 in
  Length gradeClearance = Length::inches(4);     // sheet ends at least this far above grade
  Length rakeAllowance = Length::inches(2);      // added to blanks trimmed in place
  Length fragileLegWidth = Length::inches(6);    // a leg narrower ...
  Length fragileLegLength = Length::feet(4);     // ... and longer than this is fragile
  int heaviestPieceKilograms = 50;               // two people, common practice
  Length drift = Length::inches(0, 8);           // of a drill, 1/8 in, common practice
  int stackLimit = 10;                           // sheets drilled in one stack, common practice
  Length straightness = Length::inches(0, 32);   // screw lines straight within 1/2 in (UFGS 07413)
  int mostOrderLengths = 0;            // K different lengths of a profile, thickness and colour; 0: any number
  Length kerf = Length::inches(0, 8);  // 1/8 in
  Length leastDrop = Length::feet(2);  // a rest at least this long is kept, a shorter one is waste
  Sharing sharing;
  Spares spares;
  Bundles bundles;
  bool byteOrderMark = false;  // in front of CSV tables
  CornerZones cornerZones;
  bool operator==(const Settings&) const = default;
};

struct SilencedFinding {
  std::string key, reason;
  bool operator==(const SilencedFinding&) const = default;
};

struct Job {
  std::string name, number, revision, date, note;
  UnitSystem units = UnitSystem::FeetInches;
  char decimalSign = '.';  // on screen and paper; the file and the tables always use '.'
  Site site;
  Building building;
  Settings settings;
  std::vector<Profile> profiles;
  std::vector<Member> members;
  std::vector<Screw> screws;
  std::vector<ScrewPattern> patterns;
  std::vector<Trim> trims;
  std::vector<TrimRule> trimRules;
  Prices prices;
  std::vector<Wall> walls;  // of the outline's edges by letter, then free walls
  SiteFacts facts;
  std::vector<SilencedFinding> silenced;
  bool operator==(const Job&) const = default;
};

}  // namespace ribwright
