#include "ui/panels/fault_panel.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QStringList>
#include <QVBoxLayout>

namespace ribwright {

namespace {

constexpr int faultLines = 6;

}  // namespace

FaultPanel::FaultPanel(QWidget* parent) : QWidget(parent), title_(new QLabel(this)), lines_(new QPlainTextEdit(this)) {
  title_->setWordWrap(true);
  lines_->setObjectName(QStringLiteral("faults"));
  lines_->setAccessibleName(tr("Faults"));
  lines_->setReadOnly(true);
  auto* away = new QPushButton(tr("Put away"), this);
  connect(away, &QPushButton::clicked, this, &QWidget::hide);
  auto* head = new QHBoxLayout;
  head->addWidget(title_, 1);
  head->addWidget(away);
  auto* layout = new QVBoxLayout(this);
  layout->addLayout(head);
  layout->addWidget(lines_, 1);
  setFocusProxy(lines_);
  fit();
  hide();
}

void FaultPanel::fit() {
  QFont bold = font();
  bold.setBold(true);
  title_->setFont(bold);
  lines_->setFixedHeight(faultLines * fontMetrics().lineSpacing());
}

void FaultPanel::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) fit();
}

void FaultPanel::setFaults(const QString& title, const std::vector<Fault>& faults) {
  QStringList lines;
  for (const Fault& fault : faults) lines << QString::fromStdString(oneLine(fault));
  title_->setText(title);
  lines_->setPlainText(lines.join(QLatin1Char('\n')));
  setVisible(!faults.empty());
}

}  // namespace ribwright
