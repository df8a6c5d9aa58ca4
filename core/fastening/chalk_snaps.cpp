#include "core/fastening/chalk_snaps.h"

#include <algorithm>
#include <map>

#include "core/layout/crossing.h"
#include "core/units/length_text.h"

namespace ribwright {
namespace {

struct Reach {
  Length from, to;
};

// The measured edge: z from the first station to the last.
HeightLine slabEdge(const Wall& wall, const HeightLine& concrete) {
  std::vector<FaceVertex> shifts;
  for (const SlabReading& reading : wall.survey.slab)
    shifts.push_back({reading.u, reading.z - concrete.heightAt(reading.u, Beside::Right)});
  const HeightLine shift(shifts);
  std::vector<Length> places;
  for (const FaceVertex& vertex : shifts) places.push_back(vertex.u);
  for (const FaceVertex& vertex : concrete.vertices()) {
    if (vertex.u > shifts.front().u && vertex.u < shifts.back().u) places.push_back(vertex.u);
  }
  std::sort(places.begin(), places.end());
  places.erase(std::unique(places.begin(), places.end()), places.end());
  std::vector<FaceVertex> edge;
  for (const Length u : places) {
    for (const Beside side : {Beside::Left, Beside::Right}) {
      const FaceVertex vertex{u, shift.heightAt(u, side) + concrete.heightAt(u, side)};
      if (edge.empty() || edge.back() != vertex) edge.push_back(vertex);
    }
  }
  return HeightLine(std::move(edge));
}

// Level runs of the concrete between `from` and `to`.
std::vector<Reach> levelRuns(const HeightLine& concrete, Length from, Length to) {
  std::vector<Reach> runs;
  for (const FaceVertex& vertex : concrete.vertices()) {
    const bool step = vertex.u > from && vertex.u < to;
    if (!step) continue;
    runs.push_back({from, vertex.u});
    from = vertex.u;
  }
  runs.push_back({from, to});
  return runs;
}

// What of a run sheets have to cover.
std::vector<Reach> sheeted(const Reach& run, const WallLayout& layout) {
  std::vector<Reach> parts = {run};
  for (const CutRegion& cut : layout.cuts) {
    if (!cut.reachesFloor) continue;
    std::vector<Reach> left;
    for (const Reach& part : parts) {
      left.push_back({part.from, std::min(part.to, cut.left)});
      left.push_back({std::max(part.from, cut.right), part.to});
    }
    std::erase_if(left, [](const Reach& part) { return part.from >= part.to; });
    parts = std::move(left);
  }
  return parts;
}

ChalkRun chalkRun(const Base& base, const HeightLine& edge, const Reach& run, const std::vector<Reach>& parts,
                  Length asked, Length step) {
  ChalkRun one{run.from, run.to, {}, edge.lowest(parts.front().from, parts.front().to), false};
  Length highest = one.lowest;
  for (const Reach& part : parts) {
    one.lowest = std::min(one.lowest, edge.lowest(part.from, part.to));
    highest = std::max(highest, edge.highest(part.from, part.to));
  }
  one.line = step * wholeTimes(one.lowest - asked, step);
  one.onLedge = base.form == Base::Form::Notch && one.line < highest - base.depth;
  return one;
}

// z at which sheets end.
Length endAt(const Wall& wall, const WallLayout& layout, Length u) {
  if (wall.survey.chalkLine && wall.base.steps.empty()) return *wall.survey.chalkLine;
  return layout.face.bottom.heightAt(u, Beside::Right);
}

// Where, from one vertex of the edge to the next, it lies below `end`.
std::optional<Reach> lowPart(const HeightLine& edge, Length from, Length to, Length end) {
  const Length left = edge.heightAt(from, Beside::Right), right = edge.heightAt(to, Beside::Left);
  if (left >= end && right >= end) return std::nullopt;
  if (left <= end && right <= end) return Reach{from, to};
  const Straight level{{from, end}, {to, end}};
  const Length middle = crossing(straightAt(edge, from, Beside::Right), level).value_or(from);
  return left < end ? Reach{from, middle} : Reach{middle, to};
}

std::vector<Length> cutsOf(const HeightLine& edge, const Reach& part) {
  std::vector<Length> cuts = {part.from};
  for (const FaceVertex& vertex : edge.vertices()) {
    if (vertex.u > cuts.back() && vertex.u < part.to) cuts.push_back(vertex.u);
  }
  cuts.push_back(part.to);
  return cuts;
}

void addOpen(std::vector<OpenEdge>& open, const HeightLine& edge, const Reach& part, Length end, std::int32_t run) {
  const std::vector<Length> cuts = cutsOf(edge, part);
  bool goesOn = false;
  for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
    const auto low = lowPart(edge, cuts[i], cuts[i + 1], end);
    if (!low) {
      goesOn = false;
      continue;
    }
    if (!goesOn || open.back().to != low->from) open.push_back({low->from, low->to, {}, low->from, end, run});
    OpenEdge& one = open.back();
    one.to = low->to;
    for (const auto& [u, side] : {std::pair(low->from, Beside::Right), std::pair(low->to, Beside::Left)}) {
      const Length by = end - edge.heightAt(u, side);
      if (by <= one.by) continue;
      one.by = by;
      one.at = u;
    }
    goesOn = true;
  }
}

std::vector<ChalkMark> marksOf(const Wall& wall, const HeightLine& edge, const std::vector<ChalkRun>& runs) {
  std::map<Length, std::int32_t> places;
  for (const SlabReading& reading : wall.survey.slab) places.emplace(reading.u, 0);
  std::int32_t number = 0;
  for (const Length u : columnsOf(wall.columns)) places[u] = ++number;
  std::vector<ChalkMark> marks;
  for (const auto& [u, column] : places) {
    const auto run = std::find_if(runs.rbegin(), runs.rend(),
                                  [&, at = u](const ChalkRun& one) { return at >= one.from && at <= one.to; });
    if (run != runs.rend()) marks.push_back({u, column, edge.heightAt(u, Beside::Right), run->line});
  }
  return marks;
}

}  // namespace

