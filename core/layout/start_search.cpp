#include "core/layout/start_search.h"

#include <algorithm>
#include <string>

#include "core/layout/start_offset.h"

namespace ribwright {

namespace {

std::optional<Length> ridgeIn(const RunTask& task) {
  if (!task.face->ridge || *task.face->ridge <= task.frame.left || *task.face->ridge >= task.frame.right)
    return std::nullopt;
  return task.frame.toHanging(*task.face->ridge);
}

// Sheets that hang have settled where the run starts: the offset that the first measured one of them has.
std::optional<Length> offsetOfHungSheets(const RunTask& task) {
  const Profile& profile = *task.profile;
  const std::int64_t most = wholeTimes(task.frame.length(), profile.cover) + 2;
  for (std::int64_t place = 0; place < most; ++place) {
    const std::string mark = task.wall->letter + std::to_string(task.firstNumber + place);
    for (const HungSheet& hung : task.job->facts.hung) {
      if (hung.mark != mark) continue;
      const Length edge = task.frame.toHanging(hung.leadingEdge);
      return rest(edge - profile.under - profile.cover * (place + 1), profile.cover);
    }
  }
  return std::nullopt;
}

RunResult bestOfSearch(const RunTask& task, const StartPlace& place) {
  const Length step = task.job->units == UnitSystem::FeetInches ? Length::inches(0, 8) : Length::millimetres(5);
  std::optional<StartRank> best;
  RunResult chosen;
  for (const Length offset : startCandidates(*task.profile, place, step, task.job->settings.seamFromJamb)) {
    RunResult result = layOutRun(task, offset);
    const StartRank rank = rankOf(task, result);
    if (best && !(rank < *best)) continue;
    best = rank;
    chosen = std::move(result);
  }
  return chosen;
}

}  // namespace

RunResult layOutFromStart(const RunTask& task) {
  const Band& band = task.wall->bands[static_cast<std::size_t>(task.band)];
  const Start& start = band.start ? *band.start : task.wall->start;
  const StartPlace place{task.frame.length(), ridgeIn(task), *task.cuts, task.frame};
  const bool search = start.rule == Start::Rule::BestOfSearch;
  const auto settled = search ? offsetOfHungSheets(task) : std::nullopt;
  if (search && !settled) return bestOfSearch(task, place);
  const auto offset = search ? settled : startOffset(start, *task.profile, place);
  RunResult result = layOutRun(task, offset.value_or(task.profile->over));
  result.startFollowed = offset.has_value();
  return result;
}

StartRank rankOf(const RunTask& task, const RunResult& result) {
  return rankOf(task.job->settings, *task.profile, *task.cuts, result.run, result.pieces);
}

}  // namespace ribwright
