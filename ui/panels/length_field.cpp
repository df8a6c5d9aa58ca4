#include "ui/panels/length_field.h"

#include <QKeyEvent>

#include "core/editing/reading_text.h"

namespace ribwright {

namespace {

constexpr int lengthLetters = 14;

}  // namespace

LengthField::LengthField(const char* name, QWidget* parent) : QLineEdit(parent) {
  setObjectName(QLatin1String(name));
  connect(this, &QLineEdit::editingFinished, this, &LengthField::finishTyping);
}

QSize LengthField::sizeHint() const {
  return {lengthLetters * fontMetrics().averageCharWidth(), QLineEdit::sizeHint().height()};
}

void LengthField::setLength(const std::optional<Length>& length, const LengthStyle& style) {
  length_ = length;
  style_ = style;
  if (isModified()) return;
  setText(length ? QString::fromStdString(readingText({*length, {}}, style)) : QString());
}

void LengthField::finishTyping() {
  if (!isModified()) return;
  if (text().trimmed().isEmpty()) {
    setModified(false);
    return emit entered(std::nullopt);
  }
  const auto length = parseLength(text().toStdString(), style_);
  if (!length) return emit refused(QString::fromStdString(oneLine(length.faults().front())));
  setModified(false);
  emit entered(length.value());
}

// Esc brings back what stood there; with nothing typed it is the window's.
bool LengthField::takesBack(const QKeyEvent& key) const { return key.key() == Qt::Key_Escape && isModified(); }

bool LengthField::event(QEvent* event) {
  if (event->type() == QEvent::ShortcutOverride && takesBack(*static_cast<QKeyEvent*>(event))) event->accept();
  return QLineEdit::event(event);
}

void LengthField::keyPressEvent(QKeyEvent* event) {
  if (!takesBack(*event)) return QLineEdit::keyPressEvent(event);
  setModified(false);
  setLength(length_, style_);
}

}  // namespace ribwright
