#include "ui/panels/start_panel.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QMouseEvent>
#include <QProgressBar>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include "core/drawing/start_words.h"
#include "ui/panels/dressed_rows.h"
#include "ui/panels/named_widgets.h"
#include "ui/session/window_text.h"

namespace ribwright {

namespace {

constexpr int rowRole = Qt::UserRole + 1;  // index into the rows

// Sorted by its figure, not by its letters.
class StartItem : public QTableWidgetItem {
 public:
  StartItem(const StartCell& cell, int row, std::size_t column) : QTableWidgetItem(cell.words), sorted_(cell.sorted) {
    setData(rowRole, row);
    setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
    if (column != 1) setTextAlignment(column == 0 ? Qt::AlignCenter : Qt::AlignRight | Qt::AlignVCenter);
    if (!cell.best) return;
    QFont bold = font();
    bold.setBold(true);
    setFont(bold);
    setText(QStringLiteral("● ") + cell.words);
    setToolTip(StartPanel::tr("The best of this column"));
  }
  bool operator<(const QTableWidgetItem& other) const override {
    return sorted_ < static_cast<const StartItem&>(other).sorted_;
  }

 private:
  double sorted_;
};

}  // namespace

StartPanel::StartPanel(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), table_(new QTableWidget(this)) {
  setObjectName(QStringLiteral("starts"));
  makeTable();
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  layout->addWidget(table_, 1);
  layout->addWidget(makeFoot());
  setFocusProxy(table_);
  connect(&session_, &Session::wallChanged, this, &StartPanel::renew);
  connect(&session_, &Session::jobChanged, this, &StartPanel::renew);
  connect(&work_, &StartWork::compared, this, &StartPanel::fill);
  connect(&work_, &StartWork::progressed, this, [this](double done) { progress_->setValue(qRound(done * 100)); });
  connect(&work_, &StartWork::searched, this, &StartPanel::showSearch);
  fit();
}

void StartPanel::makeTable() {
  table_->setObjectName(QStringLiteral("startTable"));
  table_->setAccessibleName(tr("Starts of the chosen wall, compared"));
  table_->setAccessibleDescription(
      tr("The arrow keys show a start on the board, Enter chooses it, Escape goes back to the one that stands."));
  dressRows(*table_, startColumns());
  table_->setMouseTracking(true);
  table_->viewport()->installEventFilter(this);
  table_->installEventFilter(this);
  connect(table_, &QTableWidget::currentCellChanged, this, [this](int row) {
    if (!filling_ && table_->hasFocus()) previewRow(row);
  });
  connect(table_, &QTableWidget::cellEntered, this, [this](int row) { previewRow(row); });
  connect(table_, &QTableWidget::cellClicked, this, [this](int row) { chooseRow(row); });
}

QWidget* StartPanel::makeFoot() {
  auto* foot = new QWidget(this);
  auto* layout = new QHBoxLayout(foot);
  const int margin = fontMetrics().height() / 4;
  layout->setContentsMargins(2 * margin, margin, 2 * margin, margin);
  words_ = new QLabel(foot);
  words_->setObjectName(QStringLiteral("startWords"));
  words_->setTextFormat(Qt::PlainText);
  words_->setWordWrap(true);
  progress_ = new QProgressBar(foot);
  progress_->setObjectName(QStringLiteral("startProgress"));
  progress_->setAccessibleName(tr("How many starts have been tried"));
  search_ = namedButton(tr("Try every start"), "searchStarts", foot);
  search_->setToolTip(tr("Lays the wall out from each mark of the tape in one cover, and keeps the best"));
  stop_ = namedButton(tr("Stop"), "stopSearch", foot);
  take_ = namedButton(tr("Take it"), "takeStart", foot);
  layout->addWidget(words_, 1);
  for (QWidget* each : {static_cast<QWidget*>(progress_), static_cast<QWidget*>(stop_), static_cast<QWidget*>(take_),
                        static_cast<QWidget*>(search_)})
    layout->addWidget(each);
  for (QWidget* each : {static_cast<QWidget*>(progress_), static_cast<QWidget*>(stop_), static_cast<QWidget*>(take_)})
    each->hide();
  connect(search_, &QPushButton::clicked, this, &StartPanel::search);
  connect(stop_, &QPushButton::clicked, &work_, &StartWork::stopSearch);
  connect(take_, &QPushButton::clicked, this, [this] {
    if (found_) choose(*found_);
  });
  return foot;
}

// Worked out when it is seen; what was found before is about another job.
void StartPanel::renew() {
  stale_ = true;
  work_.drop();
  found_.reset();
  for (QWidget* each : {static_cast<QWidget*>(progress_), static_cast<QWidget*>(stop_), static_cast<QWidget*>(take_)})
    each->hide();
  if (!session_.isOpen() || session_.wall() < 0 || !session_.chosenPlan().layout.sheeted) return fill({});
  if (shownWall_ != session_.chosenWall().letter) fill({});  // they are another wall's
  if (!isVisible()) return;
  stale_ = false;
  tell(tr("Working out the starts…"));
  work_.compare(session_.sharedJob(), session_.sharedPlan(), static_cast<std::size_t>(session_.wall()));
}

void StartPanel::fill(const std::vector<ComparedStart>& starts) {
  filling_ = true;
  const std::optional<Start> current = startAt(table_->currentRow());
  shownWall_ = session_.isOpen() && session_.wall() >= 0 ? session_.chosenWall().letter : std::string();
  rows_ = session_.isOpen() ? startRows(starts, session_.words(), session_.style()) : std::vector<StartRow>{};
  table_->setSortingEnabled(false);
  table_->setRowCount(static_cast<int>(rows_.size()));
  int chosen = -1;
  for (std::size_t i = 0; i < rows_.size(); ++i) {
    const int row = static_cast<int>(i);
    for (std::size_t column = 0; column < rows_[i].cells.size(); ++column)
      table_->setItem(row, static_cast<int>(column), new StartItem(rows_[i].cells[column], row, column));
    if (current ? rows_[i].start == *current : rows_[i].stands) chosen = row;
  }
  table_->setSortingEnabled(true);
  table_->sortByColumn(0, Qt::AscendingOrder);
  table_->setCurrentCell(chosen, 0);
  search_->setEnabled(!rows_.empty());
  fit();
  if (const QTableWidgetItem* item = table_->item(table_->currentRow(), 0)) table_->scrollToItem(item);
  tell(rows_.empty() ? tr("This wall has no sheets, and so no start.")
                     : tr("Point at a start to see it on the board; click or Enter chooses it. ● is the best of its "
                          "column."));
  filling_ = false;
  emit counted();
}

void StartPanel::fit() {
  table_->horizontalHeader()->setFont(font());
  table_->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + fontMetrics().height() / 3);
  table_->resizeColumnsToContents();
  for (int column = 0; column < table_->columnCount(); ++column)
    table_->setColumnWidth(column, table_->columnWidth(column) + fontMetrics().averageCharWidth());
}

