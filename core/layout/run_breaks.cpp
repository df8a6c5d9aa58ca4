#include "core/layout/run_breaks.h"

#include <algorithm>

namespace ribwright {

namespace {

class BreakFinder {
 public:
  explicit BreakFinder(const RunFace& face) : face_(face) {}

  RunBreaks find() {
    findBreaks();
    addCrossings();
    return std::move(found_);
  }

 private:
  void addBreak(Length t) {
    if (t > face_.from && t < face_.to) found_.breaks.push_back(t);
  }

  void addVertices(const HeightLine& line) {
    for (const FaceVertex& vertex : line.vertices()) addBreak(vertex.u);
  }

  void sortBreaks() {
    std::sort(found_.breaks.begin(), found_.breaks.end());
    found_.breaks.erase(std::unique(found_.breaks.begin(), found_.breaks.end()), found_.breaks.end());
  }

  void findBreaks() {
    found_.breaks = {face_.from, face_.to};
    addVertices(face_.bottom);
    addVertices(face_.top);
    for (const RunModule& module : face_.modules) {
      addBreak(module.from);
      addBreak(module.to);
    }
    for (const RunCut& cut : face_.cuts) {
      addBreak(cut.from);
      addBreak(cut.to);
      addVertices(cut.lower);
      addVertices(cut.upper);
    }
    sortBreaks();
  }

  // Where boundaries change order between two breaks, a break is added for each crossing; there they meet.
  void addCrossings() {
    ColumnSweep sweep(face_);
    for (std::size_t i = 0; i + 1 < found_.breaks.size(); ++i) {
      sweep.enter(found_.breaks[i], found_.breaks[i + 1]);
      if (sweep.boundaries().size() > 2 || !face_.top.isLevelAt(found_.breaks[i], Beside::Right)) {
        findCrossings(sweep.boundaries(), found_.breaks[i], found_.breaks[i + 1]);
      }
    }
    for (const Meeting& meeting : found_.meetings) addBreak(meeting.t);
    sortBreaks();
    std::stable_sort(found_.meetings.begin(), found_.meetings.end(),
                     [](const Meeting& a, const Meeting& b) { return a.t < b.t; });
  }

  void findCrossings(const std::vector<Boundary>& boundaries, Length left, Length right) {
    for (std::size_t a = 0; a < boundaries.size(); ++a) {
      const Boundary& one = boundaries[a];
      const Length oneLeft = one.heightAt(left, Beside::Right), oneRight = one.heightAt(right, Beside::Left);
      for (std::size_t b = a + 1; b < boundaries.size(); ++b) {
        const Boundary& other = boundaries[b];
        const Length otherLeft = other.heightAt(left, Beside::Right), otherRight = other.heightAt(right, Beside::Left);
        const bool changes =
            (oneLeft < otherLeft && oneRight > otherRight) || (oneLeft > otherLeft && oneRight < otherRight);
        if (!changes) continue;
        const Straight first = one.straight(left, Beside::Right), second = other.straight(left, Beside::Right);
        const auto t = crossing(first, second);
        if (t && *t > left && *t < right) meet(*t, one, other, isFlatter(first, second));
      }
    }
  }

  // Three lines through one point meet at one height: the one that was taken first.
  void meet(Length t, const Boundary& one, const Boundary& other, bool oneIsFlatter) {
    Length z = (oneIsFlatter ? one : other).heightAt(t, Beside::Right);
    for (const Meeting& known : found_.meetings) {
      if (known.t == t && (known.isOf(one) || known.isOf(other))) z = known.z;
    }
    for (const Boundary* boundary : {&one, &other}) found_.meetings.push_back({t, boundary->kind, boundary->index, z});
  }

  const RunFace& face_;
  RunBreaks found_;
};

}  // namespace

Length RunBreaks::heightOf(const Boundary& boundary, Length t, Beside side) const {
  if (!meetings.empty()) {
    auto meeting =
        std::lower_bound(meetings.begin(), meetings.end(), t, [](const Meeting& m, Length at) { return m.t < at; });
    for (; meeting != meetings.end() && meeting->t == t; ++meeting) {
      if (meeting->isOf(boundary)) return meeting->z;
    }
  }
  return boundary.heightAt(t, side);
}

RunBreaks breaksOf(const RunFace& face) { return BreakFinder(face).find(); }

}  // namespace ribwright
