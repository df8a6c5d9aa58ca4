#include "ui/panels/field_editor.h"

#include <QEvent>
#include <QScrollArea>
#include <QVBoxLayout>

#include "core/editing/field_path.h"
#include "core/editing/field_words.h"
#include "ui/panels/choice_editor.h"
#include "ui/panels/flag_editor.h"
#include "ui/panels/grade_text.h"
#include "ui/panels/line_editor.h"
#include "ui/panels/lines_editor.h"
#include "ui/session/session.h"

namespace ribwright {

namespace {

QString said(const Session& session, const std::string& id) {
  return QString::fromStdString(session.words().say(id, {}, session.style()));
}

}  // namespace

QString fieldName(const std::string& path) {
  return QStringLiteral("field:") + QString::fromStdString(withoutIndices(path));
}

QString labelOf(const Session& session, const Field& field) { return said(session, labelId(field)); }

QString tipOf(const Session& session, const Field& field) {
  QString tip = said(session, tipId(field));
  if (!field.limits.id.empty())
    tip += QLatin1Char('\n') + QString::fromStdString(session.words().say(field.limits, session.style()));
  return tip;
}

QString shownText(const Session& session, const Field& field) {
  return QString::fromStdString(session.words().say(saidText(field, field.text), session.style()));
}

FieldEditor* FieldEditor::make(const Session& session, const ShownField& shown, QWidget* parent) {
  const FieldKind kind = shown.field.kind;
  if (kind == FieldKind::Flag && !shown.field.optional) return new FlagEditor(session, shown, parent);
  if (kind == FieldKind::Choice || kind == FieldKind::Flag || !shown.names.empty())
    return new ChoiceEditor(session, shown, parent);
  if (kind == FieldKind::Lines || kind == FieldKind::Texts) return new LinesEditor(session, shown, parent);
  return new LineEditor(session, shown, parent);
}

FieldEditor::FieldEditor(const Session& session, const ShownField& shown, QWidget* input, QWidget* parent)
    : QWidget(parent), session_(session), path_(shown.field.path), input_(input), fault_(new QLabel(this)) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  layout->addWidget(input_);
  layout->addWidget(fault_);
  fault_->setObjectName(QStringLiteral("fault"));
  fault_->setTextFormat(Qt::PlainText);
  fault_->setWordWrap(true);
  fault_->hide();
  input_->setObjectName(fieldName(path_));
  input_->setAccessibleName(labelOf(session, shown.field));
  input_->setToolTip(tipOf(session, shown.field));
  input_->installEventFilter(this);
  setFocusProxy(input_);
}

// A fault of another field says which.
void FieldEditor::tell(const std::vector<Fault>& faults) {
  if (faults.empty()) {
    accept();
    return clearFault();
  }
  const Fault& first = faults.front();
  const bool own = first.place == path_ || first.place.empty();
  setFault(QString::fromStdString(own ? first.message : oneLine(first)));
}

// By a sign too, never by colour alone.
void FieldEditor::setFault(const QString& words) {
  const QString sign = gradeSign(Grade::Look) + QLatin1Char(' ');
  fault_->setText(words.isEmpty() || words.startsWith(sign) ? words : sign + words);
  fault_->setVisible(!words.isEmpty());
  input_->setAccessibleDescription(words);
  if (!words.isEmpty()) QMetaObject::invokeMethod(this, &FieldEditor::bringFaultIntoView, Qt::QueuedConnection);
}

// Once it has its place.
void FieldEditor::bringFaultIntoView() {
  for (QWidget* around = parentWidget(); around; around = around->parentWidget()) {
    if (auto* scroll = qobject_cast<QScrollArea*>(around)) scroll->ensureWidgetVisible(this, 0, fontMetrics().height());
  }
}

bool FieldEditor::eventFilter(QObject* watched, QEvent* event) {
  const bool went = watched == input_ && event->type() == QEvent::FocusOut;
  const bool handled = QWidget::eventFilter(watched, event);
  if (went && static_cast<QFocusEvent*>(event)->reason() != Qt::PopupFocusReason)
    QMetaObject::invokeMethod(this, &FieldEditor::left, Qt::QueuedConnection);  // after it was entered
  return handled;
}

}  // namespace ribwright
