// The one window: the walls unrolled and the plan above, the chosen wall in the middle; in docks its tables below, at
// the right what is chosen and the findings. All of them share one selection, the session's.
#pragma once

#include <QMainWindow>

#include "ui/session/job_files.h"
#include "ui/session/packet_work.h"
#include "ui/session/part_clipboard.h"
#include "ui/session/session.h"
#include "ui/session/survey_files.h"
#include "ui/session/window_actions.h"
#include "ui/session/window_docks.h"
#include "ui/session/window_panels.h"

class QStackedWidget;

namespace ribwright {

struct TableFileEnd;

class FaultPanel;
class JobDialog;
class PerimeterStrip;
class PlanInset;
class StartPage;
class StatusLine;
class WallView;

class MainWindow : public QMainWindow {
  Q_OBJECT

 public:
  explicit MainWindow(const KeepingManner& keeping = customaryKeeping(), QWidget* parent = nullptr);
  ~MainWindow() override;

  // False when it cannot be read; the window then says why. False too when a person keeps what is open and not saved.
  bool openJob(const QString& path);
  // The same with what was read before; nothing is open yet. `path`: as it was asked for.
  bool showReadJob(ReadJob read, const QString& path);
  // Takes a survey from a table's file into the open job. False when it cannot be read; the window then says why.
  bool readSurvey(const QString& path);
  // Makes the packet beside everything else and writes it into a folder; packetEnded() when it is over. False: one is
  // being made already, or no job is open.
  bool startPacket(const QString& folder);

  // Makes the tables and panels, which otherwise come after the first frame.
  void furnish();

  const Session& session() const { return session_; }
  Session& session() { return session_; }

 signals:
  void packetEnded(const PacketEnd& end);

 protected:
  bool event(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void closeEvent(QCloseEvent* event) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;

 private:
  void makeCentre();
  QWidget* makeTop();
  void showStartPage();
  void fillStartPage();
  void connectSession();
  void connectActions();
  void connectFiles();
  void askForNewJob();
  void finishTyping();
  void showJobParticulars();
  void askForFolder();
  void tell(const TableFileEnd& end);
  void showJob();
  void showWall();
  void showHistory();
  void showTitle();
  void showView();
  void showFaults();
  void showPacketEnd(const PacketEnd& end);
  void bringIntoView(const Part& part);
  void goToPanel(int step);
  void stepBack();
  bool mayStopPacket();

  Session session_;
  PacketWork packet_;
  JobFiles files_;
  SurveyFiles surveys_;
  PartClipboard clipboard_;
  WindowActions actions_;
  QStackedWidget* stack_ = nullptr;  // the job, or the start page
  StartPage* start_ = nullptr;       // null until it is seen
  PerimeterStrip* strip_ = nullptr;
  PlanInset* plan_ = nullptr;
  WallView* view_ = nullptr;
  WindowDocks docks_{};
  DockVeil veil_;
  WindowPanels panels_;
  FaultPanel* faults_ = nullptr;
  StatusLine* status_ = nullptr;
  JobDialog* jobDialog_ = nullptr;  // from when it is first asked for
};

}  // namespace ribwright
