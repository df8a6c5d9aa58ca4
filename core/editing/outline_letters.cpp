#include "core/editing/outline_letters.h"

#include "core/editing/namings.h"
#include "core/job/job_file_joined.h"
#include "core/layout/wall_face.h"

namespace ribwright {
namespace {

// The letters of walls that stand on an edge of the outline from this one on, the first being 0.
std::string wallsFrom(const Job& job, std::size_t edge) {
  std::string letters;
  for (const Wall& wall : job.walls) {
    if (wall.line || !planLine(job, wall) || wall.letter[0] - 'A' < static_cast<int>(edge)) continue;
    letters += joined(letters.empty() ? "" : ", ", wall.letter);
  }
  return letters;
}

std::vector<Fault> refused(const Job& job, std::size_t edge, std::string_view why) {
  const std::string walls = wallsFrom(job, edge);
  if (walls.empty()) return {};
  return {{"building.outline", joined(why, " (walls ", walls, "); give those a line of their own first")}};
}

std::vector<Fault> cornersLost(const Job& job, const ListChange& change) {
  switch (change.does) {
    case ListChange::Does::Adds:
      return refused(job, change.at,
                     "letters its edges in order, and walls behind the new corner would stand on others");
    case ListChange::Does::Removes:
      return refused(job, change.at == 0 ? 0 : change.at - 1,
                     "letters its edges in order, and walls at the corner and behind it would stand on others or none");
    case ListChange::Does::Moves:
      return refused(job, 0, "letters its edges in order, and walls would stand on others");
    case ListChange::Does::Nothing:
      break;
  }
  return {};
}

}  // namespace

std::vector<Fault> lettersLost(const Job& job, std::string_view list, const ListChange& change) {
  if (list == "building.outline") return cornersLost(job, change);
  if (list != "walls" || change.does != ListChange::Does::Removes) return {};
  const std::string& letter = job.walls[change.at].letter;
  if (!isMarkedOnSite(job, letter)) return {};
  return {{itemPath("walls", change.at),
           joined("has sheets that hang or were ordered by their marks (", letter, "1 ...); it stays")}};
}

}  // namespace ribwright
