#include "ui/panels/wall_list.h"

#include "core/drawing/shown_length.h"

namespace ribwright {

namespace {

QString stateOf(const Wall& wall, const WallLayout& layout, const LengthStyle& style) {
  if (layout.face.top.vertices().empty()) return WallList::tr("not laid out: see the findings");
  const QString width = QString::fromStdString(shownText(layout.face.width, style, 16, 0));
  switch (wall.cladding) {
    case Cladding::ByOthers:
      return WallList::tr("%1, by others").arg(width);
    case Cladding::Open:
      return WallList::tr("%1, open").arg(width);
    case Cladding::Sheeted:
      break;
  }
  std::size_t sheets = 0;
  for (const SheetRun& run : layout.runs) sheets += run.modules.size();
  const QString arrow = layout.direction.hand == Hand::LeftToRight ? QStringLiteral("→") : QStringLiteral("←");
  return sheets == 1 ? WallList::tr("%1, 1 sheet %2").arg(width, arrow)
                     : WallList::tr("%1, %2 sheets %3").arg(width).arg(sheets).arg(arrow);
}

}  // namespace

WallList::WallList(QWidget* parent) : QListWidget(parent) {
  setObjectName(QStringLiteral("walls"));
  setAccessibleName(tr("Walls"));
  setSpacing(3);
  connect(this, &QListWidget::currentRowChanged, this, [this](int row) {
    if (row >= 0) emit wallChosen(row);
  });
}

void WallList::setWalls(const Job& job, const Plan& plan) {
  const QSignalBlocker quiet(this);
  clear();
  const LengthStyle style{job.units, job.decimalSign};
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    const Wall& wall = job.walls[i];
    QString title = tr("Wall %1").arg(QString::fromStdString(wall.letter));
    if (!wall.name.empty()) title += QStringLiteral(", ") + QString::fromStdString(wall.name);
    addItem(title + QLatin1Char('\n') + stateOf(wall, plan.walls[i]->layout, style));
  }
}

}  // namespace ribwright
