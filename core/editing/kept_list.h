// A list kept for undo: each item once as long as it stays the same, and the list once as long as none of them changes.
#pragma once

#include <algorithm>
#include <memory>
#include <vector>

namespace ribwright {

template <class Item>
using KeptItems = std::vector<std::shared_ptr<const Item>>;
template <class Item>
using KeptList = std::shared_ptr<const KeptItems<Item>>;  // never null

template <class Item>
bool isKept(const std::vector<Item>& items, const KeptList<Item>& kept) {
  return std::equal(items.begin(), items.end(), kept->begin(), kept->end(),
                    [](const Item& item, const std::shared_ptr<const Item>& known) { return item == *known; });
}

// The item of `like` that equals this one, looked for first where an edit before it would have left it; else a new one.
template <class Item>
std::shared_ptr<const Item> keepItem(const Item& item, std::size_t fromStart, std::size_t fromEnd,
                                     const KeptItems<Item>& like) {
  if (fromStart < like.size() && *like[fromStart] == item) return like[fromStart];
  if (fromEnd < like.size() && *like[like.size() - 1 - fromEnd] == item) return like[like.size() - 1 - fromEnd];
  const auto same =
      std::find_if(like.begin(), like.end(), [&](const std::shared_ptr<const Item>& known) { return *known == item; });
  return same == like.end() ? std::make_shared<const Item>(item) : *same;
}

// `like`: the list before; null when there is none.
template <class Item>
KeptList<Item> keepList(const std::vector<Item>& items, const KeptList<Item>& like) {
  if (like && isKept(items, like)) return like;
  KeptItems<Item> kept;
  kept.reserve(items.size());
  static const KeptItems<Item> none;
  for (std::size_t i = 0; i < items.size(); ++i)
    kept.push_back(keepItem(items[i], i, items.size() - 1 - i, like ? *like : none));
  return std::make_shared<const KeptItems<Item>>(std::move(kept));
}

template <class Item>
std::vector<Item> listOf(const KeptList<Item>& kept) {
  std::vector<Item> items;
  items.reserve(kept->size());
  for (const auto& item : *kept) items.push_back(*item);
  return items;
}

}  // namespace ribwright