std::optional<ChalkSnaps> chalkSnaps(const Job& job, const Wall& wall, const WallLayout& layout) {
  const Base::Form form = wall.base.form;
  if (!layout.sheeted || form == Base::Form::OnWall || wall.survey.slab.size() < 2) return std::nullopt;
  const HeightLine edge = slabEdge(wall, layout.face.concrete);
  const Length first = std::max(wall.survey.slab.front().u, Length());
  const Length last = std::min(wall.survey.slab.back().u, layout.face.width);
  if (first >= last) return std::nullopt;
  ChalkSnaps snaps;
  snaps.asked = layout.face.concrete.heightAt(first, Beside::Right) - layout.face.bottom.heightAt(first, Beside::Right);
  for (const Reach& run : levelRuns(layout.face.concrete, first, last)) {
    const std::vector<Reach> parts = sheeted(run, layout);
    if (parts.empty()) continue;
    snaps.runs.push_back(chalkRun(wall.base, edge, run, parts, snaps.asked, tapeMark(job.units)));
    if (form == Base::Form::BaseTrim) continue;
    const auto index = static_cast<std::int32_t>(snaps.runs.size()) - 1;
    for (const Reach& part : parts) addOpen(snaps.open, edge, part, endAt(wall, layout, part.from), index);
  }
  if (snaps.runs.empty()) return std::nullopt;
  snaps.marks = marksOf(wall, edge, snaps.runs);
  return snaps;
}

std::vector<ShortSheet> shortOfLine(const Job& job, const Wall& wall, const WallLayout& layout,
                                    const ChalkSnaps& snaps) {
  std::vector<ShortSheet> sheets;
  const Length trimmed = wall.rakeCut == RakeCut::InPlace ? job.settings.rakeAllowance : Length();
  for (std::size_t i = 0; i < layout.pieces.size(); ++i) {
    const Piece& piece = layout.pieces[i];
    const SheetRun& hangs = layout.runs[static_cast<std::size_t>(piece.run)];
    if (hangs.modules[static_cast<std::size_t>(piece.module)].hung) continue;
    Length by;
    for (const ChalkRun& run : snaps.runs) {
      const Length from = std::max(piece.left, run.from), to = std::min(piece.right, run.to);
      if (from >= to || layout.face.bottom.heightAt(from, Beside::Right) != piece.bottom) continue;
      const Length needed = piece.top - run.line + (piece.rake ? trimmed : Length());
      by = std::max(by, needed - piece.blankLength);
    }
    if (by > Length()) sheets.push_back({static_cast<std::int32_t>(i), by});
  }
  return sheets;
}

}  // namespace ribwright
