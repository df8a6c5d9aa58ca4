#include "ui/panels/start_page.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace ribwright {

StartPage::StartPage(QWidget* parent) : QWidget(parent) {
  auto* title = new QLabel(tr("No job is open"), this);
  QFont large = title->font();
  large.setPointSizeF(large.pointSizeF() * 1.6);
  title->setFont(large);
  auto* words = new QLabel(
      tr("Open a job file to see its walls: which sheet hangs where, how long each blank is, and what wants a "
         "look before anything is ordered. You can also drop the file here."),
      this);
  words->setWordWrap(true);
  words->setFixedWidth(64 * fontMetrics().averageCharWidth());
  words->setFixedHeight(words->heightForWidth(words->width()));
  auto* button = new QPushButton(tr("Open a job…"), this);
  button->setObjectName(QStringLiteral("openFirst"));
  connect(button, &QPushButton::clicked, this, &StartPage::openAsked);
  auto* layout = new QVBoxLayout(this);
  layout->addStretch(2);
  layout->addWidget(title, 0, Qt::AlignHCenter);
  layout->addSpacing(8);
  layout->addWidget(words, 0, Qt::AlignHCenter);
  layout->addSpacing(16);
  layout->addWidget(button, 0, Qt::AlignHCenter);
  layout->addStretch(3);
}

}  // namespace ribwright
