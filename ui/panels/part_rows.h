// The tables under the wall: its sheets in hanging order, its openings and penetrations as they are stated.
#pragma once

#include "ui/panels/part_model.h"
#include "ui/session/session.h"

namespace ribwright {

// Of the chosen wall; no rows without one.
PartRows sheetRows(const Session& session);
PartRows openingRows(const Session& session);

}  // namespace ribwright
