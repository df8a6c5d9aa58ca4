// A wall's elevation for the screen, as plain data. It is made once for a plan and painted at any zoom: nothing has to
// be placed anew, since every label states the room it may take on the wall.
//
// Unit: millimetres on the wall's face, x = u, y = -z (y down). What keeps its size on the screen is stated in pixels,
// or in heights of the capitals of the screen's labels ("capitals"), which follow the font that a person chose. Zoom is
// pixels per millimetre of wall.
#pragma once

#include <limits>
#include <string>
#include <vector>

#include "core/drawing/along_wall.h"
#include "core/drawing/box.h"
#include "core/drawing/drawing.h"
#include "core/job/job.h"
#include "core/plan/plan.h"
#include "core/words/words.h"

namespace ribwright {

// What a painter turns into a colour that fits light and dark; never the only thing that tells two things apart.
enum class BoardTone { Ground, Sheet, Translucent, Quiet, Steel, Line };

struct BoardLine {
  PaperPoint a, b;
  double left() const { return std::min(a.x, b.x); }
  double right() const { return std::max(a.x, b.x); }
};

// Rings with the even-odd rule.
struct BoardArea {
  std::vector<std::vector<PaperPoint>> rings;
  Box box;
  double left() const { return box.left; }
  double right() const { return box.right; }
};

// Seen from `least` zoom on, up to `most`.
struct ZoomRange {
  double least = 0, most = std::numeric_limits<double>::infinity();
  bool shows(double zoom) const { return zoom >= least && zoom < most; }
  bool operator==(const ZoomRange&) const = default;
};

struct BoardLines {
  AlongWall<BoardLine> lines;
  BoardTone tone = BoardTone::Line;
  double width = 1;  // pixels
  Dash dash = Dash::Solid;
  ZoomRange zoom;
};

struct BoardAreas {
  AlongWall<BoardArea> areas;
  BoardTone tone = BoardTone::Sheet;
};

// A small shape of one size on the screen; each mark is its middle.
struct BoardMark {
  PaperPoint at;
  int index = -1;  // of a screw: into WallHoles::holes
  double left() const { return at.x; }
  double right() const { return at.x; }
};
struct BoardMarks {
  std::vector<PaperPoint> ring;  // about (0, 0), in capitals
  AlongWall<BoardMark> marks;
  BoardTone tone = BoardTone::Line;
  ZoomRange zoom;
};

// One way to write a label, in capitals. The fullest way comes first; the painter takes the first that fits.
struct BoardWords {
  std::string words;
  bool bold = false;
};
struct BoardForm {
  std::vector<std::vector<BoardWords>> lines;  // the first uppermost
  bool upward = false;                         // reads upward, its first line at the left
  double width = 0, height = 0;                // as it lies, in capitals, with the free room round it
};

// No end to the room on this side.
inline constexpr double kNoLimit = 1e9;

struct BoardLabel {
  // Where the words stand at `at` + `off`. Within: in the middle, and inside the room both ways. Under and Over:
  // centred below or above it, within the room across. Before and After: they end or start there, within the room up
  // and down.
  enum class Stand { Within, Under, Over, Before, After };
  Stand stand = Stand::Within;
  Box room;
  PaperPoint at;
  PaperPoint off;  // capitals
  std::vector<BoardForm> forms;
  BoardTone ground = BoardTone::Sheet;  // what the words stand on
  bool framed = false;                  // a frame round the words: a column's number
  bool stays = false;                   // goes to the view's edge rather than out of it: names of girts and columns
  int thing = -1;                       // index into BoardPicture::things
  double left() const { return stays ? -kNoLimit : room.left; }
  double right() const { return stays ? kNoLimit : room.right; }
};

// What can be picked and chosen, but for screws, which are only marks. Rings: what is seen of it from outside; of girts
// and columns the lines along them, open.
struct BoardThing {
  Part part;
  std::vector<std::vector<PaperPoint>> rings;
  bool open = false;
  Box box;
  double left() const { return box.left; }
  double right() const { return box.right; }
};

// Things that are chosen together: the sheets of a drill batch.
struct BoardGroup {
  Part part;
  std::vector<int> things;  // indices into BoardPicture::things
};

struct BoardMargins {
  double left = 0, top = 0, right = 0, bottom = 0;
};

struct BoardPicture {
  std::string letter, title;  // "B"; "Wall B, right end"
  LengthStyle style;
  std::string note;      // what is missing and what to do, where the wall has no sheets; else empty
  std::string held;      // "screw heights from plan: not for drilling"; empty without screws
  Box face;              // all of the wall and its concrete; without extent when nothing could be laid out
  BoardMargins margins;  // what labels beside the face take, in capitals
  // In the order of painting; labels last.
  std::vector<BoardAreas> areas;
  std::vector<BoardLines> lines;
  std::vector<BoardMarks> marks;
  AlongWall<BoardLabel> labels;
  std::vector<BoardMarks> screws;
  std::vector<BoardThing> things;  // pieces first, in hanging order
  std::vector<BoardGroup> groups;
};

BoardPicture boardPicture(const Job& job, const Plan& plan, std::size_t wall, const Words& words);

// Index into `things`; -1: it is not there.
int thingOf(const BoardPicture& picture, const Part& part);
// All that a part is made of; empty: it is not there, or is a screw.
std::vector<int> thingsOf(const BoardPicture& picture, const Part& part);

// Where a part lies on the face: of a screw a point. False: it is not there.
bool placeOf(const BoardPicture& picture, const Part& part, Box& place);

// The first form that fits the label's room; -1: none.
int formAt(const BoardLabel& label, double zoom, double capital);

}  // namespace ribwright