std::optional<Start> StartPanel::startAt(int row) const {
  const QTableWidgetItem* item = row < 0 ? nullptr : table_->item(row, 0);
  const auto index = item ? static_cast<std::size_t>(item->data(rowRole).toInt()) : rows_.size();
  if (index >= rows_.size()) return std::nullopt;
  return rows_[index].start;
}

void StartPanel::previewRow(int row) {
  const auto start = startAt(row);
  if (!start || !session_.isOpen() || session_.wall() < 0) return;
  if (*start == startOf(session_.chosenWall())) return endPreview();
  ours_ = true;
  session_.preview(withStart(session_.job(), static_cast<std::size_t>(session_.wall()), *start));
}

void StartPanel::endPreview() {
  if (!ours_) return;
  ours_ = false;
  session_.endPreview();
}

void StartPanel::chooseRow(int row) {
  if (const auto start = startAt(row)) choose(*start);
}

void StartPanel::choose(const Start& start) {
  endPreview();
  const auto wall = static_cast<std::size_t>(session_.wall());
  if (start == startOf(session_.newest().walls[wall])) return;
  const LengthStyle style = session_.style();
  const std::string name = session_.words().say(
      "edit.start", {{"wall", session_.chosenWall().letter}, {"how", startPhrase(start, style)}}, style);
  session_.edit(name, [&](const Job& job) -> Outcome<Job> { return withStart(job, wall, start); });
}

void StartPanel::search() {
  found_.reset();
  take_->hide();
  search_->setEnabled(false);
  progress_->setValue(0);
  progress_->show();
  stop_->show();
  tell(tr("Trying every start…"));
  work_.search(session_.sharedJob(), static_cast<std::size_t>(session_.wall()));
}

void StartPanel::showSearch(const StartSearch& found) {
  progress_->hide();
  stop_->hide();
  search_->setEnabled(true);
  found_ = found.best;
  if (!found_) return tell(tr("Stopped before the first start was tried."));
  const bool stands = *found_ == startOf(session_.chosenWall());
  const QString how = text(session_.words().say(startPhrase(*found_, session_.style()), session_.style()));
  tell((found.whole ? tr("The best of all: %1.") : tr("The best so far: %1.")).arg(how) +
       (stands ? QLatin1Char(' ') + tr("It stands already.") : QString()));
  take_->setVisible(!stands);
}

void StartPanel::tell(const QString& words) { words_->setText(words); }

bool StartPanel::eventFilter(QObject* watched, QEvent* event) {
  const bool inside = watched == table_->viewport();
  if (inside && event->type() == QEvent::Leave) endPreview();
  if (watched != table_) return QWidget::eventFilter(watched, event);
  if (event->type() == QEvent::FocusOut) endPreview();
  const bool key = event->type() == QEvent::KeyPress || event->type() == QEvent::ShortcutOverride;
  if (!key) return QWidget::eventFilter(watched, event);
  const int pressed = static_cast<QKeyEvent*>(event)->key();
  const bool enter = pressed == Qt::Key_Return || pressed == Qt::Key_Enter;
  const bool back = pressed == Qt::Key_Escape && ours_;
  if (event->type() == QEvent::ShortcutOverride) return back ? (event->accept(), true) : false;
  if (enter) return chooseRow(table_->currentRow()), true;
  if (back) return endPreview(), true;
  return false;
}

void StartPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  if (stale_) renew();
}

void StartPanel::hideEvent(QHideEvent* event) {
  endPreview();
  QWidget::hideEvent(event);
}

void StartPanel::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) fit();
}

}  // namespace ribwright
