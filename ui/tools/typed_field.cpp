#include "ui/tools/typed_field.h"

#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace ribwright {

namespace {

constexpr int shownLetters = 24;

}  // namespace

TypedField::TypedField(QWidget* board) : QWidget(board), text_(new QLineEdit(this)), fault_(new QLabel(this)) {
  text_->setObjectName(QStringLiteral("typedDrag"));
  text_->setAccessibleName(tr("Length"));
  text_->installEventFilter(this);
  fault_->setObjectName(QStringLiteral("typedFault"));
  fault_->setTextFormat(Qt::PlainText);
  fault_->setWordWrap(true);
  fault_->setAutoFillBackground(true);
  fault_->setMargin(2);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  layout->addWidget(text_);
  layout->addWidget(fault_);
  connect(text_, &QLineEdit::textEdited, this, &TypedField::typed);
  connect(text_, &QLineEdit::returnPressed, this, &TypedField::entered);
  hide();
}

void TypedField::open(const QPoint& pixel, const QString& first, const QString& hint) {
  text_->setPlaceholderText(hint);
  text_->setText(first);
  setFixedWidth(shownLetters * fontMetrics().averageCharWidth());
  tell({});
  const QSize size = sizeHint();
  const QRect room = parentWidget()->rect().adjusted(4, 4, -4 - width(), -4 - size.height());
  move(qBound(room.left(), pixel.x() + 16, qMax(room.left(), room.right())),
       qBound(room.top(), pixel.y() + 16, qMax(room.top(), room.bottom())));
  show();
  raise();
  text_->setFocus(Qt::OtherFocusReason);
  text_->deselect();
  text_->setCursorPosition(static_cast<int>(first.size()));
  emit typed(first);
}

void TypedField::shut() {
  if (!isVisible()) return;
  parentWidget()->setFocus(Qt::OtherFocusReason);  // before it is hidden: the board takes a step of the focus for a Tab
  hide();
}

QString TypedField::text() const { return text_->text(); }

void TypedField::tell(const QString& fault) {
  fault_->setText(fault);
  fault_->setVisible(!fault.isEmpty());
  adjustSize();
}

bool TypedField::eventFilter(QObject* watched, QEvent* event) {
  const bool press = event->type() == QEvent::KeyPress || event->type() == QEvent::ShortcutOverride;
  if (watched != text_ || !press || static_cast<QKeyEvent*>(event)->key() != Qt::Key_Escape)
    return QWidget::eventFilter(watched, event);
  event->accept();
  if (event->type() == QEvent::KeyPress) emit left();
  return true;
}

}  // namespace ribwright
