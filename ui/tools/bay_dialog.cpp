#include "ui/tools/bay_dialog.h"

#include <QApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QSpinBox>

namespace ribwright {

namespace {

struct BayDialogTexts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::BayDialog)
};

QSpinBox* numberField(const char* name, int value, int most, QWidget* parent) {
  auto* field = new QSpinBox(parent);
  field->setObjectName(QLatin1String(name));
  field->setRange(1, most);
  field->setValue(value);
  return field;
}

}  // namespace

std::optional<BayRange> askForBays(int bays) {
  QDialog dialog(QApplication::activeWindow());
  dialog.setObjectName(QStringLiteral("bayDialog"));
  dialog.setWindowTitle(BayDialogTexts::tr("Repeat along bays"));
  QSpinBox* first = numberField("firstBay", 1, bays, &dialog);
  QSpinBox* last = numberField("lastBay", bays, bays, &dialog);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, &dialog);
  auto* form = new QFormLayout(&dialog);
  form->addRow(BayDialogTexts::tr("&From bay"), first);
  form->addRow(BayDialogTexts::tr("&To bay"), last);
  form->addRow(buttons);
  QObject::connect(first, &QSpinBox::valueChanged, last, &QSpinBox::setMinimum);
  QObject::connect(buttons, &QDialogButtonBox::accepted, &dialog, &QDialog::accept);
  QObject::connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
  if (dialog.exec() != QDialog::Accepted) return std::nullopt;
  return BayRange{first->value(), last->value() - first->value() + 1};
}

}  // namespace ribwright
