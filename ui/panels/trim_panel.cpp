#include "ui/panels/trim_panel.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QTableWidget>
#include <QVBoxLayout>

#include "core/cutting/proof_words.h"
#include "core/drawing/shown_length.h"
#include "core/drawing/trim_sticks.h"
#include "core/editing/trim_edits.h"
#include "core/job/by_id.h"
#include "core/output/figures.h"
#include "ui/panels/dressed_rows.h"
#include "ui/panels/trim_chart.h"
#include "ui/session/window_text.h"

namespace ribwright {

namespace {

QLabel* label(const char* name, QWidget* parent) {
  auto* made = new QLabel(parent);
  made->setObjectName(QLatin1String(name));
  made->setTextFormat(Qt::PlainText);
  made->setWordWrap(true);
  made->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  return made;
}

}  // namespace

TrimPanel::TrimPanel(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      summary_(label("trimSummary", this)),
      proof_(label("trimProof", this)),
      take_(new QPushButton(tr("Take the shipped trim"), this)),
      rules_(new QPushButton(tr("Trim and rules…"), this)),
      table_(new QTableWidget(this)),
      chart_(new TrimChart),
      scroll_(new QScrollArea(this)) {
  setObjectName(QStringLiteral("trim"));
  makeTable();
  auto* right = new QWidget;
  auto* rightLayout = new QVBoxLayout(right);
  rightLayout->setContentsMargins(0, 0, 0, 0);
  rightLayout->addWidget(chart_);
  rightLayout->addWidget(proof_);
  rightLayout->addStretch(1);
  const int margin = fontMetrics().height() / 4;
  proof_->setContentsMargins(margin, margin, margin, margin);
  scroll_->setObjectName(QStringLiteral("trimCuts"));
  scroll_->setWidget(right);
  scroll_->setWidgetResizable(true);
  scroll_->setFrameShape(QFrame::NoFrame);
  auto* parts = new QSplitter(Qt::Horizontal, this);
  parts->setObjectName(QStringLiteral("trimParts"));
  parts->setChildrenCollapsible(false);
  parts->addWidget(table_);
  parts->addWidget(scroll_);
  parts->setStretchFactor(0, 2);
  parts->setStretchFactor(1, 3);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  layout->addWidget(makeHead());
  layout->addWidget(parts, 1);
  setFocusProxy(table_);
  connect(&work_, &TrimWork::done, this, &TrimPanel::showCuts);
  connect(chart_, &TrimChart::pieceChosen, this, &TrimPanel::chooseRowOf);
  fit();
}

QWidget* TrimPanel::makeHead() {
  auto* head = new QWidget(this);
  auto* layout = new QHBoxLayout(head);
  const int margin = fontMetrics().height() / 4;
  layout->setContentsMargins(2 * margin, margin, 2 * margin, margin);
  take_->setObjectName(QStringLiteral("takeTrim"));
  take_->setToolTip(tr("Takes rules, and the trim that they name, for all that the job has no rule for"));
  rules_->setObjectName(QStringLiteral("trimRules"));
  rules_->setToolTip(tr("What is trimmed with what, how long, and in which lengths it is sold"));
  layout->addWidget(summary_, 1);
  layout->addWidget(take_);
  layout->addWidget(rules_);
  connect(take_, &QPushButton::clicked, this, &TrimPanel::takeShipped);
  connect(rules_, &QPushButton::clicked, this, &TrimPanel::rulesWanted);
  return head;
}

void TrimPanel::makeTable() {
  table_->setObjectName(QStringLiteral("trimTable"));
  table_->setAccessibleName(tr("Pieces of trim, in the order in which they are set"));
  dressRows(*table_, {tr("Wall"), tr("Piece"), tr("Trim"), tr("Length"), tr("Parts")});
  connect(table_, &QTableWidget::currentCellChanged, this, [this](int row) {
    if (!filling_) choosePiece(row);
  });
}

void TrimPanel::refill() {
  takeoff_ = session_.isOpen() ? trimTakeoff(session_.job(), session_.plan().layouts()) : TrimTakeoff{};
  take_->setEnabled(session_.isOpen() && takeShippedTrim(session_.newest()).ok());
  rules_->setEnabled(session_.isOpen());
  fillTable();
  proof_->clear();
  chart_->show({}, {}, Words::of("en"), {});
  if (takeoff_.pieces.empty()) {
    work_.drop();
    summary_->setText(session_.isOpen() && session_.job().trimRules.empty()
                          ? tr("The job states no trim. Take what ships, and make it the job's own.")
                          : tr("No rule finds a place to trim."));
    return;
  }
  summary_->setText(tr("Pieces: %1. Working out how to cut them…").arg(count()));
  work_.cut(session_.sharedJob(), takeoff_);
}

void TrimPanel::fillTable() {
  filling_ = true;
  table_->setRowCount(count());
  for (int row = 0; row < count(); ++row) {
    const TrimPiece& piece = takeoff_.pieces[static_cast<std::size_t>(row)];
    const LengthStyle style = session_.style();
    const QStringList cells{text(piece.place.wall + piece.place.other),
                            text(session_.words().say(trimPieceName(piece), style)), text(piece.trim),
                            text(cutText(piece.length, style)), text(partLengths(piece, style))};
    for (int column = 0; column < static_cast<int>(cells.size()); ++column) {
      auto* item = new QTableWidgetItem(cells[column]);
      item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
      if (column == 3) item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
      table_->setItem(row, column, item);
    }
  }
  table_->setCurrentCell(-1, -1);
  fit();
  filling_ = false;
}

QString TrimPanel::proofText(const TrimBatch& batch) const {
  const LengthStyle style = session_.style();
  const auto length = [&](std::int64_t n) { return cutText(Length::nanometres(n), style); };
  const auto cost = [&](std::int64_t n) { return batch.list.stocks.size() == 1 ? std::to_string(n) : length(n); };
  QStringList sentences;
  for (const Phrase& phrase : proofWords(batch.list, batch.plan, length, cost))
    sentences << text(session_.words().say(phrase, style));
  const QString trim = batch.colour.empty() ? text(batch.trim) : tr("%1, %2").arg(text(batch.trim), text(batch.colour));
  return tr("%1: %2").arg(trim, sentences.join(QLatin1Char(' ')));
}

void TrimPanel::showCuts(const std::vector<TrimBatch>& batches) {
  if (!session_.isOpen()) return;
  const LengthStyle style = session_.style();
  chart_->show(takeoff_, batches, session_.words(), style);
  chart_->choose(table_->currentRow());
  Length bought, cut, waste;
  double kilograms = 0;
  int sticks = 0;
  QStringList proofs;
  for (const TrimBatch& batch : batches) {
    bought += batch.total(&TrimStick::stock);
    cut += batch.cut();
    waste += batch.total(&TrimStick::waste);
    sticks += static_cast<int>(batch.sticks.size());
    if (const Trim* trim = byId(session_.job().trims, batch.trim))
      kilograms += trimKilograms(*trim, batch.total(&TrimStick::stock));
    if (!batch.madeToLength && batch.faults.empty()) proofs << proofText(batch);
  }
  const bool metric = style.units == UnitSystem::Millimetres;
  const QString weight = text(weightText(kilograms, style.units)) + (metric ? tr(" kg") : tr(" lb"));
  const int used = bought > Length() ? static_cast<int>(100 * cut.inMetres() / bought.inMetres()) : 0;
  summary_->setText(tr("Pieces: %1. Stock lengths: %2, together %3, %4; used %5 %, waste %6")
                        .arg(QString::number(count()), QString::number(sticks), text(dimensionText(bought, style)),
                             weight, QString::number(used), text(dimensionText(waste, style))));
  proof_->setText(proofs.join(QStringLiteral("\n\n")));
}

void TrimPanel::choosePiece(int piece) {
  chart_->choose(piece);
  if (piece < 0 || piece >= count()) return;
  scroll_->ensureVisible(0, chart_->heightOf(piece), 0, 3 * fontMetrics().height());
  const TrimPlace& place = takeoff_.pieces[static_cast<std::size_t>(piece)].place;
  const bool stated = byLetter(session_.job().walls, place.wall) != nullptr;
  const std::string wall = stated || !place.isCorner() ? place.wall : place.other;
  const bool whole = place.opening.empty();
  const Part part{whole ? Part::Kind::Face : Part::Kind::Opening, wall, place.opening};
  session_.choose(part);
  emit pointedAt(part);
}

void TrimPanel::chooseRowOf(int piece) {
  table_->setCurrentCell(piece, 0);
  table_->scrollToItem(table_->item(piece, 0));
}

void TrimPanel::takeShipped() {
  session_.edit("edit.take-trim", [](const Job& job) { return takeShippedTrim(job); });
}

void TrimPanel::fit() {
  table_->horizontalHeader()->setFont(font());
  table_->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + fontMetrics().height() / 3);
  table_->resizeColumnsToContents();
  for (int column = 0; column < table_->columnCount(); ++column)
    table_->setColumnWidth(column, table_->columnWidth(column) + fontMetrics().averageCharWidth());
}

void TrimPanel::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) fit();
}

}  // namespace ribwright
