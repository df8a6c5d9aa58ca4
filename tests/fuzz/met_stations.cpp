// At a station a girt stands where the reading says, whatever was read beside it.
#include <algorithm>
#include <map>

#include "tests/fuzz/surveyed_walls.h"

namespace ribwright::fuzz {
namespace {

// Stations at every hole of the girt, and between them some that read far off.
std::vector<GirtReading> readingsAt(const MeasuredWall& wall, int girt, Dice& dice) {
  std::vector<Length> stations;
  for (const Hole& hole : wall.holes().holes) {
    if (hole.kind != HoleKind::Girt && hole.kind != HoleKind::EndLap) continue;
    const SupportRow& row = wall.holes().supports.rows[static_cast<std::size_t>(hole.row)];
    const auto& girts = row.stretches[static_cast<std::size_t>(hole.stretch)].girts;
    if (std::find(girts.begin(), girts.end(), girt) != girts.end()) stations.push_back(hole.u);
  }
  std::sort(stations.begin(), stations.end());
  stations.erase(std::unique(stations.begin(), stations.end()), stations.end());
  std::vector<GirtReading> readings;
  for (const Length u : stations) {
    const Length off = dice.length(-Length::inches(0, 16), Length::inches(0, 16));
    const Length planned = wall.wall().girts[static_cast<std::size_t>(girt)].height;
    if (!readings.empty() && dice.oneIn(2) && u - readings.back().u > Length::nanometres(1))
      readings.push_back({readings.back().u + half(u - readings.back().u), planned * 2, {}, "M", "day"});
    readings.push_back({u, planned + off - Length::nanometres(wall.chalkAt(nm(u))), {}, "M", "day"});
    if (dice.oneIn(3)) readings.back().within = dice.length(Length(), Length::inches(0, 16));
  }
  return readings;
}

const GirtReading& readingAt(const Wall& wall, int girt, Length u) {
  for (const GirtSurvey& survey : wall.survey.girts) {
    if (survey.girt != wall.girts[static_cast<std::size_t>(girt)].id) continue;
    for (const GirtReading& reading : survey.readings) {
      if (reading.u == u) return reading;
    }
  }
  throw std::logic_error("a hole without a station");
}

// What the readings allow a sheet's hole, margins taken off: nothing between stations is asked.
Span allowed(const MeasuredWall& wall, const DrilledHole& drilled, int piece) {
  const Hole& hole = wall.holes().holes[static_cast<std::size_t>(drilled.hole)];
  const SupportRow& row = wall.holes().supports.rows[static_cast<std::size_t>(hole.row)];
  Span span{-(Nm(1) << 50), Nm(1) << 50};
  for (const std::int32_t index : row.stretches[static_cast<std::size_t>(hole.stretch)].girts) {
    const Girt& girt = wall.wall().girts[static_cast<std::size_t>(index)];
    const GirtReading& reading = readingAt(wall.wall(), index, hole.u);
    const GirtFace face = statedGirtFace(wall.job(), girt);
    const Nm edge = wall.chalkAt(nm(hole.u)) + nm(reading.height), within = nm(reading.within.value_or(Length()));
    const Nm above = edge - nm(girt.height) - nm(wall.piece(piece).bottom);
    span.from = std::max(span.from, face.low + above + within + wall.margin(hole.screw));
    span.to = std::min(span.to, face.high + above - within - wall.margin(hole.screw));
  }
  return span;
}

}  // namespace

TEST_CASE("A hole at a station goes by that station's reading alone") {
  int rows = 0;
  SurveyReport report;
  for (int i = 0; i < 500; ++i) {
    Dice dice(kSurveySeed + 5, i);
    Job job = smallSurveyedWall(i);
    const Plan planned = plan(job);
    const WallLayout& layout = planned.walls.front()->layout;
    const WallHoles& holes = planned.walls.front()->holes;
    Wall& wall = job.walls.front();
    std::vector<GirtSurvey> surveys;
    {
      const MeasuredWall before(job, wall, layout, holes);
      for (std::size_t girt = 0; girt < wall.girts.size(); ++girt)
        surveys.push_back({wall.girts[girt].id, readingsAt(before, static_cast<int>(girt), dice)});
    }
    wall.survey.girts = surveys;
    const MeasuredWall measured(job, wall, layout, holes);
    Complaints complaints;
    for (const DrillBatch& batch : drillBatches(job, wall, layout, holes)) {
      for (std::size_t r = 0; r < batch.rows.size(); ++r) {
        const BatchRow& row = batch.rows[r];
        if (row.key.kind != HoleKind::Girt && row.key.kind != HoleKind::EndLap) continue;
        Span room{-(Nm(1) << 50), Nm(1) << 50};
        bool known = true;
        for (const std::int32_t piece : batch.pieces) {
          for (const DrilledHole& drilled : measured.sheet(piece)) {
            if (drilled.row != drilledRow(row)) continue;
            known = known && drilled.known;
            if (!drilled.known || drilled.upright) continue;
            const Span own = allowed(measured, drilled, piece);
            room = {std::max(room.from, own.from), std::min(room.to, own.to)};
          }
        }
        if (!known || room.from == -(Nm(1) << 50)) continue;
        ++rows;
        complaints.check(row.surveyed, whereIn(batch, r) + ": measured at each of its holes, and it does not know");
        complaints.check(nm(row.low) == room.from && nm(row.high) == room.to,
                         whereIn(batch, r) + ": not by the readings at its holes");
      }
    }
    if (report.add(i, job, complaints.text())) return;
  }
  CHECK(rows > 500);
}

}  // namespace ribwright::fuzz
