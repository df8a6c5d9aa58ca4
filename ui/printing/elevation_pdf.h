// Pages as a PDF, true to size, whole in memory: whoever writes it to a file writes all of it or nothing.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "core/drawing/drawing.h"

namespace ribwright {

// Needs a QGuiApplication. Each page has the size of its own paper; the paper's font is embedded. Title and page titles
// go into the document. The same pages give the same bytes. Empty when there is no page, or when the pages could not be
// painted, or when `goOn`, which is asked before each page, said no.
std::string elevationPdf(const std::vector<Page>& pages, const std::string& title,
                         const std::function<bool()>& goOn = {});

}  // namespace ribwright
