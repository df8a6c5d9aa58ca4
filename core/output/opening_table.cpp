#include "core/output/opening_table.h"

#include <algorithm>
#include <set>

#include "core/editing/held_edit.h"
#include "core/editing/stated_field_kinds.h"
#include "core/job/by_id.h"
#include "core/job/job_file_joined.h"
#include "core/job/job_file_text.h"
#include "core/job/stated_words.h"
#include "core/output/columns.h"
#include "core/output/figures.h"
#include "core/output/typed_rows.h"
#include "core/units/typed_text.h"

namespace ribwright {
namespace {

using Field = StatedField<Opening>;

std::vector<Field> fieldsOfTable() {
  std::vector<Field> fields = openingFields();
  fields.insert(
      fields.end(),
      {optionalLengthField<Opening, [](auto& o) -> auto& { return o.clearances.jamb;
}
> ("jamb_clearance", "clearances.jamb"), optionalLengthField < Opening, [](auto& o) -> auto& {
  return o.clearances.head;
}
> ("head_clearance", "clearances.head"), optionalLengthField < Opening, [](auto& o) -> auto& {
  return o.clearances.sill;
}
> ("sill_clearance", "clearances.sill"), lengthField < Opening, [](auto& o) -> auto& { return o.frame.face; }
> ("frame_face", "frame.face", false), lengthField < Opening, [](auto& o) -> auto& { return o.frame.bend; }
> ("frame_bend", "frame.bend", false), nameField < Opening, [](auto& o) -> auto& { return o.frame.member; }
, &Job::members > ("frame_member", "frame.member")
}  // namespace
);
return fields;
}  // namespace ribwright

// Columns of the table: wall and column, which is part of "from", stand beside the fields.
struct Columns {
  std::vector<Field> fields = fieldsOfTable();
  std::vector<TypedColumn> asked{{"wall"}};  // then one for each field, then "column"

  Columns() {
    for (const Field& field : fields) asked.push_back({field.name, field.form == CellForm::Length, field.name == "id"});
    asked.push_back({"column", false, false});
  }
  std::size_t of(std::size_t field) const { return field + 1; }
  std::size_t column() const { return fields.size() + 1; }
};

const Columns& columns() {
  static const Columns all;
  return all;
}

bool isFrom(const Field& field) { return field.name == "from"; }

// "column" and "3" are "column 3".
std::string cellText(const TypedRows& rows, std::size_t row, std::size_t field) {
  const std::string text = rows.text(row, columns().of(field));
  const std::string typed(withoutBlanks(text));
  if (!isFrom(columns().fields[field])) return typed;
  const std::string number = rows.text(row, columns().column());
  const std::string_view word = anchorFromWords[static_cast<std::size_t>(Anchor::From::Column)];
  return sameWord(typed, word) ? joined(word, " ", withoutBlanks(number)) : typed;
}

// The openings of a table, taken over one by one.
class TakingOpenings {
 public:
  TakingOpenings(const Job& job, const TypedRows& rows) : before_(job), rows_(rows) { read_.job = job; }

  Outcome<ReadOpenings> all() {
    for (std::size_t row = 0; row < rows_.size() && faults_.size() < mostTableFaults; ++row) take(row);
    if (faults_.empty()) look();
    if (!faults_.empty()) return std::move(faults_);
    return std::move(read_);
  }

 private:
  void fault(std::size_t row, std::size_t column, const std::string& message) {
    faults_.push_back(rows_.fault(row, column, message));
  }

  void take(std::size_t row) {
    const std::string letter(withoutBlanks(rows_.text(row, 0)));
    const Wall* wall = byLetter(before_.walls, letter);
    if (!wall) return fault(row, 0, joined("the job has no wall ", inQuotes(letter)));
    const std::string id = cellText(rows_, row, 0);
    if (id.empty()) return fault(row, 1, "is blank; every opening has a mark");
    const std::string name = joined(letter, "/", id);
    if (!seen_.insert(name).second)
      return fault(row, 1, joined("opening ", inQuotes(id), " of wall ", letter, " stands in the table twice"));
    const Opening* stated = byId(wall->openings, id);
    Opening opening = stated ? *stated : Opening{};
    const std::size_t faultsBefore = faults_.size();
    fill(opening, row, *wall, stated == nullptr);
    if (faults_.size() > faultsBefore) return;
    put(opening, static_cast<std::size_t>(wall - before_.walls.data()), row, stated, name);
  }

