#include "ui/panels/finding_panel.h"

#include <QHeaderView>
#include <QLabel>
#include <QTreeWidget>
#include <QVBoxLayout>

#include "core/output/tables.h"

namespace ribwright {

namespace {

// A sign besides the word, so that nothing hangs on colour.
QString gradeText(Grade grade) {
  switch (grade) {
    case Grade::Stop:
      return FindingPanel::tr("■ stop");
    case Grade::Look:
      return FindingPanel::tr("▲ look");
    case Grade::Note:
      break;
  }
  return FindingPanel::tr("○ note");
}

QString text(const std::string& words) { return QString::fromStdString(words); }

}  // namespace

FindingPanel::FindingPanel(QWidget* parent) : QWidget(parent), list_(new QTreeWidget(this)), words_(new QLabel(this)) {
  list_->setObjectName(QStringLiteral("findings"));
  list_->setAccessibleName(tr("Findings"));
  list_->setHeaderLabels({tr("Grade"), tr("Where"), tr("Why")});
  list_->setRootIsDecorated(false);
  list_->setUniformRowHeights(true);
  list_->header()->setStretchLastSection(true);
  words_->setObjectName(QStringLiteral("findingWords"));
  words_->setWordWrap(true);
  words_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  words_->setTextFormat(Qt::PlainText);
  words_->setMargin(6);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(list_, 1);
  layout->addWidget(words_);
  connect(list_, &QTreeWidget::currentItemChanged, this, &FindingPanel::showChosen);
}

void FindingPanel::setFindings(const std::vector<Finding>& findings, const LengthStyle& style) {
  findings_ = findings;
  style_ = style;
  list_->clear();
  for (const Finding& finding : findings_) {
    const FindingText words = findingText(finding, style_);
    auto* item = new QTreeWidgetItem(list_, {gradeText(finding.grade), text(words.where), text(words.why)});
    item->setToolTip(2, text(words.why));
  }
  for (int column : {0, 1}) list_->resizeColumnToContents(column);
  words_->setText(findings_.empty() ? tr("No findings.") : tr("Choose a finding to read what to do about it."));
}

void FindingPanel::showChosen() {
  const int row = list_->indexOfTopLevelItem(list_->currentItem());
  if (row < 0) return;
  const Finding& finding = findings_[static_cast<std::size_t>(row)];
  const FindingText words = findingText(finding, style_);
  QString shown =
      text(words.where) + QStringLiteral(": ") + text(words.why) + QLatin1Char('\n') + tr("Do: ") + text(words.remedy);
  if (!finding.source.empty()) shown += QLatin1Char('\n') + tr("Source: ") + text(finding.source);
  words_->setText(shown);
  if (!finding.wall.empty()) emit wallChosen(text(finding.wall));
}

}  // namespace ribwright
