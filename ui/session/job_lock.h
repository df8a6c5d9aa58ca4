// Tells other windows, by a hidden file beside the job's, that a job is open here: ".shop.json.lock".
#pragma once

#include <QString>

#include "ui/session/lock_file.h"

namespace ribwright {

class JobLock {
 public:
  // Of this job from now on; the one before is let go. Asked again for the same: whether it can be had now.
  Hold take(const QString& jobPath);
  // From a window on another computer, which a person knows to be gone.
  Hold takeOver();
  void letGo() { lock_.reset(); }
  bool isHeld() const { return lock_ && lock_->isLocked(); }
  // Of the job asked for last, when it is not this window.
  std::optional<LockHolder> holder() const;

 private:
  std::unique_ptr<QLockFile> lock_;
};

}  // namespace ribwright
