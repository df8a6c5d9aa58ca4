// Saving the open job, and asking before changes that no file holds are let go.
#pragma once

#include <QObject>

#include "ui/session/session.h"

class QWidget;

namespace ribwright {

class SaveJob : public QObject {
  Q_OBJECT

 public:
  // Questions stand before the window. `locks`: no file that another window has open is overwritten.
  SaveJob(Session& session, QWidget* window, bool locks = true);

  // Each: true when the job is on the disk as it is shown.
  bool save();
  bool saveAs();
  // True when nothing would be lost: all is saved, was saved now, or a person lets it go.
  bool mayLetGo();

 signals:
  void saved();
  void failed(const std::vector<Fault>& faults);
  // The file was changed by someone else, and that is what a person wants.
  void readAgainAsked();

 private:
  bool told(Session::Saved end);
  QString offeredName() const;
  bool isOpenElsewhere(const QString& path) const;
  bool refuse();
  bool askAboutChangedFile();
  QString calledJob() const;

  Session& session_;
  QWidget* window_;
  bool locks_;
};

}  // namespace ribwright
