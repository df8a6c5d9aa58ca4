#include "ui/panels/start_page.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace ribwright {

StartPage::StartPage(QWidget* parent)
    : QWidget(parent), title_(new QLabel(tr("No job is open"), this)), words_(new QLabel(this)) {
  words_->setText(
      tr("Begin a job from what its plans say, or open a job file to see its walls: which sheet hangs where, how long "
         "each blank is, and what wants a "
         "look before anything is ordered. You can also drop the file here."));
  words_->setWordWrap(true);
  auto* begin = new QPushButton(tr("New job…"), this);
  begin->setObjectName(QStringLiteral("newFirst"));
  connect(begin, &QPushButton::clicked, this, &StartPage::newAsked);
  auto* open = new QPushButton(tr("Open a job…"), this);
  open->setObjectName(QStringLiteral("openFirst"));
  connect(open, &QPushButton::clicked, this, &StartPage::openAsked);
  auto* buttons = new QHBoxLayout;
  buttons->addStretch(1);
  buttons->addWidget(begin);
  buttons->addWidget(open);
  buttons->addStretch(1);
  auto* middle = new QHBoxLayout;
  middle->addStretch(1);
  middle->addWidget(words_);
  middle->addStretch(1);
  auto* layout = new QVBoxLayout(this);
  layout->addStretch(2);
  layout->addWidget(title_, 0, Qt::AlignHCenter);
  layout->addLayout(middle);
  layout->addLayout(buttons);
  layout->addStretch(3);
  fit();
}

void StartPage::fit() {
  QFont large = font();
  large.setPointSizeF(large.pointSizeF() * 1.6);
  title_->setFont(large);
  words_->setFixedWidth(64 * fontMetrics().averageCharWidth());
  layout()->setSpacing(fontMetrics().height());
}

void StartPage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) fit();
}

}  // namespace ribwright
