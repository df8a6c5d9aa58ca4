#include "ui/session/recent_menu.h"

#include <QCoreApplication>
#include <QMenu>

#include "ui/session/recent_jobs.h"

namespace ribwright {

namespace {

struct RecentMenuTexts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::RecentMenu)
};

// Menus would take an ampersand of a name for a key.
QString rowText(int number, const RecentJob& job, bool there) {
  const QString path = QString(job.path).replace(QLatin1Char('&'), QStringLiteral("&&"));
  const QString row = QStringLiteral("&%1  %2").arg(number).arg(path);
  return there ? row : RecentMenuTexts::tr("%1 (not there)").arg(row);
}

void forgetThoseGone() {
  for (const RecentJob& job : recentJobs()) {
    if (!job.isThere()) forgetJob(job.path);
  }
}

}  // namespace

void fillRecentMenu(QMenu& menu, const std::function<void(const QString&)>& open) {
  menu.clear();
  int number = 0;
  bool allThere = true;
  for (const RecentJob& job : recentJobs()) {
    const bool there = job.isThere();
    allThere = allThere && there;
    QAction* action = menu.addAction(rowText(++number, job, there));
    action->setEnabled(there);
    action->setToolTip(job.name);
    QObject::connect(action, &QAction::triggered, &menu, [open, path = job.path] { open(path); });
  }
  if (menu.isEmpty()) menu.addAction(RecentMenuTexts::tr("none yet"))->setEnabled(false);
  if (allThere) return;
  menu.addSeparator();
  QAction* forget =
      menu.addAction(RecentMenuTexts::tr("&Remove those that are not there"), &menu, [] { forgetThoseGone(); });
  forget->setObjectName(QStringLiteral("forgetGone"));
}

}  // namespace ribwright
