#include "ui/session/main_window.h"

#include <QAction>
#include <QActionGroup>
#include <QCloseEvent>
#include <QDockWidget>
#include <QDragEnterEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QKeyEvent>
#include <QMenu>
#include <QMenuBar>
#include <QMessageBox>
#include <QMimeData>
#include <QPushButton>
#include <QScreen>
#include <QStackedWidget>
#include <QStatusBar>
#include <QTabWidget>
#include <QTimer>
#include <QVBoxLayout>

#include "ui/panels/building_dialog.h"
#include "ui/panels/fault_panel.h"
#include "ui/panels/help_pages.h"
#include "ui/panels/is_seen.h"
#include "ui/panels/job_dialog.h"
#include "ui/panels/new_job_dialog.h"
#include "ui/panels/packet_bar.h"
#include "ui/panels/perimeter_strip.h"
#include "ui/panels/plan_inset.h"
#include "ui/panels/start_page.h"
#include "ui/panels/status_line.h"
#include "ui/panels/trim_panel.h"
#include "ui/panels/wall_view.h"
#include "ui/session/appearance.h"
#include "ui/session/opening_file.h"
#include "ui/session/plan_laying.h"
#include "ui/session/price_file.h"
#include "ui/session/print_job.h"
#include "ui/session/recent_jobs.h"
#include "ui/session/recent_menu.h"
#include "ui/session/window_text.h"
#include "ui/tools/board_tools.h"

