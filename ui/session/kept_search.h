// Work that windows kept and left behind: read, and offered only when it reads as a job. Whether it is worth offering
// is judged by what it holds, never by a date.
#pragma once

#include <QStringList>
#include <vector>

#include "ui/session/kept_spot.h"

namespace ribwright {

struct KeptOffer {
  KeptWork kept;
  Job job;
  QString file;                 // of the job; empty: it has none
  std::vector<KeptSpot> spots;  // held while it is offered: no other window offers it, too
};

// Beside jobs in these folders, and in the user's folder for it. Work of a window that is alive is passed over; so is
// what the job's file holds already, which is no more needed and removed.
std::vector<KeptOffer> searchKept(const QStringList& jobFolders, const QString& keptFolder);
// Of this job's file alone.
std::vector<KeptOffer> searchKeptOf(const QString& jobPath, const QString& keptFolder);

}  // namespace ribwright
