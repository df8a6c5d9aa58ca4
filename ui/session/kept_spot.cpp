#include "ui/session/kept_spot.h"

#include <QDir>
#include <QFileInfo>
#include <QRandomGenerator>

namespace ribwright {

namespace {

constexpr int longestStem = 40;  // characters, in the user's folder: names of files have an end

}  // namespace

KeptSpot spotOf(const KeptPlace& place) { return {place, lockAt(QString::fromStdString(place.lockPath()))}; }

std::vector<KeptSpot> spotsFor(const QString& jobPath, const QString& folder, const std::string& window) {
  std::vector<KeptSpot> spots;
  const QFileInfo file(jobPath.isEmpty() ? QStringLiteral("unnamed") : realPath(jobPath));
  if (!jobPath.isEmpty())
    spots.push_back(spotOf({file.absolutePath().toStdString(), file.fileName().toStdString(), window}));
  if (!folder.isEmpty())
    spots.push_back(spotOf({folder.toStdString(), file.fileName().left(longestStem).toStdString(), window}));
  return spots;
}

std::string newWindowId() {
  return QStringLiteral("%1").arg(QRandomGenerator::system()->generate64(), 16, 16, QLatin1Char('0')).toStdString();
}

void clear(std::vector<KeptSpot>& spots) {
  for (const KeptSpot& spot : spots) removeKept(spot.place);
  spots.clear();
}

}  // namespace ribwright
