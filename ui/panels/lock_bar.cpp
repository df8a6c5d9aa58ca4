#include "ui/panels/lock_bar.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace ribwright {

LockBar::LockBar(QWidget* parent) : QFrame(parent), words_(new QLabel(this)) {
  setObjectName(QStringLiteral("lockBar"));
  setFrameShape(QFrame::StyledPanel);
  words_->setTextFormat(Qt::PlainText);
  words_->setWordWrap(true);
  goOn_ = new QPushButton(tr("Go on here"), this);
  goOn_->setObjectName(QStringLiteral("goOnHere"));
  gone_ = new QPushButton(tr("That window is gone"), this);
  gone_->setObjectName(QStringLiteral("otherIsGone"));
  connect(goOn_, &QPushButton::clicked, this, &LockBar::goOnAsked);
  connect(gone_, &QPushButton::clicked, this, &LockBar::goneAsked);
  auto* layout = new QHBoxLayout(this);
  const int margin = fontMetrics().height() / 4;
  layout->setContentsMargins(2 * margin, margin, margin, margin);
  layout->addWidget(words_, 1);
  layout->addWidget(goOn_);
  layout->addWidget(gone_);
  hide();
}

void LockBar::showTaken(const QString& file, const QString& host, const QString& since, bool maySayGone) {
  const QString where = host.isEmpty() ? tr("another window") : tr("another window on %1").arg(host);
  say(tr("%1 is open in %2 since %3. Here it is open to look at: it can be changed, and saved under another name.")
          .arg(file, where, since));
  goOn_->hide();
  gone_->setVisible(maySayGone);
}

void LockBar::showFree(const QString& file) {
  say(tr("The other window has closed %1. It can be saved from here now.").arg(file));
  goOn_->show();
  gone_->hide();
}

void LockBar::say(const QString& words) {
  words_->setText(words);
  setAccessibleName(words);
  show();
}

}  // namespace ribwright
