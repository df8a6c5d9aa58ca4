#include "ui/session/save_job.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QPushButton>

#include "ui/session/job_lock.h"

namespace ribwright {

namespace {

QPushButton* button(QMessageBox& box, const QString& words, const char* name, QMessageBox::ButtonRole role) {
  QPushButton* made = box.addButton(words, role);
  made->setObjectName(QLatin1String(name));
  return made;
}

}  // namespace

SaveJob::SaveJob(Session& session, QWidget* window, bool locks)
    : QObject(window), session_(session), window_(window), locks_(locks) {}

bool SaveJob::save() {
  if (session_.isLookedAt()) return saveAs();
  return session_.isOpen() && told(session_.save());
}

bool SaveJob::saveAs() {
  if (!session_.isOpen()) return false;
  const QString from = session_.path().isEmpty() ? session_.folder() : session_.path();
  QFileDialog dialog(window_, tr("Save the job as"), from, tr("Job files (*.json);;All files (*)"));
  dialog.setObjectName(QStringLiteral("saveJobAs"));
  dialog.setAcceptMode(QFileDialog::AcceptSave);
  dialog.setDefaultSuffix(QStringLiteral("json"));
  dialog.selectFile(offeredName());
  if (dialog.exec() != QDialog::Accepted || dialog.selectedFiles().isEmpty()) return false;
  const QString path = dialog.selectedFiles().front();
  return isOpenElsewhere(path) ? refuse() : told(session_.saveAs(path));
}

// A job that has no file yet is offered its own name.
QString SaveJob::offeredName() const {
  if (!session_.path().isEmpty()) return QFileInfo(session_.path()).fileName();
  QString name = QString::fromStdString(session_.newest().name).simplified();
  for (const QChar sign : QStringLiteral("/\\:*?\"<>|")) name.replace(sign, QLatin1Char('-'));
  return (name.isEmpty() ? tr("job") : name) + QStringLiteral(".json");
}

bool SaveJob::isOpenElsewhere(const QString& path) const {
  if (!locks_ || realPath(path) == realPath(session_.path())) return false;  // the session knows of its own
  return JobLock().take(path) == Hold::Taken;
}

bool SaveJob::refuse() {
  emit failed({{"", tr("That file is open in another window. Choose another name.").toStdString()}});
  return false;
}

bool SaveJob::told(Session::Saved end) {
  if (end == Session::Saved::Unnamed) return saveAs();
  if (end == Session::Saved::LookedAt) return refuse();
  if (end == Session::Saved::ChangedOnDisk) return askAboutChangedFile();
  if (end == Session::Saved::Faulty) {
    emit failed(session_.saveFaults());
    return false;
  }
  emit saved();
  return true;
}

bool SaveJob::askAboutChangedFile() {
  QMessageBox box(QMessageBox::Warning, tr("Save the job"),
                  tr("%1 has been changed on the disk since it was read or saved here. It was not overwritten.")
                      .arg(QFileInfo(session_.path()).fileName()),
                  QMessageBox::NoButton, window_);
  box.setObjectName(QStringLiteral("changedFile"));
  box.setInformativeText(tr("Save under another name, or read the file again and lose the changes made here."));
  const QPushButton* other = button(box, tr("Sa&ve as…"), "saveAsInstead", QMessageBox::AcceptRole);
  const QPushButton* again = button(box, tr("Read &again"), "readAgainInstead", QMessageBox::DestructiveRole);
  QPushButton* cancel = button(box, tr("&Cancel"), "cancelSaving", QMessageBox::RejectRole);
  box.setDefaultButton(cancel);
  box.setEscapeButton(cancel);
  box.exec();
  if (box.clickedButton() == other) return saveAs();
  if (box.clickedButton() == again) emit readAgainAsked();
  return false;
}

bool SaveJob::mayLetGo() {
  if (!session_.isOpen() || session_.history()->isSaved()) return true;
  QMessageBox box(QMessageBox::Question, tr("Changes are not saved"),
                  tr("%1 has changes that are not saved. Save them?").arg(calledJob()), QMessageBox::NoButton, window_);
  box.setObjectName(QStringLiteral("unsavedChanges"));
  QPushButton* keep = button(box, tr("&Save"), "saveChanges", QMessageBox::AcceptRole);
  const QPushButton* discard = button(box, tr("&Discard"), "discardChanges", QMessageBox::DestructiveRole);
  QPushButton* cancel = button(box, tr("&Cancel"), "cancelLeaving", QMessageBox::RejectRole);
  box.setDefaultButton(keep);
  box.setEscapeButton(cancel);
  box.exec();
  if (box.clickedButton() == keep) return save();
  return box.clickedButton() == discard;
}

QString SaveJob::calledJob() const {
  if (!session_.path().isEmpty()) return QFileInfo(session_.path()).fileName();
  const QString name = QString::fromStdString(session_.newest().name);
  return name.isEmpty() ? tr("The job") : name;
}

}  // namespace ribwright
