// A survey's table as a file: into the open job, and out of it.
#pragma once

#include <QString>
#include <vector>

#include "core/units/outcome.h"
#include "ui/session/session.h"

namespace ribwright {

// As one edit, which can be undone. Faults: the file cannot be read, or what withSurveyOf says; then nothing changes.
std::vector<Fault> readSurvey(Session& session, const QString& path);

// In the job's units, whole or not at all. Faults: it cannot be written.
std::vector<Fault> writeSurvey(const Session& session, const QString& path);

}  // namespace ribwright
