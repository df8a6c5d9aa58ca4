// What the recovery dialog says of one offer.
#pragma once

#include "ui/panels/kept_dialog.h"
#include "ui/session/kept_search.h"

namespace ribwright {

// Reads and plans the file beside the kept work: some moments for a large job.
KeptCard cardOf(const KeptOffer& offer);

}  // namespace ribwright
