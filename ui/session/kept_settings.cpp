#include "ui/session/kept_settings.h"

namespace ribwright {

QSettings keptSettings() {
  return QSettings(QSettings::IniFormat, QSettings::UserScope, QStringLiteral("ribwright"), QStringLiteral("window"));
}

}  // namespace ribwright
