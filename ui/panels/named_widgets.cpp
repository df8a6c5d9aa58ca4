#include "ui/panels/named_widgets.h"

namespace ribwright {

QLabel* sentences(const QString& words, const char* name, QWidget* parent) {
  auto* made = new QLabel(words, parent);
  made->setObjectName(QLatin1String(name));
  made->setTextFormat(Qt::PlainText);
  made->setWordWrap(true);
  return made;
}

QPushButton* namedButton(const QString& words, const QString& name, QWidget* parent) {
  auto* made = new QPushButton(words, parent);
  made->setObjectName(name);
  made->setAutoDefault(false);
  return made;
}

}  // namespace ribwright
