#include "ui/session/window_docks.h"

#include <QAction>
#include <QCoreApplication>
#include <QDockWidget>

#include "ui/session/kept_settings.h"

namespace ribwright {

namespace {

struct WindowDocksTexts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::WindowDocks)
};

const QString sizeKey = QStringLiteral("window-size");
const QString placesKey = QStringLiteral("window-docks");
constexpr int arrangement = 2;  // rises when there are other docks

QDockWidget* dock(QMainWindow& window, const QString& title, const char* name) {
  auto* made = new QDockWidget(title, &window);
  made->setObjectName(QLatin1String(name));
  made->setAllowedAreas(Qt::AllDockWidgetAreas);
  made->toggleViewAction()->setObjectName(QLatin1String(name) + QStringLiteral("Shown"));
  return made;
}

}  // namespace

WindowDocks makeDocks(QMainWindow& window) {
  const WindowDocks docks{dock(window, WindowDocksTexts::tr("Tables"), "tablesDock"),
                          dock(window, WindowDocksTexts::tr("Order"), "orderDock"),
                          dock(window, WindowDocksTexts::tr("Particulars"), "particularsDock"),
                          dock(window, WindowDocksTexts::tr("Findings"), "findingsDock")};
  window.setCorner(Qt::BottomRightCorner, Qt::RightDockWidgetArea);
  placeDocks(window, docks);
  return docks;
}

void placeDocks(QMainWindow& window, const WindowDocks& docks) {
  for (QDockWidget* each : docks.all()) {
    each->setFloating(false);
    each->show();
  }
  window.addDockWidget(Qt::BottomDockWidgetArea, docks.tables);
  window.tabifyDockWidget(docks.tables, docks.order);
  docks.tables->raise();
  window.addDockWidget(Qt::RightDockWidgetArea, docks.particulars);
  window.splitDockWidget(docks.particulars, docks.findings, Qt::Vertical);
  const int third = window.width() * 3 / 10, tall = window.height() * 28 / 100;
  window.resizeDocks({docks.particulars, docks.findings}, {third, third}, Qt::Horizontal);
  window.resizeDocks({docks.particulars, docks.findings}, {1200, 1000}, Qt::Vertical);
  window.resizeDocks({docks.tables}, {tall}, Qt::Vertical);
}

void DockVeil::set(const WindowDocks& docks, bool veiled) {
  if (veiled == veiled_) return;
  veiled_ = veiled;
  if (veiled) shown_.clear();
  for (QDockWidget* each : docks.all()) {
    if (veiled && !each->isHidden()) shown_.push_back(each);
    each->toggleViewAction()->setEnabled(!veiled);
    if (veiled) each->hide();
  }
  if (veiled) return;
  for (QDockWidget* each : shown_) each->show();
}

void keepDocks(const QMainWindow& window) {
  QSettings settings = keptSettings();
  settings.setValue(sizeKey, window.saveGeometry());
  settings.setValue(placesKey, window.saveState(arrangement));
}

bool restoreDocks(QMainWindow& window) {
  const QSettings settings = keptSettings();
  return window.restoreGeometry(settings.value(sizeKey).toByteArray()) &&
         window.restoreState(settings.value(placesKey).toByteArray(), arrangement);
}

}  // namespace ribwright
