// Openings and penetrations that are called like a sheet: on site "D1" must be one thing.
#include <algorithm>

#include "core/checks/job_checks.h"
#include "core/checks/screw_words.h"

namespace ribwright {
namespace {

bool isNumber(std::string_view text) {
  return !text.empty() && text.find_first_not_of("0123456789") == std::string_view::npos;
}

bool isLikeMark(const Job& job, std::string_view id) {
  const std::size_t dot = id.find('.');
  if (dot != std::string_view::npos && !isNumber(id.substr(dot + 1))) return false;
  return isSheetMark(job, id.substr(0, dot));
}

}  // namespace

bool isSheetMark(const Job& job, std::string_view mark) {
  return std::any_of(job.walls.begin(), job.walls.end(), [&](const Wall& wall) {
    return !wall.letter.empty() && mark.starts_with(wall.letter) && isNumber(mark.substr(wall.letter.size()));
  });
}

void checkOpeningIds(const Job& job, std::vector<Finding>& findings) {
  for (const Wall& wall : job.walls) {
    std::vector<std::string> alike;
    const auto look = [&](const std::string& id) {
      if (isLikeMark(job, id)) alike.push_back(id);
    };
    for (const Opening& opening : wall.openings) look(opening.id);
    for (const Penetration& penetration : wall.penetrations) look(penetration.id);
    if (alike.empty()) continue;
    const std::string more = alike.size() == 1 ? "" : "and " + std::to_string(alike.size() - 1) + " more";
    findings.push_back({Grade::Look,
                        "opening-id-like-mark",
                        wall.letter,
                        alike.front(),
                        {{"ids", listed(alike, 12)}, {"one", alike.front()}},
                        "common practice",
                        more});
  }
}

}  // namespace ribwright
