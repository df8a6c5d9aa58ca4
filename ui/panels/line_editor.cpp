#include "ui/panels/line_editor.h"

#include "core/editing/field_words.h"
#include "ui/session/session.h"

namespace ribwright {

namespace {

// What the program writes itself.
bool isOnlyRead(const Field& field) {
  return (field.owner == "job" && field.key == "ribwright") ||
         (field.owner == "confirmation" && field.key == "numbers");
}

}  // namespace

LineEditor::LineEditor(const Session& session, const ShownField& shown, QWidget* parent)
    : FieldEditor(session, shown, new TypedLine, parent), line_(static_cast<TypedLine*>(input())) {
  line_->setReadOnly(isOnlyRead(shown.field));
  connect(line_, &TypedLine::entered, this, &FieldEditor::entered);
  connect(line_, &TypedLine::takenBack, this, [this] { clearFault(); });
  show(shown);
}

void LineEditor::show(const ShownField& shown) {
  line_->setPlaceholderText(shown.instead);
  line_->setStanding(shown.various ? QString() : QString::fromStdString(shown.field.text));
}

std::optional<QString> LineEditor::typed() const {
  return line_->isModified() ? std::optional(line_->text()) : std::nullopt;
}

void LineEditor::setTyped(const QString& text) {
  line_->setText(text);
  line_->setModified(true);
}

}  // namespace ribwright
