// What new trim, rules and prices begin as.
#pragma once

#include "core/editing/new_item_ways.h"

namespace ribwright::new_items {

Faults addTrim(Job& job, const Indices& path, std::size_t at);
Faults addTrimPoint(Job& job, const Indices& path, std::size_t at);
// For the first place that no rule speaks of yet.
Faults addTrimRule(Job& job, const Indices& path, std::size_t at);
// Of the first profile or trim without one, at nothing.
Faults addPrice(Job& job, const Indices& path, std::size_t at);

}  // namespace ribwright::new_items
