#include "core/output/price_table.h"

#include <algorithm>

#include "core/editing/stated_field.h"
#include "core/editing/table_faults.h"
#include "core/editing/typed_length.h"
#include "core/job/job_file_joined.h"
#include "core/job/job_file_text.h"
#include "core/job/stated_words.h"
#include "core/output/columns.h"
#include "core/output/figures.h"
#include "core/output/typed_rows.h"

namespace ribwright {
namespace {

constexpr int mostPriceCents = 2'000'000'000;  // as the job file holds

enum PriceCell : std::size_t { WhatColumn, ItemColumn, ColourColumn, ThicknessColumn, PerColumn, PriceColumn };

const std::vector<TypedColumn>& priceColumns() {
  static const std::vector<TypedColumn> all{
      {"what"}, {"item"}, {"colour", false, false}, {"thickness", true, false}, {"per", false, false}, {"price"}};
  return all;
}

std::string_view wordOf(Price::What what) { return priceWhatWords[static_cast<std::size_t>(what)]; }
std::string_view wordOf(Price::Per per) { return pricePerWords[static_cast<std::size_t>(per)]; }

bool isMetal(Price::What what) { return what == Price::What::Sheet || what == Price::What::Trim; }

std::vector<std::string> rowOf(const Price& price, UnitSystem units) {
  return {std::string(wordOf(price.what)),
          price.item,
          price.colour,
          price.thickness ? smallLength(*price.thickness, units) : "",
          std::string(isMetal(price.what) ? wordOf(price.per) : wordOf(Price::Per::Each)),
          moneyText(Money::cents(price.cents))};
}

std::vector<std::string> blankRow(const BoughtThing& thing, UnitSystem units) {
  Price price;
  price.what = thing.what;
  price.item = thing.item;
  price.colour = thing.colour;
  if (isMetal(thing.what)) price.thickness = thing.thickness;
  price.per = units == UnitSystem::FeetInches ? Price::Per::Foot : Price::Per::Metre;
  std::vector<std::string> row = rowOf(price, units);
  row.back().clear();
  return row;
}

// The prices of a table, taken over one by one.
class TakingPrices {
 public:
  TakingPrices(const Job& job, const TypedRows& rows) : before_(job), rows_(rows) { read_.job = job; }

  Outcome<ReadPrices> all() {
    for (std::size_t row = 0; row < rows_.size() && faults_.size() < mostTableFaults; ++row) take(row);
    if (!faults_.empty()) return std::move(faults_);
    auto& items = read_.job.prices.items;
    for (auto index = taken_.rbegin(); index != taken_.rend(); ++index)
      items.erase(items.begin() + static_cast<std::ptrdiff_t>(*index));
    return std::move(read_);
  }

 private:
  void fault(std::size_t row, std::size_t column, const std::string& message) {
    faults_.push_back(rows_.fault(row, column, message));
  }
  std::string text(std::size_t row, std::size_t column) const {
    return std::string(withoutBlanks(rows_.text(row, column)));
  }

  void take(std::size_t row) {
    const std::size_t faultsBefore = faults_.size();
    Price price;
    name(price, row);
    if (faults_.size() > faultsBefore) return;
    if (std::any_of(seen_.begin(), seen_.end(), [&](const Price& one) { return nameTheSame(one, price); }))
      return fault(row, ItemColumn, joined(pricedName(price, before_.units), " stands in the table twice"));
    seen_.push_back(price);
    const auto& stated = before_.prices.items;
    const auto at =
        std::find_if(stated.begin(), stated.end(), [&](const Price& one) { return nameTheSame(one, price); });
    const bool isNew = at == stated.end();
    if (!isNew) price = *at;
    if (text(row, PriceColumn).empty()) return isNew ? void(++read_.blank) : strike(price, at - stated.begin());
    value(price, row, isNew);
    if (faults_.size() > faultsBefore || !held(price, row)) return;
    put(price, isNew ? nullptr : &*at);
  }

  // What it is for.
  void name(Price& price, std::size_t row) {
    choose(price.what, priceWhatWords, row, WhatColumn);
    price.item = text(row, ItemColumn);
    if (price.item.empty() && price.what != Price::What::Cut) fault(row, ItemColumn, "is blank; it is needed");
    if (!isMetal(price.what)) return;
    price.colour = text(row, ColourColumn);
    const std::string thickness = text(row, ThicknessColumn);
    if (thickness.empty()) return;
    const auto read = parseLength(thickness, rows_.style(ThicknessColumn));
    if (!read) return fault(row, ThicknessColumn, read.faults().front().message);
    price.thickness = read.value();
  }

