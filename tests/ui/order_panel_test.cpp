// The order in the window: lines that choose their sheets, how many lengths, bundles.
#include <QComboBox>
#include <QDockWidget>
#include <QLabel>
#include <QTableWidget>
#include <algorithm>

#include "tests/ui/open_window.h"
#include "tests/ui/window_tests.h"
#include "ui/panels/length_chart.h"
#include "ui/panels/order_tabs.h"

using namespace ribwright;

namespace {

// The dock in front, as after a click on its tab.
void showOrder(const OpenWindow& window) {
  auto* dock = window.find<QDockWidget>("orderDock");
  dock->show();
  dock->raise();
  auto* tabs = window.find<OrderTabs>("order");
  tabs->setCurrentWidget(window.find<QWidget>("orderPanel"));
  QTRY_VERIFY(window.find<QTableWidget>("orderLines")->isVisible());
}

QString cell(const QTableWidget* table, int row, int column) { return table->item(row, column)->text(); }

int most(const OpenWindow& window) { return window.session().newest().settings.mostOrderLengths; }

}  // namespace

class OrderPanelTest : public QObject {
  Q_OBJECT

 private slots:
  void linesAreThoseOfTheOrder() {
    OpenWindow window;
    QVERIFY(window->openJob(workshop()));
    showOrder(window);
    const auto& lines = window.session().plan().order.lines;
    const auto* table = window.find<QTableWidget>("orderLines");
    QCOMPARE(table->rowCount(), static_cast<int>(lines.size()));
    for (int row = 0; row < table->rowCount(); ++row) {
      const OrderLine& line = lines[static_cast<std::size_t>(row)];
      QCOMPARE(cell(table, row, 0), QString::number(line.line));
      QCOMPARE(cell(table, row, 2), QString::number(line.quantity()));
      QCOMPARE(cell(table, row, 7).split(' ').size(), line.hung());
    }
  }

  void aLineChoosesItsSheets() {
    OpenWindow window;
    QVERIFY(window->openJob(workshop()));
    showOrder(window);
    auto* table = window.find<QTableWidget>("orderLines");
    for (int row = 0; row < std::min(4, table->rowCount()); ++row) {
      table->setCurrentCell(row, 0);
      const QStringList marks = cell(table, row, 7).split(' ');
      const auto& parts = window.session().chosenParts();
      QVERIFY(!parts.empty());
      for (const Part& part : parts) {
        QVERIFY(part.kind == Part::Kind::Piece && part.wall == parts.front().wall);
        QVERIFY(marks.contains(QString::fromStdString(part.id)));
      }
      const auto ofWall = std::count_if(marks.begin(), marks.end(), [&](const QString& mark) {
        return mark.startsWith(QString::fromStdString(parts.front().wall));
      });
      QCOMPARE(static_cast<int>(parts.size()), static_cast<int>(ofWall));
    }
  }

  void howManyLengthsIsChosenOnTheChartAndUndone() {
    OpenWindow window;
    QVERIFY(window->openJob(workshop()));
    showOrder(window);
    auto* chart = window.find<LengthChart>("lengthChart");
    auto* table = window.find<QTableWidget>("orderLines");
    const int before = table->rowCount();
    QVERIFY(chart->count() > 3);
    QTest::mouseClick(chart, Qt::LeftButton, {}, chart->placeOf(2));
    window.session().settle();
    QCOMPARE(most(window), 2);
    QTRY_VERIFY(table->rowCount() < before);
    QTest::keyClick(chart, Qt::Key_Right);
    window.session().settle();
    QCOMPARE(most(window), 3);
    QTest::keyClick(chart, Qt::Key_End);
    window.session().settle();
    QCOMPARE(most(window), 0);
    while (window.session().history()->canUndo()) window.session().undo();
    window.session().settle();
    QCOMPARE(most(window), 0);
    QCOMPARE(table->rowCount(), before);
  }

  void bundlesAreListedAndChooseTheirSheets() {
    OpenWindow window;
    QVERIFY(window->openJob(workshop()));
    showOrder(window);
    auto* table = window.find<QTableWidget>("orderBundles");
    QVERIFY(table->rowCount() > 0);
    int sheets = 0;
    for (int row = 0; row < table->rowCount(); ++row) sheets += cell(table, row, 3).toInt();
    QCOMPARE(sheets, static_cast<int>(window.session().plan().order.sheets.size()));
    table->setCurrentCell(table->rowCount() - 1, 0);
    QCOMPARE(static_cast<int>(window.session().chosenParts().size()), cell(table, table->rowCount() - 1, 3).toInt());
  }

  // For looking at: RIBWRIGHT_PICTURES=folder.
  void aPictureOfIt() {
    const QString folder = qEnvironmentVariable("RIBWRIGHT_PICTURES");
    OpenWindow window;
    for (const QString& path : samplePaths()) {
      QVERIFY(window->openJob(path));
      showOrder(window);
      auto* panel = window.find<QWidget>("orderPanel");
      QVERIFY(panel->width() > 200);
      if (!folder.isEmpty())
        QVERIFY(panel->grab().save(QDir(folder).filePath(QFileInfo(path).baseName() + QStringLiteral("-order.png"))));
    }
  }
};

WINDOW_TEST(OrderPanelTest)
#include "order_panel_test.moc"
