#include "core/drawing/label_block.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace ribwright {

namespace {

constexpr double lineGap = 0.7;
constexpr double runGap = 1.4;

double lineWidth(const LabelLine& line) {
  double width = runGap * static_cast<double>(line.size() - 1);
  for (const LabelRun& run : line) width += widthOf(run.words, run.height, run.bold);
  return width;
}

double tallest(const LabelLine& line) {
  double height = 0;
  for (const LabelRun& run : line) height = std::max(height, run.height);
  return height;
}

struct Span {
  double low, high;
};

double slantAt(double left, double right, double atLeft, double atRight, double x) {
  return right == left ? atLeft : atLeft + (atRight - atLeft) * (x - left) / (right - left);
}

// Heights that a column offers slantAt two places across it; nothing when it does not reach from one to the other.
std::optional<Span> heightsOf(const Column& column, double from, double to) {
  if (column.left > from || column.right < to) return std::nullopt;
  const auto bottom = [&](double x) {
    return slantAt(column.left, column.right, column.bottomLeft, column.bottomRight, x);
  };
  const auto top = [&](double x) { return slantAt(column.left, column.right, column.topLeft, column.topRight, x); };
  return Span{std::max(bottom(from), bottom(to)), std::min(top(from), top(to))};
}

// Spans that touch become one; they come in rising.
std::vector<Span> joined(std::vector<Span> spans) {
  std::sort(spans.begin(), spans.end(), [](const Span& a, const Span& b) { return a.low < b.low; });
  std::vector<Span> all;
  for (const Span& span : spans) {
    constexpr double hair = 1e-6;
    if (!all.empty() && span.low <= all.back().high + hair) {
      all.back().high = std::max(all.back().high, span.high);
    } else {
      all.push_back(span);
    }
  }
  return all;
}

std::vector<Span> common(const std::vector<Span>& a, const std::vector<Span>& b) {
  std::vector<Span> both;
  for (const Span& x : a) {
    for (const Span& y : b) {
      const Span span{std::max(x.low, y.low), std::min(x.high, y.high)};
      if (span.low < span.high) both.push_back(span);
    }
  }
  return both;
}

std::vector<double> breaksOf(const std::vector<Column>& columns) {
  std::vector<double> breaks;
  for (const Column& column : columns) {
    breaks.push_back(column.left);
    breaks.push_back(column.right);
  }
  std::sort(breaks.begin(), breaks.end());
  breaks.erase(std::unique(breaks.begin(), breaks.end()), breaks.end());
  return breaks;
}

// Heights that are inside all along from one place across to another.
std::vector<Span> freeHeights(const std::vector<Column>& columns, const std::vector<double>& breaks, double from,
                              double to) {
  std::vector<Span> free{{-1e9, 1e9}};
  double left = from;
  for (std::size_t i = 0; i <= breaks.size() && left < to; ++i) {
    const double right = i < breaks.size() ? std::min(breaks[i], to) : to;
    if (right <= left) continue;
    std::vector<Span> here;
    for (const Column& column : columns) {
      if (const auto span = heightsOf(column, left, right)) here.push_back(*span);
    }
    free = common(free, joined(std::move(here)));
    left = right;
  }
  return free;
}

// Middles across to try: of every stretch slantAt two breaks that is wide enough.
std::vector<double> middlesAcross(const std::vector<double>& breaks, double width) {
  std::vector<double> middles;
  for (std::size_t i = 0; i < breaks.size(); ++i) {
    for (std::size_t j = i + 1; j < breaks.size(); ++j) {
      if (breaks[j] - breaks[i] >= width) middles.push_back((breaks[i] + breaks[j]) / 2);
    }
  }
  const double centre = (breaks.front() + breaks.back()) / 2;
  std::stable_sort(middles.begin(), middles.end(),
                   [&](double a, double b) { return std::abs(a - centre) < std::abs(b - centre); });
  return middles;
}

}  // namespace

double LabelBlock::along() const {
  double widest = 0;
  for (const LabelLine& line : lines) widest = std::max(widest, lineWidth(line));
  return widest;
}

double LabelBlock::across() const {
  double total = lineGap * static_cast<double>(lines.size() - 1);
  for (const LabelLine& line : lines) total += lineOf(tallest(line));
  return total;
}

Box boxAround(const LabelBlock& block, const PaperPoint& middle) {
  const double w = block.width() / 2, h = block.height() / 2;
  return {middle.x - w, middle.y - h, middle.x + w, middle.y + h};
}

void drawLabel(Sketch& sketch, const LabelBlock& block, const PaperPoint& middle, PartIndex part) {
  double across = -(block.upward ? block.width() : block.height()) / 2;
  for (const LabelLine& line : block.lines) {
    across += ascentOf(tallest(line));
    double along = -lineWidth(line) / 2;
    for (const LabelRun& run : line) {
      const PaperPoint at = block.upward ? PaperPoint{middle.x + across, middle.y - along}
                                         : PaperPoint{middle.x + along, middle.y + across};
      sketch.text({at, run.height, TextAnchor::Start, block.upward ? 90.0 : 0.0, run.bold, run.words, part});
      along += widthOf(run.words, run.height, run.bold) + runGap;
    }
    across += descentOf(tallest(line)) + lineGap;
  }
}

std::vector<PaperPoint> spotsIn(const std::vector<Column>& columns, double width, double tall, double height) {
  std::vector<PaperPoint> spots;
  if (columns.empty()) return spots;
  const std::vector<double> breaks = breaksOf(columns);
  for (const double middle : middlesAcross(breaks, width)) {
    std::vector<double> heights;
    for (const Span& span : freeHeights(columns, breaks, middle - width / 2, middle + width / 2)) {
      if (span.high - span.low >= tall) {
        const bool reachesIt = span.low + tall / 2 <= height && height <= span.high - tall / 2;
        heights.push_back(reachesIt ? height : (span.low + span.high) / 2);
      }
    }
    std::stable_sort(heights.begin(), heights.end(),
                     [&](double a, double b) { return std::abs(a - height) < std::abs(b - height); });
    for (const double at : heights) spots.push_back({middle, -at});
  }
  return spots;
}

}  // namespace ribwright
