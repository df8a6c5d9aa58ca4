// Screws and hole patterns as the plans state them.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/units/length.h"

namespace ribwright {

struct Screw {
  std::string id;   // "12-24x1.25": its dimensions
  Length diameter;  // nominal, over the thread
  Length washer;    // washer or head diameter
  Length length;
  Length pilot;  // pilot hole in the sheet
  bool operator==(const Screw&) const = default;
};

enum class SupportKind { Base, Girt, Eave, Rake, Jamb, Head, Sill, EndLap };
enum class Zone { Field, Corner };

// Offsets 0 <= x < cover from the module line toward the leading edge.
struct PatternRow {
  SupportKind support = SupportKind::Girt;
  Zone zone = Zone::Field;
  std::vector<Length> offsets;
  std::string screw;
  // Drilled where it hangs, not in the stack. Absent: rake, jamb, head, sill and end-lap rows are, base, girt and eave
  // rows are not (common practice).
  std::optional<bool> drilledInPlace;
  bool operator==(const PatternRow&) const = default;
};

struct Confirmation {
  std::string planSheet, by, date;
  std::string numbers;  // digest of the pattern's numbers when it was confirmed; if they change, it has fallen
  bool operator==(const Confirmation&) const = default;
};

struct ScrewPattern {
  std::string id;
  std::string profile;  // a Profile's id
  bool example = true;  // shipped as an example until confirmed against a plan sheet
  std::vector<PatternRow> rows;
  std::optional<Length> stitchSpacing;  // along the side laps; absent: none
  std::string stitchScrew;
  enum class LapHoles { UpperSheetOnly, BothSheets };
  LapHoles lapHoles = LapHoles::UpperSheetOnly;
  // Whose limits on spacing hold, beside the pattern's own (core/fastening/spacing_limits.h says what each holds).
  enum class Limits { PlansOwn, Ufgs07413, NzCode, Branz146 };
  Limits limits = Limits::PlansOwn;
  std::string spacingApproval;  // who approved wider spacing than these limits, and where it is written; empty: nobody
  Length spacingLimit;          // between structural screws in a row, stated beside the set; 0: none
  Length jambSpacingLimit = Length::inches(12);
  std::optional<Confirmation> confirmation;
  bool operator==(const ScrewPattern&) const = default;
};

// Wind edge strip: which part of a wall takes the corner pattern.
struct CornerZones {
  enum class Rule { None, Asce7, En1991, Typed };
  Rule rule = Rule::None;
  Length width;  // with Typed
  bool operator==(const CornerZones&) const = default;
};

}  // namespace ribwright
