// Costs, comparisons and orders placed in the Order dock; the price list read and written. With
// RIBWRIGHT_PICTURES=<folder> its pages are written there.
#include <QAction>
#include <QComboBox>
#include <QDialog>
#include <QDockWidget>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTabWidget>
#include <QTableView>

#include "core/editing/placed_order_edits.h"
#include "tests/ui/open_window.h"
#include "tests/ui/window_tests.h"
#include "ui/panels/cost_panel.h"
#include "ui/panels/difference_panel.h"
#include "ui/panels/order_tabs.h"
#include "ui/panels/placed_panel.h"
#include "ui/panels/share_bars.h"
#include "ui/session/price_file.h"

using namespace ribwright;

class CostPanelTest : public QObject {
  Q_OBJECT

 private slots:
  void init();
  void theCostStandsInTheDock();
  void whatHasNoPriceIsNamed();
  void anEditSaysWhatItCosts();
  void aPriceListIsOneEditThatCanBeUndone();
  void whatIsWrittenReadsBackTheSame();
  void aFaultyListChangesNothing();
  void twoStatesAreCompared();
  void anOrderIsPlacedAndReceived();
  void whatIsShortIsToBeOrdered();
  void picturesOfThePages();

 private:
  Session& session() { return window_->session(); }
  template <class Page>
  Page* page() {
    auto* tabs = window_->find<OrderTabs>("order");
    auto* found = tabs->findChild<Page*>();
    for (QWidget* up = tabs; up; up = up->parentWidget()) {
      if (auto* dock = qobject_cast<QDockWidget*>(up)) dock->show(), dock->raise();
    }
    tabs->setCurrentWidget(found);
    QTest::qWait(1);
    return found;
  }
  QString said(const char* name) { return window_->find<QLabel>(name)->text(); }
  QString cell(const char* table, int row, int column) {
    const auto* model = window_->find<QTableView>(table)->model();
    return model->index(row, column).data().toString();
  }
  int rows(const char* table) { return window_->find<QTableView>(table)->model()->rowCount(); }
  void apply(const Outcome<Job>& job) {
    QVERIFY(job.ok());
    session().apply("edit", job.value());
    session().settle();
  }
  void grow() {
    Job job = session().newest();
    job.walls[0].base.drop += Length::inches(6);
    apply(job);
  }

  std::unique_ptr<OpenWindow> window_;
  QTemporaryDir folder_;
};

void CostPanelTest::init() {
  window_ = std::make_unique<OpenWindow>();
  (*window_)->resize(1500, 950);
  const QString copy = folder_.filePath("lean-to.json");
  QFile::remove(copy);
  QVERIFY(QFile::copy(samples().filePath("lean-to.json"), copy));
  QVERIFY(QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner));
  QVERIFY((*window_)->openJob(copy));
}

void CostPanelTest::theCostStandsInTheDock() {
  page<CostPanel>();
  const JobCost cost = costOfJob(session().job(), session().plan());
  QVERIFY(cost.total > Money());
  QVERIFY(said("costSummary").contains(QString::fromStdString(shownMoney(cost.total, '.', "USD"))));
  QCOMPARE(rows("costLines"), int(cost.lines.size()));
  QVERIFY(cell("costLines", 0, 6).contains("USD"));
  const auto* walls = window_->find<ShareBars>("costWalls");
  for (const auto& [wall, money] : cost.walls())
    QVERIFY(walls->accessibleDescription().contains(QString::fromStdString(shownMoney(money, '.', "USD"))));
  QVERIFY(!window_->find<QLabel>("costUnpriced")->isVisible());
}

void CostPanelTest::whatHasNoPriceIsNamed() {
  Job job = session().newest();
  job.prices.items.erase(job.prices.items.begin() + 1);
  apply(job);
  page<CostPanel>();
  QVERIFY(window_->find<QLabel>("costUnpriced")->isVisible());
  QVERIFY(said("costUnpriced").contains("rib-36-0.75-at-9 charcoal"));
  job.prices.items.clear();
  apply(job);
  QVERIFY(said("costSummary").startsWith("No prices are stated"));
}

void CostPanelTest::anEditSaysWhatItCosts() {
  grow();
  const auto more = session().orderChanges().costMore;
  QVERIFY(more && *more > Money());
  const QString text = QString::fromStdString("+" + shownMoney(*more, '.', "USD"));
  const QString line = window_->find<QWidget>("statusBatches")->toolTip() +
                       window_->find<QWidget>("statusBatches")->property("text").toString();
  QVERIFY2(orderChangeText(session().orderChanges(), session().words(), session().style()).find(text.toStdString()) !=
               std::string::npos,
           qPrintable(line));
}

void CostPanelTest::aPriceListIsOneEditThatCanBeUndone() {
  const Job before = session().job();
  const QString path = folder_.filePath("prices.csv");
  QVERIFY(writeFile(path, "what,item,per,price\r\ncharge,crate,,40\r\nsheet,rib-36-1.25-at-12,foot,4.10\r\n"));
  const TableFileEnd end = readPrices(session(), path);
  session().settle();
  QVERIFY(end.faults.empty());
  QVERIFY2(end.done.contains("added 1 (charge crate)"), qPrintable(end.done));
  QVERIFY(end.done.contains("changed 1 (sheet rib-36-1.25-at-12)"));
  QCOMPARE(session().job().prices.items[0].cents, 410);
  session().undo();
  session().settle();
  QVERIFY(session().job() == before);
}

