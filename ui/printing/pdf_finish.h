// What QPdfWriter of Qt 6.4 leaves undone, done by libqpdf: pages of exact size, bookmarks, page labels, what the
// document says of itself, and the same bytes for the same pages (ISO 32000-1).
//
// It stands in a library of its own, ribwright_pdf, loaded with the first PDF: libqpdf brings a dozen other libraries,
// and nobody waits for them who only looks at a wall.
#pragma once

#include <string>
#include <vector>

#include "ui/printing/pdf_document.h"

namespace ribwright {

// `painted` is what QPdfWriter made of `pages`, one page each in their order. QPdfWriter rounds a page to whole points
// of 1/72 in, stamps the local time, and writes and names its fonts in the order of a hash that is another one in each
// process. Here each page box is made exact about its upper left corner, and the pages are taken over one after the
// other into a document of our own, so that objects and fonts are numbered as the pages come to use them. Empty when
// the document is not as QPdfWriter of Qt 6 writes it, or where the library cannot be loaded, which is then said on
// standard error.
std::string finishedPdf(const std::string& painted, const std::vector<PdfLeaf>& pages, const PdfDocument& document);

}  // namespace ribwright
