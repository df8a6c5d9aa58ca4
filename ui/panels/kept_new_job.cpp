#include "ui/panels/kept_new_job.h"

#include <QDir>
#include <QFileInfo>
#include <QLocale>

#include "core/editing/new_job_file.h"
#include "core/job/file_reading.h"
#include "core/job/file_writing.h"
#include "core/job/job_file_tree.h"
#include "ui/session/kept_settings.h"

namespace ribwright {

namespace {

UnitSystem usualUnits() {
  const bool metric = QLocale::system().measurementSystem() == QLocale::MetricSystem;
  return metric ? UnitSystem::Millimetres : UnitSystem::FeetInches;
}

}  // namespace

QString keptNewJobPath() {
  return QFileInfo(keptSettings().fileName()).absoluteDir().filePath(QStringLiteral("new-job.json"));
}

KeptNewJob keptNewJob() {
  const NewJob& shipped = shippedNewJob(usualUnits());
  const QString path = keptNewJobPath();
  if (!QFileInfo::exists(path)) return {shipped, {}};
  const std::string name = path.toStdString();
  const auto text = readWhole(name, mostBytes);
  if (!text) return {shipped, text.faults()};
  const auto stated = readNewJob(text.value(), name);
  if (!stated) return {shipped, stated.faults()};
  return {stated.value(), {}};
}

std::vector<Fault> keepNewJob(NewJob stated) {
  stated.name.clear();
  stated.number.clear();
  const QString path = keptNewJobPath();
  QDir().mkpath(QFileInfo(path).absolutePath());
  DiskStorage disk;
  return writeWhole(path.toStdString(), writeNewJob(stated), disk);
}

}  // namespace ribwright
