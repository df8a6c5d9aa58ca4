// What a new job would be, as it is typed: its plan, the front and one end, and what would hang there.
#pragma once

#include <QWidget>
#include <array>

#include "ui/session/session.h"

class QLabel;

namespace ribwright {

class ElidedLabel;
class PlanInset;
class WallBoard;

class NewJobPicture : public QWidget {
  Q_OBJECT

 public:
  explicit NewJobPicture(QWidget* parent = nullptr);

  void setJob(const Job& job);
  // What is shown is older than what is typed.
  void setBehind(bool behind);

  const Session& session() const { return session_; }

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void showWall(std::size_t place);
  void fit();
  QString summary() const;

  Session session_;  // of its own: nothing here is open in the window
  PlanInset* plan_;
  struct Elevation {
    ElidedLabel* title;
    WallBoard* board;
  };
  std::array<Elevation, 2> elevations_;
  QLabel *summary_, *behind_;
};

}  // namespace ribwright
