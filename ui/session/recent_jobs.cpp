#include "ui/session/recent_jobs.h"

#include <QFileInfo>
#include <QStringList>

#include "ui/session/kept_settings.h"

namespace ribwright {

namespace {

const QString pathKey = QStringLiteral("recent-jobs"), nameKey = QStringLiteral("recent-job-names");

void keepRecent(const std::vector<RecentJob>& jobs) {
  QStringList paths, names;
  for (const RecentJob& job : jobs) paths << job.path, names << job.name;
  QSettings settings = keptSettings();
  settings.setValue(pathKey, paths);
  settings.setValue(nameKey, names);
}

}  // namespace

bool RecentJob::isThere() const { return QFileInfo::exists(path); }

std::vector<RecentJob> recentJobs() {
  const QSettings settings = keptSettings();
  const QStringList paths = settings.value(pathKey).toStringList(), names = settings.value(nameKey).toStringList();
  std::vector<RecentJob> jobs;
  for (qsizetype i = 0; i < paths.size(); ++i)
    jobs.push_back({paths[i], names.size() == paths.size() ? names[i] : QString()});
  return jobs;
}

void rememberJob(const QString& path, const QString& name) {
  const QString whole = QFileInfo(path).absoluteFilePath();
  std::vector<RecentJob> jobs = recentJobs();
  std::erase_if(jobs, [&](const RecentJob& job) { return job.path == whole; });
  jobs.insert(jobs.begin(), {whole, name});
  if (jobs.size() > mostRecentJobs) jobs.resize(mostRecentJobs);
  keepRecent(jobs);
}

void forgetJob(const QString& path) {
  std::vector<RecentJob> jobs = recentJobs();
  std::erase_if(jobs, [&](const RecentJob& job) { return job.path == path; });
  keepRecent(jobs);
}

}  // namespace ribwright
