// The bookmarks of a PDF (ISO 32000-1, 12.3.3).
#pragma once

#include <qpdf/QPDF.hh>
#include <qpdf/QPDFObjectHandle.hh>
#include <vector>

#include "ui/printing/pdf_document.h"

namespace ribwright {

// Gives the document a bookmark for each page, those of pages that follow each other under one heading closed under a
// bookmark of that heading. `leaves` are the document's pages, as many as `pages`.
void addOutline(QPDF& pdf, const std::vector<QPDFObjectHandle>& leaves, const std::vector<PdfLeaf>& pages);

}  // namespace ribwright
