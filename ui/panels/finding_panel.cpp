#include "ui/panels/finding_panel.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "core/output/tables.h"
#include "ui/panels/finding_list.h"
#include "ui/panels/grade_text.h"
#include "ui/panels/remedy_bar.h"
#include "ui/panels/silence_bar.h"
#include "ui/panels/silenced_list.h"
#include "ui/session/window_text.h"

namespace ribwright {

namespace {

constexpr int wordLines = 6;
constexpr int fewestLetters = 32;  // across

}  // namespace

FindingPanel::FindingPanel(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      list_(new FindingList({tr("Grade"), tr("Wall"), tr("Where"), tr("Why")}, this)),
      silenced_(new SilencedList(session, this)),
      words_(new QPlainTextEdit(this)),
      remedies_(new RemedyBar(session, this)),
      silence_(new SilenceBar(session, this)),
      told_(new QLabel(this)) {
  list_->setObjectName(QStringLiteral("findings"));
  list_->setAccessibleName(tr("Findings"));
  auto* parts = new QSplitter(Qt::Vertical, this);
  parts->setChildrenCollapsible(false);
  parts->addWidget(makeLists());
  parts->addWidget(makeWords());
  parts->setStretchFactor(0, 2);
  parts->setStretchFactor(1, 1);
  parts->setSizes({200, 160});
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(parts);
  setFocusProxy(list_);
  fit();
  connect(list_, &QTreeWidget::currentItemChanged, this, &FindingPanel::chooseCurrent);
  connect(list_, &QTreeWidget::itemClicked, this, &FindingPanel::chooseCurrent);
  connect(list_, &FindingList::filled, this, &FindingPanel::showPart);
  connect(remedies_, &RemedyBar::failed, this, &FindingPanel::tell);
  connect(silence_, &SilenceBar::failed, this, &FindingPanel::tell);
  connect(&session_, &Session::jobChanged, this, &FindingPanel::showJob);
  connect(&session_, &Session::chosenChanged, this, &FindingPanel::showPart);
  if (session_.isOpen()) showJob();
}

QWidget* FindingPanel::makeLists() {
  auto* whole = new QWidget(this);
  silencedButton_ = new QPushButton(whole);
  silencedButton_->setObjectName(QStringLiteral("showSilenced"));
  silencedButton_->setCheckable(true);
  silencedButton_->setAutoDefault(false);
  silencedButton_->setToolTip(tr("Show the findings that were put aside instead"));
  lists_ = new QStackedWidget(whole);
  lists_->addWidget(list_);
  lists_->addWidget(silenced_);
  auto* layout = new QVBoxLayout(whole);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(2);
  layout->addWidget(silencedButton_, 0, Qt::AlignRight);
  layout->addWidget(lists_, 1);
  connect(silencedButton_, &QPushButton::toggled, this, &FindingPanel::showSilenced);
  return whole;
}

// What is too long for its room is scrolled.
QWidget* FindingPanel::makeWords() {
  words_->setObjectName(QStringLiteral("findingWords"));
  words_->setAccessibleName(tr("The chosen finding in full"));
  words_->setReadOnly(true);
  words_->setTabChangesFocus(true);
  words_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);
  told_->setObjectName(QStringLiteral("findingTold"));
  told_->setWordWrap(true);
  told_->hide();
  auto* whole = new QWidget(this);
  auto* layout = new QVBoxLayout(whole);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(4);
  layout->addWidget(words_, 1);
  layout->addWidget(remedies_);
  layout->addWidget(silence_);
  layout->addWidget(told_);
  auto* scrolled = new QScrollArea(this);
  scrolled->setFrameShape(QFrame::NoFrame);
  scrolled->setFocusPolicy(Qt::NoFocus);
  scrolled->setWidgetResizable(true);
  scrolled->setWidget(whole);
  return scrolled;
}

void FindingPanel::fit() {
  setMinimumWidth(fewestLetters * fontMetrics().averageCharWidth());
  words_->setMinimumHeight(wordLines * fontMetrics().lineSpacing());
  list_->setMinimumHeight(4 * fontMetrics().lineSpacing());
  list_->fit();
}

void FindingPanel::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) fit();
}

