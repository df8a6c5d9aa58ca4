#include "ui/session/recent_jobs.h"

#include <QFileInfo>
#include <algorithm>

#include "ui/session/kept_settings.h"

namespace ribwright {

namespace {

const QString key = QStringLiteral("recent-jobs");

}  // namespace

QStringList recentJobs() {
  QStringList paths = keptSettings().value(key).toStringList();
  paths.erase(std::remove_if(paths.begin(), paths.end(), [](const QString& path) { return !QFileInfo::exists(path); }),
              paths.end());
  return paths;
}

void rememberJob(const QString& path) {
  const QString whole = QFileInfo(path).absoluteFilePath();
  QStringList paths = recentJobs();
  paths.removeAll(whole);
  paths.prepend(whole);
  while (paths.size() > mostRecentJobs) paths.removeLast();
  keptSettings().setValue(key, paths);
}

void forgetJobs() { keptSettings().remove(key); }

}  // namespace ribwright
