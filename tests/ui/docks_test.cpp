// The docks round the wall: where a person put them they stand the next time; without a job there are none.
#include <QAction>
#include <QDockWidget>
#include <QTabWidget>

#include "tests/ui/open_window.h"
#include "tests/ui/window_tests.h"

using namespace ribwright;

namespace {

QDockWidget* dock(const OpenWindow& window, const char* name) { return window.find<QDockWidget>(name); }

}  // namespace

class DocksTest : public QObject {
  Q_OBJECT

 private slots:
  void theyStandAgainWhereTheyWerePut() {
    OpenWindow window;
    QVERIFY(window->openJob(workshop()));
    window->addDockWidget(Qt::LeftDockWidgetArea, dock(window, "findingsDock"));
    dock(window, "particularsDock")->hide();
    QVERIFY(window->close());
    window.renew();
    QVERIFY(window->openJob(workshop()));
    QVERIFY(window->dockWidgetArea(dock(window, "findingsDock")) == Qt::LeftDockWidgetArea);
    QVERIFY(dock(window, "findingsDock")->isVisible());
    QVERIFY(!dock(window, "particularsDock")->isVisible());
    window.find<QAction>("panelsAsShipped")->trigger();
    QVERIFY(window->dockWidgetArea(dock(window, "findingsDock")) == Qt::RightDockWidgetArea);
    QVERIFY(dock(window, "particularsDock")->isVisible());
  }

  void withoutAJobThereAreNone() {
    OpenWindow window;
    for (const char* name : {"tablesDock", "particularsDock", "findingsDock", "orderDock"})
      QVERIFY(!dock(window, name)->isVisible());
    QVERIFY(window->close());  // and they are not remembered so
    window.renew();
    QVERIFY(window->openJob(workshop()));
    for (const char* name : {"tablesDock", "particularsDock", "findingsDock"}) QVERIFY(dock(window, name)->isVisible());
    QVERIFY(window->tabifiedDockWidgets(dock(window, "tablesDock")).contains(dock(window, "orderDock")));
  }

  void aPanelIsHiddenAndSeenAgainByTheMenu() {
    OpenWindow window;
    QVERIFY(window->openJob(workshop()));
    auto* shown = window.find<QAction>("tablesDockShown");
    QVERIFY(shown->isChecked());
    shown->trigger();
    QVERIFY(!dock(window, "tablesDock")->isVisible());
    shown->trigger();
    QVERIFY(window.find<QTabWidget>("tables")->isVisible());
  }

  void theWindowIsSeenBeforeItsPanels() {
    OpenWindow window;
    MainWindow fresh(noKeeping());
    QVERIFY(fresh.openJob(workshop()));
    QVERIFY(!fresh.findChild<QTabWidget*>(QStringLiteral("tables")));
    fresh.show();
    QTRY_VERIFY(fresh.findChild<QTabWidget*>(QStringLiteral("tables")));
    QVERIFY(fresh.findChild<QTabWidget*>(QStringLiteral("tables"))->tabText(0).contains(QStringLiteral("21")));
  }
};

WINDOW_TEST(DocksTest)
#include "docks_test.moc"
