#include "core/drawing/template_picture.h"

#include <algorithm>
#include <optional>

#include "core/drawing/broken_scale.h"
#include "core/drawing/screw_marks.h"
#include "core/drawing/shown_length.h"
#include "core/drawing/text_extent.h"

namespace ribwright {
namespace {

constexpr double sheetAcross = 30;  // across the sheet
constexpr double bottomRoom = 25;   // for what stands before the bottom end
constexpr double rightRoom = 8;     // for "top end"
constexpr double rowTick = 2;       // beyond the sheet's edges
constexpr double besideRows = 2;    // between labels of neighbouring rows
constexpr double startEdge = 1.4;   // the starting edge
constexpr double jag = 2;           // of the line where the sheet is broken off

double labelLine() { return lineOf(siteText) + 0.8; }

// What is said of one row.
struct RowLabel {
  std::string ordinate, space, name, holes;  // space: from the row before, or the bottom end
};

std::vector<RowLabel> labelsOf(const DrillWall& wall, const DrillBatch& batch, const std::vector<OffsetSet>& sets) {
  std::vector<RowLabel> labels;
  Length before;
  for (std::size_t i = 0; i < batch.rows.size(); ++i) {
    const BatchRow& row = batch.rows[i];
    RowLabel label;
    label.ordinate = dimensionText(row.s, wall.style);
    label.space = dimensionText(row.s - before, wall.style);
    label.name = rowName(wall, row);
    for (std::size_t set = 0; set < sets.size(); ++set) {
      const auto& rows = sets[set].rows;
      if (std::find(rows.begin(), rows.end(), i) == rows.end()) continue;
      label.holes = wall.say("template.holes", {{"count", std::int64_t(row.offsets.size())}, {"set", setLetter(set)}});
    }
    if (row.sheets < static_cast<std::int32_t>(batch.pieces.size()))
      label.holes += ", " + wall.say("template.lowest", {{"count", std::int64_t(row.sheets)}});
    labels.push_back(std::move(label));
    before = row.s;
  }
  return labels;
}

double widest(const std::vector<RowLabel>& labels, const std::function<const std::string&(const RowLabel&)>& of) {
  double width = 0;
  for (const RowLabel& label : labels) width = std::max(width, widthOf(of(label), siteText, true));
  return width;
}

// Where rows and labels stand, from the left end of the sheet.
struct RowPlaces {
  bool level = true;                 // labels lie; else they read upward
  double names = 0;                  // height of the room for names and holes, upward
  std::vector<double> spots;         // x of each row, 0 at the bottom end
  double ordinates = 0, spaces = 0;  // heights of their rooms
};

std::vector<double> spotsFor(const std::vector<double>& spaces, double first, double between, double width) {
  std::vector<double> least(spaces.size(), between);
  least.front() = first;
  least.back() = first;
  std::vector<double> spots;
  double x = 0;
  for (const double space : brokenSpaces(spaces, least, width)) spots.push_back(x += space);
  if (!spots.empty()) spots.pop_back();  // the top end
  return spots;
}

std::string uprightName(const RowLabel& label) { return label.name + " · " + label.holes; }

RowPlaces placesOf(const DrillBatch& batch, const std::vector<RowLabel>& labels, std::size_t from, double width,
                   Length length) {
  std::vector<double> spaces;
  Length before = from == 0 ? Length() : batch.rows[from - 1].s;
  for (std::size_t i = from; i < from + labels.size(); ++i) {
    spaces.push_back((batch.rows[i].s - before).inMillimetres());
    before = batch.rows[i].s;
  }
  spaces.push_back(std::max((length - before).inMillimetres(), 0.0));
  double label = 0;
  for (const auto member : {&RowLabel::ordinate, &RowLabel::space, &RowLabel::name, &RowLabel::holes})
    label = std::max(label, widest(labels, [member](const RowLabel& of) -> const std::string& { return of.*member; }));
  RowPlaces places;
  // The first space has its own label before the first row's, and half of that one's.
  places.spots = spotsFor(spaces, label + besideRows, label + besideRows, width);
  places.level = !places.spots.empty();
  places.ordinates = places.spaces = labelLine();
  places.names = 2 * labelLine();
  if (places.level) return places;
  places.spots = spotsFor(spaces, labelLine(), labelLine(), width);
  if (places.spots.empty()) return places;
  places.ordinates = widest(labels, [](const RowLabel& of) -> const std::string& { return of.ordinate; }) + 1;
  places.spaces = widest(labels, [](const RowLabel& of) -> const std::string& { return of.space; }) + 1;
  places.names = 0;
  for (const RowLabel& of : labels)
    places.names = std::max(places.names, widthOf(uprightName(of), siteText, false) + 1);
  return places;
}

class StackPicture {
 public:
  StackPicture(const DrillWall& wall, const DrillBatch& batch, const StackedSheet& sheet, bool startsOnTop)
      : wall_(wall), batch_(batch), sheet_(sheet), startsOnTop_(startsOnTop) {}

