#include "ui/session/keeping_manner.h"

#include <QStandardPaths>

namespace ribwright {

KeepingManner customaryKeeping() {
  KeepingManner manner;
  manner.folder =
      QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) + QStringLiteral("/ribwright/kept");
  return manner;
}

KeepingManner noKeeping() {
  KeepingManner manner;
  manner.idle = manner.latest = -1;
  manner.locks = manner.offers = false;
  return manner;
}

}  // namespace ribwright
