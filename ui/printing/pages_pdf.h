// Pages as a PDF, true to size, whole in memory: whoever writes it to a file writes all of it or nothing.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "core/drawing/drawing.h"
#include "ui/printing/pdf_document.h"

namespace ribwright {

// Needs a QGuiApplication. Each page has the size of its own paper; the paper's font is embedded; the pages stand under
// bookmarks by their headings. The same pages and document give the same bytes. Empty when there is no page, when the
// pages could not be painted, or when `goOn`, which is asked before each page, said no.
std::string pagesPdf(const std::vector<Page>& pages, const PdfDocument& document,
                     const std::function<bool()>& goOn = {});

}  // namespace ribwright
