#include "ui/tools/tool_kind.h"

#include <QCoreApplication>

namespace ribwright {

namespace {

struct ToolKindTexts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::BoardTools)
};

QString drawn() { return ToolKindTexts::tr("Drag from corner to corner, or click one corner and type width × height"); }

QString hole() { return ToolKindTexts::tr("Drag from corner to corner, or click one corner and type its size"); }

}  // namespace

std::vector<ToolWords> toolWords() {
  return {
      {ToolKind::Choose, "tool:choose", ToolKindTexts::tr("&Choose and move"),
       ToolKindTexts::tr(
           "Click to choose, drag to move, drag an edge to resize; Shift and drag chooses all in a frame"),
       Qt::Key_C},
      {ToolKind::Window, "tool:window", ToolKindTexts::tr("&Window"), drawn(), Qt::Key_W},
      {ToolKind::WalkDoor, "tool:walkDoor", ToolKindTexts::tr("Walk &door"), drawn(), Qt::Key_D},
      {ToolKind::OverheadDoor, "tool:overheadDoor", ToolKindTexts::tr("&Overhead door"), drawn(), Qt::Key_O},
      {ToolKind::SlidingDoor, "tool:slidingDoor", ToolKindTexts::tr("&Sliding door"), drawn(), Qt::Key_S},
      {ToolKind::Louvre, "tool:louvre", ToolKindTexts::tr("&Louvre"), drawn(), Qt::Key_L},
      {ToolKind::Framed, "tool:framed", ToolKindTexts::tr("&Framed opening"), drawn(), Qt::Key_F},
      {ToolKind::RoundHole, "tool:roundHole", ToolKindTexts::tr("&Round hole"), hole(), Qt::Key_R},
      {ToolKind::RectangularHole, "tool:rectangularHole", ToolKindTexts::tr("Rectangular &hole"), hole(), Qt::Key_H},
      {ToolKind::Girt, "tool:girt", ToolKindTexts::tr("&Girt"),
       ToolKindTexts::tr("Click at its height, or type the height"), Qt::Key_G},
      {ToolKind::Column, "tool:column", ToolKindTexts::tr("Colum&n"),
       ToolKindTexts::tr("Click where it stands, or type how far from the left corner"), Qt::Key_N},
      {ToolKind::Joint, "tool:joint", ToolKindTexts::tr("&Expansion joint"),
       ToolKindTexts::tr("Click where sheets part, or type how far from the left corner"), Qt::Key_E},
      {ToolKind::BandLimit, "tool:bandLimit", ToolKindTexts::tr("&Band limit"),
       ToolKindTexts::tr("Click at the height where other sheets begin, or type it"), Qt::Key_B},
      {ToolKind::BaseStep, "tool:baseStep", ToolKindTexts::tr("S&tep of the concrete"),
       ToolKindTexts::tr("Click where the concrete steps, at its new height"), Qt::Key_T},
      {ToolKind::TopPoint, "tool:topPoint", ToolKindTexts::tr("&Point of the top"),
       ToolKindTexts::tr("Click a new point of a free wall's steel line"), Qt::Key_P},
  };
}

}  // namespace ribwright
