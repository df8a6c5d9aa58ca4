// How a new item of a list begins: what the functions that make one share.
#pragma once

#include <algorithm>
#include <cstddef>
#include <string>
#include <utility>
#include <vector>

#include "core/job/job.h"
#include "core/job/job_file_joined.h"
#include "core/units/outcome.h"

namespace ribwright::new_items {

using Indices = std::vector<std::size_t>;  // of the items that a list lies in
using Faults = std::vector<Fault>;

// A round size in the units that the job is in.
inline Length size(const Job& job, Length inches, std::int64_t millimetres) {
  return job.units == UnitSystem::FeetInches ? inches : Length::millimetres(millimetres);
}
inline Length stride(const Job& job) { return size(job, Length::feet(10), 3000); }

// Like the item before, or like the one that was first; `first` when there is none.
template <class T>
T& insertLike(std::vector<T>& items, std::size_t at, const T& first) {
  const T like = items.empty() ? first : items[at == 0 ? 0 : at - 1];
  return *items.insert(items.begin() + static_cast<std::ptrdiff_t>(at), like);
}

// Between its neighbours, or a stride past the only one.
template <class T>
Length placeBetween(const std::vector<T>& items, std::size_t at, Length T::*place, Length step) {
  const bool hasBefore = at > 0, hasAfter = at + 1 < items.size();
  if (hasBefore && hasAfter) {
    const Length before = items[at - 1].*place, after = items[at + 1].*place;
    return before + half(after - before);
  }
  if (hasBefore) return items[at - 1].*place + step;
  return hasAfter ? items[at + 1].*place - step : Length();
}

// "rib-36", "rib-36 2", "rib-36 3" ...: the first that nothing is called.
template <class T>
std::string freeName(const std::vector<T>& items, const std::string& name, std::string T::*id) {
  const auto isTaken = [&](const std::string& tried) {
    return std::any_of(items.begin(), items.end(), [&](const T& item) { return item.*id == tried; });
  };
  if (!isTaken(name)) return name;
  for (int number = 2;; ++number) {
    std::string tried = joined(name, " ", number);
    if (!isTaken(tried)) return tried;
  }
}

template <class T>
void nameAnew(std::vector<T>& items, std::size_t at, std::string T::*id) {
  const std::string name = std::exchange(items[at].*id, std::string());
  items[at].*id = freeName(items, name, id);
}

}  // namespace ribwright::new_items
