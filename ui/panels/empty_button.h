// What a wall lacks, and one click that brings it; not there while it lacks nothing.
#pragma once

#include <QPushButton>
#include <vector>

#include "ui/session/session.h"

class QMenu;

namespace ribwright {

class EmptyButton : public QPushButton {
  Q_OBJECT

 public:
  explicit EmptyButton(Session& session, QWidget* parent = nullptr);

  void renew();

 signals:
  // The job has no walls.
  void newAsked();
  void refused(const QString& why);

 private:
  void act();
  void fillProfiles();
  void edit(const char* id, const WordValues& values, const Session::Edit& change);

  Session& session_;
  QMenu* profiles_;
};

}  // namespace ribwright
