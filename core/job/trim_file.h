// Sets of trim that ship inside the program, with the rules by which they are counted: one in feet and inches, one in
// millimetres. Trims are named by their dimensions.
//
// All of it is common practice, to be made the job's own: sections; lengths of 10 ft and more, or 2.5 m and more; heads
// 2 in (50 mm) longer than wide, with lips of 1 in (25 mm); rakes 4 in (100 mm) longer, for both plumb cuts; covers at
// overhead doors alone. Jambs lap over the sill and heads over the jambs, so that water runs out.
#pragma once

#include <string_view>
#include <vector>

#include "core/job/trim.h"
#include "core/units/length_text.h"
#include "core/units/outcome.h"

namespace ribwright {

struct TrimSet {
  std::vector<Trim> trims;
  std::vector<TrimRule> rules;  // naming them alone
  bool operator==(const TrimSet&) const = default;
};

Outcome<TrimSet> readTrimSet(std::string_view text, std::string_view name);
const TrimSet& shippedTrim(UnitSystem units);

}  // namespace ribwright
