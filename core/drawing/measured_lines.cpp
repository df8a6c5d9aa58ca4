#include "core/drawing/measured_lines.h"

#include <algorithm>

#include "core/drawing/height_column.h"
#include "core/fastening/survey_grid.h"

namespace ribwright {
namespace {

constexpr double shortestStroke = 1;

// What this drawing shows of the line that deviations are drawn about.
std::vector<LevelPart> shownParts(const WallView& view, const SurveyLine& line) {
  if (line.of != SurveyLine::Of::Girt) return {{view.x(line.from), view.x(line.to)}};
  std::vector<LevelPart> parts;
  for (const SupportRow& row : view.holes->supports.rows) {
    for (const Stretch& stretch : row.stretches) {
      const auto& girts = stretch.girts;
      if (stretch.steel != Stretch::Steel::Own || std::find(girts.begin(), girts.end(), line.girt) == girts.end())
        continue;
      const Length from = std::max(stretch.from, view.from), to = std::min(stretch.to, view.to);
      if (from >= to) continue;
      for (const LevelPart& part : partsInFace(view, stretch.row, from, to)) parts.push_back(part);
    }
  }
  return parts;
}

// Where it is, upward from z = 0 on paper.
double drawnHeight(const WallView& view, const SurveyLine& line, Length u) {
  for (const SupportRow& row : view.holes->supports.rows) {
    for (const Stretch& stretch : row.stretches) {
      const auto& girts = stretch.girts;
      const bool own = stretch.steel == Stretch::Steel::Own && u >= stretch.from && u <= stretch.to;
      if (own && std::find(girts.begin(), girts.end(), line.girt) != girts.end()) return -view.y(stretch.row);
    }
  }
  return -view.y(plannedHeight(*view.wall, *view.layout, line, u));
}

PaperPoint pointBetween(const PaperPoint& a, const PaperPoint& b, double x) {
  return {x, a.y + (b.y - a.y) * (x - a.x) / (b.x - a.x)};
}

// What of a line from left to right lies within the view.
std::vector<PaperPoint> clipped(const std::vector<PaperPoint>& points, double left, double right) {
  std::vector<PaperPoint> seen;
  for (std::size_t i = 0; i < points.size(); ++i) {
    const PaperPoint& point = points[i];
    if (i > 0 && points[i - 1].x < left && point.x > left) seen.push_back(pointBetween(points[i - 1], point, left));
    if (i > 0 && points[i - 1].x < right && point.x > right) seen.push_back(pointBetween(points[i - 1], point, right));
    if (point.x >= left && point.x <= right) seen.push_back(point);
  }
  return seen;
}

}  // namespace

std::vector<std::vector<PaperPoint>> measuredLines(const WallView& view) {
  std::vector<std::vector<PaperPoint>> lines;
  if (!view.holes || view.layout->face.top.vertices().empty()) return lines;
  for (const SurveyLine& line : surveyLines(*view.wall, *view.layout, view.holes->supports)) {
    if (line.of == SurveyLine::Of::Slab) continue;
    std::vector<PaperPoint> points;
    for (const GirtReading& reading : readingsOf(*view.wall, line)) {
      const Length off = deviationOf(*view.wall, *view.layout, line, reading);
      const double up = drawnHeight(view, line, reading.u) + view.size(off) * deviationEnlarged;
      points.push_back({view.x(reading.u), -up});
    }
    for (const LevelPart& part : shownParts(view, line)) {
      const double left = std::max(part.from, 0.0), right = std::min(part.to, view.x(view.to));
      std::vector<PaperPoint> seen = clipped(points, left, right);
      if (seen.size() > 1) lines.push_back(std::move(seen));
    }
  }
  return lines;
}

void drawMeasuredLines(Sketch& sketch, const WallView& view) {
  for (const std::vector<PaperPoint>& line : measuredLines(view)) {
    for (std::size_t i = 1; i < line.size(); ++i) {
      for (const auto& [a, b] : sketch.clearParts(line[i - 1], line[i], roundText)) {
        if (b.x - a.x >= shortestStroke) sketch.line(a, b, openingLine);
      }
    }
  }
}

}  // namespace ribwright
