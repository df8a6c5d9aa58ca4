// What a PDF says of itself and of its pages, beside what is painted on them.
#pragma once

#include <string>

#include "core/drawing/paper.h"

namespace ribwright {

struct PdfDocument {
  std::string title;
  std::string date;      // year, month and day as 2026-03-02; anything else gives the document no date
  std::string language;  // of its text: "en", "es"; empty: not stated
};

struct PdfLeaf {
  PaperExtent extent;          // mm
  std::string heading, title;  // of its bookmark; pages of one heading that follow each other lie under it
};

}  // namespace ribwright
