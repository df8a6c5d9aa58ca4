#include "ui/session/window_actions.h"

#include <QActionGroup>
#include <QCoreApplication>
#include <QMenu>
#include <QMenuBar>
#include <QToolBar>

#include "core/drawing/paper.h"
#include "ui/panels/paper_text.h"
#include "ui/session/appearance.h"

namespace ribwright {

namespace {

struct WindowActionsTexts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::WindowActions)
};

// Its words and its key: "Open… (Ctrl+O)".
QString tipOf(const QAction& action) {
  return QStringLiteral("%1 (%2)").arg(QString(action.text()).remove(QLatin1Char('&')),
                                       action.shortcut().toString(QKeySequence::NativeText));
}

QAction* add(QMenu* menu, const QString& words, const char* name, const QKeySequence& key = {}) {
  QAction* action = menu->addAction(words);
  action->setObjectName(QLatin1String(name));
  action->setShortcut(key);
  if (!key.isEmpty()) action->setToolTip(tipOf(*action));
  return action;
}

QActionGroup* choices(QMenu* menu) { return new QActionGroup(menu); }

void addChoice(QActionGroup* group, QMenu* menu, const QString& words, const QString& name, int data) {
  QAction* action = menu->addAction(words);
  action->setObjectName(name);
  action->setCheckable(true);
  action->setData(data);
  group->addAction(action);
}

QActionGroup* paperChoices(QMenu* menu) {
  QActionGroup* group = choices(menu);
  for (const PaperSize paper : {PaperSize::Letter, PaperSize::Tabloid, PaperSize::A4, PaperSize::A3}) {
    const std::string_view name = nameOf(paper);
    addChoice(group, menu, paperText(paper),
              QStringLiteral("paper-") + QString::fromUtf8(name.data(), qsizetype(name.size())),
              static_cast<int>(paper));
  }
  return group;
}

QActionGroup* appearanceChoices(QMenu* menu) {
  QActionGroup* group = choices(menu);
  const auto choice = [&](const QString& words, const char* name, Appearance appearance) {
    addChoice(group, menu, words, QLatin1String(name), static_cast<int>(appearance));
  };
  choice(WindowActionsTexts::tr("As the &system"), "appearance-system", Appearance::System);
  choice(WindowActionsTexts::tr("&Light"), "appearance-light", Appearance::Light);
  choice(WindowActionsTexts::tr("&Dark"), "appearance-dark", Appearance::Dark);
  return group;
}

QActionGroup* textChoices(QMenu* menu) {
  QActionGroup* group = choices(menu);
  for (const int percent : textPercents)
    addChoice(group, menu, WindowActionsTexts::tr("%1 %").arg(percent), QStringLiteral("text-%1").arg(percent),
              percent);
  return group;
}

