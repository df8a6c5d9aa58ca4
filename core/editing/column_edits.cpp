#include "core/editing/column_edits.h"

#include <algorithm>
#include <utility>

#include "core/editing/column_anchors.h"
#include "core/editing/held_edit.h"
#include "core/editing/wall_items.h"
#include "core/job/length_style.h"
#include "core/layout/wall_face.h"

namespace ribwright {
namespace {

Fault noSuchColumn(const Wall& wall, int column) {
  return {listPlace(wall, "columns"),
          joined("there is no column ", column, "; the wall has ", columnsOf(wall.columns).size())};
}

// Columns at these places; one alone is the grid's offset.
ColumnGrid gridAt(const ColumnGrid& like, const std::vector<Length>& places) {
  ColumnGrid grid = like;
  grid.offset = places.front();
  grid.bays.clear();
  for (std::size_t i = 1; i < places.size(); ++i) grid.bays.push_back(places[i] - places[i - 1]);
  return grid;
}

std::vector<Fault> faultsOfOrder(const Wall& wall, const std::vector<Length>& places) {
  std::vector<Fault> faults;
  for (std::size_t i = 1; i < places.size(); ++i) {
    if (places[i] > places[i - 1]) continue;
    faults.push_back({listPlace(wall, "columns"), joined("column ", i + 1, " would not stand right of column ", i,
                                                         "; keep columns apart and in their order")});
  }
  return faults;
}

// Places that anchors can be measured from; without bays that is one.
std::vector<Length> places(const ColumnGrid& grid) {
  return grid.bays.empty() ? std::vector<Length>{grid.offset} : columnsOf(grid);
}

}  // namespace

Outcome<Job> columnMovedTo(const Job& job, std::size_t wall, int column, Length u, Anchored anchored) {
  const Wall& on = job.walls.at(wall);
  if (!hasColumn(on.columns, column)) return noSuchColumn(on, column);
  std::vector<Length> moved = columnsOf(on.columns);
  moved[static_cast<std::size_t>(column) - 1] = u;
  return columnsMovedTo(job, wall, moved, anchored);
}

Outcome<Job> columnsMovedTo(const Job& job, std::size_t wall, const std::vector<Length>& moved, Anchored anchored) {
  const Wall& on = job.walls.at(wall);
  if (moved.empty() || moved.size() != columnsOf(on.columns).size())
    return Fault{listPlace(on, "columns"), joined("the wall has ", columnsOf(on.columns).size(), " and not ",
                                                  moved.size(), "; say where each of them stands")};
  if (auto faults = faultsOfOrder(on, moved); !faults.empty()) return faults;
  const ColumnGrid was = on.columns, is = gridAt(was, moved);
  return editedWall(job, wall, [&](Wall& next) {
    next.columns = is;
    forEachColumnAnchor(next, [&](Anchor& anchor) {
      if (anchored == Anchored::Stay && columnAt(was, anchor.column)) restate(anchor, was, is, anchor.column);
    });
  });
}

Outcome<Job> columnAdded(const Job& job, std::size_t wall, Length u) {
  const Wall& on = job.walls.at(wall);
  std::vector<Length> all = places(on.columns);
  const auto right = std::find_if(all.begin(), all.end(), [u](Length place) { return place >= u; });
  if (right != all.end() && *right == u) {
    const char* why = on.columns.bays.empty() ? "columns are counted from this place; add one beside it"
                                              : "a column stands there; add one beside it";
    return Fault{listPlace(on, "columns"), why};
  }
  const int number = static_cast<int>(right - all.begin()) + 1;
  all.insert(right, u);
  return editedWall(job, wall, [&](Wall& next) {
    next.columns = gridAt(on.columns, all);
    forEachColumnAnchor(next, [&](Anchor& anchor) { anchor.column += anchor.column >= number ? 1 : 0; });
  });
}

Outcome<Job> columnRemoved(const Job& job, std::size_t wall, int column, Anchored anchored) {
  const Wall& on = job.walls.at(wall);
  if (!hasColumn(on.columns, column)) return noSuchColumn(on, column);
  std::vector<Length> left = columnsOf(on.columns);
  const Length gone = left[static_cast<std::size_t>(column) - 1];
  left.erase(left.begin() + column - 1);
  const ColumnGrid was = on.columns, is = gridAt(was, left);
  const int nearest = nearestColumn(is, gone);
  return editedWall(job, wall, [&](Wall& next) {
    next.columns = is;
    forEachColumnAnchor(next, [&](Anchor& anchor) {
      if (anchor.column == column && anchored == Anchored::Stay) return restate(anchor, was, is, nearest);
      if (anchor.column == column)
        anchor.column = nearest;
      else if (anchor.column > column)
        --anchor.column;
    });
  });
}

Outcome<Job> baysFromText(const Job& job, std::size_t wall, const std::string& text, Anchored anchored) {
  const auto bays = parseLengthString(text, styleOf(job));
  if (!bays) {
    std::vector<Fault> faults = bays.faults();
    for (Fault& fault : faults) fault.place = listPlace(job.walls.at(wall), "columns");
    return faults;
  }
  const ColumnGrid was = job.walls.at(wall).columns;
  ColumnGrid is = was;
  is.bays = bays.value();
  const int last = static_cast<int>(is.bays.size()) + 1;
  return editedWall(job, wall, [&](Wall& next) {
    next.columns = is;
    forEachColumnAnchor(next, [&](Anchor& anchor) {
      if (!columnAt(was, anchor.column)) return;
      if (anchor.column > last) return restate(anchor, was, is, last);
      if (anchored == Anchored::Stay) restate(anchor, was, is, anchor.column);
    });
  });
}

}  // namespace ribwright
