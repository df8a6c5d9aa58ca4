#include "ui/panels/reload_bar.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace ribwright {

ReloadBar::ReloadBar(QWidget* parent) : QFrame(parent), words_(new QLabel(this)) {
  setObjectName(QStringLiteral("reloadBar"));
  setFrameShape(QFrame::StyledPanel);
  words_->setTextFormat(Qt::PlainText);
  words_->setWordWrap(true);
  auto* again = new QPushButton(tr("Read it again"), this);
  again->setObjectName(QStringLiteral("readAgain"));
  auto* later = new QPushButton(tr("Keep what is shown"), this);
  later->setObjectName(QStringLiteral("keepShown"));
  connect(again, &QPushButton::clicked, this, &ReloadBar::readAgainAsked);
  connect(later, &QPushButton::clicked, this, &QWidget::hide);
  auto* layout = new QHBoxLayout(this);
  const int margin = fontMetrics().height() / 4;
  layout->setContentsMargins(2 * margin, margin, margin, margin);
  layout->addWidget(words_, 1);
  layout->addWidget(again);
  layout->addWidget(later);
  hide();
}

void ReloadBar::offer(const QString& fileName) {
  words_->setText(tr("%1 has changed on the disk.").arg(fileName));
  setAccessibleName(words_->text());
  show();
}

}  // namespace ribwright
