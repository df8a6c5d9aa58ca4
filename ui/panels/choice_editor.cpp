#include "ui/panels/choice_editor.h"

#include <QKeyEvent>
#include <algorithm>

#include "core/editing/field_words.h"
#include "ui/session/session.h"

namespace ribwright {

ChoiceEditor::ChoiceEditor(const Session& session, const ShownField& shown, QWidget* parent)
    : FieldEditor(session, shown, new CalmCombo, parent), combo_(static_cast<CalmCombo*>(input())) {
  connect(combo_, &QComboBox::activated, this, [this] {
    refused_ = true;  // until it is told that it stands
    emit entered(combo_->currentData().toString());
  });
  show(shown);
}

void ChoiceEditor::show(const ShownField& shown) {
  const bool sameItems = combo_->count() > 0 && shown_.names == shown.names && shown_.instead == shown.instead &&
                         (shown.names.empty() || shown_.field.text == shown.field.text);
  shown_ = shown;
  if (!sameItems) fill();
  if (!refused_) showStanding();
}

// A name that the job has not is shown all the same.
void ChoiceEditor::fill() {
  combo_->clear();
  const Field& field = shown_.field;
  const bool canBeLeftOut = field.kind == FieldKind::Text ? !field.required : field.optional;
  if (canBeLeftOut) add(shown_.various ? QString() : shown_.instead, {});
  for (const std::string& word :
       field.kind == FieldKind::Flag ? std::vector<std::string>{"true", "false"} : field.choices)
    add(QString::fromStdString(session().words().say(saidText(field, word), session().style())), word);
  for (const std::string& name : shown_.names) add(QString::fromStdString(name), name);
  if (combo_->findData(QString::fromStdString(field.text)) < 0) add(QString::fromStdString(field.text), field.text);
}

void ChoiceEditor::add(const QString& words, const std::string& text) {
  combo_->addItem(words, QString::fromStdString(text));
}

void ChoiceEditor::showStanding() {
  combo_->setPlaceholderText(shown_.various ? shown_.instead : QString());
  combo_->setCurrentIndex(shown_.various ? -1 : combo_->findData(QString::fromStdString(shown_.field.text)));
}

bool ChoiceEditor::eventFilter(QObject* watched, QEvent* event) {
  const bool key = event->type() == QEvent::KeyPress || event->type() == QEvent::ShortcutOverride;
  if (watched == combo_ && refused_ && key && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
    event->accept();
    if (event->type() == QEvent::ShortcutOverride) return true;
    refused_ = false;
    showStanding();
    clearFault();
    return true;
  }
  return FieldEditor::eventFilter(watched, event);
}

}  // namespace ribwright
