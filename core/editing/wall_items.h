// Things of a wall by their id, to be edited.
#pragma once

#include <algorithm>
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/job/by_id.h"
#include "core/job/job.h"
#include "core/job/job_file_joined.h"
#include "core/units/outcome.h"

namespace ribwright {

// "walls.A.openings", as the layout's faults call places.
inline std::string listPlace(const Wall& wall, std::string_view list) {
  return joined("walls.", wall.letter, ".", list);
}
inline std::string itemPlace(const Wall& wall, std::string_view list, std::string_view id) {
  return joined("walls.", wall.letter, ".", list, ".", id);
}

inline Fault notThere(const Wall& wall, std::string_view list, std::string_view id) {
  return {listPlace(wall, list), joined("has no \"", id, "\"; name one that stands on wall ", wall.letter)};
}

template <class Item>
Item* itemToEdit(std::vector<Item>& items, std::string_view id) {
  const auto found = std::find_if(items.begin(), items.end(), [&](const Item& item) { return item.id == id; });
  return found == items.end() ? nullptr : &*found;
}

}  // namespace ribwright
