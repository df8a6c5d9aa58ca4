#include "core/checks/delivery_checks.h"

#include <algorithm>
#include <set>

#include "core/checks/common_practice.h"
#include "core/takeoff/cost.h"
#include "core/takeoff/sheet_needs.h"

namespace ribwright {
namespace {

// "rib-36 light stone": sheets of one class; translucent ones have a word of their own.
Phrase sheetsOf(const SheetClass& sheet) {
  if (sheet.translucent) return {"delivery.translucent", {{"profile", sheet.profile}}};
  return {"delivery.sheets", {{"profile", sheet.profile}, {"colour", sheet.colour}}};
}

// Tells findings of one order or list apart, whatever stands before them.
std::string partOf(const SheetKind& kind) {
  std::string part = kind.sheet.profile;
  part.append(" ").append(kind.sheet.translucent ? std::string(translucentColour) : kind.sheet.colour);
  part.append(" ").append(exactText(kind.sheet.thickness, UnitSystem::Millimetres));
  return part.append(" ").append(exactText(kind.length, UnitSystem::Millimetres));
}

Finding finding(Grade grade, const char* id, const std::string& mark, const SheetKind& kind, std::int64_t count) {
  return {grade,   id,          "", mark, {{"count", count}, {"length", kind.length}, {"sheets", sheetsOf(kind.sheet)}},
          kCommon, partOf(kind)};
}

void checkReceived(const Job& job, std::vector<Finding>& findings) {
  for (const PlacedOrder& order : job.facts.orders) {
    for (const auto& [kind, count] : countsOf(order)) {
      if (count.tooMany() == 0) continue;
      Finding found = finding(Grade::Look, "received-too-many", order.id, kind, count.tooMany());
      found.values.insert(found.values.end(),
                          {{"placed", count.placed}, {"received", count.received}, {"missing", count.missing}});
      findings.push_back(found);
    }
  }
}

// Of what came short as many sheets as are to be ordered now for needs that they would have served.
void checkShort(const Job& job, const DeltaOrder& delta, std::vector<Finding>& findings) {
  std::vector<SheetLot> toOrder = delta.toOrder;
  for (const auto& [kind, supply] : supplyOf(job.facts.orders)) {
    std::int64_t wanting = 0;
    for (SheetLot& lot : toOrder) {
      const SheetKind needed = kindOf(lot);
      if (needed.sheet != kind.sheet || needed.length > kind.length) continue;
      const std::int64_t many = std::min<std::int64_t>(lot.quantity, supply.missing - wanting);
      lot.quantity -= static_cast<int>(many);
      wanting += many;
    }
    if (wanting > 0) findings.push_back(finding(Grade::Look, "short-not-ordered", "", kind, wanting));
  }
}

// What so many sheets cost, in words.
Phrase worthOf(const Job& job, const SheetKind& kind, std::int64_t count) {
  const JobCost cost = costOf(job, {lotOf(kind, count)});
  if (!cost.lines.front().amount) return {"delivery.no-price"};
  return {"delivery.worth", {{"sum", shownMoney(cost.total, job.decimalSign, job.prices.currency)}}};
}

void checkLeftOver(const Job& job, const DeltaOrder& delta, std::vector<Finding>& findings) {
  for (const UnneededSheets& left : delta.leftOver) {
    const std::int64_t count = left.onSite + left.toCome;
    Finding found = finding(Grade::Note, "ordered-not-needed", "", left.sheet, count);
    found.values.insert(found.values.end(),
                        {{"there", left.onSite}, {"coming", left.toCome}, {"worth", worthOf(job, left.sheet, count)}});
    findings.push_back(found);
  }
}

void checkPrices(const Job& job, const SheetOrder& order, std::vector<Finding>& findings) {
  if (job.prices.items.empty()) return;
  std::set<SheetClass> seen;
  for (const OrderLine& line : order.lines) {
    const SheetClass sheet = line.sheet();
    const std::string colour = sheet.translucent ? std::string(translucentColour) : sheet.colour;
    if (!seen.insert(sheet).second || priceOf(job.prices, {Price::What::Sheet, sheet.profile, colour, sheet.thickness}))
      continue;
    Finding found = finding(Grade::Note, "no-price", "", {sheet, Length()}, 0);
    found.values.push_back({"thickness", sheet.thickness});
    findings.push_back(found);
  }
  for (const std::size_t index : pricesNamedTwice(job.prices)) {
    const Price& price = job.prices.items[index];
    const std::string name = price.item.empty() ? std::to_string(index + 1) : price.item;
    findings.push_back({Grade::Look,
                        "price-twice",
                        "",
                        name,
                        {{"item", name}, {"number", static_cast<std::int64_t>(index + 1)}},
                        "",
                        std::to_string(index + 1)});
  }
}

}  // namespace

std::vector<Finding> findingsOfDeliveries(const Job& job, const std::vector<const WallLayout*>& layouts,
                                          const SheetOrder& order) {
  std::vector<Finding> findings;
  if (!job.facts.orders.empty()) {
    const DeltaOrder delta = deltaOrder(sheetNeeds(order, layouts), job.facts.orders);
    checkReceived(job, findings);
    checkShort(job, delta, findings);
    checkLeftOver(job, delta, findings);
  }
  checkPrices(job, order, findings);
  return findings;
}

}  // namespace ribwright
