#include "ui/panels/sharing_panel.h"

#include <QCheckBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QScrollArea>
#include <QSplitter>
#include <QTableWidget>
#include <QVBoxLayout>

#include "core/drawing/shown_length.h"
#include "core/editing/job_fields.h"
#include "core/output/figures.h"
#include "ui/panels/blank_view.h"
#include "ui/panels/dressed_rows.h"
#include "ui/panels/field_edits.h"
#include "ui/panels/field_form.h"
#include "ui/panels/form_scroll.h"
#include "ui/session/window_text.h"

namespace ribwright {

namespace {

QString wayText(Blank::Way way) {
  switch (way) {
    case Blank::Way::Alone:
      break;
    case Blank::Way::RakePair:
      return SharingPanel::tr("rake pair");
    case Blank::Way::RipPair:
      return SharingPanel::tr("rip pair");
    case Blank::Way::Drop:
      return SharingPanel::tr("short beyond long");
    case Blank::Way::Gang:
      return SharingPanel::tr("short ones together");
  }
  return {};
}

QString waysText(Blank::Way way) {
  switch (way) {
    case Blank::Way::Alone:
      break;
    case Blank::Way::RakePair:
      return SharingPanel::tr("Rake pairs");
    case Blank::Way::RipPair:
      return SharingPanel::tr("Rip pairs");
    case Blank::Way::Drop:
      return SharingPanel::tr("Short beyond long");
    case Blank::Way::Gang:
      return SharingPanel::tr("Short ones together");
  }
  return {};
}

}  // namespace

SharingPanel::SharingPanel(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      form_(new FieldForm(session, FieldForm::Shows::OwnFields, this)),
      walls_(new QWidget(this)),
      savings_(new QLabel(this)),
      summary_(new QLabel(this)),
      table_(new QTableWidget(this)),
      view_(new BlankView) {
  setObjectName(QStringLiteral("sharing"));
  makeTable();
  auto* scroll = new QScrollArea(this);
  scroll->setWidget(view_);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  auto* parts = new QSplitter(Qt::Horizontal, this);
  parts->setObjectName(QStringLiteral("sharingParts"));
  parts->setChildrenCollapsible(false);
  parts->addWidget(makeSettings());
  parts->addWidget(table_);
  parts->addWidget(scroll);
  const int letter = fontMetrics().averageCharWidth();
  parts->setSizes({26 * letter, 72 * letter, 86 * letter});
  parts->setStretchFactor(2, 1);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  summary_->setObjectName(QStringLiteral("sharingSummary"));
  savings_->setObjectName(QStringLiteral("sharingSavings"));
  const int margin = fontMetrics().height() / 4;
  for (QLabel* words : {summary_, savings_}) {
    words->setTextFormat(Qt::PlainText);
    words->setWordWrap(true);
    words->setTextInteractionFlags(Qt::TextSelectableByMouse);
    words->setContentsMargins(2 * margin, margin, 2 * margin, 0);
    layout->addWidget(words);
  }
  layout->addSpacing(margin);
  layout->addWidget(parts, 1);
  setFocusProxy(table_);
  fit();
}

QWidget* SharingPanel::makeSettings() {
  auto* settings = new QWidget;
  auto* layout = new QVBoxLayout(settings);
  const int margin = fontMetrics().height() / 4;
  layout->setContentsMargins(2 * margin, margin, 2 * margin, margin);
  layout->addWidget(form_);
  walls_->setLayout(new QHBoxLayout);
  walls_->layout()->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(walls_);
  layout->addStretch(1);
  return new FormScroll(settings, this);
}

void SharingPanel::makeTable() {
  table_->setObjectName(QStringLiteral("sharingTable"));
  table_->setAccessibleName(tr("Blanks that give two pieces or more"));
  dressRows(*table_, {tr("Blank"), tr("Gives"), tr("How"), tr("Sheet"), tr("Saves")});
  connect(table_, &QTableWidget::currentCellChanged, this, [this] {
    if (!filling_) showChosen();
  });
  // Brought into view on its wall.
  connect(table_, &QTableWidget::cellActivated, this, [this](int row) {
    if (row < 0 || row >= count()) return;
    const NumberedBlank& blank = blanks_[static_cast<std::size_t>(row)];
    const auto wall = static_cast<std::size_t>(blank.blank.parts.front().piece.wall);
    emit pointedAt({Part::Kind::Piece, session_.plan().walls[wall]->layout.letter, blank.marks.front()});
  });
}

void SharingPanel::refill() {
  blanks_.clear();
  if (session_.isOpen()) {
    blanks_ = sharedBlanks(session_.job(), session_.plan().layouts(), session_.plan().order);
    form_->setPaths({"settings.sharing"});
    fillSavings();
    fillWalls();
  }
  fillTable();
  showChosen();
}

void SharingPanel::finishTyping() { form_->finishTyping(); }

QString SharingPanel::savingText(const WaySaving& saving) const {
  const UnitSystem units = session_.job().units;
  const QString saved = text(exactText(saving.saved, units)), steel = text(areaText(saving.steel, units));
  return units == UnitSystem::Millimetres ? tr("%1 (%2 m²)").arg(saved, steel) : tr("%1 (%2 sq ft)").arg(saved, steel);
}

void SharingPanel::fillSavings() {
  QStringList kinds;
  for (const WaySaving& saving : savingsByWay(session_.job(), session_.plan().layouts())) {
    kinds << (saving.blanks == 0
                  ? tr("%1: nothing").arg(waysText(saving.way))
                  : tr("%1: %2, blanks: %3").arg(waysText(saving.way), savingText(saving)).arg(saving.blanks));
  }
  savings_->setText(tr("Each kind alone would save: %1.").arg(kinds.join(QStringLiteral("; "))));

  WaySaving all;
  for (const NumberedBlank& blank : blanks_) {
    for (const WaySaving& saving : savingsOf(session_.job(), {blank.blank})) {
      all.blanks += saving.blanks;
      all.saved += saving.saved;
      all.steel += saving.steel;
    }
  }
  const bool off = session_.job().settings.sharing.reach == Sharing::Reach::Off;
  summary_->setText(
      off ? tr("Sharing is off: each piece has its own blank.")
      : all.blanks == 0
          ? tr("No two pieces can share a blank so that less is bought.")
          : tr("Blanks that give two pieces or more: %1. Less is bought by %2.").arg(all.blanks).arg(savingText(all)));
}

// A box for each wall, where sharing goes wall by wall.
void SharingPanel::fillWalls() {
  const Job& job = session_.newest();
  walls_->setVisible(job.settings.sharing.reach == Sharing::Reach::PerWall);
  std::vector<std::string> letters;
  for (const Wall& wall : job.walls) letters.push_back(wall.letter);
  if (letters != wallsShown_) {
    wallsShown_ = letters;
    qDeleteAll(walls_->findChildren<QCheckBox*>(Qt::FindDirectChildrenOnly));
    for (std::size_t i = 0; i < letters.size(); ++i) {
      auto* box = new QCheckBox(tr("Wall %1").arg(text(letters[i])), walls_);
      box->setObjectName(QStringLiteral("sharesWall") + text(letters[i]));
      connect(box, &QCheckBox::clicked, this, [this, i](bool on) { setShares(i, on); });
      walls_->layout()->addWidget(box);
    }
  }
  const auto boxes = walls_->findChildren<QCheckBox*>(Qt::FindDirectChildrenOnly);
  for (std::size_t i = 0; i < job.walls.size() && i < static_cast<std::size_t>(boxes.size()); ++i)
    boxes[static_cast<qsizetype>(i)]->setChecked(job.walls[i].shares);
}

void SharingPanel::setShares(std::size_t wall, bool shares) {
  const std::string path = "walls[" + std::to_string(wall) + "].shares";
  const auto field = fieldAt(session_.newest(), path);
  if (!field) return;
  enterField(session_, {path}, field.value(), shares ? QStringLiteral("true") : QStringLiteral("false"));
  session_.endMerging();
}

void SharingPanel::fillTable() {
  filling_ = true;
  const int before = table_->currentRow();
  table_->setRowCount(count());
  const LengthStyle style = session_.isOpen() ? session_.style() : LengthStyle{};
  for (int row = 0; row < count(); ++row) {
    const NumberedBlank& blank = blanks_[static_cast<std::size_t>(row)];
    QStringList parts;
    for (std::size_t i = 0; i < blank.marks.size(); ++i) {
      const QString mark = text(blank.marks[i]);
      parts << (blank.blank.parts[i].turned ? tr("%1 turned").arg(mark) : mark);
    }
    const QStringList cells{QString::number(blank.number), parts.join(QStringLiteral(" + ")), wayText(blank.blank.way),
                            text(cutText(blank.cuts.length, style)), text(cutText(blank.blank.saved, style))};
    for (int column = 0; column < static_cast<int>(cells.size()); ++column) {
      auto* item = new QTableWidgetItem(cells[column]);
      item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
      if (column == 0 || column > 2) item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
      table_->setItem(row, column, item);
    }
  }
  table_->setCurrentCell(count() == 0 ? -1 : std::clamp(before, 0, count() - 1), 0);
  fit();
  filling_ = false;
}

void SharingPanel::showChosen() {
  const int row = table_->currentRow();
  std::optional<NumberedBlank> chosen;
  BlankWords words;
  if (session_.isOpen()) {
    words = {&session_.words(), session_.style(), session_.job().settings.kerf};
    if (row >= 0 && row < count()) chosen = blanks_[static_cast<std::size_t>(row)];
  }
  view_->show(chosen, words);
}

void SharingPanel::fit() {
  table_->horizontalHeader()->setFont(font());
  table_->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + fontMetrics().height() / 3);
  table_->resizeColumnsToContents();
  for (int column = 0; column < table_->columnCount(); ++column)
    table_->setColumnWidth(column, table_->columnWidth(column) + fontMetrics().averageCharWidth());
}

void SharingPanel::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) fit();
}

}  // namespace ribwright
