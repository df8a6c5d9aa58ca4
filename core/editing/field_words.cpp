#include "core/editing/field_words.h"

#include "core/editing/field_path.h"

namespace ribwright {
namespace {

template <class T>
std::string idAt(const std::vector<T>& items, std::size_t index, std::string T::*id) {
  return index < items.size() ? items[index].*id : std::string();
}

Phrase what(std::string_view id, std::string name = {}) {
  Phrase phrase{joined("field.what.", id)};
  if (!name.empty()) phrase.values = {{"id", std::move(name)}};
  return phrase;
}

// What is not called anything yet is called by its number.
std::string nameOr(std::string name, std::size_t index) { return name.empty() ? std::to_string(index + 1) : name; }

Phrase onWall(const Wall& wall, const std::string& bare, const std::vector<std::size_t>& at) {
  if (bare.starts_with("walls.columns")) return what("columns", wall.letter);
  if (at.size() > 1 && bare.starts_with("walls.openings"))
    return what("opening", nameOr(idAt(wall.openings, at[1], &Opening::id), at[1]));
  if (at.size() > 1 && bare.starts_with("walls.penetrations"))
    return what("penetration", nameOr(idAt(wall.penetrations, at[1], &Penetration::id), at[1]));
  if (at.size() > 1 && bare.starts_with("walls.girts"))
    return what("girt", nameOr(idAt(wall.girts, at[1], &Girt::id), at[1]));
  return what("wall", wall.letter);
}

Phrase outsideWalls(const Job& job, const std::string& bare, const std::vector<std::size_t>& at) {
  const auto is = [&](std::string_view list) { return bare.starts_with(list) && !at.empty(); };
  if (is("profiles")) return what("profile", nameOr(idAt(job.profiles, at[0], &Profile::id), at[0]));
  if (is("members")) return what("member", nameOr(idAt(job.members, at[0], &Member::id), at[0]));
  if (is("screws")) return what("screw", nameOr(idAt(job.screws, at[0], &Screw::id), at[0]));
  if (is("patterns")) return what("pattern", nameOr(idAt(job.patterns, at[0], &ScrewPattern::id), at[0]));
  if (is("trims")) return what("trim", nameOr(idAt(job.trims, at[0], &Trim::id), at[0]));
  if (is("trim_rules")) return what("trim_rule", nameOr(idAt(job.trimRules, at[0], &TrimRule::id), at[0]));
  if (is("prices.items")) return what("price", nameOr(idAt(job.prices.items, at[0], &Price::item), at[0]));
  if (is("facts.hung")) return what("hung_sheet", nameOr(idAt(job.facts.hung, at[0], &HungSheet::mark), at[0]));
  if (is("facts.orders")) return what("placed_order", nameOr(idAt(job.facts.orders, at[0], &PlacedOrder::id), at[0]));
  if (is("site.sight_points"))
    return what("sight_point", nameOr(idAt(job.site.sightPoints, at[0], &SightPoint::name), at[0]));
  for (const std::string_view object : {"site", "settings", "prices"}) {
    if (isWithin(bare, object)) return what(object);
  }
  if (isWithin(bare, "building.roof")) return what("roof");
  return what(isWithin(bare, "building") ? "building" : "job");
}

Phrase label(const Field& field) { return {labelId(field)}; }
Phrase plain(std::string_view text) { return Phrase{"", {{"value", std::string(text)}}}; }

// Of a long text its beginning, cut between two characters.
std::string beginning(std::string_view text) {
  constexpr std::size_t most = 60;  // bytes
  const std::string_view line = text.substr(0, text.find('\n'));
  if (line.size() <= most) return std::string(line);
  std::size_t end = most;
  while (end > 0 && (static_cast<unsigned char>(line[end]) & 0xC0U) == 0x80U) --end;
  return joined(line.substr(0, end), "\u2026");
}

}  // namespace

std::string labelId(const Field& field) { return joined("field.", field.owner, ".", field.key); }
std::string tipId(const Field& field) { return labelId(field) + ".tip"; }
std::string absentId(const Field& field) { return labelId(field) + ".absent"; }
std::string choiceId(const Field& field, std::string_view word) {
  return joined("choice.", field.owner, ".", field.key, ".", word);
}

Phrase whatLiesAt(const Job& job, std::string_view path) {
  const std::vector<std::size_t> at = indicesOf(path);
  const std::string bare = withoutIndices(path);
  if (bare.starts_with("walls") && !at.empty() && at[0] < job.walls.size()) return onWall(job.walls[at[0]], bare, at);
  return outsideWalls(job, bare, at);
}

Phrase saidText(const Field& field, std::string_view text) {
  if (field.kind == FieldKind::Choice) return {choiceId(field, text)};
  if (field.kind == FieldKind::Flag) return {text == "true" ? "edit.flag.yes" : "edit.flag.no"};
  return plain(beginning(text));
}

Phrase fieldSetPhrase(const Field& field, std::string_view text, const Phrase& what) {
  if (text.empty()) return fieldStatedPhrase(field, false, what);
  return {"edit.field.set", {{"label", label(field)}, {"what", what}, {"value", saidText(field, text)}}};
}

Phrase fieldStatedPhrase(const Field& field, bool stated, const Phrase& what) {
  return {stated ? "edit.field.stated" : "edit.field.absent", {{"label", label(field)}, {"what", what}}};
}

Phrase itemAddedPhrase(const Field& list, const Phrase& what) {
  return {"edit.field.added", {{"list", label(list)}, {"what", what}}};
}

Phrase itemRemovedPhrase(const Field& list, const std::string& item, const Phrase& what) {
  return {"edit.field.removed", {{"item", item}, {"list", label(list)}, {"what", what}}};
}

Phrase itemMovedPhrase(const Field& list, const std::string& item, const Phrase& what) {
  return {"edit.field.moved", {{"item", item}, {"list", label(list)}, {"what", what}}};
}

}  // namespace ribwright
