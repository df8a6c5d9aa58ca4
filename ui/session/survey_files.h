// Asks which file a survey is to be read from or written into, and does it.
#pragma once

#include <QObject>
#include <vector>

#include "ui/session/session.h"

class QWidget;

namespace ribwright {

class SurveyFiles : public QObject {
  Q_OBJECT

 public:
  // Dialogs stand before the window.
  SurveyFiles(Session& session, QWidget* window);

  void askAndRead();
  void askAndWrite();
  // False when it cannot be read; faulty() then says why.
  bool read(const QString& path);

 signals:
  // What is being typed is to be entered now.
  void typingEnds();
  void told(const QString& words);
  // Without faults: there are none any more.
  void faulty(const QString& title, const std::vector<Fault>& faults);

 private:
  Session& session_;
  QWidget* window_;
};

}  // namespace ribwright
