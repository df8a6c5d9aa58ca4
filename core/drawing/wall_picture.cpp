#include "core/drawing/wall_picture.h"

#include <algorithm>

#include "core/drawing/band_heights.h"
#include "core/drawing/callout.h"
#include "core/drawing/column_marks.h"
#include "core/drawing/dimension_chain.h"
#include "core/drawing/face_picture.h"
#include "core/drawing/girt_lines.h"
#include "core/drawing/hang_sign.h"
#include "core/drawing/hatch.h"
#include "core/drawing/label_block.h"
#include "core/drawing/legend.h"
#include "core/drawing/measured_lines.h"
#include "core/drawing/opening_labels.h"
#include "core/drawing/piece_labels.h"
#include "core/drawing/rib_ends.h"
#include "core/drawing/screw_marks.h"
#include "core/drawing/shown_length.h"
#include "core/drawing/wall_chains.h"

namespace ribwright {

namespace {

constexpr double heightsOff = 8;  // from a corner to its upright dimension
constexpr double offRows = 2.5;   // from the column of girts' heights to it
constexpr double overLegend = 1.5;
constexpr double offMatchLine = 1.5;

void drawCornerHeights(Sketch& sketch, const WallView& view) {
  const HeightLine& steel = view.layout->face.steel;
  const char* id = view.topIsEave ? "paper.eave" : "paper.top";
  const auto draw = [&](double x, double outward, Length height) {
    drawHeight(sketch, view, x, height, outward, heightWords(view, id, height), dimensionText(height, view.style));
  };
  if (view.hasLeftCorner())
    draw(-std::max(heightsOff, roomForRowHeights(view) + offRows), -1, steel.heightAt(view.from, Beside::Right));
  if (view.hasRightCorner()) {
    draw(view.x(view.to) + std::max(heightsOff, roomForHeights(bandHeights(view)) + offRows), 1,
         steel.heightAt(view.to, Beside::Left));
  }
}

// Heights of the steel line where it turns between the corners.
std::vector<Callout> topCallouts(const WallView& view) {
  const WallFace& face = view.layout->face;
  std::vector<Callout> callouts;
  for (const FaceVertex& vertex : face.steel.vertices()) {
    if (vertex.u <= view.from || vertex.u >= view.to) continue;
    const char* id = face.ridge == vertex.u ? "paper.ridge" : "paper.top";
    const LabelBlock label{{{{heightWords(view, id, vertex.z), smallText, false}}}, false};
    callouts.push_back({{label}, {view.at(vertex.u, vertex.z)}, false, -1});
  }
  return callouts;
}

// Where the concrete steps, the height of each level run.
std::vector<Callout> stepCallouts(const WallView& view) {
  const HeightLine& concrete = view.layout->face.concrete;
  const std::vector<FaceVertex>& vertices = concrete.vertices();
  std::vector<Length> places{view.from};
  for (std::size_t i = 1; i < vertices.size(); ++i) {
    const bool step = vertices[i].u == vertices[i - 1].u && vertices[i].z != vertices[i - 1].z;
    if (step && vertices[i].u > view.from && vertices[i].u < view.to) places.push_back(vertices[i].u);
  }
  places.push_back(view.to);
  std::vector<Callout> callouts;
  if (places.size() == 2 && concrete.heightAt(view.from, Beside::Right) == Length()) return callouts;
  for (std::size_t i = 1; i < places.size(); ++i) {
    const Length middle = half(places[i - 1] + places[i]);
    const Length z = concrete.heightAt(middle, Beside::Right);
    const LabelBlock label{{{{heightWords(view, "paper.concrete", z), smallText, false}}}, false};
    callouts.push_back({{label}, {view.at(middle, z)}, true, -1});
  }
  return callouts;
}

std::vector<Callout> jointCallouts(const WallView& view) {
  std::vector<Callout> callouts;
  for (const Length joint : view.wall->expansionJoints) {
    if (joint <= view.from || joint >= view.to) continue;
    const PaperPoint top = view.at(joint, view.layout->face.top.heightAt(joint, Beside::Left));
    const LabelBlock label{{{{view.say("paper.joint"), smallText, false}}}, false};
    callouts.push_back({{label}, {{top.x, top.y - 6}}, false, -1});
  }
  return callouts;
}

void drawMatchMark(Sketch& sketch, const WallView& view, const MatchMark& mark, Length at, double outward) {
  const std::string name = view.say("paper.match", {{"number", mark.number}, {"page", mark.page}});
  const std::string place =
      view.say("paper.match.place", {{"distance", dimensionText(asTapeReads(at, view.style), view.style)}});
  const LabelBlock label{{{{name, smallText, true}}, {{place, smallText, false}}}, true};
  const double besideRows = outward < 0 ? roomForRowHeights(view) : roomForHeights(bandHeights(view));
  const double x = view.x(at) + outward * (besideRows + offMatchLine + label.width() / 2);
  drawLabel(sketch, label, {x, -label.height() / 2}, -1);
}

// Upright lines that come down below the sheets: to the dimensions, and at expansion joints.
std::vector<double> linesUnderWall(const WallView& view) {
  std::vector<double> lines = witnessLines(view);
  for (const Length joint : view.wall->expansionJoints) lines.push_back(view.x(joint));
  std::sort(lines.begin(), lines.end());
  return lines;
}

void drawUnsheeted(Sketch& sketch, const WallView& view) {
  const char* id = view.wall->cladding == Cladding::Open ? "paper.open" : "paper.by-others";
  const LabelBlock label{{{{view.say(id), markText, true}}}, false};
  const PaperPoint middle{view.x(half(view.from + view.to)), view.y(half(lowestSeen(view) + highestSeen(view)))};
  if (sketch.hasRoom(boxAround(label, middle))) return drawLabel(sketch, label, middle, -1);
  drawCallouts(sketch, view, {{{label}, {middle}, true, -1}});
}

}  // namespace

WallPicture wallPicture(const WallView& view, const MatchMark& left, const MatchMark& right) {
  Sketch sketch;
  drawFace(sketch, view);
  std::vector<Callout> callouts = topCallouts(view);
  const auto gather = [&](std::vector<Callout> more) { callouts.insert(callouts.end(), more.begin(), more.end()); };
  gather(jointCallouts(view));
  gather(stepCallouts(view));
  gather(drawOpeningLabels(sketch, view));
  int withoutRoom = 0;
  gather(drawPieceLabels(sketch, view, withoutRoom));
  const int rowsWithoutRoom = drawRowHeights(sketch, view);
  withoutRoom += drawHeights(sketch, view, bandHeights(view), 1);
  drawCornerHeights(sketch, view);
  if (!view.hasLeftCorner()) drawMatchMark(sketch, view, left, view.from, -1);
  if (!view.hasRightCorner()) drawMatchMark(sketch, view, right, view.to, 1);
  const double base = view.y(lowestSeen(view));
  drawStartFlag(sketch, view, base);
  const int columnsWithoutRoom = drawColumnMarks(sketch, view, base, linesUnderWall(view));
  reserveWitnessLines(sketch, view, base);
  withoutRoom += static_cast<int>(drawCallouts(sketch, view, callouts).size());
  if (!view.layout->sheeted) drawUnsheeted(sketch, view);
  withoutRoom += drawWallChains(sketch, view, base);
  drawHangSign(sketch, view, sketch.bounds().bottom + 3);
  drawGirtLines(sketch, view);
  drawMeasuredLines(sketch, view);
  const bool ribs = drawRibEnds(sketch, view), translucent = drawTranslucent(sketch, view);
  const ScrewsShown screws = drawScrewMarks(sketch, view);
  drawLegend(sketch, view, {screws, ribs, translucent, columnsWithoutRoom}, sketch.bounds().bottom + overLegend);
  const Box bounds = sketch.bounds();
  return {std::move(sketch.drawing), bounds, withoutRoom, screws.marksLeftOut, rowsWithoutRoom};
}

}  // namespace ribwright
