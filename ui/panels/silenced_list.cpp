#include "ui/panels/silenced_list.h"

#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "core/editing/silenced_edits.h"
#include "core/output/tables.h"
#include "ui/panels/finding_list.h"
#include "ui/panels/grade_text.h"
#include "ui/session/window_text.h"

namespace ribwright {

namespace {}  // namespace

SilencedList::SilencedList(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      list_(new FindingList({tr("Grade"), tr("Where"), tr("Reason"), tr("Why it was told")}, this)),
      button_(new QPushButton(tr("Take back"), this)) {
  list_->setObjectName(QStringLiteral("silencedFindings"));
  list_->setAccessibleName(tr("Findings that were put aside"));
  button_->setObjectName(QStringLiteral("takeBack"));
  button_->setToolTip(tr("The chosen findings are told again"));
  button_->setAutoDefault(false);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(list_, 1);
  layout->addWidget(button_, 0, Qt::AlignLeft);
  setFocusProxy(list_);
  connect(button_, &QPushButton::clicked, this, &SilencedList::takeBack);
}

// What they would say is found by a plan in which nothing is silenced; of walls nothing is worked anew for that.
void SilencedList::refill() {
  std::vector<FindingList::Line> lines;
  if (session_.isOpen() && !session_.job().silenced.empty()) {
    Job told = session_.job();
    told.silenced.clear();
    const std::vector<Finding> all = plan(told, session_.plan()).findings;
    for (const SilencedFinding& silenced : session_.job().silenced) {
      const auto found =
          std::find_if(all.begin(), all.end(), [&](const Finding& each) { return each.key() == silenced.key; });
      if (found == all.end()) {
        lines.push_back({{tr("gone"), text(silenced.key), text(silenced.reason), QString()}, 9});
        continue;
      }
      const FindingText words = findingText(*found, session_.style(), session_.words());
      lines.push_back({{gradeText(found->grade), text(words.where), text(silenced.reason), text(words.why)},
                       static_cast<int>(found->grade)});
    }
  }
  list_->setLines(std::move(lines));
}

void SilencedList::takeBack() {
  std::vector<std::string> keys;
  const auto& silenced = session_.job().silenced;
  for (const int line : list_->chosenLines()) {
    if (line >= 0 && std::size_t(line) < silenced.size()) keys.push_back(silenced[std::size_t(line)].key);
  }
  if (keys.empty()) return;
  session_.edit(tr("Take findings back").toStdString(), [&](const Job& newest) -> Outcome<Job> {
    Job next = newest;
    for (const std::string& key : keys) next = silenceTakenBack(next, key);
    return next;
  });
}

}  // namespace ribwright
