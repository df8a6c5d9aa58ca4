#include "ui/session/survey_files.h"

#include <QFileDialog>
#include <QFileInfo>

#include "ui/session/survey_file.h"

namespace ribwright {

SurveyFiles::SurveyFiles(Session& session, QWidget* window) : QObject(window), session_(session), window_(window) {}

void SurveyFiles::askAndRead() {
  const QString folder = session_.folder();
  const QString path =
      QFileDialog::getOpenFileName(window_, tr("Read a survey"), folder, tr("Tables (*.csv);;All files (*)"));
  if (!path.isEmpty()) read(path);
}

bool SurveyFiles::read(const QString& path) {
  emit typingEnds();
  const std::vector<Fault> faults = readSurvey(session_, path);
  emit faulty(tr("The survey could not be read; nothing was changed."), faults);
  if (faults.empty()) emit told(tr("The survey was read."));
  return faults.empty();
}

void SurveyFiles::askAndWrite() {
  const QString folder = session_.folder() + QStringLiteral("/survey.csv");
  const QString path = QFileDialog::getSaveFileName(window_, tr("Write the survey"), folder, tr("Tables (*.csv)"));
  if (path.isEmpty()) return;
  const std::vector<Fault> faults = writeSurvey(session_, path);
  emit faulty(tr("The survey could not be written."), faults);
  if (faults.empty()) emit told(tr("Survey written into %1.").arg(path));
}

}  // namespace ribwright
