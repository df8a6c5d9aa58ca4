// The opening schedule as a file: into the open job, and out of it.
#pragma once

#include <QString>

#include "ui/session/session.h"
#include "ui/session/table_file.h"

class QWidget;

namespace ribwright {

// As one edit, which can be undone; `done` says what was added and changed. Faults: the file cannot be read, or what
// withOpeningsOf says; then nothing changes.
TableFileEnd readOpenings(Session& session, const QString& path);
// In the job's units, whole or not at all.
TableFileEnd writeOpenings(const Session& session, const QString& path);

// They ask for the file first.
TableFileEnd askAndReadOpenings(Session& session, QWidget* window);
TableFileEnd askAndWriteOpenings(const Session& session, QWidget* window);

}  // namespace ribwright
