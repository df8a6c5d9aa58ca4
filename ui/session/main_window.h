// The one window: the walls unrolled and the plan above, the chosen wall in the middle with its tables below, at the
// right what is chosen and the findings. All of them share one selection, the session's.
#pragma once

#include <QMainWindow>

#include "ui/session/file_watch.h"
#include "ui/session/packet_work.h"
#include "ui/session/save_job.h"
#include "ui/session/session.h"
#include "ui/session/window_actions.h"

class QStackedWidget;
class QTabWidget;

namespace ribwright {

class BatchPanel;
class FaultPanel;
class FindingPanel;
class JobDialog;
class ParticularsPanel;
class PartTable;
class PerimeterStrip;
class PlanInset;
class ReloadBar;
class StatusLine;
class SurveyPanel;
class WallView;

class MainWindow : public QMainWindow {
  Q_OBJECT

 public:
  explicit MainWindow(QWidget* parent = nullptr);
  ~MainWindow() override;

  // False when it cannot be read; the window then says why. False too when a person keeps what is open and not saved.
  bool openJob(const QString& path);
  // Takes a survey from a table's file into the open job. False when it cannot be read; the window then says why.
  bool readSurvey(const QString& path);
  // Makes the packet beside everything else and writes it into a folder; packetEnded() when it is over. False: one is
  // being made already, or no job is open.
  bool startPacket(const QString& folder);

  const Session& session() const { return session_; }
  Session& session() { return session_; }

 signals:
  void packetEnded(const PacketEnd& end);

 protected:
  void closeEvent(QCloseEvent* event) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;

 private:
  void makePanels();
  QWidget* makeTop();
  QWidget* makeTables();
  QWidget* makeSide();
  void connectSession();
  void connectActions();
  bool readJob(const QString& path);
  void finishTyping();
  void showJobParticulars();
  void askForJob();
  void askForFolder();
  void askForSurvey();
  void askAndWriteSurvey();
  void fillRecent();
  void remember(const QString& path);
  void showJob();
  void showWall();
  void showHistory();
  void showTitle();
  void showSaved();
  void showView();
  void showFaults();
  void showPacketEnd(const PacketEnd& end);
  void bringIntoView(const Part& part);
  void goToPanel(int step);
  void stepBack();
  bool mayLetGo();
  bool mayStopPacket();

  Session session_;
  FileWatch watch_;
  PacketWork packet_;
  SaveJob saving_;
  WindowActions actions_;
  QStackedWidget* stack_ = nullptr;  // the start page, or the job
  PerimeterStrip* strip_ = nullptr;
  PlanInset* plan_ = nullptr;
  WallView* view_ = nullptr;
  QTabWidget* tables_ = nullptr;
  PartTable* sheets_ = nullptr;
  PartTable* openings_ = nullptr;
  SurveyPanel* survey_ = nullptr;
  BatchPanel* batches_ = nullptr;
  ParticularsPanel* particulars_ = nullptr;
  FindingPanel* findings_ = nullptr;
  ReloadBar* reload_ = nullptr;
  FaultPanel* faults_ = nullptr;
  StatusLine* status_ = nullptr;
  JobDialog* jobDialog_ = nullptr;  // from when it is first asked for
};

}  // namespace ribwright
