#include "core/units/outcome.h"

namespace ribwright {

std::string oneLine(const Fault& fault) {
  std::string line = fault.place.empty() ? fault.message : fault.place + ": " + fault.message;
  // What a person typed may be quoted inside, and it may have been pasted from a column.
  for (char& c : line)
    if (c == '\n' || c == '\r' || c == '\t') c = ' ';
  return line;
}

}  // namespace ribwright
