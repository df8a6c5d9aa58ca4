#include "core/drawing/particular_list.h"

#include <algorithm>

#include "core/drawing/shown_length.h"

namespace ribwright {

namespace {

Length apart(Length a, Length b) { return std::max(a, b) - std::min(a, b); }

}  // namespace

std::string ParticularList::say(const std::string& id, const WordValues& values) const {
  return words.say(id, values, style);
}

std::string ParticularList::text(Length length) const {
  const bool whole = asTapeReads(length, style) == length;
  return shownText(length, style, whole ? 16 : 64, whole ? 0 : 1);
}

void ParticularList::add(const std::string& id, std::string value) {
  if (!value.empty()) all.push_back({say(id), std::move(value)});
}

std::string ParticularList::joined(const std::vector<std::string>& words) {
  std::string all;
  for (const std::string& word : words) all.append(all.empty() ? "" : ", ").append(word);
  return all;
}

void ParticularList::addPlace(Length u) {
  add("part.from-left", u);
  int nearest = 0;
  Length best;
  for (int n = 1; const auto column = columnAt(wall.columns, n); ++n) {
    if (nearest != 0 && apart(u, *column) >= apart(u, best)) continue;
    nearest = n;
    best = *column;
  }
  if (nearest == 0) return;
  const char* id = u == best ? "part.at-column" : u > best ? "part.right-of-column" : "part.left-of-column";
  add("part.from-column", say(id, {{"distance", text(apart(u, best))}, {"column", std::int64_t(nearest)}}));
}

}  // namespace ribwright
