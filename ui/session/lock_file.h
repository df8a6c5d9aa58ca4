// A file beside others that says a window is at work on them. It goes with the window, also with one that is killed: a
// lock whose program no longer runs on this computer (by its number, its name and the computer's last start) is stale
// and is taken over. Of another computer's program nobody can tell: its lock stands.
#pragma once

#include <QDateTime>
#include <QLockFile>
#include <QString>
#include <memory>
#include <optional>

namespace ribwright {

// Held: it is this window's now. Taken: another window holds it. Impossible: the folder cannot be written or locked.
enum class Hold { Held, Taken, Impossible };

std::unique_ptr<QLockFile> lockAt(const QString& path);
// At once or not. One that is held already stays held.
Hold hold(QLockFile& lock);

struct LockHolder {
  QString host;
  QDateTime since;
  bool isElsewhere = false;  // on another computer
};
// Absent when nobody holds it, or it does not say who.
std::optional<LockHolder> holderOf(const QString& lockPath);

// The file itself where a path leads over links, so that each file has one lock and one place for kept work.
QString realPath(const QString& path);

}  // namespace ribwright
