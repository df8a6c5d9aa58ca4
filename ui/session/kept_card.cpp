#include "ui/session/kept_card.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QLocale>

#include "core/editing/job_differences.h"
#include "core/job/job_file.h"
#include "core/plan/plan.h"
#include "ui/session/file_digest.h"

namespace ribwright {

namespace {

struct KeptCardTexts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::KeptCard)
};

JobCounts countsOf(const Job& job) {
  JobCounts counts;
  counts.walls = static_cast<int>(job.walls.size());
  for (const Wall& wall : job.walls) counts.openings += static_cast<int>(wall.openings.size());
  for (const auto& wall : plan(job).walls) counts.sheets += static_cast<int>(wall->layout.pieces.size());
  return counts;
}

QString letters(const std::vector<std::string>& walls) {
  QStringList names;
  for (const std::string& letter : walls) names << QString::fromStdString(letter);
  return names.join(QStringLiteral(", "));
}

void addOpenings(QStringList& lines, const JobDifferences& found) {
  if (found.openingsAdded > 0) lines << KeptCardTexts::tr("openings added: %1").arg(found.openingsAdded);
  if (found.openingsTaken > 0) lines << KeptCardTexts::tr("openings taken away: %1").arg(found.openingsTaken);
  if (found.openingsChanged > 0) lines << KeptCardTexts::tr("openings changed: %1").arg(found.openingsChanged);
}

QString differenceWords(const Job& file, const Job& kept) {
  const JobDifferences found = differences(file, kept);
  QStringList lines;
  if (found.name) lines << KeptCardTexts::tr("another name of the job");
  if (found.building) lines << KeptCardTexts::tr("another outline or roof");
  if (!found.changed.empty()) lines << KeptCardTexts::tr("walls changed: %1").arg(letters(found.changed));
  if (!found.added.empty()) lines << KeptCardTexts::tr("walls added: %1").arg(letters(found.added));
  if (!found.taken.empty()) lines << KeptCardTexts::tr("walls taken away: %1").arg(letters(found.taken));
  addOpenings(lines, found);
  if (found.other) lines << KeptCardTexts::tr("other statements of the job");
  return KeptCardTexts::tr("In the kept work: %1.").arg(lines.join(QStringLiteral("; ")));
}

QString noFileWords(const QString& file) {
  if (file.isEmpty()) return KeptCardTexts::tr("The job was never saved: no file holds anything of it.");
  if (!QFileInfo::exists(file)) return KeptCardTexts::tr("The job's file is no longer there.");
  return KeptCardTexts::tr("The job's file cannot be read.");
}

}  // namespace

KeptCard cardOf(const KeptOffer& offer) {
  KeptCard card;
  card.name = QString::fromStdString(offer.job.name);
  card.file = offer.file;
  const QDateTime when = QDateTime::fromString(QString::fromStdString(offer.kept.when), Qt::ISODate);
  card.when = QLocale().toString(when.toLocalTime(), QLocale::ShortFormat);
  card.kept = countsOf(offer.job);
  const auto text = offer.file.isEmpty() ? Outcome<std::string>(Fault{}) : jobText(offer.file.toStdString());
  const auto job = text ? readJob(text.value(), "") : Outcome<Job>(Fault{});
  if (!job) {
    card.differs = noFileWords(offer.file);
    return card;
  }
  card.inFile = countsOf(job.value());
  card.differs = differenceWords(job.value(), offer.job);
  if (digestOf(text.value()).toHex().toStdString() != offer.kept.fileDigest)
    card.differs +=
        QLatin1Char(' ') + KeptCardTexts::tr("The file has been saved or changed since the kept work was begun.");
  return card;
}

}  // namespace ribwright
