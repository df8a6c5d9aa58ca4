// A drawing as plain data: made once here, shown on screen, printer, PDF and SVG by painters that decide nothing.
//
// Unit: millimetres on paper. x to the right, y DOWN, from the upper left corner of the page (or of a part that is yet
// to be put on one). Items are painted in their order, so that a later fill hides what it lies over. Doubles are fine
// here: nothing in a drawing decides where metal is, and the same build gives the same doubles everywhere.
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "core/drawing/paper.h"

namespace ribwright {

struct PaperPoint {
  double x = 0, y = 0;
  bool operator==(const PaperPoint&) const = default;
};

// How wide a line is. Pixels are for helpers on a screen that keep their width at any zoom; on paper a pixel is 1/96
// in.
struct StrokeWidth {
  enum class In { MillimetresOnPaper, PixelsOnScreen };
  double size = 0.35;
  In in = In::MillimetresOnPaper;
  bool operator==(const StrokeWidth&) const = default;
};

enum class Dash { Solid, Dashed, Chain };  // chain: long and short, for centre, joint and match lines
enum class Ink { Black, White };

// What an item belongs to, so that it can be picked, named and lit up. Index into Drawing::parts; -1 belongs to
// nothing.
using PartIndex = int;
struct Part {
  enum class Kind { Face, Piece, Opening, Penetration, Girt, Column, Screw, Batch };
  Kind kind = Kind::Face;
  std::string wall;  // letter
  // A piece's mark; an opening's or penetration's id; a girt's id, or "#1" counted from 1 where it has none; a column's
  // number from the left corner; a screw's index into WallHoles::holes; a drill batch's
  // id ("B/1"): all its sheets.
  std::string id;
  bool operator==(const Part&) const = default;
};

struct Stroke {
  std::vector<PaperPoint> points;  // at least two
  bool closed = false;
  StrokeWidth width;
  Dash dash = Dash::Solid;
  PartIndex part = -1;
  bool operator==(const Stroke&) const = default;
};

// Rings with the even-odd rule: the inner ones are holes.
struct Fill {
  std::vector<std::vector<PaperPoint>> rings;
  Ink ink = Ink::Black;
  PartIndex part = -1;
  bool operator==(const Fill&) const = default;
};

enum class TextAnchor { Start, Middle, End };

// One line of text in the paper's font, at the advances of letter_widths.h: no kerning, no ligatures.
struct Text {
  PaperPoint at;        // on the baseline, at the anchor
  double height = 2.5;  // of a capital letter, mm (as ISO 3098 measures lettering)
  TextAnchor anchor = TextAnchor::Start;
  double turn = 0;  // degrees counter-clockwise about `at`; 90 reads upward
  bool bold = false;
  std::string words;  // UTF-8
  PartIndex part = -1;
  bool operator==(const Text&) const = default;
};

using Item = std::variant<Stroke, Fill, Text>;

struct Drawing {
  std::vector<Part> parts;
  std::vector<Item> items;
  bool operator==(const Drawing&) const = default;
};

struct Page {
  PaperSize paper = PaperSize::Letter;
  std::string wall;   // letter of the wall that it shows; empty: of all walls
  std::string title;  // "Wall A, front: page 1 of 2"
  Drawing drawing;
  std::string heading = {};  // "Wall A, front": what it stands under with the pages beside it that say the same
  bool operator==(const Page&) const = default;
};

}  // namespace ribwright
