#include "core/editing/stated_cells.h"

#include <algorithm>
#include <map>

#include "core/editing/girt_edits.h"
#include "core/editing/held_edit.h"
#include "core/editing/next_ids.h"
#include "core/editing/renamed.h"
#include "core/editing/run_edits.h"
#include "core/editing/typed_length.h"
#include "core/job/job_file_joined.h"
#include "core/job/length_style.h"

namespace ribwright {
namespace {

// What differs from list to list.
template <class Item>
struct Listed;

template <>
struct Listed<Opening> {
  static constexpr std::string_view path = "openings";
  static auto& items(auto& wall) { return wall.openings; }
  static const auto& fields() { return openingFields(); }
  static Opening made(const Job&, std::size_t, Opening typed) { return typed; }
  static std::string nextId(const Job& job, std::size_t, const Opening& opening) {
    return nextOpeningId(job, opening.kind);
  }
  static void rename(Job& job, std::size_t wall, const NewNames& names) { renameOpenings(job, wall, names); }
};

template <>
struct Listed<Penetration> {
  static constexpr std::string_view path = "penetrations";
  static auto& items(auto& wall) { return wall.penetrations; }
  static const auto& fields() { return penetrationFields(); }
  static Penetration made(const Job&, std::size_t, Penetration typed) { return typed; }
  static std::string nextId(const Job& job, std::size_t, const Penetration&) { return nextPenetrationId(job); }
  static void rename(Job& job, std::size_t wall, const NewNames& names) { renamePenetrations(job, wall, names); }
};

template <>
struct Listed<Girt> {
  static constexpr std::string_view path = "girts";
  static auto& items(auto& wall) { return wall.girts; }
  static const auto& fields() { return girtFields(); }
  // What was not typed is as on the girt below.
  static Girt made(const Job& job, std::size_t wall, const Girt& typed) {
    Girt girt = girtAtHeight(job, wall, typed.height);
    girt.id.clear();
    return girt;
  }
  static std::string nextId(const Job& job, std::size_t wall, const Girt&) { return nextGirtId(job, wall); }
  static void rename(Job& job, std::size_t wall, const NewNames& names) { renameGirts(job, wall, names); }
};

template <>
struct Listed<Band> {
  static constexpr std::string_view path = "bands";
  static auto& items(auto& wall) { return wall.bands; }
  static const auto& fields() { return bandFields(); }
  static Band made(const Job&, std::size_t, Band typed) { return typed; }
};

template <class Item>
constexpr bool hasId = requires(Item item) {
  item.id;
};

using RowCells = std::map<std::size_t, std::vector<const TypedCell*>>;

// One entry: the job that is made, and what is wrong on the way.
template <class Item>
class Entry {
 public:
  Entry(const Job& job, std::size_t wall) : before_(job), made_(job), wall_(wall) {}

  EnteredCells enter(const std::vector<TypedCell>& cells) {
    RowCells rows;
    for (const TypedCell& cell : cells) rows[cell.row].push_back(&cell);
    for (const auto& [row, typed] : rows) row < count() ? change(row, typed) : add(row, typed);
    if (faults_.empty()) look();
    if (!faults_.empty()) return {before_, std::move(faults_)};
    if constexpr (hasId<Item>) Listed<Item>::rename(made_, wall_, names());
    putInPlace();
    return {std::move(made_), {}};
  }

 private:
  const auto& fields() const { return Listed<Item>::fields(); }
  const Wall& wallBefore() const { return before_.walls[wall_]; }
  auto& items() { return Listed<Item>::items(made_.walls[wall_]); }
  std::size_t count() const { return Listed<Item>::items(wallBefore()).size(); }

