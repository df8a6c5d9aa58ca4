// Findings that were put aside, with their reasons; they can be taken back.
#pragma once

#include <QWidget>

#include "ui/session/session.h"

class QPushButton;

namespace ribwright {

class FindingList;

class SilencedList : public QWidget {
  Q_OBJECT

 public:
  explicit SilencedList(Session& session, QWidget* parent = nullptr);

  void refill();

 private:
  void takeBack();

  Session& session_;
  FindingList* list_;
  QPushButton* button_;
};

}  // namespace ribwright
