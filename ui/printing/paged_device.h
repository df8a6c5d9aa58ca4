// Pages on any device that takes them one by one: a PDF, a printer.
#pragma once

#include <QPageLayout>
#include <QPagedPaintDevice>
#include <functional>
#include <vector>

#include "core/drawing/drawing.h"

namespace ribwright {

// The page's paper, no margins: as it is, wider than high; or as printers know it, an upright paper that lies.
QPageLayout asItIs(const Page& page);
QPageLayout lying(const Page& page);

// Paints each page true to size on a sheet of its own paper; `resolution`: the device's dots per inch. False: the
// device could not be painted on, or it has no such paper, or `goOn`, which is asked before each page, said no; what is
// printed until then is the device's to throw away.
bool paintPages(QPagedPaintDevice& device, int resolution, const std::vector<Page>& pages,
                QPageLayout (*layoutOf)(const Page&), const std::function<bool()>& goOn = {});

}  // namespace ribwright
