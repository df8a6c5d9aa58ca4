// What the library ribwright_pdf and the program that loads it agree on.
#pragma once

#include <string>
#include <vector>

#include "ui/printing/pdf_document.h"

// finishedPdf() of pdf_finish.h; what it makes stands in `made` then.
extern "C" void ribwrightFinishPdf(const std::string& painted, const std::vector<ribwright::PdfLeaf>& pages,
                                   const ribwright::PdfDocument& document, std::string& made);
