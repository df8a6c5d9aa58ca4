// Rows of screws on base, eave, rake, girts, end laps, heads and sills.
#include <algorithm>

#include "core/fastening/metal_between.h"
#include "core/fastening/run_screws.h"
#include "core/fastening/spacing_limits.h"
#include "core/fastening/upright_margin.h"
#include "core/layout/girt_row.h"

namespace ribwright {
namespace {

HoleKind kindOf(SupportKind kind) {
  switch (kind) {
    case SupportKind::Base:
      return HoleKind::Base;
    case SupportKind::Eave:
      return HoleKind::Eave;
    case SupportKind::Rake:
      return HoleKind::Rake;
    case SupportKind::Head:
      return HoleKind::Head;
    case SupportKind::Sill:
      return HoleKind::Sill;
    default:
      return HoleKind::Girt;
  }
}

// Walks one row along one run, sheet by sheet, and sees where its screws stand too far apart.
class RowWalk {
 public:
  RowWalk(RunScrews& screws, const WallLayout& layout, std::int32_t row)
      : screws_(screws),
        layout_(layout),
        row_(screws.holes().supports.rows[static_cast<std::size_t>(row)]),
        index_(row),
        rightward_(screws.sheets().frame().hand == Hand::LeftToRight),
        limits_(spacingLimits(*screws.chosen().pattern)),
        limited_(screws.chosen().pattern->spacingApproval.empty()) {
    const Length left = screws.sheets().run().faceLeft, right = screws.sheets().run().faceRight;
    for (std::size_t i = 0; i < row_.stretches.size(); ++i) {
      if (row_.stretches[i].to >= left && row_.stretches[i].from <= right) order_.push_back(i);
    }
    if (!rightward_) std::reverse(order_.begin(), order_.end());
  }

  void walk() {
    for (std::size_t m = 0; m < screws_.sheets().size() && !order_.empty(); ++m) {
      const StandingSheet& sheet = screws_.sheets()[m];
      const Length end = sheet.line + screws_.sheets().profile().cover;
      while (screws_.sheets().inOrder() && first_ + 1 < order_.size() && toT(order_[first_]) < sheet.line) ++first_;
      for (std::size_t i = first_; i < order_.size() && fromT(order_[i]) <= end; ++i) {
        if (toT(order_[i]) >= sheet.line) walkSheet(m, i);
      }
    }
  }

 private:
  Length fromT(std::size_t stretch) const {
    const Stretch& s = row_.stretches[stretch];
    return screws_.sheets().frame().toHanging(rightward_ ? s.from : s.to);
  }
  Length toT(std::size_t stretch) const {
    const Stretch& s = row_.stretches[stretch];
    return screws_.sheets().frame().toHanging(rightward_ ? s.to : s.from);
  }

  // The end-lap row of this sheet that lies on this stretch's girts, if there is one.
  std::optional<Length> lapRow(const StandingSheet& sheet, const Stretch& stretch) const {
    for (const Length z : sheet.lapRows) {
      for (const std::int32_t girt : stretch.girts) {
        if (girtFace(screws_.wall().girts[static_cast<std::size_t>(girt)], screws_.job().members).row == z) return z;
      }
    }
    return std::nullopt;
  }

  void walkSheet(std::size_t m, std::size_t at) {
    const StandingSheet& sheet = screws_.sheets()[m];
    const std::size_t index = order_[at];
    const Stretch& stretch = row_.stretches[index];
    const std::optional<Length> lap = sheet.lapRows.empty() ? std::nullopt : lapRow(sheet, stretch);
    Place place;
    place.kind = lap ? HoleKind::EndLap : kindOf(row_.kind);
    place.row = index_;
    place.stretch = static_cast<std::int32_t>(index);
    place.module = m;
    place.line = &screws_.chosen().line(place.kind, sheet.corner);
    const Length from = fromT(index), to = toT(index);
    const Length row = lap.value_or(stretch.row);
    if (!place.line->stated) {
      const Length first = std::max(sheet.line, from);
      const Length middle = first + half(std::min(sheet.line + screws_.sheets().profile().cover, to) - first);
      if (screws_.hasMetal(m, middle, heightAt(row, middle))) screws_.noteUnstated(place.kind);
      return;
    }
    for (const Length x : place.line->offsets) {
      place.t = sheet.line + x;
      if (place.t < from || place.t > to) continue;
      if (at + 1 < order_.size() && fromT(order_[at + 1]) == place.t) continue;  // the next stretch takes it
      const Length u = screws_.sheets().frame().toFace(place.t);
      place.z = heightAt(row, place.t);
      place.onFace = holds(stretch, u, row, screws_.margin(*place.line));
      const Came came = screws_.place(place);
      if (came == Came::Taken || came == Came::Merged) served(place, at);
    }
  }

