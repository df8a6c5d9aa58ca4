#include "ui/session/kept_search.h"

#include <QDir>
#include <QFileInfo>
#include <algorithm>
#include <map>

#include "core/job/job_file.h"

namespace ribwright {

namespace {

// By the window's id: the same window may have kept here and there.
using Places = std::map<std::string, std::vector<KeptPlace>>;

void addPlaces(Places& places, const QString& folder) {
  const QStringList entries = QDir(folder).entryList({QStringLiteral(".*.kept-*")}, QDir::Files | QDir::Hidden);
  for (const QString& entry : entries) {
    const auto place = keptPlaceOf(folder.toStdString(), entry.toStdString());
    if (!place) continue;
    std::vector<KeptPlace>& known = places[place->window];
    if (std::find(known.begin(), known.end(), *place) == known.end()) known.push_back(*place);
  }
}

// False: its window is alive.
bool claim(KeptOffer& offer, const std::vector<KeptPlace>& places) {
  for (const KeptPlace& place : places) {
    KeptSpot spot = spotOf(place);
    const Hold got = hold(*spot.lock);
    if (got == Hold::Taken) return false;
    if (got == Hold::Impossible) spot.lock.reset();
    offer.spots.push_back(std::move(spot));
  }
  return true;
}

// Beside a job the name counts, not what the kept work says of a folder: folders are moved and mounted elsewhere.
QString fileOf(const KeptPlace& place, const KeptWork& kept, const QString& keptFolder) {
  const QString folder = QString::fromStdString(place.folder);
  if (folder != keptFolder) return folder + QLatin1Char('/') + QString::fromStdString(place.stem);
  return QString::fromStdString(kept.file);
}

bool readNewest(KeptOffer& offer, const QString& keptFolder) {
  bool any = false;
  for (const KeptSpot& spot : offer.spots) {
    auto found = newestKept(spot.place);
    if (!found || (any && found->kept.number <= offer.kept.number)) continue;
    any = true;
    offer.kept = std::move(found->kept);
    offer.job = std::move(found->job);
    offer.file = fileOf(spot.place, offer.kept, keptFolder);
  }
  return any;
}

bool isInFile(const KeptOffer& offer) {
  if (offer.file.isEmpty()) return false;
  const auto job = loadJob(offer.file.toStdString());
  return job && job.value() == offer.job;
}

std::vector<KeptOffer> offersAt(const Places& all, const QString& keptFolder) {
  std::vector<KeptOffer> offers;
  for (const auto& [window, places] : all) {
    KeptOffer offer;
    if (!claim(offer, places) || !readNewest(offer, keptFolder)) continue;
    if (isInFile(offer)) {
      clear(offer.spots);
      continue;
    }
    offers.push_back(std::move(offer));
  }
  return offers;
}

}  // namespace

std::vector<KeptOffer> searchKept(const QStringList& jobFolders, const QString& keptFolder) {
  Places places;
  for (const QString& folder : jobFolders) addPlaces(places, folder);
  if (!keptFolder.isEmpty()) addPlaces(places, keptFolder);
  return offersAt(places, keptFolder);
}

std::vector<KeptOffer> searchKeptOf(const QString& jobPath, const QString& keptFolder) {
  const QFileInfo file(realPath(jobPath));
  Places places;
  addPlaces(places, file.absolutePath());
  std::erase_if(places, [&](const auto& entry) { return entry.second.front().stem != file.fileName().toStdString(); });
  if (!keptFolder.isEmpty()) addPlaces(places, keptFolder);
  std::vector<KeptOffer> offers = offersAt(places, keptFolder);
  std::erase_if(offers, [&](const KeptOffer& offer) { return offer.file != file.absoluteFilePath(); });
  return offers;
}

}  // namespace ribwright
