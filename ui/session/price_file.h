// The price list as a file, into the open job and out of it; and what the job costs, as a table.
#pragma once

#include <QString>

#include "core/takeoff/cost.h"
#include "ui/session/opening_file.h"
#include "ui/session/session.h"

class QWidget;

namespace ribwright {

// Sheets, trim, cuts and charges; trim is cut as its tables have it, so that both count the same sticks.
JobCost costOfJob(const Job& job, const Plan& plan);

// As one edit, which can be undone; `done` says what was added, changed and struck. Faults: the file cannot be read, or
// what withPricesOf says; then nothing changes.
TableFileEnd readPrices(Session& session, const QString& path);
// In the job's units, whole or not at all, a row without a price for all that has none yet.
TableFileEnd writePrices(Session& session, const QString& path);
TableFileEnd writeCost(Session& session, const QString& path);

// They ask for the file first.
TableFileEnd askAndReadPrices(Session& session, QWidget* window);
TableFileEnd askAndWritePrices(Session& session, QWidget* window);
TableFileEnd askAndWriteCost(Session& session, QWidget* window);

}  // namespace ribwright