void CostPanelTest::whatIsWrittenReadsBackTheSame() {
  const Job before = session().job();
  const QString path = folder_.filePath("there.csv");
  QVERIFY(writePrices(session(), path).faults.empty());
  QVERIFY(readPrices(session(), path).faults.empty());
  session().settle();
  QVERIFY(session().job() == before);
  QVERIFY(writeCost(session(), folder_.filePath("cost.csv")).faults.empty());
  QVERIFY(readFile(folder_.filePath("cost.csv")).contains("\r\ntotal,"));
  QVERIFY(!writeCost(session(), folder_.filePath("no/such/cost.csv")).faults.empty());
  for (const char* name : {"readPrices", "writePrices", "writeCost"})
    QVERIFY(window_->find<QAction>(name) && window_->find<QAction>(name)->isEnabled());
}

void CostPanelTest::aFaultyListChangesNothing() {
  const Job before = session().job();
  const QString path = folder_.filePath("faulty.csv");
  QVERIFY(writeFile(path, "what,item,per,price\r\ncharge,crate,,40\r\nsheet,x,foot,\"4,10\"\r\n"));
  const TableFileEnd end = readPrices(session(), path);
  QCOMPARE(end.faults.size(), std::size_t(1));
  QVERIFY(oneLine(end.faults[0]).starts_with("line 3, price: "));
  QVERIFY(session().job() == before);
}

void CostPanelTest::twoStatesAreCompared() {
  auto* panel = page<DifferencePanel>();
  QCOMPARE(said("differenceSummary"), QString("Nothing is bought otherwise."));
  grow();
  QVERIFY(said("differenceSummary").contains("USD"));
  QVERIFY(rows("differences") > 0);
  const QString saved = said("differenceSummary");
  auto* with = window_->find<QComboBox>("compareWith");
  QCOMPARE(with->count(), 4);  // saved, two orders, another file
  with->setCurrentIndex(1);
  emit with->activated(1);
  QCOMPARE(said("differenceSummary"), saved);  // that order bought what the job as saved needs
  with->setCurrentIndex(2);
  emit with->activated(2);
  QVERIFY(said("differenceSummary") != saved);
  panel->compareWith(samples().filePath("lean-to.json"));
  QCOMPARE(said("differenceSummary"), saved);
  panel->compareWith(folder_.filePath("none.json"));
  QVERIFY(said("differenceSummary").startsWith("It cannot be read"));
}

void CostPanelTest::anOrderIsPlacedAndReceived() {
  page<PlacedPanel>();
  auto* place = window_->find<QPushButton>("placeOrder");
  QVERIFY(!place->isEnabled());  // nothing is wanting
  grow();
  QVERIFY(place->isEnabled());
  QTest::mouseClick(place, Qt::LeftButton);
  auto* dialog = window_->find<QDialog>("placeOrderDialog");
  QVERIFY(dialog);
  dialog->findChild<QLineEdit*>("orderNumber")->setText("1060");
  dialog->accept();
  session().settle();
  QCOMPARE(session().job().facts.orders.size(), std::size_t(3));
  QCOMPARE(session().job().facts.orders[2].id, std::string("1060"));
  QVERIFY(!place->isEnabled());
  auto* table = window_->find<QTableView>("placedOrders");
  table->setCurrentIndex(table->model()->index(table->model()->rowCount() - 1, 0));
  QTest::mouseClick(window_->find<QPushButton>("receiveAll"), Qt::LeftButton);
  session().settle();
  for (const auto& [kind, count] : countsOf(session().job().facts.orders[2])) QCOMPARE(count.toCome(), std::int64_t(0));
  session().undo();
  session().undo();
  session().settle();
  QCOMPARE(session().job().facts.orders.size(), std::size_t(2));
}

void CostPanelTest::whatIsShortIsToBeOrdered() {
  page<PlacedPanel>();
  auto* table = window_->find<QTableView>("placedOrders");
  table->setCurrentIndex(table->model()->index(0, 0));
  const int placed = cell("placedOrders", 0, 4).toInt();
  QTest::mouseClick(window_->find<QPushButton>("receiveSome"), Qt::LeftButton);
  auto* dialog = window_->find<QDialog>("receivedDialog");
  QVERIFY(dialog);
  dialog->findChild<QSpinBox*>("receivedCount")->setValue(placed - 1);
  dialog->findChild<QSpinBox*>("missingCount")->setValue(1);
  dialog->accept();
  session().settle();
  QCOMPARE(cell("placedOrders", 0, 6), QString("1"));
  QVERIFY(said("placedSummary").startsWith("Sheets to order now: 1;"));
  QCOMPARE(cell("deltaOrder", 0, 0), QString("order"));
}

void CostPanelTest::picturesOfThePages() {
  const QByteArray to = qgetenv("RIBWRIGHT_PICTURES");
  grow();
  const auto keep = [&](QWidget* page, const char* name) {
    QVERIFY(page->isVisible());
    const QPixmap picture = window_->window->grab();
    QVERIFY(!picture.isNull());
    if (!to.isEmpty()) QVERIFY(picture.save(QString::fromLocal8Bit(to) + QLatin1Char('/') + QLatin1String(name)));
  };
  keep(page<CostPanel>(), "order-cost.png");
  keep(page<DifferencePanel>(), "order-compared.png");
  keep(page<PlacedPanel>(), "order-placed.png");
}

WINDOW_TEST(CostPanelTest)
#include "cost_panel_test.moc"
