// A drawing being made, and the room on it that is already taken, so that labels find free places by rule and not by
// luck. Unit: mm, y down.
#pragma once

#include <utility>
#include <vector>

#include "core/drawing/box.h"
#include "core/drawing/drawing.h"
#include "core/drawing/taken_room.h"

namespace ribwright {

constexpr double thinLine = 0.35;  // every line that must be read in the wind is at least this
constexpr double openingLine = 0.5;
constexpr double outlineLine = 0.7;
constexpr double textRoom = 0.3;    // clear paper round every text
constexpr double roundText = 0.75;  // where a line gives way: more than half the space between two words of a label
constexpr double smallText = 2.5;   // height of the smallest capitals on paper
constexpr double markText = 3.0;

class Sketch {
 public:
  Drawing drawing;

  PartIndex part(Part::Kind kind, const std::string& wall, const std::string& id);
  void line(const PaperPoint& a, const PaperPoint& b, double width, Dash dash = Dash::Solid, PartIndex part = -1);
  void polyline(std::vector<PaperPoint> points, double width, Dash dash = Dash::Solid, PartIndex part = -1);
  void rectangle(const Box& box, double width);
  void fill(std::vector<PaperPoint> ring, Ink ink, PartIndex part = -1);
  // Many small black shapes that are drawn as one; they keep no text away.
  void marks(std::vector<std::vector<PaperPoint>> rings);
  // A solid arrow head of length `size` with its point at `point`, looking along (dx, dy), a unit vector.
  void arrowHead(const PaperPoint& point, double dx, double dy, double size);
  // Takes its room whether or not it was free; ask hasRoom first where that matters.
  void text(Text text);

  // Keeps texts off a line that is drawn later.
  void reserve(const PaperPoint& a, const PaperPoint& b);

  // No text and no line within textRoom of the box.
  bool hasRoom(const Box& box) const;
  // No text within textRoom of the box.
  bool isFreeOfText(const Box& box) const;
  // A line from a to b would run through no text.
  bool isClear(const PaperPoint& a, const PaperPoint& b) const;
  // The parts of a line from a to b that keep `room` from every text.
  std::vector<std::pair<PaperPoint, PaperPoint>> clearParts(const PaperPoint& a, const PaperPoint& b,
                                                            double room) const;
  // All that is drawn, lines with half their width; a box at the origin when nothing is.
  Box bounds() const;

 private:
  TakenRoom taken_;
};

Box boundsOf(const Drawing& drawing);
void shift(Drawing& drawing, double dx, double dy);
void append(Drawing& to, Drawing from);

}  // namespace ribwright
