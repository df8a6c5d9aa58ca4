// Painting the large wall (334 sheets with ribs, girts, columns, screws and names) at four zooms into 1600 x 900
// pixels, against a painter that is handed the same lines, shapes and glyphs ready made. Prints ratios; judges nothing.
#include <QApplication>
#include <QImage>
#include <QPainter>
#include <cstdio>

#include "core/drawing/board_picture.h"
#include "tests/bench/large_building.h"
#include "ui/painting/board_painter.h"

using namespace ribwright;
using namespace ribwright::bench;

namespace {

Length in(int whole, int eighths = 0) { return Length::inches(whole, 8 * eighths); }

Profile withRibs() {
  Profile profile = ribbed();
  profile.under = in(2);
  profile.section = {{-profile.over, Length()}};
  for (int rib = 0; rib <= 3; ++rib) {
    const Length middle = in(12) * rib;
    for (const auto& [x, y] : {std::pair(-9, 0), std::pair(-4, 10), std::pair(4, 10), std::pair(9, 0)})
      profile.section.push_back({middle + in(0, x), in(0, y)});
  }
  profile.section.push_back({profile.cover + profile.under, Length()});
  return profile;
}

ScrewPattern pattern() {
  ScrewPattern made;
  made.id = "ribs-at-12";
  made.profile = ribbed().id;
  for (const SupportKind kind : {SupportKind::Base, SupportKind::Eave, SupportKind::Girt, SupportKind::Head,
                                 SupportKind::Sill, SupportKind::Jamb})
    made.rows.push_back({kind, Zone::Field, {in(1, 5), in(10), in(14), in(22), in(26), in(33)}, "12", {}});
  made.stitchSpacing = in(18);
  made.stitchScrew = "14";
  return made;
}

Job largeWall() {
  Job job = building(Length::feet(1000), 60);
  job.walls.resize(1);
  job.profiles = {withRibs()};
  job.screws = {{"12", Length::nanometres(5'486'400), Length::inches(0, 32), Length::inches(1, 16), Length()},
                {"14", Length::inches(0, 16), Length::inches(0, 36), Length::inches(0, 56), Length()}};
  job.patterns = {pattern()};
  Wall& wall = job.walls.front();
  wall.pattern = job.patterns.front().id;
  wall.columns.bays.assign(40, Length::feet(25));
  for (int row = 1; row <= 5; ++row) {
    Girt girt;
    girt.id = "g" + std::to_string(row);
    girt.height = Length::feet(4) * row;
    wall.girts.push_back(girt);
  }
  return job;
}

// The same primitives, ready made.
struct Bare {
  std::vector<std::pair<QBrush, QList<QPolygonF>>> shapes;  // areas, then marks
  std::size_t areas = 0;
  SeenBoard seen;
};

Bare collected(const SeenBoard& seen) {
  Bare bare{{}, seen.areas.size(), seen};
  for (const SeenAreas& areas : seen.areas) bare.shapes.push_back({areas.brush, areas.plain});
  for (const SeenMarks& marks : seen.marks) {
    QList<QPolygonF> moved;
    for (const QPointF& place : marks.places) moved << marks.shape.translated(place);
    bare.shapes.push_back({marks.brush, moved});
  }
  return bare;
}

void paintShapes(QPainter& painter, const Bare& bare, std::size_t from, std::size_t to) {
  painter.setPen(Qt::NoPen);
  for (std::size_t i = from; i < to; ++i) {
    painter.setBrush(bare.shapes[i].first);
    for (const QPolygonF& polygon : bare.shapes[i].second) painter.drawPolygon(polygon);
  }
}

void paintBare(QPainter& painter, const Bare& bare) {
  paintShapes(painter, bare, 0, bare.areas);
  for (const SeenAreas& areas : bare.seen.areas) {
    painter.setBrush(areas.brush);
    for (const QPainterPath& path : areas.withHoles) painter.drawPath(path);
  }
  for (const SeenLines& lines : bare.seen.lines) {
    painter.setPen(lines.pen);
    painter.drawLines(lines.crisp);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.drawLines(lines.slanting);
    painter.setRenderHint(QPainter::Antialiasing, false);
  }
  painter.setRenderHint(QPainter::Antialiasing);
  paintShapes(painter, bare, bare.areas, bare.shapes.size());
  const SeenLabels& labels = bare.seen.labels;
  for (const SeenLabels::Plate& plate : labels.plates) painter.fillRect(plate.rect, plate.colour);
  painter.setPen(labels.ink);
  painter.setBrush(Qt::NoBrush);
  for (const QRectF& frame : labels.frames) painter.drawRoundedRect(frame, frame.height() / 2, frame.height() / 2);
  for (const SeenWords& words : labels.level) painter.drawGlyphRun(words.at, words.run);
  painter.rotate(-90);
  for (const SeenWords& words : labels.upward) painter.drawGlyphRun(words.at, words.run);
}

qsizetype primitives(const SeenBoard& seen) {
  qsizetype count = seen.labels.level.size() + seen.labels.upward.size() + seen.labels.plates.size();
  for (const SeenAreas& areas : seen.areas) count += areas.plain.size() + areas.withHoles.size();
  for (const SeenLines& lines : seen.lines) count += lines.crisp.size() + lines.slanting.size();
  for (const SeenMarks& marks : seen.marks) count += marks.places.size();
  return count;
}

void measure(const char* name, const BoardPicture& picture, double zoom) {
  const QRectF area(0, 0, 1600, 900);
  const Box& face = picture.face;
  const BoardView view{area.center() - QPointF(face.middle().x, face.middle().y) * zoom, zoom};
  const BoardInks inks = boardInks(QPalette());
  BoardPainter painter;
  painter.reset(8);
  QImage image(1600, 900, QImage::Format_ARGB32_Premultiplied);
  const auto frame = [&](const auto& paint) {
    QPainter on(&image);
    on.fillRect(area, inks.ground);
    paint(on);
  };
  const double ours = seconds([&] { frame([&](QPainter& on) { painter.paint(on, picture, view, area, inks); }); }, 41);
  const QImage first = image;
  const SeenBoard& seen = painter.gather(picture, view, area, inks);
  const Bare bare = collected(seen);
  const double theirs = seconds([&] { frame([&](QPainter& on) { paintBare(on, bare); }); }, 41);
  std::printf("  %-10s %8lld primitives  board %7.3f ms  bare painter %7.3f ms  ratio %.3f  %s\n", name,
              static_cast<long long>(primitives(seen)), ours * 1e3, theirs * 1e3, ours / theirs,
              first == image ? "same pixels" : "OTHER PIXELS");
}

}  // namespace

int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  const QApplication app(argc, argv);
  const Job job = largeWall();
  const Plan made = plan(job);
  const BoardPicture picture = boardPicture(job, made, 0, Words::of("en"));
  std::printf("wall of 1,000 ft: %zu pieces, %zu screws\n", made.walls[0]->layout.pieces.size(),
              made.walls[0]->holes.holes.size());
  std::printf("  picture made in %.1f ms\n",
              seconds([&] { (void)boardPicture(job, made, 0, Words::of("en")); }, 5) * 1e3);
  const double whole = 1500 / picture.face.width();
  measure("whole", picture, whole);
  measure("half-way", picture, whole * 6);
  double screws = 0;
  for (const BoardMarks& layer : picture.screws) screws = std::max(screws, layer.zoom.least);
  measure("screws", picture, screws);  // as soon as all of them are shown
  measure("near", picture, 1);
}
