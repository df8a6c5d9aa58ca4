// The window's own help: how a job is begun in a few steps, and every key.
#pragma once

#include <QString>
#include <vector>

class QAction;
class QWidget;

namespace ribwright {

// Both as HTML. `actions`: those of the window's menus, whose keys are told under their own words.
QString quickStartText();
QString keysText(const std::vector<QAction*>& actions);

// A page to read beside the work: the window goes on meanwhile. `name`: of the dialog.
void showHelp(QWidget* window, const char* name, const QString& title, const QString& html);

}  // namespace ribwright
