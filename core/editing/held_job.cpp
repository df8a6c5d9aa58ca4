#include "core/editing/held_job.h"

#include <algorithm>

#include "core/editing/table_faults.h"

namespace ribwright {

Outcome<Job> ifJobHeld(Job edited, const Job& before) {
  std::vector<Fault> faults = tableFaults(edited, edited.units, "");
  if (faults.empty()) return edited;
  Job copy = before;  // a table's members are not const
  const std::vector<Fault> old = tableFaults(copy, copy.units, "");
  std::erase_if(faults, [&](const Fault& fault) { return std::find(old.begin(), old.end(), fault) != old.end(); });
  if (faults.empty()) return edited;
  return faults;
}

}  // namespace ribwright
