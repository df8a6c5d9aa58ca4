#include "core/editing/new_order_items.h"

namespace ribwright::new_items {
namespace {

bool isPriced(const Job& job, Price::What what, const std::string& item) {
  return std::any_of(job.prices.items.begin(), job.prices.items.end(),
                     [&](const Price& price) { return price.what == what && price.item == item; });
}

}  // namespace

Faults addTrim(Job& job, const Indices&, std::size_t at) {
  Trim first;
  first.id = "trim";
  first.girth = size(job, Length::inches(6), 150);
  first.thickness = Length::nanometres(454'660);
  first.stocked = {size(job, Length::feet(10), 3000)};
  insertLike(job.trims, at, first);
  nameAnew(job.trims, at, &Trim::id);
  return {};
}

Faults addTrimPoint(Job& job, const Indices& path, std::size_t at) {
  insertLike(job.trims.at(path.at(0)).section, at, {});
  return {};
}

Faults addTrimRule(Job& job, const Indices&, std::size_t at) {
  TrimRule first;
  first.id = "trim rule";
  TrimRule rule = insertLike(job.trimRules, at, first);
  job.trimRules.erase(job.trimRules.begin() + static_cast<std::ptrdiff_t>(at));
  for (int where = 0; where <= static_cast<int>(TrimRule::Where::Transition); ++where) {
    const auto is = [&](const TrimRule& one) { return static_cast<int>(one.where) == where; };
    if (std::any_of(job.trimRules.begin(), job.trimRules.end(), is)) continue;
    rule.where = static_cast<TrimRule::Where>(where);
    break;
  }
  job.trimRules.insert(job.trimRules.begin() + static_cast<std::ptrdiff_t>(at), rule);
  nameAnew(job.trimRules, at, &TrimRule::id);
  return {};
}

Faults addPrice(Job& job, const Indices&, std::size_t at) {
  Price price;
  price.per = job.units == UnitSystem::FeetInches ? Price::Per::Foot : Price::Per::Metre;
  const auto take = [&](Price::What what, const auto& items) {
    for (const auto& item : items) {
      if (!price.item.empty() || isPriced(job, what, item.id)) continue;
      price.what = what;
      price.item = item.id;
    }
  };
  take(Price::What::Sheet, job.profiles);
  take(Price::What::Trim, job.trims);
  job.prices.items.insert(job.prices.items.begin() + static_cast<std::ptrdiff_t>(at), price);
  return {};
}

}  // namespace ribwright::new_items
