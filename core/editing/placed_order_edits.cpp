#include "core/editing/placed_order_edits.h"

#include <algorithm>

#include "core/editing/table_faults.h"
#include "core/editing/typed_length.h"
#include "core/job/job_file_text.h"
#include "core/units/typed_text.h"

namespace ribwright {
namespace {

constexpr std::int64_t mostSheets = 1'000'000;  // as the job file holds

Outcome<Job> ifFactsHeld(Job edited) {
  auto faults = tableFaults(edited.facts, edited.units, "facts");
  if (!faults.empty()) return faults;
  return edited;
}

Fault noOrder(std::string_view id) { return {"", joined("no order is called ", inQuotes(id))}; }

template <class Edit>
Outcome<Job> edited(const Job& job, std::string_view id, const Edit& edit) {
  Job next = job;
  PlacedOrder* order = nullptr;
  for (PlacedOrder& one : next.facts.orders) {
    if (one.id == id) order = &one;
  }
  if (!order) return noOrder(id);
  edit(*order);
  return ifFactsHeld(std::move(next));
}

// All lots of the kind become one of this quantity, where the first of them stood; none of 0.
void put(std::vector<SheetLot>& lots, const SheetKind& kind, std::int64_t quantity) {
  const auto is = [&](const SheetLot& lot) { return kindOf(lot) == kind; };
  const auto first = std::find_if(lots.begin(), lots.end(), is);
  SheetLot lot = first == lots.end() ? lotOf(kind, 0) : *first;
  lot.quantity = static_cast<int>(quantity);
  const auto at = first - lots.begin();
  std::erase_if(lots, is);
  if (quantity > 0) lots.insert(lots.begin() + at, lot);
}

}  // namespace

Outcome<Job> placeOrder(const Job& job, std::string_view id, std::string_view date, const std::vector<SheetLot>& lots) {
  if (lots.empty()) return Fault{"", "nothing is to be ordered: what was ordered before is enough"};
  PlacedOrder order;
  order.id = withoutBlanks(id);
  order.date = withoutBlanks(date);
  order.placed = lots;
  if (order.id.empty()) return Fault{"", "the order has no number; give it one, as it stands on its paper"};
  const auto& orders = job.facts.orders;
  if (std::any_of(orders.begin(), orders.end(), [&](const PlacedOrder& one) { return one.id == order.id; }))
    return Fault{"", joined("another order is called ", inQuotes(order.id))};
  Job next = job;
  next.facts.orders.push_back(std::move(order));
  return ifFactsHeld(std::move(next));
}

Outcome<Job> withoutOrder(const Job& job, std::string_view id) {
  Job next = job;
  if (std::erase_if(next.facts.orders, [&](const PlacedOrder& one) { return one.id == id; }) == 0) return noOrder(id);
  return next;
}

Outcome<Job> receiveAll(const Job& job, std::string_view id) {
  return edited(job, id, [](PlacedOrder& order) {
    for (const auto& [kind, count] : countsOf(order)) {
      if (count.toCome() > 0) put(order.received, kind, count.received + count.toCome());
    }
  });
}

Outcome<Job> setReceived(const Job& job, std::string_view id, const SheetKind& kind, std::int64_t received,
                         std::int64_t missing) {
  if (received < 0 || missing < 0) return Fault{"", "sheets received or short are less than none"};
  if (received > mostSheets || missing > mostSheets) return Fault{"", "are more than 1,000,000 sheets"};
  const auto is = [&](const PlacedOrder& one) { return one.id == id; };
  const auto order = std::find_if(job.facts.orders.begin(), job.facts.orders.end(), is);
  if (order == job.facts.orders.end()) return noOrder(id);
  if (!countsOf(*order).contains(kind)) return Fault{"", joined("order ", inQuotes(id), " has no such sheets")};
  return edited(job, id, [&](PlacedOrder& one) {
    put(one.received, kind, received);
    put(one.shortfall, kind, missing);
  });
}

std::string nextOrderNumber(const Job& job) {
  for (std::size_t number = job.facts.orders.size() + 1;; ++number) {
    std::string id = std::to_string(number);
    const auto is = [&](const PlacedOrder& order) { return order.id == id; };
    if (std::none_of(job.facts.orders.begin(), job.facts.orders.end(), is)) return id;
  }
}

}  // namespace ribwright
