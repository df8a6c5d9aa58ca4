// Pages on a printer.
#pragma once

#include <QPrinter>
#include <vector>

#include "core/drawing/drawing.h"

namespace ribwright {

enum class Printed {
  Yes,
  NoPages,  // none lies in the range that was asked for
  NoPaper,  // the printer has no such paper: a page scaled to another would measure wrong
  Failed,   // it could not be printed on
};

// The pages of the printer's range (all when it names none), true to size. Nothing is scaled to fit: a page that the
// printer's paper does not hold is not printed.
Printed printPages(QPrinter& printer, const std::vector<Page>& pages);

}  // namespace ribwright
