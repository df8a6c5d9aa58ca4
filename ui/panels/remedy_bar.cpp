#include "ui/panels/remedy_bar.h"

#include <QVBoxLayout>

#include "ui/panels/confirm_pattern_dialog.h"
#include "ui/panels/remedy_button.h"

namespace ribwright {

RemedyBar::RemedyBar(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), buttons_(new QVBoxLayout(this)) {
  setObjectName(QStringLiteral("remedies"));
  buttons_->setContentsMargins(0, 0, 0, 0);
  buttons_->setSpacing(2);
  later_.setSingleShot(true);
  later_.setInterval(0);
  connect(&later_, &QTimer::timeout, this, &RemedyBar::seek);
}

void RemedyBar::offerFor(const std::optional<Finding>& finding) {
  takeButtonsAway();
  finding_ = finding;
  if (finding_) later_.start();
}

void RemedyBar::takeButtonsAway() {
  later_.stop();
  if (previews_) session_.endPreview();
  previews_ = false;
  const auto buttons = findChildren<RemedyButton*>(QString(), Qt::FindDirectChildrenOnly);
  for (RemedyButton* button : buttons) {
    button->disconnect(this);
    button->setObjectName({});
    button->hide();
    button->deleteLater();
  }
  hide();
}

// While a newer job is being planned the finding may be gone by the next moment; it is asked for anew then.
void RemedyBar::seek() {
  if (!session_.isOpen() || session_.isPlanning() || !finding_) return;
  int number = 0;
  for (const OfferedRemedy& remedy : remediesFor(session_.job(), session_.plan(), *finding_))
    addRemedy(remedy, ++number);
  const bool confirms = finding_->id == "pattern-not-confirmed" || finding_->id == "confirmation-fallen";
  if (confirms) addConfirmation(finding_->mark);
  setVisible(number > 0 || confirms);
}

// Other findings that go with it or come with it.
QString RemedyBar::whatElse(const OfferedRemedy& remedy) {
  QStringList words;
  if (remedy.othersGone > 0) words << tr("other findings that go: %1").arg(remedy.othersGone);
  if (remedy.othersCome > 0) words << tr("that come: %1").arg(remedy.othersCome);
  return words.isEmpty() ? QString() : QStringLiteral(" (%1)").arg(words.join(QStringLiteral(", ")));
}

RemedyButton* RemedyBar::addButton(const QString& words, int number) {
  auto* button = new RemedyButton(words, this);
  button->setObjectName(QStringLiteral("remedy%1").arg(number));
  buttons_->addWidget(button);
  return button;
}

void RemedyBar::addRemedy(const OfferedRemedy& remedy, int number) {
  const std::string name = session_.words().say(remedy.name, session_.style());
  RemedyButton* button = addButton(QString::fromStdString(name) + whatElse(remedy), number);
  connect(button, &RemedyButton::pointedAt, this, [this, remedy](bool here) {
    if (!here && previews_) session_.endPreview();
    previews_ = here;
    const Outcome<Job> made = here ? remedy.edit(session_.newest()) : Outcome<Job>(Fault{});
    if (made) session_.preview(made.value());
  });
  connect(button, &QPushButton::clicked, this, [this, remedy, name] {
    previews_ = false;
    const std::vector<Fault> faults = session_.edit(name, remedy.edit);
    if (!faults.empty()) emit failed(QString::fromStdString(oneLine(faults.front())));
  });
}

void RemedyBar::addConfirmation(const std::string& pattern) {
  RemedyButton* button = addButton(tr("Hold the numbers against the plans…"), 0);
  button->setObjectName(QStringLiteral("remedyConfirm"));
  connect(button, &QPushButton::clicked, this, [this, pattern] {
    auto* dialog = new ConfirmPatternDialog(session_, pattern, window());
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
  });
}

}  // namespace ribwright
