#include "core/drawing/label_row.h"

#include <algorithm>
#include <cmath>

namespace ribwright {

namespace {

// Each label at its place or, when that is taken, just right of its left neighbour and of barred lines.
std::optional<std::vector<double>> pushedRight(const std::vector<RowLabel>& labels, double left, double right,
                                               double gap, const std::vector<double>& barred) {
  std::vector<double> places;
  double free = left;
  for (const RowLabel& label : labels) {
    double start = std::max(label.wanted - label.width / 2, free);
    for (const double line : barred) {
      if (start - gap / 2 < line && line < start + label.width + gap / 2) start = line + gap / 2;
    }
    if (start + label.width > right) return std::nullopt;
    places.push_back(start + label.width / 2);
    free = start + label.width + gap;
  }
  return places;
}

std::optional<std::vector<double>> pushedLeft(const std::vector<RowLabel>& labels, double left, double right,
                                              double gap, const std::vector<double>& barred) {
  std::vector<RowLabel> mirrored;
  std::vector<double> mirroredLines;
  for (auto label = labels.rbegin(); label != labels.rend(); ++label)
    mirrored.push_back({-label->wanted, label->width});
  for (auto line = barred.rbegin(); line != barred.rend(); ++line) mirroredLines.push_back(-*line);
  auto places = pushedRight(mirrored, -right, -left, gap, mirroredLines);
  if (!places) return places;
  std::reverse(places->begin(), places->end());
  for (double& place : *places) place = -place;
  return places;
}

// Neighbours that would stand too close are gathered and centred together: the least squares of the distances.
std::vector<double> gathered(const std::vector<RowLabel>& labels, double left, double right, double gap) {
  struct Group {
    double sum, width;  // of wanted starts of the group, as if its first label began there; of all its labels
    int count;
    double start(double low, double high) const { return std::max(low, std::min(sum / count, high - width)); }
  };
  std::vector<Group> groups;
  for (const RowLabel& label : labels) {
    groups.push_back({label.wanted - label.width / 2, label.width, 1});
    while (groups.size() > 1) {
      const Group last = groups.back();
      Group& before = groups[groups.size() - 2];
      if (before.start(left, right) + before.width + gap <= last.start(left, right)) break;
      before.sum += last.sum - last.count * (before.width + gap);
      before.width += gap + last.width;
      before.count += last.count;
      groups.pop_back();
    }
  }
  std::vector<double> places;
  for (const Group& group : groups) {
    double start = group.start(left, right);
    for (int i = 0; i < group.count; ++i) {
      const double width = labels[places.size()].width;
      places.push_back(start + width / 2);
      start += width + gap;
    }
  }
  return places;
}

bool isOverLine(const std::vector<RowLabel>& labels, const std::vector<double>& places, double gap,
                const std::vector<double>& barred) {
  for (std::size_t i = 0; i < labels.size(); ++i) {
    for (const double line : barred) {
      if (std::abs(places[i] - line) < (labels[i].width + gap) / 2) return true;
    }
  }
  return false;
}

bool reachesOut(const std::vector<RowLabel>& labels, const std::vector<double>& places, double left, double right) {
  constexpr double hair = 1e-6;
  return places.front() - labels.front().width / 2 < left - hair ||
         places.back() + labels.back().width / 2 > right + hair;
}

}  // namespace

std::optional<std::vector<double>> rowOf(const std::vector<RowLabel>& labels, double left, double right, double gap,
                                         const std::vector<double>& barred) {
  if (labels.empty()) return std::vector<double>{};
  const std::vector<double> centred = gathered(labels, left, right, gap);
  if (reachesOut(labels, centred, left, right)) return std::nullopt;
  if (!isOverLine(labels, centred, gap, barred)) return centred;
  const auto toRight = pushedRight(labels, left, right, gap, barred);
  const auto toLeft = pushedLeft(labels, left, right, gap, barred);
  if (!toRight || !toLeft) return toRight ? toRight : toLeft;
  return farthest(labels, *toRight) <= farthest(labels, *toLeft) ? toRight : toLeft;
}

double farthest(const std::vector<RowLabel>& labels, const std::vector<double>& places) {
  double most = 0;
  for (std::size_t i = 0; i < labels.size(); ++i) most = std::max(most, std::abs(places[i] - labels[i].wanted));
  return most;
}

}  // namespace ribwright
