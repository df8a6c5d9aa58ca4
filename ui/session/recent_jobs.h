// The jobs that were opened last, the latest first.
#pragma once

#include <QStringList>

namespace ribwright {

inline constexpr int mostRecentJobs = 8;

// Those whose files are still there.
QStringList recentJobs();
void rememberJob(const QString& path);
void forgetJobs();

}  // namespace ribwright
