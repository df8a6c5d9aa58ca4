#include "ui/panels/stated_panel.h"

#include <QVBoxLayout>

#include "ui/panels/elided_label.h"
#include "ui/panels/grade_text.h"
#include "ui/panels/stated_table.h"

namespace ribwright {

namespace {

QString accessibleNameOf(StatedList list) {
  switch (list) {
    case StatedList::Openings:
      return StatedPanel::tr("Openings of the chosen wall");
    case StatedList::Penetrations:
      return StatedPanel::tr("Penetrations of the chosen wall");
    case StatedList::Girts:
      return StatedPanel::tr("Girts of the chosen wall");
    case StatedList::Bands:
      break;
  }
  return StatedPanel::tr("Bands of sheets of the chosen wall");
}

}  // namespace

StatedPanel::StatedPanel(Session& session, StatedList list, const QString& name, QWidget* parent)
    : QWidget(parent), table_(new StatedTable(session, list, this)), words_(new ElidedLabel(this)) {
  table_->setObjectName(name);
  table_->setAccessibleName(accessibleNameOf(list));
  words_->setObjectName(name + QStringLiteral("Words"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  layout->addWidget(table_, 1);
  layout->addWidget(words_);
  setFocusProxy(table_);
  connect(table_, &StatedTable::told, this, &StatedPanel::tell);
  connect(table_, &PartTable::pointedAt, this, &StatedPanel::pointedAt);
}

int StatedPanel::count() const { return table_->count(); }

void StatedPanel::refill() { table_->refill(); }

void StatedPanel::finishTyping() { table_->finishTyping(); }

void StatedPanel::tell(const QString& words, bool fault) {
  words_->setText(fault ? gradeSign(Grade::Look) + QLatin1Char(' ') + words : words);
  words_->setAccessibleName(words_->text());
}

}  // namespace ribwright
