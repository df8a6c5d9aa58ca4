#include "ui/session/survey_file.h"

#include <QCoreApplication>
#include <QFile>
#include <QSaveFile>

#include "core/output/survey_table.h"
#include "ui/session/table_file.h"

namespace ribwright {

namespace {

struct SurveyFileTexts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::SurveyFile)
};

Fault noted(const QString& path, const QString& what) { return {path.toStdString(), what.toStdString()}; }

}  // namespace

std::vector<Fault> readSurvey(Session& session, const QString& path) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) return {noted(path, file.errorString())};
  if (file.size() > mostTableBytes) return {noted(path, SurveyFileTexts::tr("is too large to be a survey"))};
  Outcome<Job> read = withSurveyOf(session.newest(), file.readAll().toStdString());
  if (!read) return read.faults();
  session.apply(SurveyFileTexts::tr("Read a survey").toStdString(), read.value());
  return {};
}

std::vector<Fault> writeSurvey(const Session& session, const QString& path) {
  const Job& job = session.newest();
  const std::string text = csvText(surveyTable(job, job.units), job.settings.byteOrderMark);
  QSaveFile file(path);
  const bool whole = file.open(QIODevice::WriteOnly) &&
                     file.write(text.data(), qint64(text.size())) == qint64(text.size()) && file.commit();
  if (whole) return {};
  return {noted(path, file.errorString())};
}

}  // namespace ribwright