  void fill(Opening& opening, std::size_t row, const Wall& wall, bool isNew) {
    for (std::size_t i = 0; i < columns().fields.size(); ++i) {
      const Field& field = columns().fields[i];
      const std::size_t column = columns().of(i);
      if (!rows_.has(column)) {
        if (isNew && field.needed && field.form == CellForm::Length)
          fault(row, 1, joined("is a new opening, which needs a column ", field.name));
        continue;
      }
      std::string wrong = takeCell(field, opening, cellText(rows_, row, i), {before_, wall, rows_.style(column)});
      if (!wrong.empty()) fault(row, column, wrong);
    }
  }

  void put(const Opening& opening, std::size_t wall, std::size_t row, const Opening* stated, const std::string& name) {
    if (stated && *stated == opening) {
      ++read_.alike;
      return;
    }
    auto& openings = read_.job.walls[wall].openings;
    (stated ? read_.changed : read_.added).push_back(name);
    const auto index =
        stated ? static_cast<std::size_t>(stated - before_.walls[wall].openings.data()) : openings.size();
    if (stated)
      openings[index] = opening;
    else
      openings.push_back(opening);
    touched_.push_back({row, wall, index});
  }

  // The job file's own rules.
  void look() {
    for (std::size_t wall = 0; wall < read_.job.walls.size(); ++wall) {
      const bool here = std::any_of(touched_.begin(), touched_.end(), [&](const Touched& t) { return t.wall == wall; });
      if (!here) continue;
      const auto held = ifWallHeld(read_.job, wall);
      if (held) continue;
      for (const Fault& each : held.faults()) faults_.push_back(placed(each, wall));
    }
  }

  Fault placed(const Fault& found, std::size_t wall) const {
    for (const Touched& touched : touched_) {
      const std::string path = joined(itemPath("walls", wall), ".", itemPath("openings", touched.index), ".");
      if (touched.wall != wall || !found.place.starts_with(path)) continue;
      const auto& fields = columns().fields;
      const auto field = std::find_if(fields.begin(), fields.end(),
                                      [&](const Field& f) { return f.path == found.place.substr(path.size()); });
      const auto column = field == fields.end() ? 0 : columns().of(static_cast<std::size_t>(field - fields.begin()));
      return rows_.fault(touched.row, column, found.message);
    }
    return found;
  }

  struct Touched {
    std::size_t row, wall, index;
  };
  const Job& before_;
  const TypedRows& rows_;
  ReadOpenings read_;
  std::set<std::string> seen_;
  std::vector<Touched> touched_;
  std::vector<Fault> faults_;
};

std::string numberOf(const Field& field, const Opening& opening, UnitSystem units) {
  const LengthStyle style{units, '.'};
  const std::string text = field.text(opening, style);
  const auto read = parseLength(text, style);
  return read ? smallLength(read.value(), units) : std::string();
}

std::vector<std::string> rowOf(const Wall& wall, const Opening& opening, UnitSystem units) {
  std::vector<std::string> row{wall.letter};
  for (const Field& field : columns().fields) {
    if (isFrom(field)) {
      const bool column = opening.place.from == Anchor::From::Column;
      row.emplace_back(anchorFromWords[static_cast<std::size_t>(opening.place.from)]);
      row.push_back(column ? std::to_string(opening.place.column) : "");
    } else {
      row.push_back(field.form == CellForm::Length ? numberOf(field, opening, units) : field.text(opening, {}));
    }
  }
  return row;
}

}  // namespace

Table openingTable(const Job& job, UnitSystem units) {
  Table table;
  std::vector<std::string> names{"wall"};
  for (const Field& field : columns().fields) {
    names.push_back(joined(field.name, field.form == CellForm::Length ? "_in" : ""));
    if (isFrom(field)) names.emplace_back("column");
  }
  table.columns = columnsIn(units, std::move(names));
  for (const Wall& wall : job.walls) {
    for (const Opening& opening : wall.openings) table.rows.push_back(rowOf(wall, opening, units));
  }
  return table;
}

Outcome<ReadOpenings> withOpeningsOf(const Job& job, std::string_view csv) {
  const Outcome<TypedRows> rows = TypedRows::read(csv, columns().asked);
  if (!rows) return rows.faults();
  return TakingOpenings(job, rows.value()).all();
}

}  // namespace ribwright
