#include "core/editing/namings.h"

#include <algorithm>

#include "core/editing/field_path.h"
#include "core/layout/wall_face.h"

namespace ribwright {
namespace {

class Namings {
 public:
  void add(std::string path, std::string& name) { all_.push_back({std::move(path), &name}); }
  std::vector<Naming> all() && { return std::move(all_); }

 private:
  std::vector<Naming> all_;
};

template <class Item, class Add>
void each(std::string_view above, std::string_view list, std::vector<Item>& items, const Add& add) {
  for (std::size_t i = 0; i < items.size(); ++i) add(memberPath(above, itemPath(list, i)), items[i]);
}

void profileNamings(Job& job, Namings& found) {
  each("", "patterns", job.patterns,
       [&](const std::string& path, ScrewPattern& pattern) { found.add(path + ".profile", pattern.profile); });
  each("", "walls", job.walls, [&](const std::string& wallPath, Wall& wall) {
    each(wallPath, "bands", wall.bands,
         [&](const std::string& path, Band& band) { found.add(path + ".profile", band.profile); });
  });
}

void priceNamings(Job& job, Price::What what, Namings& found) {
  each("prices", "items", job.prices.items, [&](const std::string& path, Price& price) {
    if (price.what == what) found.add(path + ".item", price.item);
  });
}

void trimNamings(Job& job, Namings& found) {
  each("", "trim_rules", job.trimRules,
       [&](const std::string& path, TrimRule& rule) { found.add(path + ".trim", rule.trim); });
}

void memberNamings(Job& job, Namings& found) {
  each("", "walls", job.walls, [&](const std::string& wallPath, Wall& wall) {
    each(wallPath, "openings", wall.openings,
         [&](const std::string& path, Opening& one) { found.add(path + ".frame.member", one.frame.member); });
    each(wallPath, "girts", wall.girts,
         [&](const std::string& path, Girt& girt) { found.add(path + ".member", girt.member); });
    found.add(wallPath + ".base_angle.member", wall.baseAngle.member);
    found.add(wallPath + ".eave_purlin.member", wall.eavePurlin.member);
    found.add(wallPath + ".rake_angle.member", wall.rakeAngle.member);
    found.add(wallPath + ".columns.member", wall.columns.member);
  });
}

void screwNamings(Job& job, Namings& found) {
  each("", "patterns", job.patterns, [&](const std::string& patternPath, ScrewPattern& pattern) {
    found.add(patternPath + ".stitch_screw", pattern.stitchScrew);
    each(patternPath, "rows", pattern.rows,
         [&](const std::string& path, PatternRow& row) { found.add(path + ".screw", row.screw); });
  });
}

void patternNamings(Job& job, Namings& found) {
  each("", "walls", job.walls, [&](const std::string& wallPath, Wall& wall) {
    found.add(wallPath + ".pattern", wall.pattern);
    each(wallPath, "bands", wall.bands,
         [&](const std::string& path, Band& band) { found.add(path + ".pattern", band.pattern); });
  });
}

void openingNamings(const std::string& wallPath, Wall& wall, Namings& found) {
  found.add(wallPath + ".start.opening", wall.start.opening);
  each(wallPath, "bands", wall.bands, [&](const std::string& path, Band& band) {
    if (band.start) found.add(path + ".start.opening", band.start->opening);
  });
}

void girtNamings(const std::string& wallPath, Wall& wall, Namings& found) {
  each(wallPath, "end_laps.girts", wall.endLaps.girts,
       [&](const std::string& path, std::string& girt) { found.add(path, girt); });
  each(wallPath, "survey.girts", wall.survey.girts,
       [&](const std::string& path, GirtSurvey& girt) { found.add(path + ".girt", girt.girt); });
}

// A finding's key is its id, wall and mark, and which part, with bars between.
struct KeyParts {
  std::string id, wall, mark, rest;
};

KeyParts partsOf(const std::string& key) {
  const auto first = std::min(key.find('|'), key.size()), second = std::min(key.find('|', first + 1), key.size());
  const auto third = std::min(key.find('|', second + 1), key.size());
  const auto between = [&](std::size_t from, std::size_t to) {
    return from < to ? key.substr(from + 1, to - from - 1) : std::string();
  };
  return {key.substr(0, first), between(first, second), between(second, third), key.substr(third)};
}

template <class Change>
void changeSilenced(Job& job, const Change& change) {
  for (SilencedFinding& silenced : job.silenced) {
    if (std::count(silenced.key.begin(), silenced.key.end(), '|') < 2) continue;
    KeyParts parts = partsOf(silenced.key);
    if (change(parts)) silenced.key = joined(parts.id, "|", parts.wall, "|", parts.mark, parts.rest);
  }
}

bool isMarkOf(std::string_view mark, std::string_view letter) {
  return mark.size() > letter.size() && mark.starts_with(letter) && mark[letter.size()] >= '0' &&
         mark[letter.size()] <= '9';
}

// Something of another kind on the wall may have the same id, and what was put aside is then not known to be this
// one's.
bool isOnlyOneCalled(const Wall& wall, const std::string& id) {
  const auto called = [&](const auto& item) { return item.id == id; };
  return std::count_if(wall.openings.begin(), wall.openings.end(), called) +
             std::count_if(wall.penetrations.begin(), wall.penetrations.end(), called) +
             std::count_if(wall.girts.begin(), wall.girts.end(), called) ==
         0;
}

bool isOrdered(const SiteFacts& facts, const std::string& letter) {
  const auto marked = [&](const std::string& mark) { return isMarkOf(mark, letter); };
  const auto lots = [&](const std::vector<SheetLot>& all) {
    return std::any_of(all.begin(), all.end(),
                       [&](const SheetLot& lot) { return std::any_of(lot.marks.begin(), lot.marks.end(), marked); });
  };
  return std::any_of(facts.orders.begin(), facts.orders.end(), [&](const PlacedOrder& order) {
    return lots(order.placed) || lots(order.received) || lots(order.shortfall);
  });
}

bool isHung(const SiteFacts& facts, const std::string& letter) {
  return std::any_of(facts.hung.begin(), facts.hung.end(),
                     [&](const HungSheet& sheet) { return isMarkOf(sheet.mark, letter); });
}

}  // namespace

std::vector<Naming> namingsOf(Job& job, std::string_view list) {
  Namings found;
  if (list == "profiles") profileNamings(job, found);
  if (list == "profiles") priceNamings(job, Price::What::Sheet, found);
  if (list == "trims") trimNamings(job, found);
  if (list == "trims") priceNamings(job, Price::What::Trim, found);
  if (list == "members") memberNamings(job, found);
  if (list == "screws") screwNamings(job, found);
  if (list == "patterns") patternNamings(job, found);
  const std::string bare = withoutIndices(list);
  const auto index = lastIndex(list);
  if ((bare != "walls.openings" && bare != "walls.girts") || !index || *index >= job.walls.size())
    return std::move(found).all();
  const std::string wallPath = itemPath("walls", *index);
  if (bare == "walls.openings") openingNamings(wallPath, job.walls[*index], found);
  if (bare == "walls.girts") girtNamings(wallPath, job.walls[*index], found);
  return std::move(found).all();
}

void callBy(Job& job, std::string_view path, const std::string& before, const std::string& after) {
  if (before.empty() || before == after) return;
  for (const Naming& naming : namingsOf(job, pathAbove(path))) {
    if (*naming.name == before) *naming.name = after;
  }
  const auto wallIndex = lastIndex(pathAbove(path));
  if (!path.starts_with("walls[") || !wallIndex || *wallIndex >= job.walls.size()) return;
  const Wall& wall = job.walls[*wallIndex];
  if (!isOnlyOneCalled(wall, before)) return;
  changeSilenced(job, [&](KeyParts& key) {
    const bool same = key.wall == wall.letter && key.mark == before;
    if (same) key.mark = after;
    return same;
  });
}

std::vector<std::string> whoNames(const Job& job, std::string_view path, const std::string& id) {
  std::vector<std::string> paths;
  if (id.empty()) return paths;
  Job copy = job;  // namings can be written to
  for (const Naming& naming : namingsOf(copy, pathAbove(path))) {
    if (*naming.name == id) paths.push_back(naming.path);
  }
  return paths;
}

bool isMarkedOnSite(const Job& job, const std::string& letter) {
  return isHung(job.facts, letter) || isOrdered(job.facts, letter);
}

std::vector<Fault> callWallBy(Job& job, std::size_t wall, const std::string& before, const std::string& after) {
  if (before == after) return {};
  const std::string place = itemPath("walls", wall, "letter");
  const Wall& called = job.walls[wall];
  Wall lettered;
  lettered.letter = before;
  if (!called.line && !called.width && planLine(job, lettered))
    return {
        {place, joined("is where wall ", before,
                       " takes its place from in the outline; give it a line of its own before it is called ", after)}};
  if (isMarkedOnSite(job, before))
    return {{place, joined("stands on sheets that hang or were ordered by their marks (", before,
                           "1 ...); a mark stays what it is")}};
  changeSilenced(job, [&](KeyParts& key) {
    if (key.wall != before) return false;
    key.wall = after;
    if (isMarkOf(key.mark, before)) key.mark = joined(after, key.mark.substr(before.size()));
    return true;
  });
  return {};
}

}  // namespace ribwright
