#include "core/fastening/survey_grid.h"

#include <algorithm>
#include <map>

#include "core/fastening/measured_faces.h"
#include "core/layout/girt_row.h"

namespace ribwright {
namespace {

void addEave(std::vector<SurveyLine>& lines, const WallSupports& supports) {
  std::optional<SurveyLine> eave;
  for (const SupportRow& row : supports.rows) {
    if (row.kind != SupportKind::Eave) continue;
    for (const Stretch& stretch : row.stretches) {
      if (!eave) eave = SurveyLine{SurveyLine::Of::Eave, std::string(eaveSurveyId), -1, stretch.from, stretch.to};
      eave->from = std::min(eave->from, stretch.from);
      eave->to = std::max(eave->to, stretch.to);
    }
  }
  if (eave) lines.push_back(*eave);
}

void addGirts(std::vector<SurveyLine>& lines, const Wall& wall, const WallLayout& layout) {
  const std::size_t first = lines.size();
  for (std::size_t i = 0; i < wall.girts.size(); ++i) {
    const Girt& girt = wall.girts[i];
    const auto [from, to] = girtReach(girt, layout.face.width);
    if (from < to) lines.push_back({SurveyLine::Of::Girt, girt.id, static_cast<std::int32_t>(i), from, to});
  }
  std::stable_sort(lines.begin() + static_cast<std::ptrdiff_t>(first), lines.end(),
                   [&](const SurveyLine& a, const SurveyLine& b) {
                     return wall.girts[static_cast<std::size_t>(a.girt)].height >
                            wall.girts[static_cast<std::size_t>(b.girt)].height;
                   });
}

// A station, unless there is one for a better reason.
void offer(std::map<Length, SurveyStation>& stations, const SurveyStation& station) {
  const auto [known, fresh] = stations.emplace(station.u, station);
  if (!fresh && station.at < known->second.at) known->second = station;
}

std::map<Length, SurveyStation> columnStations(const Wall& wall, Length width) {
  std::map<Length, SurveyStation> stations;
  std::int32_t number = 0;
  for (const Length u : columnsOf(wall.columns)) {
    ++number;
    if (u >= Length() && u <= width) offer(stations, {u, SurveyStation::At::Column, number});
  }
  return stations;
}

void addMidspans(std::map<Length, SurveyStation>& stations) {
  std::vector<SurveyStation> spans;
  for (auto left = stations.begin(); left != stations.end() && std::next(left) != stations.end(); ++left) {
    const SurveyStation &a = left->second, &b = std::next(left)->second;
    spans.push_back({a.u + half(b.u - a.u), SurveyStation::At::Midspan, a.column});
  }
  for (const SurveyStation& span : spans) offer(stations, span);
}

}  // namespace

std::vector<SurveyLine> surveyLines(const Wall& wall, const WallLayout& layout, const WallSupports& supports) {
  std::vector<SurveyLine> lines;
  addEave(lines, supports);
  addGirts(lines, wall, layout);
  if (wall.base.form != Base::Form::OnWall && layout.face.width > Length())
    lines.push_back({SurveyLine::Of::Slab, {}, -1, Length(), layout.face.width});
  return lines;
}

std::vector<SurveyStation> surveyStations(const Wall& wall, const WallLayout& layout,
                                          const std::vector<SurveyLine>& lines) {
  std::map<Length, SurveyStation> stations = columnStations(wall, layout.face.width);
  const bool columns = !stations.empty();
  if (columns) addMidspans(stations);
  for (const SurveyLine& line : lines) {
    for (const Length end : {line.from, line.to}) offer(stations, {end, SurveyStation::At::GirtEnd, 0});
  }
  if (!columns) addMidspans(stations);
  for (const SurveyLine& line : lines) {
    for (const GirtReading& reading : readingsOf(wall, line))
      offer(stations, {reading.u, SurveyStation::At::Measured, 0});
  }
  std::vector<SurveyStation> inOrder;
  for (const auto& [u, station] : stations) inOrder.push_back(station);
  return inOrder;
}

Length plannedHeight(const Wall& wall, const WallLayout& layout, const SurveyLine& line, Length u) {
  if (line.of == SurveyLine::Of::Eave) return layout.face.steel.heightAt(u, Beside::Right);
  if (line.of == SurveyLine::Of::Slab) return layout.face.concrete.heightAt(u, Beside::Right);
  return wall.girts[static_cast<std::size_t>(line.girt)].height;
}

std::vector<GirtReading> readingsOf(const Wall& wall, const SurveyLine& line) {
  std::vector<GirtReading> readings;
  if (line.of == SurveyLine::Of::Slab) {
    for (const SlabReading& slab : wall.survey.slab) readings.push_back({slab.u, slab.z, {}, {}, {}});
    return readings;
  }
  for (const GirtSurvey& girt : wall.survey.girts) {
    if (!line.id.empty() && girt.girt == line.id) readings = girt.readings;
  }
  return readings;
}

std::optional<GirtReading> readingAt(const Wall& wall, const SurveyLine& line, Length u) {
  for (const GirtReading& reading : readingsOf(wall, line)) {
    if (reading.u == u) return reading;
  }
  return std::nullopt;
}

Length deviationOf(const Wall& wall, const WallLayout& layout, const SurveyLine& line, const GirtReading& reading) {
  const Length planned = plannedHeight(wall, layout, line, reading.u);
  return line.of == SurveyLine::Of::Slab ? reading.height - planned : shiftOf(wall, layout, reading, planned);
}

}  // namespace ribwright
