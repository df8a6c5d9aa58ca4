#include "ui/session/main_window.h"

#include <QActionGroup>
#include <QDragEnterEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QGuiApplication>
#include <QHeaderView>
#include <QLabel>
#include <QMenuBar>
#include <QMimeData>
#include <QSplitter>
#include <QStackedWidget>
#include <QStatusBar>
#include <QTableView>
#include <QToolBar>
#include <QVBoxLayout>
#include <algorithm>

#include "core/output/file_set.h"
#include "ui/board/elevation_board.h"
#include "ui/panels/fault_panel.h"
#include "ui/panels/finding_panel.h"
#include "ui/panels/sheet_table.h"
#include "ui/panels/start_page.h"
#include "ui/panels/wall_list.h"
#include "ui/printing/packet_files.h"

namespace ribwright {

namespace {

QString countText(const Plan& plan) {
  const auto count = [&](Grade grade) {
    return static_cast<int>(std::count_if(plan.findings.begin(), plan.findings.end(),
                                          [&](const Finding& finding) { return finding.grade == grade; }));
  };
  return MainWindow::tr("Findings: stop %1, look %2, note %3")
      .arg(count(Grade::Stop))
      .arg(count(Grade::Look))
      .arg(count(Grade::Note));
}

QString paperText(PaperSize paper) {
  switch (paper) {
    case PaperSize::Letter:
      return MainWindow::tr("Letter");
    case PaperSize::Tabloid:
      return MainWindow::tr("Tabloid");
    case PaperSize::A4:
      return MainWindow::tr("A4");
    case PaperSize::A3:
      break;
  }
  return MainWindow::tr("A3");
}

}  // namespace

MainWindow::MainWindow(QWidget* parent) : QMainWindow(parent) {
  setObjectName(QStringLiteral("mainWindow"));
  setAcceptDrops(true);
  makePanels();
  makeActions();
  counts_ = new QLabel(this);
  view_ = new QLabel(this);
  statusBar()->addPermanentWidget(counts_);
  statusBar()->addPermanentWidget(view_);
  connect(&session_, &Session::jobChanged, this, &MainWindow::showJob);
  connect(&session_, &Session::wallChanged, this, &MainWindow::showWall);
  connect(&session_, &Session::pagesChanged, this, &MainWindow::showPages);
  connect(&session_, &Session::faultsChanged, this, &MainWindow::showFaults);
  resize(1280, 800);
  showJob();
}

void MainWindow::makePanels() {
  walls_ = new WallList(this);
  connect(walls_, &WallList::wallChosen, this, [this](int wall) { session_.chooseWall(wall); });
  board_ = new ElevationBoard(this);
  board_->setObjectName(QStringLiteral("board"));
  connect(board_, &ElevationBoard::viewChanged, this, &MainWindow::showView);
  auto* start = new StartPage(this);
  connect(start, &StartPage::openAsked, this, &MainWindow::askForJob);
  middle_ = new QStackedWidget(this);
  middle_->addWidget(start);
  middle_->addWidget(board_);

  sheets_ = new SheetTable(this);
  sheetView_ = new QTableView(this);
  sheetView_->setObjectName(QStringLiteral("sheets"));
  sheetView_->setAccessibleName(tr("Sheets of the chosen wall"));
  sheetView_->setModel(sheets_);
  sheetView_->setSelectionBehavior(QAbstractItemView::SelectRows);
  sheetView_->verticalHeader()->hide();
  sheetView_->verticalHeader()->setDefaultSectionSize(sheetView_->fontMetrics().height() + 6);
  sheetView_->horizontalHeader()->setStretchLastSection(true);
  findings_ = new FindingPanel(this);
  connect(findings_, &FindingPanel::wallChosen, this,
          [this](const QString& letter) { session_.chooseWall(letter.toStdString()); });

  side_ = new QSplitter(Qt::Vertical, this);
  side_->addWidget(sheetView_);
  side_->addWidget(findings_);
  auto* across = new QSplitter(Qt::Horizontal, this);
  across->addWidget(walls_);
  across->addWidget(middle_);
  across->addWidget(side_);
  across->setStretchFactor(1, 1);
  across->setSizes({190, 700, 390});
  faults_ = new FaultPanel(this);
  auto* down = new QSplitter(Qt::Vertical, this);
  down->addWidget(across);
  down->addWidget(faults_);
  down->setStretchFactor(0, 1);
  down->setSizes({620, 160});
  setCentralWidget(down);
}

void MainWindow::makeActions() {
  QToolBar* bar = addToolBar(tr("Job"));
  bar->setObjectName(QStringLiteral("jobBar"));
  bar->setMovable(false);
  QMenu* jobMenu = menuBar()->addMenu(tr("&Job"));
  QMenu* viewMenu = menuBar()->addMenu(tr("&View"));
  const auto add = [&](QMenu* menu, const QString& text, const char* name, const QKeySequence& key, auto target) {
    QAction* action = menu->addAction(text);
    action->setObjectName(QLatin1String(name));
    action->setShortcut(key);
    connect(action, &QAction::triggered, this, target);
    bar->addAction(action);
    return action;
  };
  add(jobMenu, tr("&Open…"), "open", QKeySequence::Open, [this] { askForJob(); });
  needJob_ = {add(jobMenu, tr("&Reload"), "reload", QKeySequence::Refresh, [this] { reload(); }),
              add(jobMenu, tr("&Save packet…"), "savePacket", QKeySequence::Save, [this] { askForFolder(); })};
  jobMenu->addSeparator();
  QAction* quit = jobMenu->addAction(tr("&Quit"), this, &QWidget::close);
  quit->setShortcut(QKeySequence::Quit);
  bar->addSeparator();
  needJob_.push_back(add(viewMenu, tr("Zoom &in"), "zoomIn", QKeySequence::ZoomIn, [this] { board_->zoomIn(); }));
  needJob_.push_back(add(viewMenu, tr("Zoom &out"), "zoomOut", QKeySequence::ZoomOut, [this] { board_->zoomOut(); }));
  needJob_.push_back(
      add(viewMenu, tr("&Fit page"), "fit", QKeySequence(Qt::CTRL | Qt::Key_0), [this] { board_->fit(); }));
  needJob_.push_back(add(viewMenu, tr("&Previous page"), "previousPage", QKeySequence(Qt::CTRL | Qt::Key_PageUp),
                         [this] { board_->showPage(board_->currentPage() - 1); }));
  needJob_.push_back(add(viewMenu, tr("&Next page"), "nextPage", QKeySequence(Qt::CTRL | Qt::Key_PageDown),
                         [this] { board_->showPage(board_->currentPage() + 1); }));
  viewMenu->addSeparator();
  makePaperMenu(viewMenu->addMenu(tr("&Paper")));
}

void MainWindow::makePaperMenu(QMenu* menu) {
  papers_ = new QActionGroup(this);
  for (const PaperSize paper : {PaperSize::Letter, PaperSize::Tabloid, PaperSize::A4, PaperSize::A3}) {
    QAction* action = menu->addAction(paperText(paper), this, [this, paper] { session_.choosePaper(paper); });
    action->setObjectName(QStringLiteral("paper-") +
                          QString::fromUtf8(nameOf(paper).data(), qsizetype(nameOf(paper).size())));
    action->setCheckable(true);
    action->setData(static_cast<int>(paper));
    papers_->addAction(action);
    needJob_.push_back(action);
  }
}

void MainWindow::askForJob() {
  const QString folder = QFileInfo(session_.path()).absolutePath();
  const QString path =
      QFileDialog::getOpenFileName(this, tr("Open a job"), folder, tr("Job files (*.json);;All files (*)"));
  if (!path.isEmpty()) openJob(path);
}

void MainWindow::askForFolder() {
  const QString folder =
      QFileDialog::getExistingDirectory(this, tr("Folder for the packet"), QFileInfo(session_.path()).absolutePath());
  if (!folder.isEmpty()) savePacket(folder);
}

bool MainWindow::openJob(const QString& path) {
  QGuiApplication::setOverrideCursor(Qt::WaitCursor);
  const bool read = session_.open(path);
  QGuiApplication::restoreOverrideCursor();
  if (!read) statusBar()->showMessage(tr("%1 could not be read.").arg(path));
  return read;
}

void MainWindow::reload() {
  if (session_.reload()) statusBar()->showMessage(tr("Read again."), 4000);
}

bool MainWindow::savePacket(const QString& folder) {
  if (!session_.isOpen()) return false;
  QGuiApplication::setOverrideCursor(Qt::WaitCursor);
  std::vector<Fault> faults;
  const auto files = packetFiles(session_.job(), session_.plan(), {session_.job().units, session_.paper()});
  DiskStorage disk;
  faults = files ? writeFileSet(folder.toStdString(), files.value(), disk) : files.faults();
  QGuiApplication::restoreOverrideCursor();
  faults_->setFaults(tr("The packet could not be written; nothing in the folder was changed."), faults);
  if (faults.empty())
    statusBar()->showMessage(tr("Packet written into %1: %2 files.").arg(folder).arg(files.value().size()));
  return faults.empty();
}

void MainWindow::showJob() {
  const bool open = session_.isOpen();
  for (QAction* action : needJob_) action->setEnabled(open);
  middle_->setCurrentIndex(open ? 1 : 0);
  walls_->setVisible(open);
  side_->setVisible(open);
  if (!open) {
    setWindowTitle(tr("Ribwright"));
    return;
  }
  statusBar()->clearMessage();
  setWindowTitle(
      tr("%1 (%2), Ribwright").arg(QString::fromStdString(session_.job().name), QFileInfo(session_.path()).fileName()));
  walls_->setWalls(session_.job(), session_.plan());
  findings_->setFindings(session_.plan().findings, session_.style());
  counts_->setText(countText(session_.plan()));
}

void MainWindow::showWall() {
  const int wall = session_.wall();
  walls_->setCurrentRow(wall);
  if (wall < 0) return sheets_->clear();
  const auto index = static_cast<std::size_t>(wall);
  const auto& codes = session_.plan().order.codes;
  sheets_->setWall(session_.plan().walls[index]->layout,
                   index < codes.size() ? codes[index] : std::vector<std::string>{}, session_.style());
  sheetView_->resizeColumnsToContents();
}

void MainWindow::showPages() {
  board_->setPages(session_.pages());
  for (QAction* action : papers_->actions())
    action->setChecked(action->data().toInt() == static_cast<int>(session_.paper()));
}

void MainWindow::showFaults() {
  const QString kept = session_.isOpen() ? tr(" What was open before is still shown.") : QString();
  faults_->setFaults(tr("The file could not be read.") + kept, session_.faults());
}

void MainWindow::showView() {
  if (board_->pageCount() == 0) return view_->clear();
  // A screen pixel is taken as 1/96 in, as Qt does before scaling for sharper screens.
  const int percent = qRound(board_->zoom() * 25.4 / 96 * 100);
  view_->setText(tr("%1, page %2 of %3, %4 %")
                     .arg(paperText(session_.paper()))
                     .arg(board_->currentPage() + 1)
                     .arg(board_->pageCount())
                     .arg(percent));
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
