#include "ui/panels/status_line.h"

#include <QLabel>
#include <QStatusBar>
#include <algorithm>

#include "core/drawing/particulars.h"
#include "ui/panels/batch_rows.h"
#include "ui/panels/elided_label.h"
#include "ui/panels/grade_text.h"
#include "ui/panels/packet_bar.h"

namespace ribwright {

namespace {

// Signs take little room, words are read aloud and stand in the tool tip.
QString countText(const Plan& plan, QString (*sign)(Grade)) {
  QStringList words;
  for (const Grade grade : {Grade::Stop, Grade::Look, Grade::Note}) {
    const auto count = std::count_if(plan.findings.begin(), plan.findings.end(),
                                     [grade](const Finding& finding) { return finding.grade == grade; });
    words << QStringLiteral("%1 %2").arg(sign(grade)).arg(count);
  }
  return words.join(QStringLiteral("   "));
}

QLabel* label(QStatusBar* bar, const char* name) {
  auto* made = new QLabel(bar);
  made->setObjectName(QLatin1String(name));
  made->setTextFormat(Qt::PlainText);
  made->setMargin(bar->fontMetrics().averageCharWidth() / 2);
  bar->addPermanentWidget(made);
  return made;
}

}  // namespace

StatusLine::StatusLine(Session& session, QStatusBar* bar)
    : QObject(bar),
      session_(session),
      changes_(new ElidedLabel(bar)),
      part_(new ElidedLabel(bar)),
      packet_(new PacketBar(bar)) {
  part_->setObjectName(QStringLiteral("statusPart"));
  changes_->setObjectName(QStringLiteral("statusBatches"));
  bar->addWidget(changes_, 1);
  bar->addWidget(part_, 1);
  changes_->hide();
  bar->addPermanentWidget(packet_);
  counts_ = label(bar, "statusCounts");
  units_ = label(bar, "statusUnits");
  zoom_ = label(bar, "statusZoom");
  connect(&session_, &Session::jobChanged, this, &StatusLine::showJob);
  connect(&session_, &Session::wallChanged, this, &StatusLine::showPart);
  connect(&session_, &Session::chosenChanged, this, &StatusLine::showPart);
}

void StatusLine::showJob() {
  hovered_.reset();
  changes_->setText(whatChanged());
  changes_->setVisible(!changes_->text().isEmpty());
  const QString counts = tr("Findings of the whole job: %1").arg(countText(session_.plan(), gradeText));
  counts_->setText(countText(session_.plan(), gradeSign));
  counts_->setToolTip(counts);
  counts_->setAccessibleName(counts);
  units_->setText(session_.job().units == UnitSystem::FeetInches ? tr("feet and inches") : tr("millimetres"));
}

// "Move W1 by 4": 3 lengths changed, +2' 4". A/2 is held again"; nothing for a job that was just opened.
QString StatusLine::whatChanged() const {
  QStringList words;
  const OrderChanges& order = session_.orderChanges();
  const bool otherCost = order.costMore.value_or(Money()) != Money();
  if (!order.changedSheets.empty() || !order.sameOrder() || otherCost)
    words << QString::fromStdString(orderChangeText(order, session_.words(), session_.style()));
  const QString batches = changeText(session_.batchChanges());
  if (!batches.isEmpty()) words << batches;
  if (words.isEmpty()) return {};
  const QString edit = lastEdit();
  return edit.isEmpty() ? words.join(QStringLiteral("; "))
                        : edit + QStringLiteral(": ") + words.join(QStringLiteral("; "));
}

QString StatusLine::lastEdit() const {
  const History& history = *session_.history();
  const bool undone = session_.lastStep() == Session::Step::Undone;
  const QString name = QString::fromStdString(undone ? history.redoName() : history.undoName());
  if (name.isEmpty() || session_.lastStep() == Session::Step::Edited) return name;
  return undone ? tr("Undone, %1").arg(name) : tr("Done again, %1").arg(name);
}

void StatusLine::setHovered(const std::optional<Part>& part) {
  hovered_ = part;
  showPart();
}

void StatusLine::setZoom(const QString& words) { zoom_->setText(words); }

void StatusLine::showPart() {
  if (!session_.isOpen() || session_.wall() < 0) return part_->setText({});
  const Part wall{Part::Kind::Face, session_.chosenWall().letter, {}};
  const Part& part = hovered_ ? *hovered_ : session_.chosen() ? *session_.chosen() : wall;
  part_->setText(
      QString::fromStdString(lineOf(session_.job(), session_.plan(), part, session_.words(), session_.style())));
}

}  // namespace ribwright
