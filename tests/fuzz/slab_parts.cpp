#include "tests/fuzz/slab_parts.h"

#include <algorithm>
#include <cstdlib>

namespace ribwright::fuzz {
namespace {

bool overlap(Length a0, Length a1, Length b0, Length b1) { return std::max(a0, b0) < std::min(a1, b1); }

}  // namespace

Cell cellOf(const Slab& slab, const SlabPart& part) {
  const auto at = [](Nm length) { return Length::nanometres(length); };
  return {at(slab.left),      at(slab.right),     at(part.low.left),
          at(part.low.right), at(part.high.left), at(part.high.right)};
}

bool adjoin(const Cell& a, const Cell& b) {
  if (a.right == b.left) return overlap(a.bottomRight, a.topRight, b.bottomLeft, b.topLeft);
  if (b.right == a.left) return overlap(b.bottomRight, b.topRight, a.bottomLeft, a.topLeft);
  if (a.left != b.left || a.right != b.right) return false;
  const bool bOnA = a.topLeft == b.bottomLeft && a.topRight == b.bottomRight;
  const bool aOnB = b.topLeft == a.bottomLeft && b.topRight == a.bottomRight;
  return bOnA || aOnB;
}

SlabParts::SlabParts(const RunGeometry& run, const Slab& slab, const std::vector<Heights>& used)
    : run_(run), slab_(slab) {
  addSegments();
  low_ = across(run.face->bottom);
  high_ = across(run.face->top);
  if (run.floor) low_ = {std::max(low_.left, *run.floor), std::max(low_.right, *run.floor)};
  if (run.ceiling) high_ = {std::min(high_.left, *run.ceiling), std::min(high_.right, *run.ceiling)};
  high_ = {std::max(low_.left, high_.left), std::max(low_.right, high_.right)};
  lines_ = {low_, high_};
  const auto over = [&](Nm left, Nm right) { return left <= slab.left && slab.right <= right; };
  for (const StatedCut& cut : run.cuts) {
    if (over(cut.left, cut.right)) lines_.insert(lines_.end(), {clipped(cut.lower), clipped(cut.upper)});
  }
  for (const LegCutAway& leg : run.legs) {
    if (over(leg.left, leg.right)) lines_.insert(lines_.end(), {clipped(leg.lower), clipped(leg.upper)});
  }
  for (const Nm end : run.lapEnds) {
    for (const Nm z : {end, end + run.lap}) {
      const Heights line = clipped(StatedLine::level(z));
      const bool bounds = std::any_of(used.begin(), used.end(), [&](const Heights& edge) {
        return edge.left == line.left || edge.right == line.right;
      });
      if (bounds) lines_.push_back(line);
    }
  }
  std::sort(lines_.begin(), lines_.end(), [](const Heights& a, const Heights& b) { return a.sum() < b.sum(); });
  for (std::size_t i = 1; i < lines_.size(); ++i) {
    lines_[i].left = std::max(lines_[i].left, lines_[i - 1].left);
    lines_[i].right = std::max(lines_[i].right, lines_[i - 1].right);
  }
}

void SlabParts::addSegments() {
  const auto add = [&](const StatedLine& line) { segments_.push_back(slab_.over(line)); };
  add(run_.face->bottom);
  add(run_.face->top);
  for (const auto& limit : {run_.floor, run_.ceiling}) {
    if (limit) add(StatedLine::level(*limit));
  }
  for (const StatedCut& cut : run_.cuts) {
    if (cut.left > slab_.left || slab_.right > cut.right) continue;
    add(cut.lower);
    add(cut.upper);
  }
  for (const Nm end : run_.lapEnds) {
    add(StatedLine::level(end));
    add(StatedLine::level(end + run_.lap));
  }
}

// Of all lines that cross it at u, the flattest says how high.
Nm SlabParts::heightAt(const Segment& segment, Nm u) const {
  const Nm own = segment.heightAt(u);
  const Segment* flattest = &segment;
  for (const Segment& other : segments_) {
    if (!flatter(other, *flattest) || std::abs(other.heightAt(u) - own) > segment.slack()) continue;
    const auto place = crossing(segment, other);
    if (place && std::abs(*place - u) <= 1) flattest = &other;
  }
  return flattest->heightAt(u);
}

Heights SlabParts::across(const StatedLine& line) const {
  const Segment& segment = slab_.over(line);
  return {heightAt(segment, slab_.left), heightAt(segment, slab_.right)};
}

Heights SlabParts::clipped(const StatedLine& line) const {
  const Heights z = across(line);
  return {std::clamp(z.left, low_.left, high_.left), std::clamp(z.right, low_.right, high_.right)};
}

std::vector<SlabPart> SlabParts::parts() const {
  std::vector<SlabPart> parts;
  for (std::size_t i = 0; i + 1 < lines_.size(); ++i) {
    const SlabPart part{lines_[i], lines_[i + 1]};
    if (part.area(slab_) > 0) parts.push_back(part);
  }
  return parts;
}

bool SlabParts::between(const StatedLine& lower, const StatedLine& upper, const SlabPart& part) const {
  return SlabPart{clipped(lower), clipped(upper)}.holds(part);
}

bool SlabParts::isCut(const SlabPart& part) const {
  return std::any_of(run_.cuts.begin(), run_.cuts.end(), [&](const StatedCut& cut) {
    return cut.left <= slab_.left && slab_.right <= cut.right && between(cut.lower, cut.upper, part);
  });
}

bool SlabParts::inRange(std::size_t sheet) const {
  return run_.sheets[sheet].left <= slab_.left && slab_.right <= run_.sheets[sheet].right;
}

std::vector<int> SlabParts::tiers(std::size_t sheet, const SlabPart& part) const {
  const bool cutAway = std::any_of(run_.legs.begin(), run_.legs.end(), [&](const LegCutAway& leg) {
    return leg.sheet == sheet && leg.left <= slab_.left && slab_.right <= leg.right &&
           between(leg.lower, leg.upper, part);
  });
  if (!inRange(sheet) || cutAway) return {};
  std::vector<int> tiers;
  for (const Tier& tier : run_.sheets[sheet].tiers) {
    if (between(StatedLine::level(tier.from), StatedLine::level(tier.to), part)) tiers.push_back(tier.number);
  }
  return tiers;
}

}  // namespace ribwright::fuzz
