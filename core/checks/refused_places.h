// Refused places gathered under one name each, so that a foreman reads one line where a thousand screws share a cause.
#pragma once

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/checks/wall_look.h"

namespace ribwright {

// Groups come out in the order of kinds, then of name, then of x.
struct RefusalKey {
  HoleKind kind = HoleKind::Girt;
  std::string name;
  Length x;
  auto operator<=>(const RefusalKey&) const = default;
};

struct RefusalGroup {
  const Refusal* first = nullptr;  // on the sheet hung first
  std::vector<const Refusal*> all;
  std::int64_t count() const { return static_cast<std::int64_t>(all.size()); }
};

using RefusalGroups = std::map<RefusalKey, RefusalGroup>;

// `under`: which group a refusal belongs to; absent: none.
RefusalGroups grouped(const WallLook& look, const std::function<std::optional<RefusalKey>(const Refusal&)>& under);

const RunLook& runOf(const WallLook& look, const Refusal& refusal);
const Screw& screwOf(const WallLook& look, const Refusal& refusal);
const std::string& patternOf(const WallLook& look, const Refusal& refusal);
// The metal edge in a side lap that a screw was refused for, from its own sheet's module line: what the pattern is at
// fault for on every sheet. Absent: it was refused for something else.
std::optional<Length> lapEdgeAt(const WallLook& look, const Refusal& refusal);
// Mark of the sheet that would have had the hole; empty where it is not known.
std::string sheetOf(const WallLook& look, const Refusal& refusal);
// "sheet B3", "sheets B3, B7 and 12 more".
WordValue sheetsOf(const WallLook& look, const RefusalGroup& group);

// Those of a pattern's rows that state offsets; not jambs and side laps, whose screws are spaced.
bool isByOffset(HoleKind kind);

Length between(Length a, Length b);

}  // namespace ribwright
