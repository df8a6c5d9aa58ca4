// How a window keeps work safe: after what time, where, and whether it locks files that it has open.
#pragma once

#include <QString>

namespace ribwright {

struct KeepingManner {
  int idle = 2000;     // ms after the last edit, unsaved work is kept
  int latest = 10000;  // ms after the first edit that is not kept, at the latest, while editing goes on
  QString folder;      // for work whose job has no file, or lies where nothing can be written
  bool locks = true;   // tells other windows that a file is open here
  bool offers = true;  // looks for kept work of windows that are gone
};

// In the user's own folder for data.
KeepingManner customaryKeeping();
// Keeps nothing, locks nothing, offers nothing.
KeepingManner noKeeping();

}  // namespace ribwright
