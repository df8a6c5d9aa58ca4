#include "core/output/survey_table.h"

#include <algorithm>
#include <map>
#include <optional>

#include "core/fastening/measured_faces.h"
#include "core/job/by_id.h"
#include "core/output/columns.h"
#include "core/output/figures.h"
#include "core/output/typed_rows.h"

namespace ribwright {
namespace {

constexpr std::string_view slabName = "slab";
const std::vector<TypedColumn> readingColumns = {{"wall"},
                                                 {"line"},
                                                 {"u", true},
                                                 {"height", true},
                                                 {"within", true, false},
                                                 {"by", false, false},
                                                 {"date", false, false}};
enum ReadingCell { WallCell, LineCell, UCell, HeightCell, WithinCell, ByCell, DateCell };

// One row, with what is wrong with it gathered by column.
class RowReading {
 public:
  RowReading(const TypedRows& rows, std::size_t row, std::vector<Fault>& faults)
      : rows_(rows), row_(row), faults_(faults) {}

  std::string text(ReadingCell column) const { return rows_.text(row_, column); }

  std::optional<Length> length(ReadingCell column) {
    Outcome<Length> read = parseLength(text(column), rows_.style(column));
    if (read) return read.value();
    fault(column, read.faults().front().message);
    return std::nullopt;
  }

  void fault(ReadingCell column, const std::string& message) { faults_.push_back(rows_.fault(row_, column, message)); }

 private:
  const TypedRows& rows_;
  std::size_t row_;
  std::vector<Fault>& faults_;
};

// The readings of one edge, from left to right. `wall`: index into Job::walls.
struct NewEdge {
  std::size_t wall = 0;
  std::string line;
  std::map<Length, GirtReading> readings;
};

// In the order in which the table names them first.
struct NewReadings {
  std::vector<NewEdge> edges;
  std::map<std::size_t, std::map<Length, SlabReading>> slabs;

  std::map<Length, GirtReading>& of(std::size_t wall, const std::string& line) {
    for (NewEdge& edge : edges) {
      if (edge.wall == wall && edge.line == line) return edge.readings;
    }
    edges.push_back({wall, line, {}});
    return edges.back().readings;
  }
};

void addGirt(NewReadings& all, RowReading& row, std::size_t wall, const std::string& line, GirtReading reading) {
  if (!row.text(WithinCell).empty()) {
    const std::optional<Length> within = row.length(WithinCell);
    if (!within) return;
    reading.within = within;
    if (*within < Length()) return row.fault(WithinCell, "a stick check cannot be within less than nothing");
    if (reading.by.empty() || reading.date.empty())
      return row.fault(WithinCell, "a stick check wants the name of who made it, and the date");
  }
  if (!all.of(wall, line).emplace(reading.u, reading).second)
    row.fault(UCell, "there is another reading of this edge at the same station");
}

void addSlab(NewReadings& all, RowReading& row, std::size_t wall, const SlabReading& reading) {
  if (!row.text(WithinCell).empty())
    return row.fault(WithinCell, "the slab edge takes no stick check; give its height");
  if (!all.slabs[wall].emplace(reading.u, reading).second)
    row.fault(UCell, "there is another reading of the slab edge at the same station");
}

void addRow(NewReadings& all, const Job& job, RowReading& row) {
  const Wall* wall = byLetter(job.walls, row.text(WallCell));
  if (!wall) return row.fault(WallCell, "the job has no wall \"" + row.text(WallCell) + "\"");
  const std::string line = row.text(LineCell);
  const bool slab = line == slabName;
  if (!slab && line != eaveSurveyId && (line.empty() || !byId(wall->girts, line)))
    return row.fault(LineCell,
                     "wall " + wall->letter + " has no girt \"" + line + "\"; eave and slab are the other edges");
  const std::optional<Length> u = row.length(UCell), height = row.length(HeightCell);
  if (!u || !height) return;
  if (*u < Length()) return row.fault(UCell, "a station lies on the wall, from its left corner on");
  const auto index = static_cast<std::size_t>(wall - job.walls.data());
  if (slab) return addSlab(all, row, index, {*u, *height});
  addGirt(all, row, index, line, {*u, *height, std::nullopt, row.text(ByCell), row.text(DateCell)});
}

Job with(Job job, const NewReadings& all) {
  for (const NewEdge& edge : all.edges) {
    auto& girts = job.walls[edge.wall].survey.girts;
    auto survey =
        std::find_if(girts.begin(), girts.end(), [&](const GirtSurvey& one) { return one.girt == edge.line; });
    if (survey == girts.end()) survey = girts.insert(girts.end(), GirtSurvey{edge.line, {}});
    survey->readings.clear();
    for (const auto& [u, reading] : edge.readings) survey->readings.push_back(reading);
  }
  for (const auto& [wall, readings] : all.slabs) {
    auto& slab = job.walls[wall].survey.slab;
    slab.clear();
    for (const auto& [u, reading] : readings) slab.push_back(reading);
  }
  return job;
}

}  // namespace

Table surveyTable(const Job& job, UnitSystem units) {
  Table table;
  table.columns = columnsIn(units, {"wall", "line", "u_in", "height_in", "within_in", "by", "date"});
  const auto number = [units](Length length) { return smallLength(length, units); };
  for (const Wall& wall : job.walls) {
    for (const GirtSurvey& survey : wall.survey.girts) {
      for (const GirtReading& one : survey.readings)
        table.rows.push_back({wall.letter, survey.girt, number(one.u), number(one.height),
                              one.within ? number(*one.within) : "", one.by, one.date});
    }
    for (const SlabReading& one : wall.survey.slab)
      table.rows.push_back({wall.letter, std::string(slabName), number(one.u), number(one.z), "", "", ""});
  }
  return table;
}

Outcome<Job> withSurveyOf(const Job& job, std::string_view csv) {
  const Outcome<TypedRows> rows = TypedRows::read(csv, readingColumns);
  if (!rows) return rows.faults();
  NewReadings all;
  std::vector<Fault> faults;
  for (std::size_t i = 0; i < rows.value().size() && faults.size() < mostTableFaults; ++i) {
    RowReading row(rows.value(), i, faults);
    addRow(all, job, row);
  }
  if (!faults.empty()) return faults;
  return with(job, all);
}

}  // namespace ribwright
