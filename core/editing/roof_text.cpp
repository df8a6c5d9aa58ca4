#include "core/editing/roof_text.h"

#include "core/job/job_file_text.h"

namespace ribwright {

// "150 in 250" has a number behind its "in"; "210 in" is a height.
bool isSlopeText(std::string_view text) {
  if (text.find(':') != text.npos || text.find("deg") != text.npos || text.find("°") != text.npos) return true;
  const std::size_t in = text.find(" in ");
  return in != text.npos && text.find_first_of("0123456789", in) != text.npos;
}

Outcome<std::variant<Slope, Length>> parseRise(std::string_view text, const LengthStyle& style) {
  using Rise = std::variant<Slope, Length>;
  if (isSlopeText(text)) {
    const auto slope = slopeFromText(text, style.units);
    if (!slope) return slope.faults();
    return Rise(slope.value());
  }
  const auto height = parseLength(text, style);
  if (!height) return height.faults();
  return Rise(height.value());
}

}  // namespace ribwright