void makeJobMenu(WindowActions& actions, QMenu* menu) {
  actions.newJob = add(menu, WindowActionsTexts::tr("&New…"), "newJob", QKeySequence(Qt::CTRL | Qt::Key_N));
  actions.open = add(menu, WindowActionsTexts::tr("&Open…"), "open", QKeySequence::Open);
  actions.recent = menu->addMenu(WindowActionsTexts::tr("Open &recent"));
  actions.recent->setObjectName(QStringLiteral("recent"));
  actions.reload = add(menu, WindowActionsTexts::tr("Read &again"), "reload", QKeySequence::Refresh);
  menu->addSeparator();
  actions.save = add(menu, WindowActionsTexts::tr("&Save"), "save", QKeySequence(Qt::CTRL | Qt::Key_S));
  actions.saveAs =
      add(menu, WindowActionsTexts::tr("Sa&ve as…"), "saveAs", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S));
  menu->addSeparator();
  actions.readSurvey = add(menu, WindowActionsTexts::tr("Read a s&urvey…"), "readSurvey");
  actions.readSurvey->setToolTip(
      WindowActionsTexts::tr("Take readings from a table, in place of those of the same girts"));
  actions.writeSurvey = add(menu, WindowActionsTexts::tr("&Write the survey…"), "writeSurvey");
  actions.readOpenings = add(menu, WindowActionsTexts::tr("Read an opening sche&dule…"), "readOpenings");
  actions.readOpenings->setToolTip(WindowActionsTexts::tr("Change and add openings by a table; none is removed"));
  actions.writeOpenings = add(menu, WindowActionsTexts::tr("Write the openin&g schedule…"), "writeOpenings");
  actions.readPrices = add(menu, WindowActionsTexts::tr("Read a price &list…"), "readPrices");
  actions.readPrices->setToolTip(
      WindowActionsTexts::tr("Change, add and strike prices by a table; what it does not name stays"));
  actions.writePrices = add(menu, WindowActionsTexts::tr("Write the pri&ce list…"), "writePrices");
  actions.writePrices->setToolTip(WindowActionsTexts::tr("With a row for everything that has no price yet"));
  actions.writeCost = add(menu, WindowActionsTexts::tr("Write the cost of the jo&b…"), "writeCost");
  menu->addSeparator();
  actions.savePacket =
      add(menu, WindowActionsTexts::tr("Save pac&ket…"), "savePacket", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P));
  actions.stopPacket = add(menu, WindowActionsTexts::tr("S&top the packet"), "stopPacket");
  menu->addSeparator();
  actions.print = add(menu, WindowActionsTexts::tr("&Print…"), "print", QKeySequence::Print);
  menu->addSeparator();
  actions.quit = add(menu, WindowActionsTexts::tr("&Quit"), "quit", QKeySequence::Quit);
}

void makeViewMenu(WindowActions& actions, QMenu* menu) {
  actions.asPrinted = add(menu, WindowActionsTexts::tr("As &printed"), "asPrinted", QKeySequence(Qt::Key_F9));
  actions.asPrinted->setCheckable(true);
  actions.asPrinted->setToolTip(WindowActionsTexts::tr("Show the pages as they are printed, instead of the wall"));
  menu->addSeparator();
  actions.zoomIn = add(menu, WindowActionsTexts::tr("Zoom &in"), "zoomIn", QKeySequence::ZoomIn);
  actions.zoomOut = add(menu, WindowActionsTexts::tr("Zoom &out"), "zoomOut", QKeySequence::ZoomOut);
  actions.fit = add(menu, WindowActionsTexts::tr("&Fit"), "fit", QKeySequence(Qt::CTRL | Qt::Key_0));
  menu->addSeparator();
  actions.previousPage =
      add(menu, WindowActionsTexts::tr("P&revious page"), "previousPage", QKeySequence(Qt::CTRL | Qt::Key_PageUp));
  actions.nextPage =
      add(menu, WindowActionsTexts::tr("&Next page"), "nextPage", QKeySequence(Qt::CTRL | Qt::Key_PageDown));
  actions.papers = paperChoices(menu->addMenu(WindowActionsTexts::tr("Pap&er")));
  menu->addSeparator();
  actions.nextPanel = add(menu, WindowActionsTexts::tr("Ne&xt panel"), "nextPanel", QKeySequence(Qt::Key_F6));
  actions.previousPanel =
      add(menu, WindowActionsTexts::tr("Pre&vious panel"), "previousPanel", QKeySequence(Qt::SHIFT | Qt::Key_F6));
  actions.panels = menu->addMenu(WindowActionsTexts::tr("Pane&ls"));
  actions.panels->setObjectName(QStringLiteral("panels"));
  actions.panelsAsShipped = add(actions.panels, WindowActionsTexts::tr("As &shipped"), "panelsAsShipped");
  actions.panels->addSeparator();
  actions.stepBack = add(menu, WindowActionsTexts::tr("One step &back"), "stepBack", QKeySequence(Qt::Key_Escape));
  menu->addSeparator();
  actions.appearances = appearanceChoices(menu->addMenu(WindowActionsTexts::tr("&Appearance")));
  actions.textSizes = textChoices(menu->addMenu(WindowActionsTexts::tr("&Text size")));
}

}  // namespace

