// A window to look at in tests: with settings of its own, without what a person kept on this machine.
#pragma once

#include <QDir>
#include <QSettings>
#include <QTemporaryDir>
#include <QtTest>

#include "tests/ui/whole_file.h"
#include "ui/panels/perimeter_strip.h"
#include "ui/panels/wall_tile.h"
#include "ui/session/main_window.h"

namespace ribwright {

inline QDir samples() { return QDir(QStringLiteral(RIBWRIGHT_ROOT "/sample-jobs")); }

inline QStringList samplePaths() {
  QStringList paths;
  for (const QString& name : samples().entryList({"*.json"})) paths << samples().filePath(name);
  return paths;
}

inline QString workshop() { return samples().filePath("gable-workshop.json"); }

class OpenWindow {
 public:
  OpenWindow() {
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, settings_.path());
    renew();
  }

  void renew() {
    window.reset();
    window = std::make_unique<MainWindow>(keeping);
    window->show();
    window->activateWindow();  // keys go to the window that is active
    if (!QTest::qWaitForWindowActive(window.get())) qFatal("the window does not become active");
    window->furnish();
  }
  MainWindow* operator->() const { return window.get(); }
  Session& session() const { return window->session(); }

  template <class Kind>
  Kind* find(const char* name) const {
    return window->findChild<Kind*>(QLatin1String(name));
  }
  const std::vector<WallTile*>& tiles() const { return find<PerimeterStrip>("walls")->tiles(); }

  KeepingManner keeping = noKeeping();  // of the next renew()
  std::unique_ptr<MainWindow> window;

 private:
  QTemporaryDir settings_;
};

}  // namespace ribwright
