#include "ui/session/main_window.h"

#include <QAction>
#include <QActionGroup>
#include <QCloseEvent>
#include <QDragEnterEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QGuiApplication>
#include <QMenu>
#include <QMessageBox>
#include <QMimeData>
#include <QPushButton>
#include <QScreen>
#include <QSplitter>
#include <QStackedWidget>
#include <QStatusBar>
#include <QTabWidget>
#include <QTimer>
#include <QVBoxLayout>

#include "ui/panels/batch_panel.h"
#include "ui/panels/fault_panel.h"
#include "ui/panels/finding_panel.h"
#include "ui/panels/job_dialog.h"
#include "ui/panels/packet_bar.h"
#include "ui/panels/part_rows.h"
#include "ui/panels/part_table.h"
#include "ui/panels/particulars_panel.h"
#include "ui/panels/perimeter_strip.h"
#include "ui/panels/plan_inset.h"
#include "ui/panels/reload_bar.h"
#include "ui/panels/start_page.h"
#include "ui/panels/status_line.h"
#include "ui/panels/survey_panel.h"
#include "ui/panels/wall_view.h"
#include "ui/session/appearance.h"
#include "ui/session/print_job.h"
#include "ui/session/recent_jobs.h"
#include "ui/session/survey_file.h"

namespace ribwright {

namespace {

QString text(const std::string& words) { return QString::fromStdString(words); }

constexpr int shortWhile = 5000;  // ms

// Of the window when it is first seen, in letters across and lines down; no larger than the screen.
constexpr int customaryLetters = 184, customaryLines = 54;
constexpr int leastViewLines = 14;

QSize customarySize(const QWidget& window) {
  const QFontMetrics metrics = window.fontMetrics();
  const QSize wanted(customaryLetters * metrics.averageCharWidth(), customaryLines * metrics.lineSpacing());
  return wanted.boundedTo(window.screen()->availableSize());
}

}  // namespace

MainWindow::MainWindow(QWidget* parent) : QMainWindow(parent), saving_(session_, this), actions_(makeActions(*this)) {
  setObjectName(QStringLiteral("mainWindow"));
  setAcceptDrops(true);
  makePanels();
  status_ = new StatusLine(session_, statusBar());
  connectSession();
  connectActions();
  resize(customarySize(*this));
  showJob();
}

// What is being typed is entered, and tables are looked at for the last time, while there still is a session.
MainWindow::~MainWindow() {
  if (QWidget* typed = focusWidget()) typed->clearFocus();
  hide();
}

void MainWindow::makePanels() {
  auto* start = new StartPage(this);
  connect(start, &StartPage::openAsked, this, &MainWindow::askForJob);
  view_ = new WallView(session_, this);
  view_->setMinimumHeight(leastViewLines * fontMetrics().lineSpacing());
  auto* left = new QSplitter(Qt::Vertical, this);
  left->setChildrenCollapsible(false);
  left->addWidget(view_);
  left->addWidget(makeTables());
  left->setStretchFactor(0, 1);
  left->setSizes({700, 300});
  auto* across = new QSplitter(Qt::Horizontal, this);
  across->setChildrenCollapsible(false);
  across->addWidget(left);
  across->addWidget(makeSide());
  across->setStretchFactor(0, 1);
  across->setSizes({700, 300});
  auto* work = new QWidget(this);
  auto* down = new QVBoxLayout(work);
  down->setContentsMargins(0, 0, 0, 0);
  down->addWidget(makeTop());
  down->addWidget(across, 1);
  stack_ = new QStackedWidget(this);
  stack_->addWidget(start);
  stack_->addWidget(work);
  reload_ = new ReloadBar(this);
  faults_ = new FaultPanel(this);
  auto* whole = new QWidget(this);
  auto* layout = new QVBoxLayout(whole);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(reload_);
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

QWidget* MainWindow::makeTables() {
  tables_ = new QTabWidget(this);
  tables_->setObjectName(QStringLiteral("tables"));
  tables_->setDocumentMode(true);
  sheets_ = new PartTable(session_, sheetRows, tables_);
  sheets_->setObjectName(QStringLiteral("sheets"));
  sheets_->setAccessibleName(tr("Sheets of the chosen wall"));
  openings_ = new PartTable(session_, openingRows, tables_);
  openings_->setObjectName(QStringLiteral("openings"));
  openings_->setAccessibleName(tr("Openings of the chosen wall"));
  tables_->addTab(sheets_, {});
  survey_ = new SurveyPanel(session_, tables_);
  tables_->addTab(openings_, {});
  tables_->addTab(survey_, {});
  batches_ = new BatchPanel(session_, tables_);
  tables_->addTab(batches_, {});
  connect(batches_, &BatchPanel::pointedAt, this, &MainWindow::bringIntoView);
  for (const PartTable* table : {sheets_, openings_})
    connect(table, &PartTable::pointedAt, this, &MainWindow::bringIntoView);
  return tables_;
}

QWidget* MainWindow::makeSide() {
  particulars_ = new ParticularsPanel(session_, this);
  findings_ = new FindingPanel(session_, this);
  connect(findings_, &FindingPanel::pointedAt, this, &MainWindow::bringIntoView);
  auto* side = new QSplitter(Qt::Vertical, this);
  side->setChildrenCollapsible(false);
  side->addWidget(particulars_);
  side->addWidget(findings_);
  side->setSizes({500, 500});
  return side;
}

void MainWindow::connectSession() {
  connect(&session_, &Session::jobChanged, this, &MainWindow::showJob);
  connect(&session_, &Session::wallChanged, this, &MainWindow::showWall);
  connect(&session_, &Session::historyChanged, this, &MainWindow::showHistory);
  connect(&session_, &Session::faultsChanged, this, &MainWindow::showFaults);
  connect(&session_, &Session::pagesChanged, this,
          [this] { tick(*actions_.papers, static_cast<int>(session_.paper())); });
  connect(view_, &WallView::viewChanged, this, &MainWindow::showView);
  connect(view_, &WallView::hovered, status_, &StatusLine::setHovered);
  connect(&watch_, &FileWatch::changed, this, [this] { reload_->offer(QFileInfo(session_.path()).fileName()); });
  connect(&saving_, &SaveJob::saved, this, &MainWindow::showSaved);
  connect(&saving_, &SaveJob::readAgainAsked, this, [this] { readJob(session_.path()); });
  connect(&saving_, &SaveJob::failed, this, [this](const std::vector<Fault>& faults) {
    faults_->setFaults(tr("The job could not be saved. Nothing is lost: it is still open, with all its changes."),
                       faults);
  });
  connect(reload_, &ReloadBar::readAgainAsked, this, [this] { openJob(session_.path()); });
  connect(status_->packet(), &PacketBar::stopAsked, this, [this] { packet_.stop(); });
  connect(&packet_, &PacketWork::progressed, status_->packet(), &PacketBar::setProgress);
  connect(&packet_, &PacketWork::ended, this, &MainWindow::showPacketEnd);
}

void MainWindow::connectActions() {
  const auto on = [this](QAction* action, auto target) { connect(action, &QAction::triggered, this, target); };
  on(actions_.open, [this] { askForJob(); });
  on(actions_.reload, [this] { openJob(session_.path()); });
  on(actions_.save, [this] { finishTyping(), saving_.save(); });
  on(actions_.saveAs, [this] { finishTyping(), saving_.saveAs(); });
  on(actions_.readSurvey, [this] { askForSurvey(); });
  on(actions_.writeSurvey, [this] { askAndWriteSurvey(); });
  on(actions_.savePacket, [this] { askForFolder(); });
  on(actions_.stopPacket, [this] { packet_.stop(); });
  on(actions_.print, [this] { askAndPrint(session_, this); });
  on(actions_.quit, [this] { close(); });
  on(actions_.undo, [this] { session_.undo(); });
  on(actions_.redo, [this] { session_.redo(); });
  on(actions_.jobParticulars, [this] { showJobParticulars(); });
  on(actions_.asPrinted, [this](bool printed) { view_->setAsPrinted(printed); });
  on(actions_.zoomIn, [this] { view_->zoomIn(); });
  on(actions_.zoomOut, [this] { view_->zoomOut(); });
  on(actions_.fit, [this] { view_->fit(); });
  on(actions_.previousPage, [this] { view_->turnPage(-1); });
  on(actions_.nextPage, [this] { view_->turnPage(1); });
  on(actions_.nextPanel, [this] { goToPanel(1); });
  on(actions_.previousPanel, [this] { goToPanel(-1); });
  on(actions_.stepBack, [this] { stepBack(); });
  connect(actions_.recent, &QMenu::aboutToShow, this, &MainWindow::fillRecent);
  connect(actions_.papers, &QActionGroup::triggered, this,
          [this](const QAction* paper) { session_.choosePaper(static_cast<PaperSize>(paper->data().toInt())); });
  tick(*actions_.appearances, static_cast<int>(keptAppearance()));
  connect(actions_.appearances, &QActionGroup::triggered, this,
          [](const QAction* action) { chooseAppearance(static_cast<Appearance>(action->data().toInt())); });
  tick(*actions_.textSizes, keptTextPercent());
  connect(actions_.textSizes, &QActionGroup::triggered, this,
          [](const QAction* action) { chooseTextPercent(action->data().toInt()); });
}

void MainWindow::finishTyping() {
  survey_->finishTyping();
  particulars_->finishTyping();
  if (jobDialog_) jobDialog_->finishTyping();
}

void MainWindow::showJobParticulars() {
  finishTyping();
  if (!jobDialog_) jobDialog_ = new JobDialog(session_, this);
  jobDialog_->show();
  jobDialog_->raise();
  jobDialog_->activateWindow();
}

void MainWindow::askForJob() {
  const QString folder = QFileInfo(session_.path()).absolutePath();
  const QString path =
      QFileDialog::getOpenFileName(this, tr("Open a job"), folder, tr("Job files (*.json);;All files (*)"));
  if (!path.isEmpty()) openJob(path);
}

void MainWindow::askForSurvey() {
  const QString folder = QFileInfo(session_.path()).absolutePath();
  const QString path =
      QFileDialog::getOpenFileName(this, tr("Read a survey"), folder, tr("Tables (*.csv);;All files (*)"));
  if (!path.isEmpty()) readSurvey(path);
}

bool MainWindow::readSurvey(const QString& path) {
  survey_->finishTyping();
  const std::vector<Fault> faults = ribwright::readSurvey(session_, path);
  faults_->setFaults(tr("The survey could not be read; nothing was changed."), faults);
  if (faults.empty()) statusBar()->showMessage(tr("The survey was read."), shortWhile);
  return faults.empty();
}

void MainWindow::askAndWriteSurvey() {
  const QString folder = QFileInfo(session_.path()).absolutePath() + QStringLiteral("/survey.csv");
  const QString path = QFileDialog::getSaveFileName(this, tr("Write the survey"), folder, tr("Tables (*.csv)"));
  if (path.isEmpty()) return;
  const std::vector<Fault> faults = writeSurvey(session_, path);
  faults_->setFaults(tr("The survey could not be written."), faults);
  if (faults.empty()) statusBar()->showMessage(tr("Survey written into %1.").arg(path), shortWhile);
}

void MainWindow::askForFolder() {
  const QString folder =
      QFileDialog::getExistingDirectory(this, tr("Folder for the packet"), QFileInfo(session_.path()).absolutePath());
  if (!folder.isEmpty()) startPacket(folder);
}

void MainWindow::fillRecent() {
  actions_.recent->clear();
  for (const QString& path : recentJobs()) {
    // Menus would take an ampersand of a name for a key.
    QAction* action = actions_.recent->addAction(QString(path).replace(QLatin1Char('&'), QStringLiteral("&&")));
    connect(action, &QAction::triggered, this, [this, path] { openJob(path); });
  }
  if (actions_.recent->isEmpty()) actions_.recent->addAction(tr("none yet"))->setEnabled(false);
}

bool MainWindow::openJob(const QString& path) { return mayLetGo() && readJob(path); }

bool MainWindow::readJob(const QString& named) {
  const QString path = named;  // may be the session's own, which changes
  const bool again = session_.isOpen() && path == session_.path();
  QGuiApplication::setOverrideCursor(Qt::WaitCursor);
  const bool read = session_.open(path);
  QGuiApplication::restoreOverrideCursor();
  if (!read) {
    statusBar()->showMessage(tr("%1 could not be read.").arg(path), shortWhile);
    return false;
  }
  reload_->hide();
  watch_.watch(path, session_.fileDigest());
  remember(path);
  if (again) statusBar()->showMessage(tr("Read again."), shortWhile);
  return true;
}

// Settings are written to the disk: at the start not before the first frame.
void MainWindow::remember(const QString& path) {
  if (isVisible()) return rememberJob(path);
  QTimer::singleShot(shortWhile / 10, this, [path] { rememberJob(path); });
}

bool MainWindow::startPacket(const QString& folder) {
  if (!session_.isOpen()) return false;
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
  actions_.savePacket->setEnabled(open && !packet_.isRunning());
  actions_.stopPacket->setEnabled(packet_.isRunning());
  stack_->setCurrentIndex(open ? 1 : 0);
  showHistory();
  showView();
  if (!open) return;
  statusBar()->clearMessage();
}

// The star is where the system marks a window whose document has changed.
void MainWindow::showTitle() {
  const auto plain = [](QString words) { return words.replace(QStringLiteral("[*]"), QStringLiteral("[*][*]")); };
  const bool open = session_.isOpen();
  setWindowTitle(open ? tr("%1 (%2)[*], Ribwright")
                            .arg(plain(text(session_.job().name)), plain(QFileInfo(session_.path()).fileName()))
                      : tr("Ribwright"));
  setWindowModified(open && !session_.history()->isSaved());
}

void MainWindow::showSaved() {
  reload_->hide();
  faults_->hide();
  watch_.watch(session_.path(), session_.fileDigest());
  remember(session_.path());
  statusBar()->showMessage(tr("Saved: %1").arg(session_.path()), shortWhile);
}

void MainWindow::showWall() {
  sheets_->refill();
  openings_->refill();
  batches_->refill();
  tables_->setTabText(0, tr("Shee&ts: %1").arg(sheets_->count()));
  tables_->setTabText(1, tr("Openin&gs: %1").arg(openings_->count()));
  tables_->setTabText(2, tr("Gi&rts and survey: %1").arg(survey_->measured()));
  tables_->setTabText(3, tr("&Drill batches: %1/%2").arg(batches_->cleared()).arg(batches_->count()));
}

void MainWindow::showHistory() {
  const History* history = session_.history();
  const bool undo = history && history->canUndo(), redo = history && history->canRedo();
  actions_.undo->setEnabled(undo);
  actions_.redo->setEnabled(redo);
  const auto named = [](QAction* action, const QString& words, const std::string& edit) {
    action->setToolTip(edit.empty() ? words : words + QStringLiteral(": ") + text(edit));
  };
  named(actions_.undo, tr("Undo"), undo ? history->undoName() : std::string());
  named(actions_.redo, tr("Redo"), redo ? history->redoName() : std::string());
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
  if (part.kind == Part::Kind::Batch) tables_->setCurrentWidget(batches_);
  if (part.kind == Part::Kind::Piece) tables_->setCurrentWidget(sheets_);
  if (part.kind == Part::Kind::Opening || part.kind == Part::Kind::Penetration) tables_->setCurrentWidget(openings_);
}

// Round the panels, from the one that has the keyboard.
void MainWindow::goToPanel(int step) {
  std::vector<QWidget*> panels{strip_, plan_, view_, tables_, particulars_, findings_};
  if (faults_->isVisible()) panels.push_back(faults_);
  const int count = static_cast<int>(panels.size());
  int here = step > 0 ? -1 : count;
  for (int i = 0; i < count; ++i) {
    if (panels[static_cast<std::size_t>(i)]->isAncestorOf(focusWidget())) here = i;
    if (panels[static_cast<std::size_t>(i)] == focusWidget()) here = i;
  }
  QWidget* next = panels[static_cast<std::size_t>((here + step + count) % count)];
  (next == tables_ ? tables_->currentWidget() : next)->setFocus(Qt::TabFocusReason);
}

// Lets go of the part, then goes back from the pages to the wall.
void MainWindow::stepBack() {
  if (session_.chosen()) return session_.choose(std::nullopt);
  if (view_->isAsPrinted()) return view_->setAsPrinted(false);
  faults_->hide();
}

bool MainWindow::mayLetGo() {
  finishTyping();  // what is being typed is not lost unasked either
  return saving_.mayLetGo();
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
  if (!mayLetGo() || !mayStopPacket()) return event->ignore();
  packet_.stop();
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
