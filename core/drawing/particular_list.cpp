#include "core/drawing/particular_list.h"

#include "core/drawing/column_marks.h"

namespace ribwright {

std::string ParticularList::say(const std::string& id, const WordValues& values) const {
  return words.say(id, values, style);
}

std::string ParticularList::text(Length length) const { return fineText(length, style); }

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
  const auto nearest = nearestColumn(wall, layout().face.width, u);
  if (!nearest) return;
  const Length off = u - nearest->u;
  const char* id = off == Length() ? "part.at-column" : off > Length() ? "part.right-of-column" : "part.left-of-column";
  add("part.from-column", say(id, {{"distance", text(absolute(off))}, {"column", std::int64_t(nearest->number)}}));
}

}  // namespace ribwright
