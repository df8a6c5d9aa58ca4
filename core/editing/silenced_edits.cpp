#include "core/editing/silenced_edits.h"

#include <algorithm>

#include "core/editing/table_faults.h"
#include "core/editing/typed_length.h"

namespace ribwright {

Outcome<Job> findingSilenced(const Job& job, const std::string& key, const std::string& reason) {
  const std::string why(withoutBlanks(reason));
  if (why.empty()) return Fault{"reason", "is missing; say why the finding is no trouble"};
  SilencedFinding silenced{key, why};
  auto faults = tableFaults(silenced, job.units, "silenced");
  if (!faults.empty()) return faults;
  Job next = silenceTakenBack(job, key);
  next.silenced.push_back(silenced);
  return next;
}

Job silenceTakenBack(const Job& job, const std::string& key) {
  Job next = job;
  std::erase_if(next.silenced, [&](const SilencedFinding& each) { return each.key == key; });
  return next;
}

}  // namespace ribwright
