// Lays pictures of the plans over the walls of the open job, to be traced: what the menu says of it, what the board
// shows of it, and what of it is kept for the next day. No edit: the job does not change.
#pragma once

#include <QObject>
#include <functional>
#include <set>
#include <string>

#include "core/units/outcome.h"
#include "ui/board/scaled_picture.h"
#include "ui/session/kept_laid_plans.h"
#include "ui/session/session.h"

class QAction;
class QActionGroup;
class QMenu;

namespace ribwright {

class LayPlanDialog;
class WallView;

class PlanLaying : public QObject {
  Q_OBJECT

 public:
  // Adds its actions to the menu; its dialog stands before the window.
  PlanLaying(Session& session, WallView& view, QMenu* menu, QWidget* window);
  ~PlanLaying() override;

 signals:
  void told(const QString& words);

 private:
  void makeActions(QMenu* menu);
  void openDialog();
  void take(const std::string& letter, const LayPlanDialog& dialog);
  void takeAway();
  void takeJob();
  void keepUnderNewName();
  void setShown(bool shown);
  void change(const std::function<void(LaidPlan&)>& edit);
  void keep();
  void showPlan();
  void showActions();
  void paint(const LaidPlan& laid);
  void read(const QString& file);
  void takeRead(const QString& file, const Outcome<ScaledPicture>& read);
  LaidPlan* laid();

  Session& session_;
  WallView& view_;
  QWidget* window_;
  QAction *lay_ = nullptr, *show_ = nullptr, *takeAway_ = nullptr;
  QMenu* strengthMenu_ = nullptr;
  QActionGroup* strengths_ = nullptr;  // their data: percent
  LaidPlans plans_;                    // of the open job
  QString path_;                       // of the job's file under which they are kept; empty: not yet
  QString file_;                       // of the picture that was read last
  ScaledPicture picture_;
  QString reading_;                // of the picture that is being read; empty: none
  std::set<QString> toldMissing_;  // pictures of the open job
};

}  // namespace ribwright
