#include "core/editing/coupled_fields.h"

#include <algorithm>

#include "core/editing/field_path.h"
#include "core/job/pattern_numbers.h"

namespace ribwright {
namespace {

void keepRound(Job& job, std::string_view path) {
  const std::string_view key = keyOf(path), item = pathAbove(path);
  const auto wall = lastIndex(pathAbove(pathAbove(item))), index = lastIndex(item);
  if (!wall || !index) return;
  Penetration& changed = job.walls[*wall].penetrations[*index];
  if (changed.shape != Penetration::Shape::Round) return;
  if (key == "height") changed.width = changed.height;
  if (key == "width" || key == "shape") changed.height = changed.width;
}

// The points at one end, which may stand upright over each other.
template <class Point>
void moveEnd(Point first, Point last, Length from, Length to) {
  for (; first != last && first->x == from; ++first) first->x = to;
}

void keepSection(Job& job, const Job& before, std::string_view path) {
  const auto index = lastIndex(path);
  if (!index || *index >= before.profiles.size()) return;
  const Profile& was = before.profiles[*index];
  Profile& now = job.profiles[*index];
  if (was.over != now.over) moveEnd(now.section.begin(), now.section.end(), -was.over, -now.over);
  const Length leadingWas = was.cover + was.under, leading = now.cover + now.under;
  if (leadingWas != leading) moveEnd(now.section.rbegin(), now.section.rend(), leadingWas, leading);
}

// Another name is no other number: what a person held against the plans still stands.
void keepConfirmed(Job& job, const Job& before) {
  for (std::size_t i = 0; i < job.patterns.size() && i < before.patterns.size(); ++i) {
    if (confirmedIs(before.patterns[i], before.screws) != Confirmed::Yes) continue;
    job.patterns[i].confirmation->numbers = numbersOf(job.patterns[i], job.screws);
  }
}

}  // namespace

void changeTogether(Job& job, const Job& before, std::string_view path) {
  const std::string bare = withoutIndices(path);
  if (bare == "walls.penetrations.width" || bare == "walls.penetrations.height" || bare == "walls.penetrations.shape")
    keepRound(job, path);
  if (bare == "profiles.cover" || bare == "profiles.over" || bare == "profiles.under") keepSection(job, before, path);
  if (bare == "profiles.id" || bare == "screws.id") keepConfirmed(job, before);
}

}  // namespace ribwright
