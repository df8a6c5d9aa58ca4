#include "core/job/pattern_numbers.h"

#include <algorithm>
#include <map>
#include <utility>

#include "core/job/by_id.h"
#include "core/job/digest.h"
#include "core/job/job_file_joined.h"

namespace ribwright {

namespace {

std::string number(Length length) { return std::to_string(length.nanometres()); }

template <class E>
int place(E chosen) {
  return static_cast<int>(chosen);
}

// A screw that nobody holds has no sizes, and so its own mark.
std::string sizes(const std::string& id, const std::vector<Screw>& screws) {
  const Screw* screw = byId(screws, id);
  if (!screw) return "none";
  return joined(number(screw->diameter), " ", number(screw->washer), " ", number(screw->length), " ",
                number(screw->pilot));
}

std::string offsets(std::vector<Length> from) {
  std::sort(from.begin(), from.end());
  from.erase(std::unique(from.begin(), from.end()), from.end());
  std::string text;
  for (const Length offset : from) text += joined(" ", number(offset));
  return text;
}

std::string rowLines(const ScrewPattern& pattern, const std::vector<Screw>& screws) {
  std::map<std::pair<int, int>, const PatternRow*> first;
  for (const PatternRow& row : pattern.rows) first.emplace(std::pair{place(row.support), place(row.zone)}, &row);
  std::string text;
  for (const auto& [where, row] : first) {
    text += joined("row ", where.first, " ", where.second, ":", offsets(row->offsets), "; screw ",
                   sizes(row->screw, screws), "\n");
  }
  return text;
}

}  // namespace

std::string numbersOf(const ScrewPattern& pattern, const std::vector<Screw>& screws) {
  std::string text = joined("profile ", pattern.profile, "\n", rowLines(pattern, screws));
  text += joined("stitch ", pattern.stitchSpacing ? number(*pattern.stitchSpacing) : "none", "; screw ",
                 sizes(pattern.stitchScrew, screws), "\n");
  text += joined("lap holes ", place(pattern.lapHoles), "\n");
  text += joined("limits ", place(pattern.limits), " ", number(pattern.spacingLimit), " ",
                 number(pattern.jambSpacingLimit), "\n");
  return fnv1a64(text);
}

Confirmed confirmedIs(const ScrewPattern& pattern, const std::vector<Screw>& screws) {
  const auto& stated = pattern.confirmation;
  if (!stated || stated->planSheet.empty() || stated->by.empty() || stated->date.empty()) return Confirmed::No;
  return stated->numbers == numbersOf(pattern, screws) ? Confirmed::Yes : Confirmed::Fallen;
}

}  // namespace ribwright
