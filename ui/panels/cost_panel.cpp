#include "ui/panels/cost_panel.h"

#include <QLabel>
#include <QScrollArea>
#include <QSplitter>
#include <QVBoxLayout>
#include <set>

#include "ui/panels/cost_rows.h"
#include "ui/panels/filled_table.h"
#include "ui/panels/share_bars.h"
#include "ui/session/price_file.h"

namespace ribwright {

namespace {

QLabel* words(const char* name, QWidget* parent) {
  auto* label = new QLabel(parent);
  label->setObjectName(QLatin1String(name));
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  return label;
}

QScrollArea* scrolled(const std::vector<QWidget*>& bars, QWidget* parent) {
  auto* area = new QScrollArea(parent);
  auto* inside = new QWidget(area);
  auto* layout = new QVBoxLayout(inside);
  for (QWidget* each : bars) layout->addWidget(each);
  layout->addStretch(1);
  area->setWidget(inside);
  area->setWidgetResizable(true);
  area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);  // bars give way
  area->setFrameShape(QFrame::NoFrame);
  return area;
}

}  // namespace

CostPanel::CostPanel(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      summary_(words("costSummary", this)),
      unpriced_(words("costUnpriced", this)),
      lines_(new FilledTable(session, "costLines", tr("What the job costs, line by line"), this)),
      walls_(new ShareBars(this)),
      kinds_(new ShareBars(this)) {
  setObjectName(QStringLiteral("cost"));
  walls_->setObjectName(QStringLiteral("costWalls"));
  kinds_->setObjectName(QStringLiteral("costKinds"));
  const int margin = fontMetrics().height() / 3;
  auto* split = new QSplitter(Qt::Horizontal, this);
  split->addWidget(lines_);
  split->addWidget(scrolled({walls_, kinds_}, split));
  split->setStretchFactor(0, 3);
  split->setStretchFactor(1, 2);
  split->setChildrenCollapsible(false);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(margin, margin, margin, 0);
  layout->addWidget(summary_);
  layout->addWidget(unpriced_);
  layout->addWidget(split, 1);
  setFocusProxy(lines_);
}

void CostPanel::refill() {
  const Job& job = session_.job();
  const JobCost cost = costOfJob(job, session_.plan());
  summary_->setText(summary(cost));
  unpriced_->setText(unpriced(cost));
  unpriced_->setVisible(!unpriced_->text().isEmpty());
  lines_->setRows(costRows(job, cost));
  std::vector<ShareBars::Share> walls, kinds;
  for (const auto& [wall, money] : cost.walls())
    walls.push_back({wall.empty() ? tr("no wall") : tr("wall %1").arg(QString::fromStdString(wall)), money});
  for (const auto& [kind, money] : cost.kinds()) kinds.push_back({kindText(kind), money});
  walls_->setShares(tr("By wall"), std::move(walls), cost.total, job.decimalSign, job.prices.currency);
  kinds_->setShares(tr("By kind"), std::move(kinds), cost.total, job.decimalSign, job.prices.currency);
}

QString CostPanel::summary(const JobCost& cost) const {
  const Job& job = session_.job();
  const auto layouts = session_.plan().layouts();
  const SteelAccount steel = orderAccount(session_.plan().order, layouts).total;
  const QString area = areaWords(job, steel.waste), weight = weightWords(job, steel.wasteKilograms);
  if (job.prices.items.empty())
    return tr("No prices are stated. Write the price list (menu Job), fill in its last column in a spreadsheet and "
              "read "
              "it back; or state prices with the job's particulars. Waste of sheets: %1, %2.")
        .arg(area, weight);
  return tr("Total %1. Spares %2. Waste %3; of sheets %4, %5.")
      .arg(moneyOf(job, cost.total), moneyOf(job, cost.spares), moneyOf(job, cost.waste), area, weight);
}

// What is in no total, by name.
QString CostPanel::unpriced(const JobCost& cost) const {
  if (session_.job().prices.items.empty()) return {};
  QStringList none, beyond;
  std::set<BoughtThing> seen;
  for (const std::size_t index : cost.unpriced()) {
    const CostLine& line = cost.lines[index];
    if (seen.insert(line.thing).second) (line.isUnreckoned() ? beyond : none) << thingText(line.thing);
  }
  QStringList said;
  if (!none.isEmpty()) said << tr("⚠ No price for: %1.").arg(none.join(QStringLiteral(", ")));
  if (!beyond.isEmpty())
    said << tr("⚠ Cannot be reckoned at its price (no weight is stated, or the sum is too large): %1.")
                .arg(beyond.join(QStringLiteral(", ")));
  if (!said.isEmpty()) said << tr("What these cost is in no total.");
  return said.join(QLatin1Char(' '));
}

}  // namespace ribwright
