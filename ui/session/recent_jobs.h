// The jobs that were opened last, the latest first.
#pragma once

#include <QString>
#include <vector>

namespace ribwright {

inline constexpr int mostRecentJobs = 8;

struct RecentJob {
  QString path;
  QString name;  // of the job, as it was then; may be empty
  bool isThere() const;
};

std::vector<RecentJob> recentJobs();
void rememberJob(const QString& path, const QString& name);
void forgetJob(const QString& path);

}  // namespace ribwright
