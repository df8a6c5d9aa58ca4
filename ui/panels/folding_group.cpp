#include "ui/panels/folding_group.h"

#include <QHash>

namespace ribwright {

namespace {

// As a person left them, while the program runs.
QHash<QString, bool>& keptFolds() {
  static QHash<QString, bool> folds;
  return folds;
}

}  // namespace

FoldingGroup::FoldingGroup(const QString& name, const QString& title, bool open, QWidget* parent)
    : QWidget(parent), fold_(new QToolButton(this)), head_(new QVBoxLayout), body_(new QWidget(this)) {
  fold_->setObjectName(name);
  fold_->setText(title);
  fold_->setAccessibleName(title);
  fold_->setCheckable(true);
  fold_->setChecked(keptFolds().value(name, open));
  fold_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
  fold_->setAutoRaise(true);
  fold_->setFocusPolicy(Qt::StrongFocus);
  fold_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
  fold_->setToolTip(title);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(2);
  layout->addWidget(fold_);
  layout->addLayout(head_);
  layout->addWidget(body_);
  body_->setContentsMargins(fontMetrics().averageCharWidth() * 2, 0, 0, 0);
  body_->hide();
  fold_->setArrowType(fold_->isChecked() ? Qt::DownArrow : Qt::RightArrow);
  connect(fold_, &QToolButton::toggled, this, [this, name](bool opened) {
    keptFolds().insert(name, opened);
    show(opened);
  });
}

void FoldingGroup::setFilling(std::function<void(QWidget*)> fill) {
  fill_ = std::move(fill);
  show(isOpen());
}

void FoldingGroup::show(bool open) {
  fold_->setArrowType(open ? Qt::DownArrow : Qt::RightArrow);
  if (open && fill_) std::exchange(fill_, nullptr)(body_);
  body_->setVisible(open);
}

}  // namespace ribwright
