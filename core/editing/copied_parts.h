// What was copied off a wall, to be pasted on another, in this job or in another window's.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/editing/part_edits.h"
#include "core/job/job_file_form.h"

namespace ribwright {

struct CopiedParts {
  std::string wall;  // letter of the wall that they stood on
  Length width;      // of its face
  ColumnGrid columns;
  std::vector<Opening> openings;
  std::vector<Penetration> penetrations;
  std::vector<Girt> girts;
  std::vector<Member> members;  // that they name
  bool operator==(const CopiedParts&) const = default;
};

// Of `parts` those that stand on this wall. Faults: as partsCopied; none of them stands there.
Outcome<CopiedParts> copiedParts(const Job& job, std::size_t wall, const std::vector<Part>& parts);

// Under new ids. An anchor stays as it was stated where the wall has its column; else it is measured from the nearest
// column, or from the left corner, to the same place. `by`: moved on from there. Members that the job has not come
// along. Faults: a column that the first wall had not either; a member whose id the job has for another cross-section.
Outcome<MadeParts> pasted(const Job& job, std::size_t wall, const CopiedParts& copied, FacePoint by = {});

// As text, by the tables of the job file; parseCopied gives the same parts back.
std::string copiedText(const CopiedParts& copied);
// Faults: no such text; what the job file would refuse.
Outcome<CopiedParts> parseCopied(std::string_view text);

constexpr std::string_view typeName(const CopiedParts&) { return "copied_parts"; }
void describe(Fields<CopiedParts>& copied);

}  // namespace ribwright
