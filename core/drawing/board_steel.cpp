// Girts with the side to which their flange turns and where they were measured, and columns.
#include <algorithm>
#include <map>
#include <optional>
#include <string>

#include "core/drawing/board_parts.h"
#include "core/drawing/column_marks.h"
#include "core/drawing/height_column.h"
#include "core/drawing/measured_lines.h"

namespace ribwright {

namespace {

constexpr double faceHeight = 12;  // pixels from which on a girt's screw face is shown
constexpr double signSize = 0.5;   // of a girt's sign, in capitals
constexpr double signIn = 1.2;     // from the girt's end to its sign

std::string girtId(const Wall& wall, std::int32_t index) {
  const std::string& id = wall.girts.at(static_cast<std::size_t>(index)).id;
  return id.empty() ? "#" + std::to_string(index + 1) : id;
}

struct GirtLayers {
  std::vector<BoardLine> rows, faces;
  std::map<std::int32_t, std::vector<std::vector<PaperPoint>>> lines;  // by index into Wall::girts
  std::vector<BoardMark> starts[2], ends[2];                           // by flange: up, down
  double highest = 0;
};

void gatherFace(GirtLayers& layers, const WallView& view, const Stretch& stretch, Length from, Length to) {
  if (!stretch.known || stretch.high <= stretch.low) return;
  layers.highest = std::max(layers.highest, view.size(stretch.high - stretch.low));
  for (const Length z : {stretch.low, stretch.high}) {
    for (const LevelPart& part : partsInFace(view, z, from, to))
      layers.faces.push_back({{part.from, view.y(z)}, {part.to, view.y(z)}});
  }
}

void gatherStretch(GirtLayers& layers, const WallView& view, const Stretch& stretch) {
  const Length from = std::max(stretch.from, view.from), to = std::min(stretch.to, view.to);
  if (stretch.steel != Stretch::Steel::Own || from >= to) return;
  gatherFace(layers, view, stretch, from, to);
  const double y = view.y(stretch.row);
  for (const LevelPart& part : partsInFace(view, stretch.row, from, to)) {
    layers.rows.push_back({{part.from, y}, {part.to, y}});
    for (const std::int32_t index : stretch.girts) {
      layers.lines[index].push_back({{part.from, y}, {part.to, y}});
      const bool down = view.wall->girts.at(static_cast<std::size_t>(index)).flange == Girt::Flange::Down;
      layers.starts[down].push_back({{part.from, y}});
      layers.ends[down].push_back({{part.to, y}});
    }
  }
}

std::vector<PaperPoint> sign(Girt::Flange flange, double along) {
  std::vector<PaperPoint> ring = flangeRing(flange, {0, 0});
  for (PaperPoint& point : ring) point = {point.x * signSize / flangeReach + along, point.y * signSize / flangeReach};
  return ring;
}

}  // namespace

void addGirts(BoardPicture& picture, const WallView& view) {
  GirtLayers layers;
  for (const SupportRow& row : view.holes->supports.rows) {
    if (row.kind != SupportKind::Girt) continue;
    for (const Stretch& stretch : row.stretches) gatherStretch(layers, view, stretch);
  }
  for (auto& [index, lines] : layers.lines) {
    const Box box = boxRound(lines);
    picture.things.push_back(
        {{Part::Kind::Girt, view.layout->letter, girtId(*view.wall, index)}, std::move(lines), true, box});
  }
  if (layers.highest > 0)
    picture.lines.push_back(
        {AlongWall(std::move(layers.faces)), BoardTone::Quiet, 1, Dash::Dashed, {faceHeight / layers.highest}});
  picture.lines.push_back({AlongWall(std::move(layers.rows)), BoardTone::Steel, 1, Dash::Dashed, {}});
  for (const bool down : {false, true}) {
    const auto flange = down ? Girt::Flange::Down : Girt::Flange::Up;
    picture.marks.push_back({sign(flange, signIn), AlongWall(std::move(layers.starts[down])), BoardTone::Steel, {}});
    picture.marks.push_back({sign(flange, -signIn), AlongWall(std::move(layers.ends[down])), BoardTone::Steel, {}});
  }
}

void addMeasured(BoardPicture& picture, const WallView& view) {
  std::vector<BoardLine> lines;
  for (const std::vector<PaperPoint>& measured : measuredLines(view)) {
    for (std::size_t i = 1; i < measured.size(); ++i) lines.push_back({measured[i - 1], measured[i]});
  }
  picture.lines.push_back({AlongWall(std::move(lines)), BoardTone::Steel, 2, Dash::Solid, {}});
}

void addColumns(BoardPicture& picture, const WallView& view) {
  std::vector<BoardLine> lines;
  const double foot = view.y(lowestSeen(view));
  for (const ColumnPlace& column : columnsSeen(view)) {
    const HeightLine& steel = view.layout->face.steel;
    const Length head = std::min(steel.heightAt(column.u, Beside::Left), steel.heightAt(column.u, Beside::Right));
    const double x = view.x(column.u);
    lines.push_back({{x, view.y(head)}, {x, foot}});
    const std::vector<std::vector<PaperPoint>> rings{{{x, view.y(head)}, {x, foot}}};
    picture.things.push_back(
        {{Part::Kind::Column, view.layout->letter, std::to_string(column.number)}, rings, true, boxRound(rings)});
  }
  picture.lines.push_back({AlongWall(std::move(lines)), BoardTone::Steel, 1, Dash::Chain, {}});
}

}  // namespace ribwright
