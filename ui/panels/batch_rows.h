// The drill batches of the chosen wall as rows of a table, and what an edit did to them, in words.
#pragma once

#include <QString>

#include "core/editing/batch_changes.h"
#include "ui/panels/part_model.h"
#include "ui/session/session.h"

namespace ribwright {

// Rows only of what is cleared: a batch that is held says why, and no ordinate.
PartRows batchRows(const Session& session);

// "■ B/1 is held again   ○ A/2 is cleared"; empty: nothing to tell.
QString changeText(const BatchChanges& changes);

}  // namespace ribwright