  Length heightAt(Length row, Length t) const {
    if (!row_.alongTop) return row;
    const Length u = screws_.sheets().frame().toFace(t);
    return row + layout_.face.steel.heightAt(u, rightward_ ? Beside::Right : Beside::Left);
  }

  bool holds(const Stretch& stretch, Length u, Length row, Length margin) const {
    if (stretch.steel != Stretch::Steel::Own) return stretch.low + margin <= u && u <= stretch.high - margin;
    if (stretch.endsAtFrom && u < stretch.from + margin) return false;
    if (stretch.endsAtTo && u > stretch.to - margin) return false;
    if (!stretch.known) return true;
    if (row_.alongTop) margin = uprightMargin(margin, layout_.face.steel, stretch.from, stretch.to);
    return stretch.low + margin <= row && row <= stretch.high - margin;
  }

  void served(const Place& place, std::size_t at) {
    if (served_) judge(place, at);
    served_ = place;
    servedAt_ = at;
  }

  void judge(const Place& place, std::size_t at) {
    const bool lap = place.kind == HoleKind::EndLap || served_->kind == HoleKind::EndLap;
    const std::optional<Length> limit = lap ? limits_.atEndLaps : limits_.atSupports;
    if (!limited_ || !limit || place.t - served_->t <= *limit || isBroken(place, at)) return;
    const Length u = screws_.sheets().frame().toFace(place.t), before = screws_.sheets().frame().toFace(served_->t);
    screws_.holes().wideSpaces.push_back(
        {place.kind, index_, screws_.sheets().index(), std::min(u, before), std::max(u, before), place.z, *limit});
  }

  // No steel, or no sheet, somewhere between the screw served before and this one.
  bool isBroken(const Place& place, std::size_t at) const {
    for (std::size_t i = servedAt_; i < at; ++i) {
      if (toT(order_[i]) != fromT(order_[i + 1])) return true;
    }
    const auto height = [this, &place](Length t, bool beyond) {
      if (row_.alongTop) {
        const Beside side = beyond == rightward_ ? Beside::Right : Beside::Left;
        return stretchRow(place) + layout_.face.steel.heightAt(screws_.sheets().frame().toFace(t), side);
      }
      if (place.z == served_->z) return place.z;
      return HeightLine({{served_->t, served_->z}, {place.t, place.z}}).heightAt(t, Beside::Right);
    };
    return !isMetalBetween(screws_.sheets(), served_->module, place.module, served_->t, place.t, height);
  }

  Length stretchRow(const Place& place) const { return row_.stretches[static_cast<std::size_t>(place.stretch)].row; }

  RunScrews& screws_;
  const WallLayout& layout_;
  const SupportRow& row_;
  std::int32_t index_;
  bool rightward_;
  SpacingLimits limits_;
  bool limited_;
  std::vector<std::size_t> order_;  // stretches along the hanging direction
  std::size_t first_ = 0;
  std::optional<Place> served_;
  std::size_t servedAt_ = 0;
};

}  // namespace

void placeRows(RunScrews& screws, const WallLayout& layout) {
  for (std::size_t row = 0; row < screws.holes().supports.rows.size(); ++row) {
    RowWalk(screws, layout, static_cast<std::int32_t>(row)).walk();
  }
}

}  // namespace ribwright
