#include "ui/panels/lines_editor.h"

namespace ribwright {

LinesEditor::LinesEditor(const Session& session, const ShownField& shown, QWidget* parent)
    : FieldEditor(session, shown, new TypedLines, parent), lines_(static_cast<TypedLines*>(input())) {
  connect(lines_, &TypedLines::entered, this, &FieldEditor::entered);
  connect(lines_, &TypedLines::takenBack, this, [this] { clearFault(); });
  show(shown);
}

void LinesEditor::show(const ShownField& shown) {
  lines_->setPlaceholderText(shown.instead);
  lines_->setStanding(shown.various ? QString() : QString::fromStdString(shown.field.text));
}

std::optional<QString> LinesEditor::typed() const {
  return lines_->isTyped() ? std::optional(lines_->toPlainText()) : std::nullopt;
}

void LinesEditor::setTyped(const QString& text) {
  lines_->setPlainText(text);
  lines_->document()->setModified(true);
}

}  // namespace ribwright
