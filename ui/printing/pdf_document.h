// What a PDF says of itself, beside its pages.
#pragma once

#include <string>

namespace ribwright {

struct PdfDocument {
  std::string title;
  std::string date;      // year, month and day as 2026-03-02; anything else gives the document no date
  std::string language;  // of its text: "en", "es"; empty: not stated
};

}  // namespace ribwright
