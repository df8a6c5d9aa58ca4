// A place for kept work, with the lock that says its window is alive.
#pragma once

#include <QString>
#include <vector>

#include "core/job/kept_files.h"
#include "ui/session/lock_file.h"

namespace ribwright {

struct KeptSpot {
  KeptPlace place;
  std::unique_ptr<QLockFile> lock;  // null: the folder cannot be locked
};

KeptSpot spotOf(const KeptPlace& place);
// Beside the job's file, then in the user's folder; for a job without a file there alone. Nothing is held yet.
std::vector<KeptSpot> spotsFor(const QString& jobPath, const QString& folder, const std::string& window);
// 16 hexadecimal digits that no other window has.
std::string newWindowId();
// What is kept there, and the locks.
void clear(std::vector<KeptSpot>& spots);

}  // namespace ribwright
