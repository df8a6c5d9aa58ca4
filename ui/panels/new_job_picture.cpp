#include "ui/panels/new_job_picture.h"

#include <QEvent>
#include <QLabel>
#include <QVBoxLayout>
#include <set>

#include "core/drawing/board_picture.h"
#include "ui/board/wall_board.h"
#include "ui/panels/elided_label.h"
#include "ui/panels/grade_text.h"
#include "ui/panels/plan_inset.h"

namespace ribwright {

NewJobPicture::NewJobPicture(QWidget* parent)
    : QWidget(parent), plan_(new PlanInset(session_, this)), summary_(new QLabel(this)), behind_(new QLabel(this)) {
  setObjectName(QStringLiteral("newPicture"));
  setAccessibleName(tr("Picture of the new job"));
  plan_->setFocusPolicy(Qt::NoFocus);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(plan_, 0, Qt::AlignHCenter);
  const char* names[] = {"newFront", "newEnd"};
  for (std::size_t i = 0; i < elevations_.size(); ++i) {
    Elevation& each = elevations_[i];
    each = {new ElidedLabel(this), new WallBoard(this)};
    each.board->setObjectName(QLatin1String(names[i]));
    each.board->setMinimumSize(160, 90);
    each.board->setFocusPolicy(Qt::NoFocus);
    each.board->setAttribute(Qt::WA_TransparentForMouseEvents);  // to look at, not to pick from
    layout->addWidget(each.title);
    layout->addWidget(each.board, 1);
  }
  summary_->setObjectName(QStringLiteral("newSummary"));
  summary_->setWordWrap(true);
  behind_->setObjectName(QStringLiteral("newBehind"));
  behind_->setWordWrap(true);
  behind_->setText(gradeSign(Grade::Look) + QLatin1Char(' ') +
                   tr("The picture shows what could be read last; something typed at the left cannot be read."));
  behind_->hide();
  layout->addWidget(summary_);
  layout->addWidget(behind_);
}

void NewJobPicture::setJob(const Job& job) {
  session_.begin(job);
  for (std::size_t i = 0; i < elevations_.size(); ++i) showWall(i);
  summary_->setText(summary());
}

void NewJobPicture::setBehind(bool behind) { behind_->setVisible(behind); }

void NewJobPicture::showWall(std::size_t place) {
  Elevation& each = elevations_[place];
  const bool there = place < session_.job().walls.size();
  each.title->setVisible(there);
  each.board->setVisible(there);
  if (!there) return each.board->setWall(nullptr);
  auto picture =
      std::make_shared<const BoardPicture>(boardPicture(session_.job(), session_.plan(), place, session_.words()));
  each.title->setText(QString::fromStdString(picture->title));
  QFont small = font();
  small.setPointSizeF(small.pointSizeF() * 0.8);
  each.board->setFont(small);
  each.board->setWall(std::move(picture));
  each.board->fit();
}

QString NewJobPicture::summary() const {
  std::set<Length> lengths;
  int sheets = 0, stops = 0, looks = 0;
  for (const WallLayout* layout : session_.plan().layouts()) {
    for (const Piece& piece : layout->pieces) lengths.insert(piece.blankLength);
    sheets += static_cast<int>(layout->pieces.size());
  }
  for (const Finding& finding : session_.plan().findings) {
    stops += finding.grade == Grade::Stop;
    looks += finding.grade == Grade::Look;
  }
  return tr("%n sheets", nullptr, sheets) + QStringLiteral(", ") +
         tr("%n different lengths", nullptr, static_cast<int>(lengths.size())) + QStringLiteral("; ") +
         tr("to stop for: %1, to look at: %2").arg(stops).arg(looks);
}

void NewJobPicture::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) fit();
}

void NewJobPicture::fit() {
  for (const Elevation& each : elevations_) {
    if (each.board) each.board->fit();
  }
}

}  // namespace ribwright
