// Names and figures on the wall and in the margins round it. Rooms never overlap, so that words never do.
#include <algorithm>
#include <set>

#include "core/drawing/board_forms.h"
#include "core/drawing/board_margins.h"
#include "core/drawing/board_parts.h"
#include "core/drawing/board_rooms.h"
#include "core/drawing/girt_lines.h"
#include "core/drawing/opening_labels.h"
#include "core/drawing/piece_labels.h"
#include "core/drawing/shown_length.h"

namespace ribwright {

namespace {

// All sheets of a wall are named at one height: half way up, or nearest to that between two rows of girts.
double namingY(const WallView& view) {
  const WallFace& face = view.layout->face;
  const double top = view.y(face.top.lowest(Length(), face.width)), middle = top / 2;
  std::vector<double> levels{view.y(face.bottom.lowest(Length(), face.width))};
  for (const HeightLabel& row : rowHeights(view)) {
    if (view.y(row.z) > top) levels.push_back(view.y(row.z));
  }
  levels.push_back(top);
  double best = middle, off = kNoLimit;
  for (std::size_t i = 1; levels.size() > 2 && i < levels.size(); ++i) {
    const double between = (levels[i - 1] + levels[i]) / 2;
    if (std::abs(between - middle) < off) best = between;
    off = std::min(off, std::abs(between - middle));
  }
  return best;
}

void addPieceLabels(std::vector<BoardLabel>& labels, const BoardPicture& picture, const WallView& view) {
  const double height = namingY(view);
  for (const Piece& piece : view.layout->pieces) {
    const Box room = largestRoom(seenColumns(view, piece));
    if (room.width() <= 0 || room.height() <= 0) continue;
    BoardLabel label;
    label.room = room;
    label.at = {room.middle().x, height > room.top && height < room.bottom ? height : room.middle().y};
    label.forms = markForms(piece.mark, cutText(piece.blankLength, view.style));
    label.ground = isTranslucent(view, piece) ? BoardTone::Translucent : BoardTone::Sheet;
    label.thing = thingOf(picture, {Part::Kind::Piece, view.layout->letter, piece.mark});
    labels.push_back(std::move(label));
  }
}

std::vector<BoardForm> openingForms(const WallView& view, const CutRegion& cut) {
  const std::string size = sizeWords(view, cut.id);
  std::vector<BoardForm> forms = markForms(cut.id, size);
  if (cut.reachesFloor || cut.penetration || !cut.steelBottom) return forms;
  const std::string sill = view.say("paper.sill", {{"height", dimensionText(*cut.steelBottom, view.style)}});
  forms.insert(forms.begin(), boardForm({{{cut.id, true}}, {{size}}, {{sill}}}));
  return forms;
}

// Openings that overlap, which a finding stops, are named where the first of them leaves room: not at all.
void addOpeningLabels(std::vector<BoardLabel>& labels, const BoardPicture& picture, const WallView& view) {
  std::vector<Box> taken;
  for (const CutRegion& cut : view.layout->cuts) {
    const auto kind = cut.penetration ? Part::Kind::Penetration : Part::Kind::Opening;
    const int thing = thingOf(picture, {kind, view.layout->letter, cut.id});
    if (thing < 0) continue;
    BoardLabel label;
    label.room = largestRoom(openColumns(view, cut));
    if (label.room.width() <= 0 || label.room.height() <= 0) continue;
    if (std::any_of(taken.begin(), taken.end(), [&](const Box& box) { return overlap(box, label.room); })) continue;
    taken.push_back(label.room);
    label.at = label.room.middle();
    label.forms = openingForms(view, cut);
    label.ground = BoardTone::Ground;
    label.thing = thing;
    labels.push_back(std::move(label));
  }
}

}  // namespace

void addLabels(BoardPicture& picture, const WallView& view) {
  std::vector<BoardLabel> labels;
  addPieceLabels(labels, picture, view);
  addOpeningLabels(labels, picture, view);
  addMarginLabels(labels, picture, view);
  picture.margins = marginsOf(labels);
  picture.labels = AlongWall(std::move(labels));
}

}  // namespace ribwright
