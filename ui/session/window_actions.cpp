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

struct Texts {
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
  choice(Texts::tr("As the &system"), "appearance-system", Appearance::System);
  choice(Texts::tr("&Light"), "appearance-light", Appearance::Light);
  choice(Texts::tr("&Dark"), "appearance-dark", Appearance::Dark);
  return group;
}

QActionGroup* textChoices(QMenu* menu) {
  QActionGroup* group = choices(menu);
  for (const int percent : textPercents)
    addChoice(group, menu, Texts::tr("%1 %").arg(percent), QStringLiteral("text-%1").arg(percent), percent);
  return group;
}

void makeJobMenu(WindowActions& actions, QMenu* menu) {
  actions.newJob = add(menu, Texts::tr("&New…"), "newJob", QKeySequence(Qt::CTRL | Qt::Key_N));
  actions.open = add(menu, Texts::tr("&Open…"), "open", QKeySequence::Open);
  actions.recent = menu->addMenu(Texts::tr("Open &recent"));
  actions.recent->setObjectName(QStringLiteral("recent"));
  actions.reload = add(menu, Texts::tr("Read &again"), "reload", QKeySequence::Refresh);
  menu->addSeparator();
  actions.save = add(menu, Texts::tr("&Save"), "save", QKeySequence(Qt::CTRL | Qt::Key_S));
  actions.saveAs = add(menu, Texts::tr("Sa&ve as…"), "saveAs", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S));
  menu->addSeparator();
  actions.readSurvey = add(menu, Texts::tr("Read a s&urvey…"), "readSurvey");
  actions.readSurvey->setToolTip(Texts::tr("Take readings from a table, in place of those of the same girts"));
  actions.writeSurvey = add(menu, Texts::tr("&Write the survey…"), "writeSurvey");
  actions.readOpenings = add(menu, Texts::tr("Read an opening sche&dule…"), "readOpenings");
  actions.readOpenings->setToolTip(Texts::tr("Change and add openings by a table; none is removed"));
  actions.writeOpenings = add(menu, Texts::tr("Write the openin&g schedule…"), "writeOpenings");
  actions.readPrices = add(menu, Texts::tr("Read a price &list…"), "readPrices");
  actions.readPrices->setToolTip(Texts::tr("Change, add and strike prices by a table; what it does not name stays"));
  actions.writePrices = add(menu, Texts::tr("Write the pri&ce list…"), "writePrices");
  actions.writePrices->setToolTip(Texts::tr("With a row for everything that has no price yet"));
  actions.writeCost = add(menu, Texts::tr("Write the cost of the jo&b…"), "writeCost");
  menu->addSeparator();
  actions.savePacket =
      add(menu, Texts::tr("Save pac&ket…"), "savePacket", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P));
  actions.stopPacket = add(menu, Texts::tr("S&top the packet"), "stopPacket");
  menu->addSeparator();
  actions.print = add(menu, Texts::tr("&Print…"), "print", QKeySequence::Print);
  menu->addSeparator();
  actions.quit = add(menu, Texts::tr("&Quit"), "quit", QKeySequence::Quit);
}

void makeViewMenu(WindowActions& actions, QMenu* menu) {
  actions.asPrinted = add(menu, Texts::tr("As &printed"), "asPrinted", QKeySequence(Qt::Key_F9));
  actions.asPrinted->setCheckable(true);
  actions.asPrinted->setToolTip(Texts::tr("Show the pages as they are printed, instead of the wall"));
  menu->addSeparator();
  actions.zoomIn = add(menu, Texts::tr("Zoom &in"), "zoomIn", QKeySequence::ZoomIn);
  actions.zoomOut = add(menu, Texts::tr("Zoom &out"), "zoomOut", QKeySequence::ZoomOut);
  actions.fit = add(menu, Texts::tr("&Fit"), "fit", QKeySequence(Qt::CTRL | Qt::Key_0));
  menu->addSeparator();
  actions.previousPage =
      add(menu, Texts::tr("P&revious page"), "previousPage", QKeySequence(Qt::CTRL | Qt::Key_PageUp));
  actions.nextPage = add(menu, Texts::tr("&Next page"), "nextPage", QKeySequence(Qt::CTRL | Qt::Key_PageDown));
  actions.papers = paperChoices(menu->addMenu(Texts::tr("Pap&er")));
  menu->addSeparator();
  actions.nextPanel = add(menu, Texts::tr("Ne&xt panel"), "nextPanel", QKeySequence(Qt::Key_F6));
  actions.previousPanel =
      add(menu, Texts::tr("Pre&vious panel"), "previousPanel", QKeySequence(Qt::SHIFT | Qt::Key_F6));
  actions.panels = menu->addMenu(Texts::tr("Pane&ls"));
  actions.panels->setObjectName(QStringLiteral("panels"));
  actions.panelsAsShipped = add(actions.panels, Texts::tr("As &shipped"), "panelsAsShipped");
  actions.panels->addSeparator();
  actions.stepBack = add(menu, Texts::tr("One step &back"), "stepBack", QKeySequence(Qt::Key_Escape));
  menu->addSeparator();
  actions.appearances = appearanceChoices(menu->addMenu(Texts::tr("&Appearance")));
  actions.textSizes = textChoices(menu->addMenu(Texts::tr("&Text size")));
}

}  // namespace

WindowActions makeActions(QMainWindow& window) {
  WindowActions actions{};
  makeJobMenu(actions, window.menuBar()->addMenu(Texts::tr("&Job")));
  QMenu* edit = window.menuBar()->addMenu(Texts::tr("&Edit"));
  actions.undo = add(edit, Texts::tr("&Undo"), "undo", QKeySequence::Undo);
  actions.redo = add(edit, Texts::tr("&Redo"), "redo", QKeySequence::Redo);
  edit->addSeparator();
  actions.cut = add(edit, Texts::tr("Cu&t"), "cut", QKeySequence::Cut);
  actions.copy = add(edit, Texts::tr("&Copy"), "copy", QKeySequence::Copy);
  actions.paste = add(edit, Texts::tr("&Paste"), "paste", QKeySequence::Paste);
  actions.remove = add(edit, Texts::tr("&Delete"), "remove", QKeySequence::Delete);
  edit->addSeparator();
  actions.chooseAll = add(edit, Texts::tr("Select &all"), "chooseAll", QKeySequence::SelectAll);
  edit->addSeparator();
  actions.building = add(edit, Texts::tr("&Building…"), "building");
  actions.building->setToolTip(Texts::tr("Make the building longer, wider or higher"));
  actions.jobParticulars =
      add(edit, Texts::tr("&Job particulars…"), "jobParticulars", QKeySequence(Qt::CTRL | Qt::Key_J));
  actions.wall = window.menuBar()->addMenu(Texts::tr("&Wall"));
  makeViewMenu(actions, window.menuBar()->addMenu(Texts::tr("&View")));
  QMenu* help = window.menuBar()->addMenu(Texts::tr("&Help"));
  actions.quickStart = add(help, Texts::tr("&Quick start"), "quickStart", QKeySequence(Qt::Key_F1));
  actions.keys = add(help, Texts::tr("&Keys"), "keys", QKeySequence(Qt::CTRL | Qt::Key_F1));
  QToolBar* bar = window.addToolBar(Texts::tr("Tools"));
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