namespace ribwright {

namespace {

constexpr int shortWhile = 5000;  // ms

// Of the window when it is first seen, in letters across and lines down; no larger than the screen.
constexpr int customaryLetters = 226, customaryLines = 62;
constexpr int leastViewLines = 14;

std::vector<QAction*> menuActions(const QMainWindow& window) {
  std::vector<QAction*> all;
  for (QMenu* menu : window.menuBar()->findChildren<QMenu*>()) {
    for (QAction* action : menu->actions()) all.push_back(action);
  }
  return all;
}

QSize customarySize(const QWidget& window) {
  const QFontMetrics metrics = window.fontMetrics();
  const QSize wanted(customaryLetters * metrics.averageCharWidth(), customaryLines * metrics.lineSpacing());
  return wanted.boundedTo(window.screen()->availableSize());
}

}  // namespace

MainWindow::MainWindow(const KeepingManner& keeping, QWidget* parent)
    : QMainWindow(parent),
      files_(session_, keeping, this),
      surveys_(session_, this),
      clipboard_(session_, this),
      actions_(makeActions(*this)) {
  setObjectName(QStringLiteral("mainWindow"));
  setAcceptDrops(true);
  makeCentre();
  status_ = new StatusLine(session_, statusBar());
  connectSession();
  connectFiles();
  connectActions();
  resize(customarySize(*this));
  docks_ = makeDocks(*this);
  restoreDocks(*this);
  for (QDockWidget* dock : docks_.all()) actions_.panels->addAction(dock->toggleViewAction());
  showJob();
}

// What is being typed is entered, and tables are looked at for the last time, while there still is a session.
MainWindow::~MainWindow() {
  if (QWidget* typed = focusWidget()) typed->clearFocus();
  hide();
}

void MainWindow::makeCentre() {
  view_ = new WallView(session_, this);
  view_->setMinimumHeight(leastViewLines * fontMetrics().lineSpacing());
  auto* work = new QWidget(this);
  auto* down = new QVBoxLayout(work);
  down->setContentsMargins(0, 0, 0, 0);
  down->addWidget(makeTop());
  down->addWidget(view_, 1);
  stack_ = new QStackedWidget(this);
  stack_->addWidget(work);
  faults_ = new FaultPanel(this);
  auto* whole = new QWidget(this);
  auto* layout = new QVBoxLayout(whole);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(files_.bars());
  layout->addWidget(stack_, 1);
  layout->addWidget(faults_);
  setCentralWidget(whole);
}

QWidget* MainWindow::makeTop() {
  auto* top = new QWidget(this);
  strip_ = new PerimeterStrip(session_, top);
  plan_ = new PlanInset(session_, top);
  auto* layout = new QHBoxLayout(top);
  layout->setContentsMargins(4, 4, 4, 0);
  layout->addWidget(strip_, 1, Qt::AlignTop);
  layout->addWidget(plan_, 0, Qt::AlignTop);
  return top;
}

// Only a window that was opened without a job has one.
void MainWindow::showStartPage() {
  if (!start_) {
    start_ = new StartPage(this);
    connect(start_, &StartPage::newAsked, this, &MainWindow::askForNewJob);
    connect(start_, &StartPage::openAsked, &files_, &JobFiles::askAndOpen);
    connect(start_, &StartPage::keptAsked, &files_, &JobFiles::offerKept);
    connect(start_, &StartPage::openRecentAsked, this, &MainWindow::openJob);
    connect(start_, &StartPage::forgetAsked, this, [this](const QString& path) { forgetJob(path), fillStartPage(); });
    stack_->addWidget(start_);
  }
  fillStartPage();
  stack_->setCurrentWidget(start_);
}

void MainWindow::fillStartPage() {
  if (!start_ || session_.isOpen()) return;
  std::vector<RecentRow> rows;
  for (const RecentJob& job : recentJobs()) rows.push_back({job.name, job.path, job.isThere()});
  start_->setRecent(rows);
  start_->setKept(files_.keptCount());
}

void MainWindow::furnish() {
  if (panels_.areMade()) return;
  panels_ = ribwright::makePanels(session_, docks_, [this](const Part& part) { bringIntoView(part); });
  connect(panels_.trim, &TrimPanel::rulesWanted, this, [this] {
    showJobParticulars();
    jobDialog_->showPageOf("trim_rules");
  });
  connect(&session_, &Session::wallChanged, this, &MainWindow::showWall);  // after the panels themselves
  if (session_.isOpen()) showWall();
  files_.offerKept();
}

// The wall is seen first; tables and panels come with the next frame.
bool MainWindow::event(QEvent* event) {
  if (event->type() == QEvent::Show && !session_.isOpen()) showStartPage();
  if (event->type() == QEvent::Paint && !panels_.areMade()) QTimer::singleShot(0, this, &MainWindow::furnish);
  if (event->type() == QEvent::ShortcutOverride && PartClipboard::belongsToField(static_cast<QKeyEvent&>(*event))) {
    event->accept();
    return true;
  }
  return QMainWindow::event(event);
}

// What nobody wanted: letters take a tool wherever the keyboard is, but in fields.
void MainWindow::keyPressEvent(QKeyEvent* event) {
  if (session_.isOpen() && !view_->isAsPrinted() && view_->tools()->takeByLetter(*event)) return event->accept();
  QMainWindow::keyPressEvent(event);
}

void MainWindow::connectSession() {
  connect(&session_, &Session::jobChanged, this, &MainWindow::showJob);
  connect(&session_, &Session::historyChanged, this, &MainWindow::showHistory);
  connect(&session_, &Session::faultsChanged, this, &MainWindow::showFaults);
  connect(&session_, &Session::pagesChanged, this,
          [this] { tick(*actions_.papers, static_cast<int>(session_.paper())); });
  connect(view_, &WallView::newAsked, this, &MainWindow::askForNewJob);
  connect(view_, &WallView::viewChanged, this, &MainWindow::showView);
  connect(view_, &WallView::told, this, [this](const QString& words) { statusBar()->showMessage(words, shortWhile); });
  connect(view_, &WallView::hovered, status_, &StatusLine::setHovered);
  connect(status_->packet(), &PacketBar::stopAsked, this, [this] { packet_.stop(); });
  connect(&packet_, &PacketWork::progressed, status_->packet(), &PacketBar::setProgress);
  connect(&packet_, &PacketWork::ended, this, &MainWindow::showPacketEnd);
}

void MainWindow::connectFiles() {
  const auto hears = [this](auto& files) {
    using Files = std::remove_reference_t<decltype(files)>;
    connect(&files, &Files::typingEnds, this, [this] { finishTyping(); });
    connect(&files, &Files::told, this, [this](const QString& words) { statusBar()->showMessage(words, shortWhile); });
    connect(&files, &Files::faulty, faults_, &FaultPanel::setFaults);
  };
  hears(files_);
  hears(surveys_);
  connect(&clipboard_, &PartClipboard::told, this,
          [this](const QString& words) { statusBar()->showMessage(words, shortWhile); });
  connect(&files_, &JobFiles::keptCountChanged, this, &MainWindow::fillStartPage);
}

void MainWindow::connectActions() {
  const auto on = [this](QAction* action, auto target) { connect(action, &QAction::triggered, this, target); };
  on(actions_.newJob, [this] { askForNewJob(); });
  on(actions_.open, [this] { files_.askAndOpen(); });
  on(actions_.reload, [this] { files_.readAgain(); });
  on(actions_.save, [this] { files_.save(); });
  on(actions_.saveAs, [this] { files_.saveAs(); });
  on(actions_.readSurvey, [this] { surveys_.askAndRead(); });
  on(actions_.writeSurvey, [this] { surveys_.askAndWrite(); });
  on(actions_.readOpenings, [this] { finishTyping(), tell(askAndReadOpenings(session_, this)); });
  on(actions_.writeOpenings, [this] { finishTyping(), tell(askAndWriteOpenings(session_, this)); });
  on(actions_.readPrices, [this] { finishTyping(), tell(askAndReadPrices(session_, this)); });
  on(actions_.writePrices, [this] { finishTyping(), tell(askAndWritePrices(session_, this)); });
  on(actions_.writeCost, [this] { finishTyping(), tell(askAndWriteCost(session_, this)); });
  on(actions_.savePacket, [this] { askForFolder(); });
  on(actions_.stopPacket, [this] { packet_.stop(); });
  on(actions_.print, [this] { finishTyping(), session_.settle(), askAndPrint(session_, this); });
  on(actions_.quit, [this] { close(); });
  on(actions_.undo, [this] { session_.undo(); });
  on(actions_.redo, [this] { session_.redo(); });
  on(actions_.cut, [this] { clipboard_.cut(); });
  on(actions_.copy, [this] { clipboard_.copy(); });
  on(actions_.paste, [this] { clipboard_.paste(); });
  on(actions_.remove, [this] { clipboard_.remove(); });
  on(actions_.chooseAll, [this] { clipboard_.chooseAll(); });
  on(actions_.building, [this] { BuildingDialog(session_, this).exec(); });
  on(actions_.jobParticulars, [this] { showJobParticulars(); });
  on(actions_.asPrinted, [this](bool printed) { view_->setAsPrinted(printed); });
  on(actions_.zoomIn, [this] { view_->zoomIn(); });
  on(actions_.zoomOut, [this] { view_->zoomOut(); });
  on(actions_.fit, [this] { view_->fit(); });
  on(actions_.previousPage, [this] { view_->turnPage(-1); });
  on(actions_.nextPage, [this] { view_->turnPage(1); });
  on(actions_.panelsAsShipped, [this] { placeDocks(*this, docks_); });
  on(actions_.nextPanel, [this] { goToPanel(1); });
  on(actions_.previousPanel, [this] { goToPanel(-1); });
  on(actions_.quickStart, [this] { showHelp(this, "quickStartPage", tr("Quick start"), quickStartText()); });
  on(actions_.keys, [this] { showHelp(this, "keysPage", tr("Keys"), keysText(menuActions(*this))); });
  on(actions_.stepBack, [this] { stepBack(); });
  connect(actions_.recent, &QMenu::aboutToShow, this,
          [this] { fillRecentMenu(*actions_.recent, [this](const QString& path) { openJob(path); }); });
  connect(actions_.papers, &QActionGroup::triggered, this,
          [this](const QAction* paper) { session_.choosePaper(static_cast<PaperSize>(paper->data().toInt())); });
  for (QAction* tool : view_->toolActionsInOrder()) actions_.wall->addAction(tool);
  const auto* laying = new PlanLaying(session_, *view_, actions_.wall, this);
  connect(laying, &PlanLaying::told, view_, &WallView::told);
  tick(*actions_.appearances, static_cast<int>(keptAppearance()));
  connect(actions_.appearances, &QActionGroup::triggered, this,
          [](const QAction* action) { chooseAppearance(static_cast<Appearance>(action->data().toInt())); });
  tick(*actions_.textSizes, keptTextPercent());
  connect(actions_.textSizes, &QActionGroup::triggered, this,
          [](const QAction* action) { chooseTextPercent(action->data().toInt()); });
}

void MainWindow::finishTyping() {
  panels_.finishTyping();
  if (jobDialog_) jobDialog_->finishTyping();
}

void MainWindow::showJobParticulars() {
  finishTyping();
  if (!jobDialog_) jobDialog_ = new JobDialog(session_, this);
  jobDialog_->show();
  jobDialog_->raise();
  jobDialog_->activateWindow();
}

bool MainWindow::openJob(const QString& path) { return files_.open(path); }

void MainWindow::askForNewJob() {
  if (!files_.mayLetGo()) return;
  NewJobDialog dialog(this);
  if (dialog.exec() == QDialog::Accepted && dialog.job()) files_.begin(*dialog.job());
}

bool MainWindow::showReadJob(ReadJob read, const QString& path) { return files_.showRead(std::move(read), path); }

bool MainWindow::readSurvey(const QString& path) { return surveys_.read(path); }

void MainWindow::tell(const TableFileEnd& end) {
  faults_->setFaults(end.title, end.faults);
  if (!end.done.isEmpty()) statusBar()->showMessage(end.done);
}

void MainWindow::askForFolder() {
  const QString folder = QFileDialog::getExistingDirectory(this, tr("Folder for the packet"), session_.folder());
  if (!folder.isEmpty()) startPacket(folder);
}

bool MainWindow::startPacket(const QString& folder) {
  if (!session_.isOpen()) return false;
  finishTyping();
  session_.settle();  // paper is of the newest job
  const PacketForm form{session_.job().units, session_.paper(), session_.language()};
  if (!packet_.start(session_.sharedJob(), session_.sharedPlan(), form, folder)) return false;
  status_->packet()->begin();
  actions_.savePacket->setEnabled(false);
  actions_.stopPacket->setEnabled(true);
  return true;
}

void MainWindow::showPacketEnd(const PacketEnd& end) {
  status_->packet()->hide();
  actions_.savePacket->setEnabled(session_.isOpen());
  actions_.stopPacket->setEnabled(false);
  if (!end.faults.empty())
    faults_->setFaults(tr("The packet could not be written; nothing in the folder was changed."), end.faults);
  else if (end.stopped)
    statusBar()->showMessage(tr("The packet was stopped; nothing in the folder was changed."), shortWhile);
  else
    statusBar()->showMessage(tr("Packet written into %1: %2 files.").arg(end.folder).arg(end.files));
  emit packetEnded(end);
}

void MainWindow::showJob() {
  const bool open = session_.isOpen();
  for (QAction* action : actions_.ofJob()) action->setEnabled(open);
  actions_.building->setEnabled(open && !session_.newest().building.outline.empty());
  actions_.savePacket->setEnabled(open && !packet_.isRunning());
  actions_.stopPacket->setEnabled(packet_.isRunning());
  if (open) stack_->setCurrentIndex(0);
  if (!open && isVisible()) showStartPage();
  veil_.set(docks_, !open);
  showHistory();
  showView();
  if (!open) return;
  statusBar()->clearMessage();
}

// The star is where the system marks a window whose document has changed.
void MainWindow::showTitle() {
  const auto plain = [](QString words) { return words.replace(QStringLiteral("[*]"), QStringLiteral("[*][*]")); };
  const bool open = session_.isOpen();
  QString file = session_.path().isEmpty() ? tr("in no file yet") : QFileInfo(session_.path()).fileName();
  if (session_.isLookedAt()) file = tr("%1, to look at").arg(file);
  setWindowTitle(open ? tr("%1 (%2)[*], Ribwright").arg(plain(text(session_.job().name)), plain(file))
                      : tr("Ribwright"));
  setWindowModified(open && !session_.history()->isSaved());
}

void MainWindow::showWall() { panels_.showWall(); }

void MainWindow::showHistory() {
  const History* history = session_.history();
  const bool undo = history && history->canUndo(), redo = history && history->canRedo();
  actions_.undo->setEnabled(undo);
  actions_.redo->setEnabled(redo);
  const auto named = [](QAction* action, const QString& words, const QString& plain, const std::string& edit) {
    const QString name = text(edit).replace(QLatin1Char('&'), QStringLiteral("&&"));
    action->setText(edit.empty() ? words : words + QStringLiteral(": ") + name);
    action->setIconText(plain);
    action->setToolTip(edit.empty() ? plain : plain + QStringLiteral(": ") + text(edit));
  };
  named(actions_.undo, tr("&Undo"), tr("Undo"), undo ? history->undoName() : std::string());
  named(actions_.redo, tr("&Redo"), tr("Redo"), redo ? history->redoName() : std::string());
  showTitle();
}

void MainWindow::showView() {
  for (QAction* action : actions_.ofPages()) action->setEnabled(session_.isOpen() && view_->isAsPrinted());
  actions_.asPrinted->setChecked(view_->isAsPrinted());
  status_->setZoom(view_->zoomWords());
}

void MainWindow::showFaults() {
  const QString kept = session_.isOpen() ? QLatin1Char(' ') + tr("What was open before is still shown.") : QString();
  faults_->setFaults(tr("The file could not be read.") + kept, session_.faults());
}

void MainWindow::bringIntoView(const Part& part) {
  view_->show(part);
  panels_.showTableOf(part);
}

// Round the panels, from the one that has the keyboard.
void MainWindow::goToPanel(int step) {
  furnish();
  std::vector<QWidget*> panels{strip_, plan_, view_};
  for (QWidget* panel : panels_.all()) {
    if (isSeen(panel)) panels.push_back(panel);
  }
  if (faults_->isVisible()) panels.push_back(faults_);
  const int count = static_cast<int>(panels.size());
  int here = step > 0 ? -1 : count;
  for (int i = 0; i < count; ++i) {
    if (panels[static_cast<std::size_t>(i)]->isAncestorOf(focusWidget())) here = i;
    if (panels[static_cast<std::size_t>(i)] == focusWidget()) here = i;
  }
  QWidget* next = panels[static_cast<std::size_t>((here + step + count) % count)];
  (next == panels_.tables ? panels_.tables->currentWidget() : next)->setFocus(Qt::TabFocusReason);
}

// Lets go of the part, then goes back from the pages to the wall.
void MainWindow::stepBack() {
  if (view_->tools()->stepBack()) return;
  if (session_.chosen()) return session_.choose(std::nullopt);
  if (view_->isAsPrinted()) return view_->setAsPrinted(false);
  faults_->hide();
}

// Asks, when a packet is on its way, whether it may be given up.
bool MainWindow::mayStopPacket() {
  if (!packet_.isRunning()) return true;
  QMessageBox box(QMessageBox::Question, tr("Close the window"),
                  tr("A packet is being made. Stop it? Nothing in its folder has been changed."), QMessageBox::NoButton,
                  this);
  const QPushButton* stop = box.addButton(tr("&Stop and close"), QMessageBox::AcceptRole);
  box.setDefaultButton(box.addButton(tr("&Go on"), QMessageBox::RejectRole));
  connect(&packet_, &PacketWork::ended, &box, &QDialog::accept);  // done meanwhile: nothing is left to stop
  box.exec();
  return box.clickedButton() == stop || !packet_.isRunning();
}

void MainWindow::closeEvent(QCloseEvent* event) {
  if (!files_.mayLetGo() || !mayStopPacket()) return event->ignore();
  packet_.stop();
  files_.letGo();
  veil_.set(docks_, false);
  keepDocks(*this);
  event->accept();
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
  const auto urls = event->mimeData()->urls();
  if (urls.size() == 1 && urls.front().isLocalFile()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
  const auto urls = event->mimeData()->urls();
  if (!urls.isEmpty()) openJob(urls.front().toLocalFile());
}

}  // namespace ribwright