  void draw(Sketch& sketch, const Box& room, const RowPlaces& places, const std::vector<RowLabel>& labels,
            std::size_t from, bool goesOn) const {
    Box box{room.left + bottomRoom, room.top + places.ordinates + rowTick, room.right - rightRoom, 0};
    box.bottom = box.top + sheetAcross;
    drawSheet(sketch, box, from, goesOn);
    drawEnds(sketch, box, from, goesOn);
    drawHeadings(sketch, room, box, places);
    double before = box.left;
    for (std::size_t i = 0; i < labels.size(); ++i) {
      const double x = box.left + places.spots[i];
      drawRow(sketch, box, x, batch_.rows[from + i]);
      drawLabels(sketch, box, before, x, places, labels[i]);
      before = x;
    }
  }

 private:
  double across(const Box& box, Length offset) const {
    const double part = offset.inMillimetres() / sheet_.width.inMillimetres() * box.height();
    return startsOnTop_ ? box.top + part : box.bottom - part;
  }

  // Outline, starting edge, ribs; jagged where the sheet goes on.
  void drawSheet(Sketch& sketch, const Box& box, std::size_t from, bool goesOn) const {
    for (const Flat& rib : sheet_.ribs) {
      const double y = across(box, rib.from + half(rib.to - rib.from));
      sketch.line({box.left, y}, {box.right, y}, thinLine, Dash::Dashed);
    }
    const double start = across(box, Length()), lead = across(box, sheet_.width);
    sketch.line({box.left, start}, {box.right, start}, startEdge);
    sketch.line({box.left, lead}, {box.right, lead}, outlineLine);
    const auto end = [&](double x, bool broken) {
      if (!broken) return sketch.line({x, box.top}, {x, box.bottom}, outlineLine);
      std::vector<PaperPoint> points;
      for (int i = 0; i <= 8; ++i) points.push_back({x + (i % 2 == 0 ? 0 : jag), box.top + box.height() * i / 8});
      sketch.polyline(points, outlineLine);
    };
    end(box.left, from > 0);
    end(box.right, goesOn);
  }

  void drawEnds(Sketch& sketch, const Box& box, std::size_t from, bool goesOn) const {
    const auto upright = [&](double x, const char* id) {
      sketch.text(textAround({x, box.middle().y}, siteText, true, 90, wall_.say(id)));
    };
    if (from == 0) upright(box.left - 1 - lineOf(siteText) / 2, "template.bottom-end");
    if (!goesOn) upright(box.right + 1.5 + lineOf(siteText) / 2, "template.top-end");
    const auto edge = [&](const char* id, bool upper) {
      const auto lines = wrapped(wall_.say(id), siteText, true, bottomRoom - 9);
      const double first =
          upper ? box.top : box.bottom - siteLine * static_cast<double>(lines.size() - 1) - ascentOf(siteText);
      for (std::size_t i = 0; i < lines.size(); ++i) {
        const double y = first + ascentOf(siteText) + siteLine * static_cast<double>(i);
        sketch.text({{box.left - bottomRoom, y}, siteText, TextAnchor::Start, 0, true, lines[i], -1});
      }
    };
    edge("template.starting-edge", startsOnTop_);
    edge("template.leading-edge", !startsOnTop_);
  }

