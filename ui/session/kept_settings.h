// What the window keeps from one day to the next: appearance, size of text, recent jobs.
#pragma once

#include <QSettings>

namespace ribwright {

// A file of plain text in the user's folder for settings.
QSettings keptSettings();

}  // namespace ribwright
