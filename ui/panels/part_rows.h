// The table of the chosen wall's sheets in hanging order.
#pragma once

#include "ui/panels/part_model.h"
#include "ui/session/session.h"

namespace ribwright {

// Of the chosen wall; no rows without one.
PartRows sheetRows(const Session& session);

}  // namespace ribwright