  // Kinds first: what a width means goes by the shape.
  void take(Item& item, std::size_t row, std::vector<const TypedCell*> typed) {
    const CellReading reading{before_, wallBefore(), {before_.units, before_.decimalSign}};
    std::stable_sort(typed.begin(), typed.end(), [](auto* a, auto* b) { return a->column < b->column; });
    for (const TypedCell* cell : typed) {
      const auto& field = fields()[cell->column];
      const std::string_view text = withoutBlanks(cell->text);
      if (text.empty() && row >= count() && !isNeeded(cell->column)) continue;
      std::string wrong = takeCell(field, item, text, reading);
      if (!wrong.empty()) faults_.push_back({row, cell->column, std::move(wrong)});
    }
  }

  void change(std::size_t row, const std::vector<const TypedCell*>& typed) { take(items()[row], row, typed); }

  void add(std::size_t row, const std::vector<const TypedCell*>& typed) {
    const std::size_t faultsBefore = faults_.size();
    Item first;
    take(first, row, typed);
    for (std::size_t column = 0; column < fields().size(); ++column) {
      const bool given = std::any_of(typed.begin(), typed.end(), [&](auto* cell) { return cell->column == column; });
      if (!given && isNeeded(column)) faults_.push_back({row, column, "is blank; it is needed"});
    }
    if (faults_.size() > faultsBefore) return;
    Item item = Listed<Item>::made(before_, wall_, first);
    take(item, row, typed);
    if constexpr (hasId<Item>) {
      if (item.id.empty()) item.id = Listed<Item>::nextId(made_, wall_, item);
    }
    items().push_back(std::move(item));
    added_.push_back(row);
  }

  // A new one is numbered; a kind is what it is until it is said; one side is enough of a round hole.
  bool isNeeded(std::size_t column) const {
    const auto& field = fields()[column];
    if constexpr (std::is_same_v<Item, Band>) return field.name == "from" || field.name == "profile";
    if (std::is_same_v<Item, Penetration> && field.name == "height") return false;
    return field.needed && field.form == CellForm::Length;
  }

  // The file's own rules.
  void look() {
    const auto held = ifWallHeld(made_, wall_);
    if (!held) {
      for (const Fault& fault : held.faults()) faults_.push_back(placed(fault));
    }
    if constexpr (std::is_same_v<Item, Girt>) lookAtGirtNames();
  }

  CellFault placed(const Fault& fault) const {
    const std::string list = joined(itemPath("walls", wall_), ".", Listed<Item>::path, "[");
    if (!fault.place.starts_with(list)) return {0, 0, joined(fault.place, ": ", fault.message)};
    const std::size_t end = fault.place.find(']', list.size());
    const auto index = static_cast<std::size_t>(std::stoul(fault.place.substr(list.size(), end - list.size())));
    const std::string member = end + 2 < fault.place.size() ? fault.place.substr(end + 2) : std::string();
    const auto field =
        std::find_if(fields().begin(), fields().end(), [&](const auto& each) { return each.path == member; });
    const auto column = static_cast<std::size_t>(field == fields().end() ? 0 : field - fields().begin());
    return {rowOf(index), column, fault.message};
  }

  std::size_t rowOf(std::size_t index) const { return index < count() ? index : added_[index - count()]; }

  NewNames names() {
    NewNames names;
    if constexpr (hasId<Item>) {
      const auto& before = Listed<Item>::items(wallBefore());
      for (std::size_t i = 0; i < before.size(); ++i) {
        if (before[i].id != items()[i].id) names.emplace_back(before[i].id, items()[i].id);
      }
    }
    return names;
  }

  void lookAtGirtNames() {
    const NewNames renamed = names();
    for (std::size_t i = 0; i < items().size(); ++i) {
      if (i < count() && wallBefore().girts[i].id == items()[i].id) continue;
      std::string wrong = troubleWithGirtName(wallBefore(), items()[i].id, renamed);
      if (!wrong.empty()) faults_.push_back({rowOf(i), 0, std::move(wrong)});
    }
  }