  // What the lines of figures are.
  void drawHeadings(Sketch& sketch, const Box& room, const Box& box, const RowPlaces& places) const {
    const auto heading = [&](double y, const char* id) {
      sketch.text({{room.left, y},
                   siteText,
                   TextAnchor::Start,
                   0,
                   false,
                   shortened(wall_.say(id), siteText, false, bottomRoom - 2),
                   -1});
    };
    const double under = box.bottom + rowTick;
    heading(room.top + ascentOf(siteText), "template.ordinates");
    heading(under + ascentOf(siteText), "template.spaces");
    heading(under + places.spaces + ascentOf(siteText), "template.rows");
  }

  void drawRow(Sketch& sketch, const Box& box, double x, const BatchRow& row) const {
    sketch.line({x, box.top - rowTick}, {x, box.bottom + rowTick}, thinLine);
    std::vector<std::vector<PaperPoint>> holes;
    for (const Length offset : row.offsets) holes.push_back(markRing(ScrewMark::Structural, {x, across(box, offset)}));
    sketch.marks(std::move(holes));
  }

  void drawLabels(Sketch& sketch, const Box& box, double before, double x, const RowPlaces& places,
                  const RowLabel& label) const {
    const double under = box.bottom + rowTick;
    if (places.level) {
      const auto level = [&](double at, double top, const std::string& words, bool bold) {
        sketch.text({{at, top + ascentOf(siteText)}, siteText, TextAnchor::Middle, 0, bold, words, -1});
      };
      level(x, box.top - rowTick - places.ordinates, label.ordinate, true);
      level((before + x) / 2, under, label.space, false);
      level(x, under + places.spaces, label.name, false);
      level(x, under + places.spaces + labelLine(), label.holes, false);
      return;
    }
    // Reading upward: ordinates from the sheet up, the others from the sheet down.
    const auto upward = [&](double at, double middle, const std::string& words, bool bold) {
      sketch.text(textAround({at, middle}, siteText, bold, 90, words));
    };
    upward(x, box.top - rowTick - 0.5 - widthOf(label.ordinate, siteText, true) / 2, label.ordinate, true);
    upward((before + x) / 2, under + 0.5 + widthOf(label.space, siteText, false) / 2, label.space, false);
    upward(x, under + places.spaces + 0.5 + widthOf(uprightName(label), siteText, false) / 2, uprightName(label),
           false);
  }

  const DrillWall& wall_;
  const DrillBatch& batch_;
  const StackedSheet& sheet_;
  bool startsOnTop_;
};

}  // namespace

std::vector<PageBlock> templatePictures(const DrillWall& wall, const DrillBatch& batch,
                                        const std::vector<OffsetSet>& sets, Lying lying) {
  const StackedSheet sheet = stackedSheet(wall, batch);
  const bool onTop = startsUppermost(wall.layout().direction.hand, lying);
  const std::vector<RowLabel> all = labelsOf(wall, batch, sets);
  const double width = wall.work.width() - bottomRoom - rightRoom;
  const auto most = static_cast<std::size_t>(width / labelLine()) - 1;
  std::vector<PageBlock> pictures;
  for (std::size_t from = 0; from < all.size(); from += most) {
    const std::size_t count = std::min(most, all.size() - from);
    const std::vector<RowLabel> labels(all.begin() + static_cast<std::ptrdiff_t>(from),
                                       all.begin() + static_cast<std::ptrdiff_t>(from + count));
    const bool goesOn = from + count < all.size();
    const RowPlaces places = placesOf(batch, labels, from, width, sheet.length);
    const double height = places.ordinates + sheetAcross + 2 * rowTick + places.spaces + places.names;
    // The wall outlives its blocks; the rest goes with them.
    const auto draw = [&wall, &batch, sheet, onTop, places, labels, from, goesOn](Sketch& sketch, const Box& room) {
      StackPicture(wall, batch, sheet, onTop).draw(sketch, room, places, labels, from, goesOn);
    };
    pictures.push_back({height, draw});
  }
  return pictures;
}

}  // namespace ribwright
