#include "ui/panels/typed_lines.h"

#include <QKeyEvent>

namespace ribwright {

namespace {

constexpr int typedLinesShown = 3, typedLinesLetters = 14;

}  // namespace

TypedLines::TypedLines(QWidget* parent) : QPlainTextEdit(parent) {
  setTabChangesFocus(true);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

QSize TypedLines::sizeHint() const {
  const int around = 2 * frameWidth() + static_cast<int>(2 * document()->documentMargin());
  return {typedLinesLetters * fontMetrics().averageCharWidth(), typedLinesShown * fontMetrics().lineSpacing() + around};
}

void TypedLines::setStanding(const QString& text) {
  standing_ = text;
  if (isTyped() || toPlainText() == text) return;
  setPlainText(text);
  document()->setModified(false);
}

void TypedLines::finishTyping() {
  if (isTyped()) emit entered(toPlainText());
}

void TypedLines::accept() { document()->setModified(false); }

// With nothing typed, undo and redo are the window's.
bool TypedLines::event(QEvent* event) {
  if (event->type() != QEvent::ShortcutOverride) return QPlainTextEdit::event(event);
  const auto& key = *static_cast<QKeyEvent*>(event);
  if (isTyped() && key.key() == Qt::Key_Escape) event->accept();
  if (isTyped() || !(key.matches(QKeySequence::Undo) || key.matches(QKeySequence::Redo)))
    return QPlainTextEdit::event(event);
  event->ignore();
  return false;
}

void TypedLines::keyPressEvent(QKeyEvent* event) {
  const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
  if (enter && event->modifiers().testFlag(Qt::ControlModifier)) return finishTyping();
  if (event->key() != Qt::Key_Escape || !isTyped()) return QPlainTextEdit::keyPressEvent(event);
  setPlainText(standing_);
  document()->setModified(false);
  emit takenBack();
}

void TypedLines::focusOutEvent(QFocusEvent* event) {
  QPlainTextEdit::focusOutEvent(event);
  if (event->reason() != Qt::PopupFocusReason) finishTyping();
}

}  // namespace ribwright
