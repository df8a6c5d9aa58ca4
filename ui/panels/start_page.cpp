#include "ui/panels/start_page.h"

#include <QEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QTreeWidget>
#include <QVBoxLayout>
#include <algorithm>

namespace ribwright {

namespace {

constexpr int wordsLetters = 64, listLetters = 92, mostRows = 6;
constexpr int isThereRole = Qt::UserRole;

QHBoxLayout* inTheMiddle(QWidget* widget) {
  auto* row = new QHBoxLayout;
  row->addStretch(1);
  row->addWidget(widget);
  row->addStretch(1);
  return row;
}

}  // namespace

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
  auto* actions = new QHBoxLayout;
  actions->setObjectName(QStringLiteral("startActions"));
  actions->addStretch(1);
  actions->addWidget(begin);
  actions->addWidget(open);
  actions->addStretch(1);
  kept_ = makeKept();
  recentPart_ = makeRecent();
  auto* layout = new QVBoxLayout(this);
  layout->addStretch(2);
  layout->addWidget(title_, 0, Qt::AlignHCenter);
  layout->addLayout(inTheMiddle(words_));
  layout->addLayout(actions);
  layout->addLayout(inTheMiddle(kept_));
  layout->addLayout(inTheMiddle(recentPart_));
  layout->addStretch(3);
  fit();
}

QFrame* StartPage::makeKept() {
  auto* frame = new QFrame(this);
  frame->setObjectName(QStringLiteral("keptNotice"));
  frame->setFrameShape(QFrame::StyledPanel);
  keptWords_ = new QLabel(frame);
  keptWords_->setWordWrap(true);
  auto* look = new QPushButton(tr("Look at it…"), frame);
  look->setObjectName(QStringLiteral("showKept"));
  connect(look, &QPushButton::clicked, this, &StartPage::keptAsked);
  auto* layout = new QHBoxLayout(frame);
  layout->addWidget(keptWords_, 1);
  layout->addWidget(look);
  frame->hide();
  return frame;
}

QWidget* StartPage::makeRecent() {
  auto* part = new QWidget(this);
  recent_ = new QTreeWidget(part);
  recent_->setObjectName(QStringLiteral("recentJobs"));
  recent_->setAccessibleName(tr("Jobs opened last"));
  recent_->setHeaderLabels({tr("Job"), tr("File")});
  recent_->setRootIsDecorated(false);
  recent_->setTextElideMode(Qt::ElideMiddle);
  recent_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  recent_->header()->setSectionResizeMode(0, QHeaderView::ResizeToContents);
  open_ = new QPushButton(tr("Open this job"), part);
  open_->setObjectName(QStringLiteral("openRecent"));
  forget_ = new QPushButton(tr("Remove from the list"), part);
  forget_->setObjectName(QStringLiteral("forgetRecent"));
  auto* key = new QShortcut(QKeySequence::Delete, recent_, nullptr, nullptr, Qt::WidgetShortcut);
  connect(key, &QShortcut::activated, forget_, &QPushButton::click);
  connect(recent_, &QTreeWidget::currentItemChanged, this, &StartPage::showChosen);
  connect(recent_, &QTreeWidget::itemActivated, this, &StartPage::openChosen);
  connect(open_, &QPushButton::clicked, this, &StartPage::openChosen);
  connect(forget_, &QPushButton::clicked, this, [this] { emit forgetAsked(chosenPath()); });
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(open_);
  buttons->addWidget(forget_);
  buttons->addStretch(1);
  auto* layout = new QVBoxLayout(part);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(recent_);
  layout->addLayout(buttons);
  part->hide();
  return part;
}

void StartPage::setRecent(const std::vector<RecentRow>& rows) {
  recent_->clear();
  for (const RecentRow& row : rows) {
    const QString path = row.there ? row.path : tr("%1 (not there)").arg(row.path);
    auto* item =
        new QTreeWidgetItem(recent_, {row.name.isEmpty() ? QFileInfo(row.path).completeBaseName() : row.name, path});
    item->setData(0, isThereRole, row.there);
    item->setData(1, isThereRole, row.path);
    item->setToolTip(1, path);
    if (row.there) continue;
    for (int column = 0; column < 2; ++column)
      item->setForeground(column, palette().color(QPalette::Disabled, QPalette::Text));
  }
  if (!rows.empty()) recent_->setCurrentItem(recent_->topLevelItem(0));
  recentPart_->setVisible(!rows.empty());
  fit();
}

void StartPage::setKept(int count) {
  keptWords_->setText(count == 1 ? tr("Work on one job was kept before it was saved.")
                                 : tr("Work on %1 jobs was kept before it was saved.").arg(count));
  kept_->setVisible(count > 0);
}

QString StartPage::chosenPath() const {
  const QTreeWidgetItem* item = recent_->currentItem();
  return item ? item->data(1, isThereRole).toString() : QString();
}

void StartPage::showChosen() {
  const QTreeWidgetItem* item = recent_->currentItem();
  open_->setEnabled(item && item->data(0, isThereRole).toBool());
  forget_->setEnabled(item);
}

void StartPage::openChosen() {
  if (open_->isEnabled()) emit openRecentAsked(chosenPath());
}

void StartPage::fit() {
  QFont large = font();
  large.setPointSizeF(large.pointSizeF() * 1.6);
  title_->setFont(large);
  const int letter = fontMetrics().averageCharWidth();
  words_->setFixedWidth(wordsLetters * letter);
  kept_->setFixedWidth(wordsLetters * letter);
  recentPart_->setFixedWidth(listLetters * letter);
  const int row = std::max(recent_->sizeHintForRow(0), fontMetrics().lineSpacing());
  recent_->setFixedHeight((std::min(recent_->topLevelItemCount(), mostRows) + 2) * row + 2 * recent_->frameWidth());
  layout()->setSpacing(fontMetrics().height());
}

void StartPage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) fit();
}

}  // namespace ribwright
