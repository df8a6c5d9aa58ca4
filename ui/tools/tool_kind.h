// The tools of the board: what a press of the left button begins.
#pragma once

#include <QKeySequence>
#include <QString>
#include <vector>

namespace ribwright {

enum class ToolKind {
  Choose,  // choose, move, resize; drag the view where nothing is taken
  Window,
  WalkDoor,
  OverheadDoor,
  SlidingDoor,
  Louvre,
  Framed,
  RoundHole,
  RectangularHole,
  Girt,
  Column,
  Joint,
  BandLimit,
  BaseStep,
  TopPoint,
};

struct ToolWords {
  ToolKind kind;
  const char* name;  // of its action: "tool:window"
  QString title;     // "&Window"
  QString does;      // what to do with the hand, in a sentence
  QKeySequence key;  // while the board has the keyboard
};

// All of them, in the order in which they are offered.
std::vector<ToolWords> toolWords();

}  // namespace ribwright
