#include "ui/panels/order_panel.h"

#include <QComboBox>
#include <QLabel>
#include <QScrollArea>
#include <QSplitter>
#include <QTabWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "core/editing/job_fields.h"
#include "ui/panels/field_edits.h"
#include "ui/panels/length_chart.h"
#include "ui/panels/order_rows.h"
#include "ui/panels/row_table.h"
#include "ui/panels/use_bars.h"

namespace ribwright {

OrderPanel::OrderPanel(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      lines_(new RowTable(this)),
      bundles_(new RowTable(this)),
      classes_(new QComboBox(this)),
      chart_(new LengthChart(this)),
      lengths_(new QLabel(this)),
      use_(new UseBars(this)) {
  setObjectName(QStringLiteral("orderPanel"));
  lines_->setObjectName(QStringLiteral("orderLines"));
  lines_->setAccessibleName(tr("Lines of the order"));
  bundles_->setObjectName(QStringLiteral("orderBundles"));
  bundles_->setAccessibleName(tr("Bundles"));
  classes_->setObjectName(QStringLiteral("orderClasses"));
  classes_->setAccessibleName(tr("Sheets whose lengths are chosen"));
  chart_->setObjectName(QStringLiteral("lengthChart"));
  chart_->setAccessibleName(tr("Steel bought against the number of lengths"));
  lengths_->setObjectName(QStringLiteral("orderLengths"));
  use_->setObjectName(QStringLiteral("useBars"));
  use_->setAccessibleName(tr("Use and waste of the steel bought"));
  lengths_->setWordWrap(true);
  lengths_->setTextFormat(Qt::PlainText);
  layOut();
  connect(classes_, &QComboBox::currentIndexChanged, this, &OrderPanel::showClass);
  connect(chart_, &LengthChart::picked, this, &OrderPanel::chooseLengths);
  connect(lines_, &RowTable::rowChosen, this, &OrderPanel::chooseLine);
  connect(bundles_, &RowTable::rowChosen, this, &OrderPanel::chooseBundle);
  setFocusProxy(lines_);
}

void OrderPanel::layOut() {
  auto* tables = new QTabWidget(this);
  tables->setObjectName(QStringLiteral("orderTables"));
  tables->setDocumentMode(true);
  tables->addTab(lines_, tr("Lines"));
  tables->addTab(bundles_, tr("Bundles"));
  auto* side = new QWidget(this);
  auto* down = new QVBoxLayout(side);
  const int margin = fontMetrics().height() / 3;
  down->setContentsMargins(margin, margin, margin, margin);
  classes_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  for (QWidget* each : std::initializer_list<QWidget*>{classes_, chart_, lengths_, use_}) down->addWidget(each);
  down->addStretch(1);
  auto* scrolled = new QScrollArea(this);
  scrolled->setWidgetResizable(true);
  scrolled->setFrameShape(QFrame::NoFrame);
  scrolled->setWidget(side);
  auto* split = new QSplitter(Qt::Horizontal, this);
  split->addWidget(tables);
  split->addWidget(scrolled);
  split->setStretchFactor(0, 3);
  split->setStretchFactor(1, 2);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(split);
}

void OrderPanel::refill() {
  const Plan& plan = session_.plan();
  const auto layouts = plan.layouts();
  const OrderAccount account = orderAccount(plan.order, layouts);
  lines_->setRows(orderRows(session_, account));
  packed_ = bundlesOf(session_.job(), layouts, plan.order);
  bundles_->setRows(bundleRows(session_, packed_));
  std::vector<UseBars::Bar> bars;
  for (const auto& [sheet, steel] : account.classes) {
    const double bought = steel.bought.inSquareMetres();
    const double part = bought > 0 ? steel.waste.inSquareMetres() / bought * 100 : 0;
    bars.push_back({classText(session_, sheet), steel,
                    tr("waste %1, %2 %").arg(areaWords(session_, steel.waste), QString::number(part, 'f', 1))});
  }
  use_->setBars(std::move(bars));
  tradeOffs_ = classTradeOffs(session_.job(), plan.order);
  const QString before = classes_->currentText();
  const QSignalBlocker quiet(classes_);
  classes_->clear();
  for (const ClassTradeOff& one : tradeOffs_) classes_->addItem(classText(session_, one.sheet));
  classes_->setCurrentIndex(std::max(classes_->count() > 0 ? 0 : -1, classes_->findText(before)));
  showClass();
}

void OrderPanel::showClass() {
  const int most = session_.job().settings.mostOrderLengths;
  const auto at = static_cast<std::size_t>(std::max(0, classes_->currentIndex()));
  if (at >= tradeOffs_.size()) {
    chart_->setChoices({}, most, {});
    lengths_->clear();
    return;
  }
  const ClassTradeOff& one = tradeOffs_[at];
  chart_->setChoices(one.choices, most,
                     [this, width = one.metalWidth](Length bought) { return areaWords(session_, width * bought); });
  const std::size_t count = one.choices.size();
  const std::size_t chosen = most == 0 ? count : std::min(static_cast<std::size_t>(most), count);
  const LengthChoice& choice = one.choices[chosen - 1];
  QStringList lengths;
  for (const Length& length : choice.lengths) lengths << QString::fromStdString(fineText(length, session_.style()));
  const QString buys = areaWords(session_, one.metalWidth * choice.bought);
  const QString more = areaWords(session_, one.metalWidth * (choice.bought - one.choices.back().bought));
  lengths_->setText(
      most == 0 ? tr("Any number of lengths: each sheet as long as it is wanted, in %1 different ones.").arg(count)
                : tr("At most %1: %2. Buys %3, that is %4 more than the least.")
                      .arg(QString::number(most), lengths.join(QStringLiteral(", ")), buys, more));
}

void OrderPanel::chooseLengths(int most) {
  const std::string path = "settings.most_order_lengths";
  const auto field = fieldAt(session_.newest(), path);
  if (field) enterField(session_, {path}, field.value(), QString::number(most));
}

void OrderPanel::chooseLine(int row) {
  const OrderLine& line = session_.plan().order.lines[static_cast<std::size_t>(row)];
  std::vector<int> sheets;
  for (int i = 0; i < line.hung(); ++i) sheets.push_back(line.firstSheet + i);
  chooseSheets(sheets);
}

void OrderPanel::chooseBundle(int row) {
  std::vector<int> sheets;
  for (const BundledSheet& one : packed_[static_cast<std::size_t>(row)].sheets) {
    if (one.sheet >= 0) sheets.push_back(one.sheet);
  }
  chooseSheets(sheets);
}

void OrderPanel::chooseSheets(const std::vector<int>& sheets) {
  const std::vector<Part> parts = partsOf(session_, sheets);
  if (parts.empty()) return;
  session_.chooseParts(parts);
  emit pointedAt(parts.back());
}

}  // namespace ribwright
