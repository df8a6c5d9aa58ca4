#include "ui/panels/typed_line.h"

#include <QKeyEvent>

namespace ribwright {

namespace {

constexpr int shownLetters = 14, leastLetters = 6;

}  // namespace

TypedLine::TypedLine(QWidget* parent) : QLineEdit(parent) {
  connect(this, &QLineEdit::editingFinished, this, &TypedLine::finishTyping);
}

QSize TypedLine::sizeHint() const {
  return {shownLetters * fontMetrics().averageCharWidth(), QLineEdit::sizeHint().height()};
}

QSize TypedLine::minimumSizeHint() const {
  return {leastLetters * fontMetrics().averageCharWidth(), QLineEdit::minimumSizeHint().height()};
}

void TypedLine::setStanding(const QString& text) {
  standing_ = text;
  if (isModified() || this->text() == text) return;
  setText(text);
  setCursorPosition(0);
}

void TypedLine::finishTyping() {
  if (isModified()) emit entered(text());
}

void TypedLine::accept() { setModified(false); }

// With nothing typed, Esc is the window's.
bool TypedLine::takesBack(const QKeyEvent& key) const { return key.key() == Qt::Key_Escape && isModified(); }

// So are undo and redo.
bool TypedLine::leavesToWindow(const QKeyEvent& key) const {
  return !isModified() && (key.matches(QKeySequence::Undo) || key.matches(QKeySequence::Redo));
}

bool TypedLine::event(QEvent* event) {
  if (event->type() == QEvent::ShortcutOverride && leavesToWindow(*static_cast<QKeyEvent*>(event))) {
    event->ignore();
    return false;
  }
  if (event->type() == QEvent::ShortcutOverride && takesBack(*static_cast<QKeyEvent*>(event))) event->accept();
  return QLineEdit::event(event);
}

void TypedLine::keyPressEvent(QKeyEvent* event) {
  if (!takesBack(*event)) return QLineEdit::keyPressEvent(event);
  setModified(false);
  setText(standing_);
  emit takenBack();
}

}  // namespace ribwright
