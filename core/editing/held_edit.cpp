#include "core/editing/held_edit.h"

#include "core/editing/table_faults.h"

namespace ribwright {

Outcome<Job> ifWallHeld(Job edited, std::size_t wall) {
  auto faults = tableFaults(edited.walls.at(wall), edited.units, itemPath("walls", wall));
  if (!faults.empty()) return faults;
  return edited;
}

Outcome<Job> ifSiteHeld(Job edited) {
  auto faults = tableFaults(edited.site, edited.units, "site");
  if (!faults.empty()) return faults;
  return edited;
}

}  // namespace ribwright
