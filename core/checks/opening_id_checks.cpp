// Openings and penetrations that are called like a sheet: on site "D1" must be one thing.
#include <algorithm>

#include "core/checks/job_checks.h"

namespace ribwright {
namespace {

bool isNumber(std::string_view text) {
  return !text.empty() && text.find_first_not_of("0123456789") == std::string_view::npos;
}

const Wall* wallOfMark(const Job& job, std::string_view mark) {
  const auto wall = std::find_if(job.walls.begin(), job.walls.end(), [&](const Wall& w) {
    return !w.letter.empty() && mark.starts_with(w.letter) && isNumber(mark.substr(w.letter.size()));
  });
  return wall == job.walls.end() ? nullptr : &*wall;
}

void checkId(const Job& job, const Wall& wall, const std::string& id, std::vector<Finding>& findings) {
  const std::size_t dot = id.find('.');
  if (dot != std::string::npos && !isNumber(std::string_view(id).substr(dot + 1))) return;
  const Wall* other = wallOfMark(job, std::string_view(id).substr(0, dot));
  if (!other) return;
  findings.push_back(
      {Grade::Look, "opening-id-like-mark", wall.letter, id, {{"other", other->letter}}, "common practice"});
}

}  // namespace

bool isSheetMark(const Job& job, std::string_view mark) { return wallOfMark(job, mark) != nullptr; }

void checkOpeningIds(const Job& job, std::vector<Finding>& findings) {
  for (const Wall& wall : job.walls) {
    for (const Opening& opening : wall.openings) checkId(job, wall, opening.id, findings);
    for (const Penetration& penetration : wall.penetrations) checkId(job, wall, penetration.id, findings);
  }
}

}  // namespace ribwright
