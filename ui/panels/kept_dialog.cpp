#include "ui/panels/kept_dialog.h"

#include <QDialogButtonBox>
#include <QFileInfo>
#include <QFrame>
#include <QGridLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace ribwright {

namespace {

constexpr int customaryLetters = 96, listLines = 6;

QLabel* plainLabel(const QString& words, QWidget* parent) {
  auto* label = new QLabel(words, parent);
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  return label;
}

QString countText(const std::optional<JobCounts>& counts, int JobCounts::*which) {
  return counts ? QString::number((*counts).*which) : QStringLiteral("–");
}

}  // namespace

KeptDialog::KeptDialog(QWidget* parent) : QDialog(parent), list_(new QTreeWidget(this)) {
  setObjectName(QStringLiteral("keptWork"));
  setWindowTitle(tr("Work that was not saved"));
  list_->setObjectName(QStringLiteral("keptList"));
  list_->setAccessibleName(tr("Kept work"));
  list_->setHeaderLabels({tr("Job"), tr("File"), tr("Kept")});
  list_->setRootIsDecorated(false);
  list_->setMinimumHeight(listLines * fontMetrics().lineSpacing());
  list_->header()->setSectionResizeMode(QHeaderView::ResizeToContents);
  list_->setTextElideMode(Qt::ElideMiddle);
  auto* grid = new QGridLayout;
  makeCounts(grid);
  differs_ = plainLabel({}, this);
  differs_->setObjectName(QStringLiteral("keptDiffers"));
  question_ = makeQuestion();
  auto* buttons = new QHBoxLayout;
  openKept_ = button(tr("Open the &kept work"), "openKept");
  openFile_ = button(tr("Open the &file, keep this for later"), "openKeptFile");
  discard_ = button(tr("&Discard…"), "discardKept");
  later_ = button(tr("&Later"), "keepForLater");
  for (QPushButton* made : {openKept_, openFile_, discard_}) buttons->addWidget(made);
  buttons->addStretch(1);
  buttons->addWidget(later_);
  openKept_->setDefault(true);
  auto* layout = new QVBoxLayout(this);
  layout->addWidget(plainLabel(tr("A window went before its work was saved. The work was kept, and the jobs' files are as "
                                  "they were. Both stay until you decide."),
                               this));
  layout->addWidget(list_, 1);
  layout->addLayout(grid);
  layout->addWidget(differs_);
  layout->addWidget(question_);
  layout->addLayout(buttons);
  connect(list_, &QTreeWidget::currentItemChanged, this, &KeptDialog::showCard);
  connect(list_, &QTreeWidget::itemActivated, openKept_, &QPushButton::click);
  connect(openKept_, &QPushButton::clicked, this, [this] { emit openKeptAsked(chosen()); });
  connect(openFile_, &QPushButton::clicked, this, [this] { emit openFileAsked(chosen()); });
  connect(discard_, &QPushButton::clicked, this, [this] { ask(true); });
  connect(later_, &QPushButton::clicked, this, &QDialog::reject);
  resize(customaryLetters * fontMetrics().averageCharWidth(), sizeHint().height());
}

QPushButton* KeptDialog::button(const QString& words, const char* name) {
  auto* made = new QPushButton(words, this);
  made->setObjectName(QLatin1String(name));
  made->setAutoDefault(true);
  return made;
}

void KeptDialog::makeCounts(QGridLayout* grid) {
  const QString columns[] = {tr("Kept work"), tr("File now")}, rows[] = {tr("Walls"), tr("Openings"), tr("Sheets")};
  const char* names[] = {"keptWalls", "fileWalls", "keptOpenings", "fileOpenings", "keptSheets", "fileSheets"};
  for (int column = 0; column < 2; ++column) grid->addWidget(plainLabel(columns[column], this), 0, column + 1, Qt::AlignRight);
  for (int row = 0; row < 3; ++row) {
    grid->addWidget(plainLabel(rows[row], this), row + 1, 0);
    for (int column = 0; column < 2; ++column) {
      QLabel*& label = counts_[row][column] = plainLabel({}, this);
      label->setObjectName(QLatin1String(names[2 * row + column]));
      grid->addWidget(label, row + 1, column + 1, Qt::AlignRight);
    }
  }
  grid->setHorizontalSpacing(4 * fontMetrics().averageCharWidth());
  grid->setColumnStretch(3, 1);
}

QFrame* KeptDialog::makeQuestion() {
  auto* frame = new QFrame(this);
  frame->setObjectName(QStringLiteral("discardQuestion"));
  frame->setFrameShape(QFrame::StyledPanel);
  auto* layout = new QHBoxLayout(frame);
  layout->addWidget(plainLabel(tr("Discard this kept work? It cannot be brought back."), frame), 1);
  QPushButton* surely = button(tr("D&iscard it"), "discardSurely");
  QPushButton* keep = button(tr("&Go on keeping it"), "discardNot");
  layout->addWidget(surely);
  layout->addWidget(keep);
  connect(surely, &QPushButton::clicked, this, [this] {
    ask(false);
    emit discardAsked(chosen());
  });
  connect(keep, &QPushButton::clicked, this, [this] { ask(false); });
  frame->hide();
  return frame;
}

void KeptDialog::ask(bool really) {
  question_->setVisible(really);
  if (really) question_->findChild<QPushButton*>(QStringLiteral("discardNot"))->setFocus();
}

void KeptDialog::setCards(const std::vector<KeptCard>& cards) {
  cards_ = cards;
  list_->clear();
  for (const KeptCard& card : cards_) {
    const QString file = card.file.isEmpty() ? tr("never saved") : QFileInfo(card.file).fileName();
    auto* item = new QTreeWidgetItem(list_, {card.name.isEmpty() ? tr("no name") : card.name, file, card.when});
    item->setToolTip(1, card.file);
  }
  list_->setCurrentItem(list_->topLevelItem(0));
}

int KeptDialog::chosen() const { return list_->indexOfTopLevelItem(list_->currentItem()); }

void KeptDialog::showCard() {
  ask(false);
  const int index = chosen();
  if (index < 0) return;
  const KeptCard& card = cards_[static_cast<std::size_t>(index)];
  int JobCounts::*const members[] = {&JobCounts::walls, &JobCounts::openings, &JobCounts::sheets};
  for (int row = 0; row < 3; ++row) {
    counts_[row][0]->setText(countText(card.kept, members[row]));
    counts_[row][1]->setText(countText(card.inFile, members[row]));
  }
  differs_->setText(card.differs);
  openFile_->setEnabled(card.inFile.has_value());
}

}  // namespace ribwright
