#include "core/job/job_file_held.h"

#include "core/job/job_file_text.h"
#include "core/job/screws.h"
#include "core/units/typed_text.h"

namespace ribwright {

void HeldIds::add(const std::string& id) {
  if (id.empty()) known_ = false;  // a fault already; what it was meant to be nobody knows
  ids_.push_back(id);
  sorted_.insert(id);
}

void HeldIds::hold(const std::string& id, const std::string& place) {
  if (id.empty() || !known_ || sorted_.contains(id)) return;
  form_.wrong(place, joined(inQuotes(id), " is none of this ", whose_, "'s ", list_, "; ", remedy(id)));
}

// Looking for the nearest takes its time: in a file that is wrong a thousand times over, not for each.
std::string HeldIds::remedy(const std::string& id) {
  if (ids_.empty()) return joined("the ", whose_, " holds none");
  if (++missed_ > 100 || ids_.size() > 1000) return joined("name one that the ", whose_, " holds");
  return joined("the nearest is ", inQuotes(nearestOf(id, {ids_.begin(), ids_.end()})));
}

void holdScrews(const ScrewPattern& pattern, const std::string& place, HeldIds& screws) {
  screws.hold(pattern.stitchScrew, place + "stitch_screw");
  for (std::size_t i = 0; i < pattern.rows.size(); ++i) {
    screws.hold(pattern.rows[i].screw, joined(place, itemPath("rows", i), ".screw"));
  }
}

}  // namespace ribwright