  // New ones stand at the end until here.
  void putInPlace() {
    if constexpr (!std::is_same_v<Item, Girt> && !std::is_same_v<Item, Band>) return;
    for (std::size_t i = count(); i < items().size(); ++i) {
      const auto one = items().begin() + static_cast<std::ptrdiff_t>(i);
      const auto higher = std::find_if(items().begin(), one, [&](const Item& each) { return isHigher(each, *one); });
      std::rotate(higher, one, one + 1);
    }
  }
  static bool isHigher(const Item& a, const Item& b) {
    if constexpr (std::is_same_v<Item, Girt>) return a.height > b.height;
    if constexpr (std::is_same_v<Item, Band>) return a.from && b.from && *a.from > *b.from;
    return false;
  }

  const Job& before_;
  Job made_;
  std::size_t wall_;
  std::vector<std::size_t> added_;  // rows, parallel to the items past those before
  std::vector<CellFault> faults_;
};

template <class Item>
struct As {};

// Calls with As<Item> of the list.
template <class Do>
auto ofList(StatedList list, const Do& work) {
  switch (list) {
    case StatedList::Openings:
      return work(As<Opening>{});
    case StatedList::Penetrations:
      return work(As<Penetration>{});
    case StatedList::Girts:
      return work(As<Girt>{});
    case StatedList::Bands:
      break;
  }
  return work(As<Band>{});
}

Outcome<Job> withoutBands(const Job& job, std::size_t wall, const std::vector<std::size_t>& falling) {
  Job next = job;
  for (const std::size_t row : falling) {
    Outcome<Job> removed = bandRemoved(next, wall, row);
    if (!removed) return removed.faults();
    next = std::move(removed).value();
  }
  return next;
}

}  // namespace

const std::vector<StatedColumn>& statedColumns(StatedList list) {
  static const auto columnsOfFields = [](const auto& fields) {
    std::vector<StatedColumn> columns;
    for (const auto& field : fields) columns.push_back({field.name, field.form, field.needed});
    return columns;
  };
  static const std::vector<StatedColumn> all[] = {columnsOfFields(openingFields()),
                                                  columnsOfFields(penetrationFields()), columnsOfFields(girtFields()),
                                                  columnsOfFields(bandFields())};
  return all[static_cast<std::size_t>(list)];
}

std::size_t statedCount(const Wall& wall, StatedList list) {
  return ofList(list, [&]<class Item>(As<Item>) { return Listed<Item>::items(wall).size(); });
}

std::string statedText(const Job& job, std::size_t wall, StatedList list, std::size_t row, std::size_t column) {
  return ofList(list, [&]<class Item>(As<Item>) {
    return Listed<Item>::fields().at(column).text(Listed<Item>::items(job.walls.at(wall)).at(row), styleOf(job));
  });
}

std::vector<std::string> statedChoices(const Job& job, std::size_t wall, StatedList list, std::size_t column) {
  return ofList(list, [&]<class Item>(As<Item>) {
    const auto choices = Listed<Item>::fields().at(column).choices;
    return choices ? choices({job, job.walls.at(wall), styleOf(job)}) : std::vector<std::string>{};
  });
}

EnteredCells enterCells(const Job& job, std::size_t wall, StatedList list, const std::vector<TypedCell>& cells) {
  return ofList(list, [&]<class Item>(As<Item>) { return Entry<Item>(job, wall).enter(cells); });
}

Outcome<Job> withoutRows(const Job& job, std::size_t wall, StatedList list, std::vector<std::size_t> rows) {
  std::sort(rows.rbegin(), rows.rend());
  if (list == StatedList::Bands) return withoutBands(job, wall, rows);
  return editedWall(job, wall, [&](Wall& on) {
    ofList(list, [&]<class Item>(As<Item>) {
      auto& items = Listed<Item>::items(on);
      for (const std::size_t row : rows) items.erase(items.begin() + static_cast<std::ptrdiff_t>(row));
    });
  });
}

}  // namespace ribwright
