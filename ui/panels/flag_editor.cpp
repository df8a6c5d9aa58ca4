#include "ui/panels/flag_editor.h"

namespace ribwright {

FlagEditor::FlagEditor(const Session& session, const ShownField& shown, QWidget* parent)
    : FieldEditor(session, shown, new QCheckBox, parent), box_(static_cast<QCheckBox*>(input())) {
  connect(box_, &QCheckBox::clicked, this, [this] {
    emit entered(box_->checkState() == Qt::Unchecked ? QStringLiteral("false") : QStringLiteral("true"));
  });
  show(shown);
}

void FlagEditor::show(const ShownField& shown) {
  box_->setTristate(shown.various);
  const Qt::CheckState stated = shown.field.text == "true" ? Qt::Checked : Qt::Unchecked;
  box_->setCheckState(shown.various ? Qt::PartiallyChecked : stated);
}

}  // namespace ribwright
