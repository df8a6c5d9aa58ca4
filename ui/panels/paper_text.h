// Papers as the window names them.
#pragma once

#include <QString>

#include "core/drawing/paper.h"

namespace ribwright {

QString paperText(PaperSize paper);

}  // namespace ribwright
