#include "ui/panels/placed_dialogs.h"

#include <QCoreApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <algorithm>

namespace ribwright {

namespace {

constexpr int mostSheets = 1'000'000;

struct PlacedDialogsTexts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::PlacedDialogs)
};

QDialog* dialog(QWidget* window, const char* name, const QString& title) {
  auto* made = new QDialog(window);
  made->setObjectName(QLatin1String(name));
  made->setWindowTitle(title);
  made->setAttribute(Qt::WA_DeleteOnClose);
  new QFormLayout(made);
  return made;
}

QFormLayout* form(QDialog* dialog) { return static_cast<QFormLayout*>(dialog->layout()); }

void finish(QDialog* dialog, const QString& does, const std::function<void()>& taken) {
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, dialog);
  buttons->button(QDialogButtonBox::Ok)->setText(does);
  form(dialog)->addRow(buttons);
  QObject::connect(buttons, &QDialogButtonBox::accepted, dialog, &QDialog::accept);
  QObject::connect(buttons, &QDialogButtonBox::rejected, dialog, &QDialog::reject);
  QObject::connect(dialog, &QDialog::accepted, dialog, taken);
  dialog->open();
}

QSpinBox* count(QDialog* dialog, const char* name, const QString& title, std::int64_t value) {
  auto* box = new QSpinBox(dialog);
  box->setObjectName(QLatin1String(name));
  box->setRange(0, mostSheets);
  box->setValue(static_cast<int>(std::min<std::int64_t>(value, mostSheets)));
  form(dialog)->addRow(title, box);
  return box;
}

}  // namespace

void askForOrder(QWidget* window, const QString& number, const QString& date,
                 std::function<void(const std::string&, const std::string&)> taken) {
  QDialog* asked = dialog(window, "placeOrderDialog", PlacedDialogsTexts::tr("Place this order"));
  auto* id = new QLineEdit(number, asked);
  id->setObjectName(QStringLiteral("orderNumber"));
  auto* day = new QLineEdit(date, asked);
  day->setObjectName(QStringLiteral("orderDate"));
  form(asked)->addRow(PlacedDialogsTexts::tr("Order &number"), id);
  form(asked)->addRow(PlacedDialogsTexts::tr("&Date"), day);
  id->selectAll();
  finish(asked, PlacedDialogsTexts::tr("&Place"),
         [id, day, taken = std::move(taken)] { taken(id->text().toStdString(), day->text().toStdString()); });
}

void askForCounts(QWidget* window, const PlacedCount& now, std::function<void(int, int)> taken) {
  QDialog* asked = dialog(window, "receivedDialog", PlacedDialogsTexts::tr("Sheets that came"));
  form(asked)->addRow(new QLabel(PlacedDialogsTexts::tr("Of %1 sheets ordered:").arg(now.placed), asked));
  QSpinBox* received = count(asked, "receivedCount", PlacedDialogsTexts::tr("&Came fit to hang"), now.received);
  QSpinBox* missing =
      count(asked, "missingCount", PlacedDialogsTexts::tr("Came unfit, or will &not come"), now.missing);
  finish(asked, PlacedDialogsTexts::tr("&Enter"),
         [received, missing, taken = std::move(taken)] { taken(received->value(), missing->value()); });
}

}  // namespace ribwright
