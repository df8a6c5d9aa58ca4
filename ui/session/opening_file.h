// The opening schedule as a file: into the open job, and out of it.
#pragma once

#include <QString>
#include <vector>

#include "core/units/outcome.h"
#include "ui/session/session.h"

class QWidget;

namespace ribwright {

// What came of it: a line to be shown for a while, or under a title why nothing was done. Neither: nobody chose a file.
struct OpeningFileEnd {
  QString done;
  QString title;
  std::vector<Fault> faults;
};

// As one edit, which can be undone; `done` says what was added and changed. Faults: the file cannot be read, or what
// withOpeningsOf says; then nothing changes.
OpeningFileEnd readOpenings(Session& session, const QString& path);
// In the job's units, whole or not at all.
OpeningFileEnd writeOpenings(const Session& session, const QString& path);

// They ask for the file first.
OpeningFileEnd askAndReadOpenings(Session& session, QWidget* window);
OpeningFileEnd askAndWriteOpenings(const Session& session, QWidget* window);

}  // namespace ribwright