WindowActions makeActions(QMainWindow& window) {
  WindowActions actions{};
  makeJobMenu(actions, window.menuBar()->addMenu(WindowActionsTexts::tr("&Job")));
  QMenu* edit = window.menuBar()->addMenu(WindowActionsTexts::tr("&Edit"));
  actions.undo = add(edit, WindowActionsTexts::tr("&Undo"), "undo", QKeySequence::Undo);
  actions.redo = add(edit, WindowActionsTexts::tr("&Redo"), "redo", QKeySequence::Redo);
  edit->addSeparator();
  actions.cut = add(edit, WindowActionsTexts::tr("Cu&t"), "cut", QKeySequence::Cut);
  actions.copy = add(edit, WindowActionsTexts::tr("&Copy"), "copy", QKeySequence::Copy);
  actions.paste = add(edit, WindowActionsTexts::tr("&Paste"), "paste", QKeySequence::Paste);
  actions.remove = add(edit, WindowActionsTexts::tr("&Delete"), "remove", QKeySequence::Delete);
  edit->addSeparator();
  actions.chooseAll = add(edit, WindowActionsTexts::tr("Select &all"), "chooseAll", QKeySequence::SelectAll);
  edit->addSeparator();
  actions.building = add(edit, WindowActionsTexts::tr("&Building…"), "building");
  actions.building->setToolTip(WindowActionsTexts::tr("Make the building longer, wider or higher"));
  actions.jobParticulars =
      add(edit, WindowActionsTexts::tr("&Job particulars…"), "jobParticulars", QKeySequence(Qt::CTRL | Qt::Key_J));
  actions.wall = window.menuBar()->addMenu(WindowActionsTexts::tr("&Wall"));
  makeViewMenu(actions, window.menuBar()->addMenu(WindowActionsTexts::tr("&View")));
  QMenu* help = window.menuBar()->addMenu(WindowActionsTexts::tr("&Help"));
  actions.quickStart = add(help, WindowActionsTexts::tr("&Quick start"), "quickStart", QKeySequence(Qt::Key_F1));
  actions.keys = add(help, WindowActionsTexts::tr("&Keys"), "keys", QKeySequence(Qt::CTRL | Qt::Key_F1));
  QToolBar* bar = window.addToolBar(WindowActionsTexts::tr("Tools"));
  bar->setObjectName(QStringLiteral("tools"));
  bar->setMovable(false);
  bar->addActions({actions.newJob, actions.open, actions.save, actions.savePacket});
  bar->addSeparator();
  bar->addActions({actions.undo, actions.redo});
  bar->addSeparator();
  bar->addActions({actions.zoomIn, actions.zoomOut, actions.fit});
  bar->addSeparator();
  bar->addActions({actions.previousPage, actions.nextPage});
  return actions;
}

std::vector<QAction*> WindowActions::ofJob() const {
  return {reload,        panelsAsShipped, save,        saveAs,    readSurvey,     writeSurvey, readOpenings,
          writeOpenings, readPrices,      writePrices, writeCost, savePacket,     print,       asPrinted,
          zoomIn,        zoomOut,         fit,         nextPanel, previousPanel,  stepBack,    cut,
          copy,          paste,           remove,      chooseAll, jobParticulars, building};
}

std::vector<QAction*> WindowActions::ofPages() const {
  std::vector<QAction*> actions{previousPage, nextPage};
  for (QAction* paper : papers->actions()) actions.push_back(paper);
  return actions;
}

void tick(const QActionGroup& group, int data) {
  for (QAction* action : group.actions()) {
    if (action->data().toInt() == data) action->setChecked(true);
  }
}

}  // namespace ribwright
