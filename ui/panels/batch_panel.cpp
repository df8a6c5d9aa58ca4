#include "ui/panels/batch_panel.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/panels/batch_rows.h"
#include "ui/panels/confirm_pattern_dialog.h"
#include "ui/panels/elided_label.h"
#include "ui/panels/part_table.h"

namespace ribwright {

BatchPanel::BatchPanel(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      table_(new PartTable(session, batchRows, this)),
      summary_(new ElidedLabel(this)),
      confirm_(new QPushButton(tr("Confirm the &pattern…"), this)) {
  setObjectName(QStringLiteral("batches"));
  table_->setObjectName(QStringLiteral("batchTable"));
  table_->setAccessibleName(tr("Drill batches of the chosen wall"));
  summary_->setObjectName(QStringLiteral("batchSummary"));
  confirm_->setObjectName(QStringLiteral("confirmPatternButton"));
  auto* head = new QHBoxLayout;
  const int margin = fontMetrics().height() / 4;
  head->setContentsMargins(2 * margin, margin, 2 * margin, margin);
  head->addWidget(summary_, 1);
  head->addWidget(confirm_);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  layout->addLayout(head);
  layout->addWidget(table_, 1);
  setFocusProxy(table_);
  connect(confirm_, &QPushButton::clicked, this, &BatchPanel::askToConfirm);
  connect(table_, &PartTable::pointedAt, this, &BatchPanel::pointedAt);
}

void BatchPanel::askToConfirm() {
  auto* dialog = new ConfirmPatternDialog(session_, session_.chosenWall().pattern, window());
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->open();
}

int BatchPanel::count() const { return table_->count(); }

int BatchPanel::cleared() const {
  if (!session_.isOpen() || session_.wall() < 0) return 0;
  const auto& batches = session_.chosenPlan().batches;
  return static_cast<int>(
      std::count_if(batches.begin(), batches.end(), [](const DrillBatch& batch) { return batch.isCleared(); }));
}

void BatchPanel::refill() {
  table_->refill();
  const int all = count();
  confirm_->setEnabled(session_.isOpen() && session_.wall() >= 0 && !session_.job().patterns.empty());
  summary_->setText(all == 0 ? tr("No sheet of this wall is drilled in a stack.")
                             : tr("%1 of %2 cleared. Drill nothing in a batch that is held.").arg(cleared()).arg(all));
}

}  // namespace ribwright
