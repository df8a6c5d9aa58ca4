// Things of a job by what the plans call them.
#pragma once

#include <algorithm>
#include <string_view>
#include <vector>

namespace ribwright {

// The item with this id (profiles, members, screws, patterns, girts, openings, cut regions ...); null when none has it.
template <class Item>
const Item* byId(const std::vector<Item>& items, std::string_view id) {
  const auto found = std::find_if(items.begin(), items.end(), [&](const Item& item) { return item.id == id; });
  return found == items.end() ? nullptr : &*found;
}

// The wall with this letter; null when none has it.
template <class Lettered>
const Lettered* byLetter(const std::vector<Lettered>& walls, std::string_view letter) {
  const auto found =
      std::find_if(walls.begin(), walls.end(), [&](const Lettered& wall) { return wall.letter == letter; });
  return found == walls.end() ? nullptr : &*found;
}

}  // namespace ribwright
