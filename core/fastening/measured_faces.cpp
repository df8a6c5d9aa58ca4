#include "core/fastening/measured_faces.h"

#include <algorithm>

#include "core/layout/girt_row.h"

namespace ribwright {
namespace {

MeasuredFace moved(Length low, Length high, const std::optional<Shift>& shift) {
  if (!shift) return {low, high, false, false};
  return {low + shift->most, high + shift->least, true, false};
}

}  // namespace

Length chalkLineAt(const Wall& wall, const WallLayout& layout, Length u) {
  if (wall.survey.chalkLine) return *wall.survey.chalkLine;
  const HeightLine& bottom = layout.face.bottom;
  return std::min(bottom.heightAt(u, Beside::Left), bottom.heightAt(u, Beside::Right));
}

Length shiftOf(const Wall& wall, const WallLayout& layout, const GirtReading& reading, Length planned) {
  return chalkLineAt(wall, layout, reading.u) + reading.height - planned;
}

MeasuredFaces::MeasuredFaces(const Job& job, const Wall& wall, const WallLayout& layout, const WallSupports& supports)
    : job_(job), wall_(wall), layout_(layout), supports_(supports), girts_(wall.girts.size()) {
  for (const GirtSurvey& survey : wall.survey.girts) {
    if (survey.girt == eaveSurveyId) {
      eave_ = lineOf(survey.readings, [&](Length u) { return layout.face.steel.heightAt(u, Beside::Right); });
    }
    for (std::size_t i = 0; i < wall.girts.size(); ++i) {
      if (wall.girts[i].id != survey.girt) continue;
      girts_[i] = lineOf(survey.readings, [&](Length) { return wall.girts[i].height; });
    }
  }
  slab_ = slabLine();
}

template <class Planned>
std::optional<MeasuredFaces::Line> MeasuredFaces::lineOf(const std::vector<GirtReading>& readings,
                                                         const Planned& planned) const {
  if (readings.empty()) return std::nullopt;
  std::vector<FaceVertex> least, most;
  for (const GirtReading& reading : readings) {
    const Length shift = shiftOf(wall_, layout_, reading, planned(reading.u));
    const Length within = reading.within.value_or(Length());
    least.push_back({reading.u, shift - within});
    most.push_back({reading.u, shift + within});
  }
  return Line{readings.front().u, readings.back().u, HeightLine(std::move(least)), HeightLine(std::move(most))};
}

std::optional<MeasuredFaces::Line> MeasuredFaces::slabLine() const {
  const auto& slab = wall_.survey.slab;
  if (slab.empty() || wall_.base.form == Base::Form::OnWall) return std::nullopt;
  std::vector<FaceVertex> shifts;
  for (const SlabReading& reading : slab)
    shifts.push_back({reading.u, reading.z - layout_.face.concrete.heightAt(reading.u, Beside::Right)});
  const HeightLine line(std::move(shifts));
  return Line{slab.front().u, slab.back().u, line, line};
}

std::optional<Shift> MeasuredFaces::at(const std::optional<Line>& line, Length u) {
  if (!line || u < line->from || u > line->to) return std::nullopt;
  return Shift{line->least.heightAt(u, Beside::Right), line->most.heightAt(u, Beside::Right)};
}

std::optional<Shift> MeasuredFaces::ofGirt(std::int32_t girt, Length u) const {
  return at(girts_[static_cast<std::size_t>(girt)], u);
}

std::optional<Shift> MeasuredFaces::ofEave(Length u) const { return at(eave_, u); }

std::optional<Shift> MeasuredFaces::ofSlab(Length u) const { return at(slab_, u); }

MeasuredFace MeasuredFaces::girtAt(const Stretch& stretch, Length u) const {
  std::optional<MeasuredFace> common;
  for (const std::int32_t girt : stretch.girts) {
    const std::optional<Shift> shift = ofGirt(girt, u);
    if (!shift) return moved(stretch.low, stretch.high, std::nullopt);
    const ScrewFace face = girtFace(wall_.girts[static_cast<std::size_t>(girt)], job_.members);
    const MeasuredFace own = moved(face.low, face.high, shift);
    if (!common) common = own;
    common->low = std::max(common->low, own.low);
    common->high = std::min(common->high, own.high);
  }
  return common.value_or(moved(stretch.low, stretch.high, std::nullopt));
}

std::optional<MeasuredFace> MeasuredFaces::of(const Hole& hole) const {
  const SupportRow& row = supports_.rows[static_cast<std::size_t>(hole.row)];
  const Stretch& stretch = row.stretches[static_cast<std::size_t>(hole.stretch)];
  if (stretch.steel != Stretch::Steel::Own) return MeasuredFace{{}, {}, true, true};
  if (!stretch.known) return std::nullopt;
  if (row.kind == SupportKind::Girt) return girtAt(stretch, hole.u);
  if (row.kind == SupportKind::Base) return moved(stretch.low, stretch.high, ofSlab(hole.u));
  if (!row.alongTop) return moved(stretch.low, stretch.high, std::nullopt);
  const Length line = layout_.face.steel.heightAt(hole.u, Beside::Right);
  const std::optional<Shift> shift = hole.kind == HoleKind::Eave ? ofEave(hole.u) : std::nullopt;
  return moved(stretch.low + line, stretch.high + line, shift);
}

}  // namespace ribwright