void FindingPanel::showJob() {
  std::vector<FindingList::Line> lines;
  for (const Finding& finding : session_.plan().findings) {
    const FindingText words = findingText(finding, session_.style(), session_.words());
    lines.push_back({{gradeText(finding.grade), text(finding.wall), text(words.where), text(words.why)},
                     static_cast<int>(finding.grade)});
  }
  following_ = true;
  list_->setCurrentItem(nullptr);
  list_->setLines(std::move(lines));
  following_ = false;
  silencedButton_->setText(tr("Put aside: %1").arg(session_.job().silenced.size()));
  silencedButton_->setVisible(!session_.job().silenced.empty());
  if (session_.job().silenced.empty()) silencedButton_->setChecked(false);
  if (silencedButton_->isChecked()) silenced_->refill();
  tell({});
  showPart();
  sayCurrent();
}

void FindingPanel::showSilenced(bool shown) {
  if (shown) silenced_->refill();
  lists_->setCurrentIndex(shown ? 1 : 0);
  setFocusProxy(shown ? static_cast<QWidget*>(silenced_) : list_);
}

const Finding* FindingPanel::current() const {
  const int line = list_->at(list_->currentItem());
  const bool there = session_.isOpen() && line >= 0 && std::size_t(line) < session_.plan().findings.size();
  return there ? &session_.plan().findings[std::size_t(line)] : nullptr;
}

// The parts of all lines that are chosen, the current one's last.
void FindingPanel::chooseCurrent() {
  if (following_) return;
  sayCurrent();
  const Finding* finding = current();
  if (!finding) return;
  const int line = list_->at(list_->currentItem());
  const auto& parts = session_.findingParts();
  const std::string wall = finding->wall;
  const std::optional<Part> part = parts[std::size_t(line)];
  std::vector<Part> chosen;
  for (const int each : list_->chosenLines()) {
    if (each != line && part && parts[std::size_t(each)]) chosen.push_back(*parts[std::size_t(each)]);
  }
  following_ = true;
  if (!wall.empty()) session_.chooseWall(wall);
  if (chosen.empty() || !part) {
    session_.choose(part);
  } else {
    chosen.push_back(*part);
    session_.chooseParts(chosen);
  }
  following_ = false;
  showPart();
  if (part) emit pointedAt(*part);
}

// The current line stays when it points at the chosen part already, or at none while none is chosen.
void FindingPanel::showPart() {
  const auto& parts = session_.findingParts();
  const std::optional<Part>& chosen = session_.chosen();
  QTreeWidgetItem* first = nullptr;
  bool currentIsOne = false;
  for (int row = 0; row < list_->topLevelItemCount(); ++row) {
    QTreeWidgetItem* item = list_->topLevelItem(row);
    const int line = list_->at(item);
    if (line < 0 || line >= static_cast<int>(parts.size())) continue;
    const auto& part = parts[static_cast<std::size_t>(line)];
    const bool ofPart = chosen && part == chosen;
    QFont font = list_->font();
    font.setBold(ofPart);
    for (int column = 0; column < list_->columnCount(); ++column) item->setFont(column, font);
    if (ofPart && !first) first = item;
    currentIsOne = currentIsOne || (item == list_->currentItem() && part == chosen);
  }
  if (following_ || currentIsOne) return;
  following_ = true;
  list_->setCurrentItem(first);
  if (!first) list_->clearSelection();
  if (first) list_->scrollToItem(first);
  following_ = false;
  sayCurrent();
}

void FindingPanel::tell(const QString& words) {
  told_->setText(words.isEmpty() ? QString() : gradeSign(Grade::Look) + QLatin1Char(' ') + words);
  told_->setVisible(!words.isEmpty());
}

void FindingPanel::sayCurrent() {
  const Finding* finding = current();
  const auto chosen = finding ? std::optional(*finding) : std::nullopt;
  remedies_->offerFor(chosen);
  silence_->offerFor(chosen);
  if (!finding) {
    const bool none = !session_.isOpen() || session_.plan().findings.empty();
    return words_->setPlainText(none ? tr("No findings.") : tr("Choose a finding to read what to do about it."));
  }
  const FindingText words = findingText(*finding, session_.style(), session_.words());
  QString shown =
      text(words.where) + QStringLiteral(": ") + text(words.why) + QLatin1Char('\n') + tr("Do: ") + text(words.remedy);
  if (!finding->source.empty()) shown += QLatin1Char('\n') + tr("Source: ") + text(finding->source);
  words_->setPlainText(shown);
}

}  // namespace ribwright
