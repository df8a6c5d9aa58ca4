#include "ui/tools/tool_kind.h"

#include <QCoreApplication>

namespace ribwright {

namespace {

struct Texts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::BoardTools)
};

QString drawn() { return Texts::tr("Drag from corner to corner, or click one corner and type width × height"); }

QString hole() { return Texts::tr("Drag from corner to corner, or click one corner and type its size"); }

}  // namespace

std::vector<ToolWords> toolWords() {
  return {
      {ToolKind::Choose, "tool:choose", Texts::tr("&Choose and move"),
       Texts::tr("Click to choose, drag to move, drag an edge to resize; Shift and drag chooses all in a frame"),
       Qt::Key_C},
      {ToolKind::Window, "tool:window", Texts::tr("&Window"), drawn(), Qt::Key_W},
      {ToolKind::WalkDoor, "tool:walkDoor", Texts::tr("Walk &door"), drawn(), Qt::Key_D},
      {ToolKind::OverheadDoor, "tool:overheadDoor", Texts::tr("&Overhead door"), drawn(), Qt::Key_O},
      {ToolKind::SlidingDoor, "tool:slidingDoor", Texts::tr("&Sliding door"), drawn(), Qt::Key_S},
      {ToolKind::Louvre, "tool:louvre", Texts::tr("&Louvre"), drawn(), Qt::Key_L},
      {ToolKind::Framed, "tool:framed", Texts::tr("&Framed opening"), drawn(), Qt::Key_F},
      {ToolKind::RoundHole, "tool:roundHole", Texts::tr("&Round hole"), hole(), Qt::Key_R},
      {ToolKind::RectangularHole, "tool:rectangularHole", Texts::tr("Rectangular &hole"), hole(), Qt::Key_H},
      {ToolKind::Girt, "tool:girt", Texts::tr("&Girt"), Texts::tr("Click at its height, or type the height"),
       Qt::Key_G},
      {ToolKind::Column, "tool:column", Texts::tr("Colum&n"),
       Texts::tr("Click where it stands, or type how far from the left corner"), Qt::Key_N},
      {ToolKind::Joint, "tool:joint", Texts::tr("&Expansion joint"),
       Texts::tr("Click where sheets part, or type how far from the left corner"), Qt::Key_E},
      {ToolKind::BandLimit, "tool:bandLimit", Texts::tr("&Band limit"),
       Texts::tr("Click at the height where other sheets begin, or type it"), Qt::Key_B},
      {ToolKind::BaseStep, "tool:baseStep", Texts::tr("S&tep of the concrete"),
       Texts::tr("Click where the concrete steps, at its new height"), Qt::Key_T},
      {ToolKind::TopPoint, "tool:topPoint", Texts::tr("&Point of the top"),
       Texts::tr("Click a new point of a free wall's steel line"), Qt::Key_P},
  };
}

}  // namespace ribwright
