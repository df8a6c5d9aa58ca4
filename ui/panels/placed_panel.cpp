#include "ui/panels/placed_panel.h"

#include <QDate>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QVBoxLayout>

#include "core/editing/placed_order_edits.h"
#include "core/takeoff/sheet_needs.h"
#include "ui/panels/filled_table.h"
#include "ui/panels/placed_dialogs.h"

namespace ribwright {

namespace {

DeltaOrder deltaOf(const Session& session) {
  const Plan& plan = session.plan();
  return deltaOrder(sheetNeeds(plan.order, plan.layouts()), session.job().facts.orders);
}

std::int64_t sheetsOf(const std::vector<SheetLot>& lots) {
  std::int64_t count = 0;
  for (const SheetLot& lot : lots) count += lot.quantity;
  return count;
}

}  // namespace

PlacedPanel::PlacedPanel(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      summary_(new QLabel(this)),
      delta_(new FilledTable(session, "deltaOrder", tr("What is to be ordered, used and left over"), this)),
      placed_(new FilledTable(session, "placedOrders", tr("Orders placed, received and short"), this)),
      place_(button("placeOrder", tr("Place this &order…"), tr("What is to be ordered now is ordered"))),
      all_(button("receiveAll", tr("&All of it came"), tr("All of the chosen order that is not short"))),
      some_(button("receiveSome", tr("Came or short…"),
                   tr("How many of the chosen sheets came, and how many are short"))),
      strike_(button("strikeOrder", tr("&Never placed"), tr("Strike the chosen order with all that came of it"))) {
  setObjectName(QStringLiteral("placed"));
  summary_->setObjectName(QStringLiteral("placedSummary"));
  summary_->setTextFormat(Qt::PlainText);
  summary_->setWordWrap(true);
  const int margin = fontMetrics().height() / 3;
  auto* head = new QHBoxLayout;
  head->addWidget(summary_, 1);
  for (QPushButton* each : {place_, all_, some_, strike_}) head->addWidget(each);
  auto* split = new QSplitter(Qt::Horizontal, this);
  split->addWidget(delta_);
  split->addWidget(placed_);
  split->setChildrenCollapsible(false);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(margin, margin, margin, 0);
  layout->addLayout(head);
  layout->addWidget(split, 1);
  setFocusProxy(delta_);
  connect(place_, &QPushButton::clicked, this, &PlacedPanel::askToPlace);
  connect(all_, &QPushButton::clicked, this, &PlacedPanel::receiveAll);
  connect(some_, &QPushButton::clicked, this, &PlacedPanel::askForReceived);
  connect(strike_, &QPushButton::clicked, this, &PlacedPanel::strike);
  connect(placed_, &FilledTable::currentChosen, this, &PlacedPanel::offer);
}

QPushButton* PlacedPanel::button(const char* name, const QString& text, const QString& tip) {
  auto* made = new QPushButton(text, this);
  made->setObjectName(QLatin1String(name));
  made->setToolTip(tip);
  made->setAutoDefault(false);
  return made;
}

void PlacedPanel::refill() {
  toOrder_ = deltaOf(session_);
  rows_ = placedRows(session_.job());
  delta_->setRows(deltaRows(session_.job(), toOrder_));
  placed_->setRows(shownRows(session_.job(), rows_));
  summary_->setText(summary());
  offer();
}

QString PlacedPanel::summary() const {
  if (session_.job().facts.orders.empty())
    return tr("No order was placed yet. Sheets to order: %1.").arg(sheetsOf(toOrder_.toOrder));
  std::int64_t left = 0;
  for (const UnneededSheets& each : toOrder_.leftOver) left += each.onSite + each.toCome;
  return tr("Sheets to order now: %1; still to come: %2; ordered and not needed: %3.")
      .arg(sheetsOf(toOrder_.toOrder))
      .arg(sheetsOf(toOrder_.toCome))
      .arg(left);
}

void PlacedPanel::offer() {
  const bool chosen = placed_->current().has_value() && *placed_->current() < rows_.size();
  place_->setEnabled(session_.isOpen() && !toOrder_.toOrder.empty());
  for (QPushButton* each : {all_, some_, strike_}) each->setEnabled(chosen);
}

void PlacedPanel::edit(const QString& name, const Session::Edit& edit) {
  const auto faults = session_.edit(name.toStdString(), edit);
  if (!faults.empty()) summary_->setText(QStringLiteral("⚠ ") + QString::fromStdString(oneLine(faults.front())));
}

void PlacedPanel::askToPlace() {
  const QString today = QDate::currentDate().toString(Qt::ISODate);
  const QString number = QString::fromStdString(nextOrderNumber(session_.newest()));
  askForOrder(window(), number, today, [this](const std::string& id, const std::string& date) {
    session_.settle();  // what is ordered is of the newest job
    toOrder_ = deltaOf(session_);
    edit(tr("Place order %1").arg(QString::fromStdString(id)),
         [&](const Job& newest) { return placeOrder(newest, id, date, toOrder_.toOrder); });
  });
}

void PlacedPanel::receiveAll() {
  if (!placed_->current()) return;
  const std::string id = rows_.at(*placed_->current()).order;
  edit(tr("Receive order %1").arg(QString::fromStdString(id)),
       [&](const Job& newest) { return ribwright::receiveAll(newest, id); });
}

void PlacedPanel::askForReceived() {
  if (!placed_->current()) return;
  const PlacedRow row = rows_.at(*placed_->current());
  askForCounts(window(), row.count, [this, row](int received, int missing) {
    edit(tr("Receive sheets of order %1").arg(QString::fromStdString(row.order)),
         [&](const Job& newest) { return setReceived(newest, row.order, row.kind, received, missing); });
  });
}

void PlacedPanel::strike() {
  if (!placed_->current()) return;
  const std::string id = rows_.at(*placed_->current()).order;
  edit(tr("Strike order %1").arg(QString::fromStdString(id)),
       [&](const Job& newest) { return withoutOrder(newest, id); });
}

}  // namespace ribwright
