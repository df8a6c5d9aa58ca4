#include "core/checks/finding.h"

namespace ribwright {

std::string Finding::key() const { return id + "|" + wall + "|" + mark + (part.empty() ? "" : "|" + part); }

WordValues Finding::said() const {
  WordValues all = values;
  all.emplace_back("wall", wall);
  all.emplace_back("mark", mark);
  return all;
}

}  // namespace ribwright
