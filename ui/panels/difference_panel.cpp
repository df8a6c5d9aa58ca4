#include "ui/panels/difference_panel.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "core/job/by_id.h"
#include "core/job/job_file.h"
#include "core/job/length_style.h"
#include "ui/panels/calm_combo.h"
#include "ui/panels/cost_rows.h"
#include "ui/panels/filled_table.h"
#include "ui/session/price_file.h"

namespace ribwright {

namespace {

// What the items of the choice stand for: no order's number looks so.
const QString saved = QStringLiteral("\nsaved"), another = QStringLiteral("\nanother"), file = QStringLiteral("\nfile");

std::vector<SheetLot> lotsOf(const SheetOrder& order) {
  std::vector<SheetLot> lots;
  for (const OrderLine& line : order.lines) lots.push_back(lotOf({line.sheet(), line.length}, line.quantity()));
  return lots;
}

}  // namespace

DifferencePanel::DifferencePanel(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      with_(new CalmCombo(this)),
      summary_(new QLabel(this)),
      table_(new FilledTable(session, "differences", tr("What is bought otherwise, line by line"), this)) {
  setObjectName(QStringLiteral("difference"));
  with_->setObjectName(QStringLiteral("compareWith"));
  with_->setMinimumContentsLength(24);
  summary_->setObjectName(QStringLiteral("differenceSummary"));
  summary_->setTextFormat(Qt::PlainText);
  summary_->setWordWrap(true);
  summary_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  auto* label = new QLabel(tr("Compare &with"), this);
  label->setBuddy(with_);
  const int margin = fontMetrics().height() / 3;
  auto* head = new QHBoxLayout;
  head->addWidget(label);
  head->addWidget(with_);
  head->addStretch(1);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(margin, margin, margin, 0);
  layout->addLayout(head);
  layout->addWidget(summary_);
  layout->addWidget(table_, 1);
  setFocusProxy(with_);
  connect(with_, &QComboBox::activated, this, &DifferencePanel::choose);
}

void DifferencePanel::refill() {
  fillChoices();
  compare();
}

void DifferencePanel::fillChoices() {
  const QSignalBlocker quiet(with_);
  const QVariant chosen = with_->currentData();
  with_->clear();
  with_->addItem(tr("the job as it was saved"), saved);
  for (const PlacedOrder& order : session_.job().facts.orders)
    with_->addItem(tr("order %1").arg(QString::fromStdString(order.id)), QString::fromStdString(order.id));
  if (!other_.isEmpty()) with_->addItem(QFileInfo(other_).fileName(), file);
  with_->addItem(tr("another job file…"), another);
  const int at = chosen.isValid() ? with_->findData(chosen) : 0;
  with_->setCurrentIndex(at < 0 ? 0 : at);
}

void DifferencePanel::choose(int index) {
  if (with_->itemData(index).toString() != another) return compare();
  const QString path =
      QFileDialog::getOpenFileName(window(), tr("Compare with a job"), session_.folder(), tr("Jobs (*.json)"));
  if (!path.isEmpty()) return compareWith(path);
  with_->setCurrentIndex(0);
  compare();
}

void DifferencePanel::compareWith(const QString& path) {
  other_ = path;
  fillChoices();
  with_->setCurrentIndex(with_->findData(file));
  compare();
}

void DifferencePanel::compare() {
  if (!session_.isOpen()) return;
  const QString with = with_->currentData().toString();
  std::optional<OrderDifference> difference;
  if (with == saved || with == file) {
    difference = fromFile(with == saved ? session_.path() : other_);
  } else if (const PlacedOrder* order = byId(session_.job().facts.orders, with.toStdString())) {
    difference = fromOrder(*order);
  }
  table_->setRows(differenceRows(session_.job(), difference.value_or(OrderDifference())));
  if (difference) summary_->setText(summary(*difference));
}

std::optional<OrderDifference> DifferencePanel::fromFile(const QString& path) {
  if (path.isEmpty()) return summary_->setText(tr("The job was never saved.")), std::nullopt;
  const auto before = loadJob(path.toStdString());
  if (!before) {
    const std::string why = oneLine(before.faults().front());
    return summary_->setText(tr("It cannot be read: %1").arg(QString::fromStdString(why))), std::nullopt;
  }
  const Plan was = plan(before.value(), session_.plan());
  return orderDifference(costOfJob(before.value(), was), costOfJob(session_.job(), session_.plan()));
}

OrderDifference DifferencePanel::fromOrder(const PlacedOrder& order) const {
  const Job& job = session_.job();
  return orderDifference(costOf(job, order.placed), costOf(job, lotsOf(session_.plan().order)));
}

// "sheets +2, their length +2' 4", +31.2 lb, +$18.20": from the other state to the job as it is.
QString DifferencePanel::summary(const OrderDifference& difference) const {
  const Job& job = session_.job();
  if (difference.none()) return tr("Nothing is bought otherwise.");
  const auto signedText = [](bool more, bool less, const std::string& of) {
    return (more ? QStringLiteral("+") : less ? QStringLiteral("−") : QString()) + QString::fromStdString(of);
  };
  const auto sheets = difference.sheetsMore;
  const Length length = difference.lengthMore;
  const double kilograms = std::abs(static_cast<double>(difference.gramsMore)) / 1000;
  QStringList said;
  said << tr("sheets %1").arg(signedText(sheets > 0, sheets < 0, std::to_string(sheets < 0 ? -sheets : sheets)));
  said << tr("their length %1")
              .arg(signedText(length > Length(), length < Length(), fineText(absolute(length), styleOf(job))));
  said << signedText(difference.gramsMore > 0, difference.gramsMore < 0, weightWords(job, kilograms).toStdString());
  const Money cost = difference.costMore.value_or(difference.pricedMore);
  said << QString::fromStdString(shownDifference(cost, job.decimalSign, job.prices.currency));
  QString text = tr("From there to the job as it is: %1.").arg(said.join(QStringLiteral(", ")));
  if (!difference.costMore) text += QLatin1Char(' ') + tr("What has no price (?) is not in the cost.");
  return text;
}

}  // namespace ribwright
