// The open job and its file: opening and saving, the lock that tells other windows of it, changes that others make to
// it, unsaved work that is kept, and work of windows that are gone.
#pragma once

#include <QObject>
#include <QTimer>
#include <vector>

#include "ui/session/file_watch.h"
#include "ui/session/job_lock.h"
#include "ui/session/keeper.h"
#include "ui/session/keeping_manner.h"
#include "ui/session/kept_offers.h"
#include "ui/session/save_job.h"
#include "ui/session/session.h"

class QWidget;

namespace ribwright {

class LockBar;
class ReloadBar;

class JobFiles : public QObject {
  Q_OBJECT

 public:
  // Questions and dialogs stand before the window.
  JobFiles(Session& session, const KeepingManner& manner, QWidget* window);

  // Lines above the job, shown when there is something to tell.
  QWidget* bars() const { return bars_; }

  // False when it cannot be read; told() and the session's faults then say why. False too when a person keeps what is
  // open and not saved.
  bool open(const QString& path);
  // The same with what was read before; nothing is open yet. `path`: as it was asked for.
  bool showRead(ReadJob read, const QString& path);
  void askAndOpen();
  // A job that no file holds yet; what was open must have been let go of.
  void begin(const Job& job);
  void readAgain();
  void save();
  void saveAs();
  // True when nothing would be lost.
  bool mayLetGo();
  // Nothing of the open job is wanted any more that is not saved.
  void letGo();

  // Work that windows left behind which are gone, of all jobs that are known.
  void offerKept();
  int keptCount() const { return offers_.count(); }

 signals:
  // What is being typed is to be entered now.
  void typingEnds();
  void told(const QString& words);
  // Without faults: there are none any more.
  void faulty(const QString& title, const std::vector<Fault>& faults);
  void keptCountChanged();

 private:
  void connectParts();
  bool read(const QString& path);
  bool shown(bool read, const QString& path);
  // Watches and locks the file that the session has now.
  void follow();
  void lock();
  void showTaken();
  void lookAgain();
  void goOnHere();
  void sayThatOtherIsGone();
  void openKept(int offer);
  void showSaved();
  void tellOfKeeping(const QString& why);
  void remember();

  Session& session_;
  KeepingManner manner_;
  QWidget* window_;
  FileWatch watch_;
  SaveJob saving_;
  JobLock lock_;
  Keeper keeper_;
  KeptOffers offers_;
  QTimer lookAgain_;
  bool keepingFailed_ = false;
  QWidget* bars_;
  ReloadBar* reload_;
  LockBar* locked_;
};

}  // namespace ribwright
