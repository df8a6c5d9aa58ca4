#include "ui/session/window_panels.h"

#include <QCoreApplication>
#include <QDockWidget>
#include <QTabWidget>

#include "ui/panels/batch_panel.h"
#include "ui/panels/cost_panel.h"
#include "ui/panels/difference_panel.h"
#include "ui/panels/finding_panel.h"
#include "ui/panels/order_panel.h"
#include "ui/panels/order_tabs.h"
#include "ui/panels/part_rows.h"
#include "ui/panels/part_table.h"
#include "ui/panels/particulars_panel.h"
#include "ui/panels/placed_panel.h"
#include "ui/panels/sharing_panel.h"
#include "ui/panels/start_panel.h"
#include "ui/panels/stated_panel.h"
#include "ui/panels/survey_panel.h"
#include "ui/panels/trim_panel.h"

namespace ribwright {

namespace {

struct WindowPanelsTexts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::WindowPanels)
};

PartTable* partTable(Session& session, PartTable::Rows rows, const char* name, const QString& reads, QWidget* parent) {
  auto* made = new PartTable(session, rows, parent);
  made->setObjectName(QLatin1String(name));
  made->setAccessibleName(reads);
  return made;
}

void makeTables(WindowPanels& panels, Session& session, QWidget* parent) {
  panels.tables = new QTabWidget(parent);
  panels.tables->setObjectName(QStringLiteral("tables"));
  panels.tables->setDocumentMode(true);
  panels.sheets =
      partTable(session, sheetRows, "sheets", WindowPanelsTexts::tr("Sheets of the chosen wall"), panels.tables);
  const auto stated = [&](StatedList list, const char* name) {
    return new StatedPanel(session, list, QLatin1String(name), panels.tables);
  };
  panels.openings = stated(StatedList::Openings, "openingsTable");
  panels.penetrations = stated(StatedList::Penetrations, "penetrationsTable");
  panels.girts = stated(StatedList::Girts, "girtsTable");
  panels.bands = stated(StatedList::Bands, "bandsTable");
  panels.survey = new SurveyPanel(session, panels.tables);
  panels.batches = new BatchPanel(session, panels.tables);
  panels.starts = new StartPanel(session, panels.tables);
  for (QWidget* each : {static_cast<QWidget*>(panels.sheets), static_cast<QWidget*>(panels.openings),
                        static_cast<QWidget*>(panels.penetrations), static_cast<QWidget*>(panels.girts),
                        static_cast<QWidget*>(panels.bands), static_cast<QWidget*>(panels.survey),
                        static_cast<QWidget*>(panels.batches), static_cast<QWidget*>(panels.starts)})
    panels.tables->addTab(each, {});
}

// A page of the Order dock that makes itself up anew.
template <class Page>
Page* addPage(OrderTabs* tabs, Session& session, const QString& title) {
  auto* page = new Page(session, tabs);
  tabs->add(page, title, [page] { page->refill(); });
  return page;
}

// ... and whose rows are parts of the building.
template <class Page>
Page* addPointingPage(OrderTabs* tabs, Session& session, const QString& title) {
  auto* page = addPage<Page>(tabs, session, title);
  QObject::connect(page, &Page::pointedAt, tabs, &OrderTabs::pointedAt);
  return page;
}

}  // namespace

WindowPanels makePanels(Session& session, const WindowDocks& docks, const std::function<void(const Part&)>& pointedAt) {
  WindowPanels panels;
  makeTables(panels, session, docks.tables);
  panels.order = new OrderTabs(session, docks.order);
  addPointingPage<OrderPanel>(panels.order, session, WindowPanelsTexts::tr("Sheets and lengths"));
  panels.sharing = addPointingPage<SharingPanel>(panels.order, session, WindowPanelsTexts::tr("Sharing of blanks"));
  panels.trim = addPointingPage<TrimPanel>(panels.order, session, WindowPanelsTexts::tr("Trim"));
  addPage<CostPanel>(panels.order, session, WindowPanelsTexts::tr("&Cost"));
  addPage<DifferencePanel>(panels.order, session, WindowPanelsTexts::tr("Compared"));
  addPage<PlacedPanel>(panels.order, session, WindowPanelsTexts::tr("Orders placed"));
  panels.particulars = new ParticularsPanel(session, docks.particulars);
  panels.findings = new FindingPanel(session, docks.findings);
  docks.tables->setWidget(panels.tables);
  docks.order->setWidget(panels.order);
  QObject::connect(docks.order, &QDockWidget::visibilityChanged, panels.order, &OrderTabs::refillSeen);
  docks.particulars->setWidget(panels.particulars);
  docks.findings->setWidget(panels.findings);
  QObject::connect(panels.batches, &BatchPanel::pointedAt, panels.tables, pointedAt);
  QObject::connect(panels.findings, &FindingPanel::pointedAt, panels.tables, pointedAt);
  QObject::connect(panels.sheets, &PartTable::pointedAt, panels.tables, pointedAt);
  QObject::connect(panels.order, &OrderTabs::pointedAt, panels.tables, pointedAt);
  for (const StatedPanel* each : panels.stated())
    QObject::connect(each, &StatedPanel::pointedAt, panels.tables, pointedAt);
  return panels;
}

std::vector<QWidget*> WindowPanels::all() const { return {tables, order, particulars, findings}; }

std::vector<StatedPanel*> WindowPanels::stated() const { return {openings, penetrations, girts, bands}; }

void WindowPanels::finishTyping() const {
  if (!areMade()) return;
  survey->finishTyping();
  sharing->finishTyping();
  particulars->finishTyping();
  for (StatedPanel* each : stated()) each->finishTyping();
}

void WindowPanels::showWall() const {
  if (!areMade()) return;
  sheets->refill();
  for (StatedPanel* each : stated()) each->refill();
  batches->refill();
  tables->setTabText(0, WindowPanelsTexts::tr("Shee&ts: %1").arg(sheets->count()));
  tables->setTabText(1, WindowPanelsTexts::tr("Openin&gs: %1").arg(openings->count()));
  tables->setTabText(2, WindowPanelsTexts::tr("Penetrations: %1").arg(penetrations->count()));
  tables->setTabText(3, WindowPanelsTexts::tr("Gi&rts: %1").arg(girts->count()));
  tables->setTabText(4, WindowPanelsTexts::tr("Bands: %1").arg(bands->count()));
  tables->setTabText(5, WindowPanelsTexts::tr("S&urvey: %1").arg(survey->measured()));
  tables->setTabText(6, WindowPanelsTexts::tr("&Drill batches: %1/%2").arg(batches->cleared()).arg(batches->count()));
  tables->setTabText(7, WindowPanelsTexts::tr("Starts co&mpared"));
}

void WindowPanels::showTableOf(const Part& part) const {
  if (!areMade()) return;
  if (part.kind == Part::Kind::Batch) tables->setCurrentWidget(batches);
  if (part.kind == Part::Kind::Piece) tables->setCurrentWidget(sheets);
  if (part.kind == Part::Kind::Opening) tables->setCurrentWidget(openings);
  if (part.kind == Part::Kind::Penetration) tables->setCurrentWidget(penetrations);
  if (part.kind == Part::Kind::Girt && tables->currentWidget() != survey) tables->setCurrentWidget(girts);
}

}  // namespace ribwright
