// Openings and penetrations that stand where they cannot, or are called like sheets.
#include <algorithm>
#include <cstdlib>

#include "core/checks/job_checks.h"
#include "core/editing/opening_edits.h"
#include "core/editing/penetration_edits.h"
#include "core/editing/remedy_ways.h"
#include "core/editing/stated_cells.h"
#include "core/editing/wall_items.h"
#include "core/layout/wall_face.h"

namespace ribwright {
namespace {

constexpr int mostColumns = 6;  // that are tried

// An opening or a penetration is set along its wall.
Outcome<Job> setAlong(const Job& job, std::size_t wall, const std::string& id, Length by) {
  const Wall& on = job.walls.at(wall);
  if (const Opening* opening = byId(on.openings, id)) {
    const auto box = openingBox(job, on, *opening);
    if (!box) return box.faults();
    return openingMovedTo(job, wall, id, box.value().left + by, box.value().bottom);
  }
  const Penetration* hole = byId(on.penetrations, id);
  if (!hole) return notThere(on, "openings", id);
  const auto box = penetrationBox(job, on, *hole);
  if (!box) return box.faults();
  return penetrationMovedTo(job, wall, id, {half(box.value().left + box.value().right) + by, hole->centre});
}

OfferedRemedy along(const SoughtFor& sought, const std::string& id, Length by) {
  const char* name = by < Length() ? "offer.opening-left" : "offer.opening-right";
  return {{name, {{"opening", id}, {"by", absolute(by)}}},
          [wall = *sought.wall, id, by](const Job& job) { return setAlong(job, wall, id, by); }};
}

void addOntoWall(const SoughtFor& sought, RemedyWays& ways) {
  const auto left = sought.length("left"), right = sought.length("right"), width = sought.length("width");
  if (!left || !right || !width) return;
  const Length by = *left < Length() ? -*left : *width - *right;
  ways.push_back({along(sought, sought.finding.mark, by)});
}

// The nearest by number, the lower of two as near.
void addColumns(const SoughtFor& sought, RemedyWays& ways) {
  const int stated = static_cast<int>(sought.number("column").value_or(0));
  const std::string id = sought.finding.mark;
  std::vector<int> columns;
  for (int i = 1; i <= static_cast<int>(columnsOf(sought.stated().columns).size()); ++i) columns.push_back(i);
  std::stable_sort(columns.begin(), columns.end(),
                   [&](int a, int b) { return std::abs(a - stated) < std::abs(b - stated); });
  RemedyWay way;
  for (const int column : columns) {
    if (static_cast<int>(way.size()) == mostColumns) break;
    way.push_back(wallRemedy({"offer.column", {{"opening", id}, {"column", std::int64_t(column)}}}, *sought.wall,
                             [id, column](Wall& wall) {
                               if (Opening* opening = itemToEdit(wall.openings, id)) opening->place.column = column;
                               if (Penetration* hole = itemToEdit(wall.penetrations, id)) hole->place.column = column;
                             }));
  }
  ways.push_back(way);
}

// Beside the other one, to the nearer side first.
void addApart(const SoughtFor& sought, RemedyWays& ways) {
  const auto& cuts = sought.planned().layout.cuts;
  const CutRegion *one = byId(cuts, sought.text("one")), *other = byId(cuts, sought.text("other"));
  if (!one || !other || !one->steelLeft || !other->steelLeft) return;
  const auto add = [&](const CutRegion& moved, const CutRegion& from) {
    const Length right = *from.steelRight - *moved.steelLeft, left = *from.steelLeft - *moved.steelRight;
    RemedyWay way{along(sought, moved.id, right), along(sought, moved.id, left)};
    if (absolute(left) < absolute(right)) std::swap(way[0], way[1]);
    ways.push_back(way);
  };
  add(*other, *one);
  add(*one, *other);
}

bool isSomewhere(const Job& job, const std::string& id) {
  return std::any_of(job.walls.begin(), job.walls.end(), [&](const Wall& wall) {
    return byId(wall.openings, id) || byId(wall.penetrations, id) || byId(wall.girts, id);
  });
}

// D1 is DD1, or with as many more of its letter as it takes.
std::string otherName(const Job& job, const std::string& id) {
  std::string name = id;
  do name.insert(name.begin(), id.front());
  while (isSheetMark(job, name.substr(0, name.find('.'))) || isSomewhere(job, name));
  return name;
}

Outcome<Job> withOtherNames(const Job& job, std::size_t wall) {
  Job next = job;
  for (const StatedList list : {StatedList::Openings, StatedList::Penetrations}) {
    std::vector<TypedCell> cells;
    for (std::size_t row = 0; row < statedCount(next.walls.at(wall), list); ++row) {
      const std::string id = statedText(next, wall, list, row, 0);
      if (!id.empty() && isSheetMark(next, id.substr(0, id.find('.')))) cells.push_back({row, 0, otherName(next, id)});
    }
    EnteredCells entered = enterCells(next, wall, list, cells);
    if (!entered.faults.empty()) return Fault{"", entered.faults.front().message};
    next = std::move(entered.job);
  }
  return next;
}

}  // namespace

void addOpeningWays(const SoughtFor& sought, RemedyWays& ways) {
  if (!sought.wall) return;
  if (sought.is("opening-off-wall")) addOntoWall(sought, ways);
  if (sought.is("opening-column-missing")) addColumns(sought, ways);
  if (sought.is("openings-overlap")) addApart(sought, ways);
  if (sought.is("opening-id-like-mark")) {
    const std::string one = sought.text("one");
    ways.push_back({{{"offer.rename", {{"one", one}, {"other", otherName(sought.job, one)}}},
                     [wall = *sought.wall](const Job& job) { return withOtherNames(job, wall); }}});
  }
}

}  // namespace ribwright
