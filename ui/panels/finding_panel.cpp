#include "ui/panels/finding_panel.h"

#include <QEvent>
#include <QHeaderView>
#include <QPlainTextEdit>
#include <QSplitter>
#include <QTreeWidget>
#include <QVBoxLayout>

#include "core/output/tables.h"
#include "ui/panels/grade_text.h"

namespace ribwright {

namespace {

constexpr int wordLines = 6;

QString text(const std::string& words) { return QString::fromStdString(words); }

}  // namespace

FindingPanel::FindingPanel(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), list_(new QTreeWidget(this)), words_(new QPlainTextEdit(this)) {
  list_->setObjectName(QStringLiteral("findings"));
  list_->setAccessibleName(tr("Findings"));
  list_->setHeaderLabels({tr("Grade"), tr("Where"), tr("Why")});
  list_->setRootIsDecorated(false);
  list_->setUniformRowHeights(true);
  list_->header()->setStretchLastSection(true);
  words_->setObjectName(QStringLiteral("findingWords"));
  words_->setAccessibleName(tr("The chosen finding in full"));
  words_->setReadOnly(true);
  words_->setTabChangesFocus(true);
  words_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);
  auto* parts = new QSplitter(Qt::Vertical, this);
  parts->setChildrenCollapsible(false);
  parts->addWidget(list_);
  parts->addWidget(words_);
  parts->setStretchFactor(0, 2);
  parts->setStretchFactor(1, 1);
  parts->setSizes({200, 100});
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(parts);
  setFocusProxy(list_);
  fit();
  connect(list_, &QTreeWidget::currentItemChanged, this, &FindingPanel::chooseCurrent);
  connect(list_, &QTreeWidget::itemClicked, this, &FindingPanel::chooseCurrent);
  connect(&session_, &Session::jobChanged, this, &FindingPanel::showJob);
  connect(&session_, &Session::chosenChanged, this, &FindingPanel::showPart);
  if (session_.isOpen()) showJob();
}

void FindingPanel::fit() {
  words_->setMinimumHeight(wordLines * fontMetrics().lineSpacing());
  list_->setMinimumHeight(4 * fontMetrics().lineSpacing());
  for (int column : {0, 1}) list_->resizeColumnToContents(column);
}

void FindingPanel::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) fit();
}

void FindingPanel::showJob() {
  following_ = true;
  list_->clear();
  for (const Finding& finding : session_.plan().findings) {
    const FindingText words = findingText(finding, session_.style(), session_.words());
    auto* item = new QTreeWidgetItem(list_, {gradeText(finding.grade), text(words.where), text(words.why)});
    item->setToolTip(1, text(words.where));
    item->setToolTip(2, text(words.why));
  }
  fit();
  following_ = false;
  sayCurrent();
}

void FindingPanel::chooseCurrent() {
  if (following_) return;
  sayCurrent();
  const int row = list_->indexOfTopLevelItem(list_->currentItem());
  if (row < 0) return;
  const auto index = static_cast<std::size_t>(row);
  const std::string wall = session_.plan().findings[index].wall;
  const std::optional<Part> part = session_.findingParts()[index];
  following_ = true;
  if (!wall.empty()) session_.chooseWall(wall);
  session_.choose(part);
  following_ = false;
  if (part) emit pointedAt(*part);
}

// The current line stays when it points at the chosen part already, or at none while none is chosen.
void FindingPanel::showPart() {
  const auto& parts = session_.findingParts();
  const std::optional<Part>& chosen = session_.chosen();
  QTreeWidgetItem* first = nullptr;
  bool currentIsOne = false;
  for (int row = 0; row < list_->topLevelItemCount() && row < static_cast<int>(parts.size()); ++row) {
    QTreeWidgetItem* item = list_->topLevelItem(row);
    const bool ofPart = chosen && parts[static_cast<std::size_t>(row)] == chosen;
    QFont font = list_->font();
    font.setBold(ofPart);
    for (int column = 0; column < 3; ++column) item->setFont(column, font);
    if (ofPart && !first) first = item;
    currentIsOne = currentIsOne || (item == list_->currentItem() && parts[static_cast<std::size_t>(row)] == chosen);
  }
  if (following_ || currentIsOne) return;
  following_ = true;
  list_->setCurrentItem(first);
  if (!first) list_->clearSelection();
  if (first) list_->scrollToItem(first);
  following_ = false;
  sayCurrent();
}

void FindingPanel::sayCurrent() {
  const int row = list_->indexOfTopLevelItem(list_->currentItem());
  if (row < 0) {
    const bool none = !session_.isOpen() || session_.plan().findings.empty();
    return words_->setPlainText(none ? tr("No findings.") : tr("Choose a finding to read what to do about it."));
  }
  const Finding& finding = session_.plan().findings[static_cast<std::size_t>(row)];
  const FindingText words = findingText(finding, session_.style(), session_.words());
  QString shown =
      text(words.where) + QStringLiteral(": ") + text(words.why) + QLatin1Char('\n') + tr("Do: ") + text(words.remedy);
  if (!finding.source.empty()) shown += QLatin1Char('\n') + tr("Source: ") + text(finding.source);
  words_->setPlainText(shown);
}

}  // namespace ribwright