  void value(Price& price, std::size_t row, bool isNew) {
    if (isMetal(price.what)) {
      choose(price.per, pricePerWords, row, PerColumn);
    } else if (const std::string per = text(row, PerColumn); !per.empty() && !sameWord(per, wordOf(Price::Per::Each))) {
      fault(row, PerColumn, joined("a ", wordOf(price.what), " is paid for each; write each, or leave it blank"));
    } else if (isNew) {
      price.per = Price::Per::Each;
    }
    const auto money = parseMoney(text(row, PriceColumn), rows_.style(PriceColumn).decimalSign);
    if (!money) return fault(row, PriceColumn, money.faults().front().message);
    const std::int64_t cents = money.value().cents();
    if (cents < 0) return fault(row, PriceColumn, "is less than nothing");
    if (cents > mostPriceCents) return fault(row, PriceColumn, "is more than a price may be, 20,000,000.00");
    price.cents = static_cast<int>(cents);
  }

  template <class Choice, std::size_t count>
  void choose(Choice& choice, const std::string_view (&words)[count], std::size_t row, std::size_t column) {
    const std::string typed = text(row, column);
    if (!rows_.has(column)) return fault(row, PriceColumn, joined("needs a column ", priceColumns()[column].name));
    if (typed.empty()) return fault(row, column, "is blank; it is needed");
    int index = 0;
    const std::string wrong = takeChoice(index, typed, {std::begin(words), std::end(words)});
    if (!wrong.empty()) return fault(row, column, wrong);
    choice = static_cast<Choice>(index);
  }

  // The job file's own rules.
  bool held(Price& price, std::size_t row) {
    const auto found = tableFaults(price, before_.units, "");
    for (const Fault& each : found) {
      const auto named = std::find_if(priceColumns().begin(), priceColumns().end(),
                                      [&](const TypedColumn& column) { return each.place.ends_with(column.name); });
      const auto column =
          named == priceColumns().end() ? PriceColumn : static_cast<std::size_t>(named - priceColumns().begin());
      fault(row, rows_.has(column) ? column : PriceColumn, each.message);
    }
    return found.empty();
  }

  void strike(const Price& price, std::ptrdiff_t index) {
    taken_.insert(std::upper_bound(taken_.begin(), taken_.end(), static_cast<std::size_t>(index)),
                  static_cast<std::size_t>(index));
    read_.taken.push_back(pricedName(price, before_.units));
  }

  void put(const Price& price, const Price* stated) {
    if (stated && *stated == price) {
      ++read_.alike;
      return;
    }
    (stated ? read_.changed : read_.added).push_back(pricedName(price, before_.units));
    auto& items = read_.job.prices.items;
    if (stated)
      items[static_cast<std::size_t>(stated - before_.prices.items.data())] = price;
    else
      items.push_back(price);
  }

  const Job& before_;
  const TypedRows& rows_;
  ReadPrices read_;
  std::vector<Price> seen_;
  std::vector<std::size_t> taken_;  // rising
  std::vector<Fault> faults_;
};

}  // namespace

std::string pricedName(const Price& price, UnitSystem units) {
  std::string name(wordOf(price.what));
  if (price.what != Price::What::Cut && !price.item.empty()) name.append(" ").append(price.item);
  if (!isMetal(price.what)) return name;
  if (!price.colour.empty()) name.append(" ").append(price.colour);
  if (price.thickness) name.append(" ").append(exactText(*price.thickness, units));
  return name;
}

Table priceTable(const Job& job, const std::vector<BoughtThing>& bought, UnitSystem units) {
  Table table;
  table.columns = columnsIn(units, {"what", "item", "colour", "thickness_in", "per", "price"});
  for (const Price& price : job.prices.items) table.rows.push_back(rowOf(price, units));
  for (const BoughtThing& thing : bought) {
    if (!priceOf(job.prices, thing)) table.rows.push_back(blankRow(thing, units));
  }
  return table;
}

Outcome<ReadPrices> withPricesOf(const Job& job, std::string_view csv) {
  const Outcome<TypedRows> rows = TypedRows::read(csv, priceColumns());
  if (!rows) return rows.faults();
  return TakingPrices(job, rows.value()).all();
}

}  // namespace ribwright
