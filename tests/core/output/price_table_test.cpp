// The price list as a table, out and in.
#include "core/output/price_table.h"

#include <catch2/catch.hpp>
#include <random>

#include "core/job/job_file.h"

using namespace ribwright;

namespace {

const Length thin = Length::nanometres(454'660), thick = Length::nanometres(606'040);

Price price(Price::What what, const std::string& item, int cents, Price::Per per = Price::Per::Each) {
  Price made;
  made.what = what;
  made.item = item;
  made.per = per;
  made.cents = cents;
  return made;
}

Job job() {
  Job made;
  Price red = price(Price::What::Sheet, "rib-36", 345, Price::Per::Foot);
  red.colour = "red, \"deep\"";
  red.thickness = thin;
  made.prices.currency = "USD";
  made.prices.items = {price(Price::What::Sheet, "rib-36", 310, Price::Per::Foot), red,
                       price(Price::What::Trim, "jamb-4x1.5", 1250), price(Price::What::Cut, "", 75),
                       price(Price::What::Charge, "delivery", 15000)};
  return made;
}

Job withoutPrices(Job of) {
  of.prices.items.clear();
  return of;
}

std::string priceFaults(const Job& of, const std::string& csv) {
  const auto read = withPricesOf(of, csv);
  if (read) return "none";
  std::string all;
  for (const Fault& fault : read.faults()) all += oneLine(fault) + "\n";
  return all;
}

using Texts = std::vector<std::string>;

}  // namespace

TEST_CASE("a price list written as a table reads back the same, in inches and in millimetres") {
  for (const UnitSystem units : {UnitSystem::FeetInches, UnitSystem::Millimetres}) {
    const std::string csv = csvText(priceTable(job(), {}, units), units == UnitSystem::Millimetres);
    const auto read = withPricesOf(withoutPrices(job()), csv);
    REQUIRE(read);
    CHECK(read.value().job == job());
    CHECK(read.value().added.size() == 5);
    CHECK(read.value().added[1] == "sheet rib-36 red, \"deep\" 0.45466 mm");
    const auto again = withPricesOf(job(), csv);
    REQUIRE(again);
    CHECK(again.value().job == job());
    CHECK(again.value().alike == 5);
  }
  const Table table = priceTable(job(), {}, UnitSystem::FeetInches);
  CHECK(table.columns == Texts{"what", "item", "colour", "thickness_in", "per", "price"});
  CHECK(table.rows[1] == Texts{"sheet", "rib-36", "red, \"deep\"", "0.0179", "foot", "3.45"});
  CHECK(table.rows[3] == Texts{"cut", "", "", "", "each", "0.75"});
}

TEST_CASE("what the job uses and no price applies to is a row without one, and may stay so") {
  const std::vector<BoughtThing> bought{{Price::What::Sheet, "rib-36", "blue", thin},
                                        {Price::What::Sheet, "rib-36", "translucent", thin},
                                        {Price::What::Trim, "corner-4", "blue", thick}};
  const Table table = priceTable(job(), bought, UnitSystem::FeetInches);
  REQUIRE(table.rows.size() == 7);
  CHECK(table.rows[5] == Texts{"sheet", "rib-36", "translucent", "0.0179", "foot", ""});
  CHECK(table.rows[6] == Texts{"trim", "corner-4", "blue", "0.02385984", "foot", ""});
  const auto read = withPricesOf(job(), csvText(table, false));
  REQUIRE(read);
  CHECK(read.value().job == job());
  CHECK(read.value().blank == 2);
}

TEST_CASE("a price is changed, added, or taken away where its row has none; others stay") {
  const auto read = withPricesOf(
      job(), "what,item,per,price\nsheet,rib-36,Metre,\"1,012.50\"\ntrim,jamb-4x1.5,each,\nsheet,rib-30,pound,2\n");
  REQUIRE(read);
  const auto& items = read.value().job.prices.items;
  REQUIRE(items.size() == 5);
  CHECK(items[0].cents == 101'250);
  CHECK(items[0].per == Price::Per::Metre);
  CHECK(items[1] == job().prices.items[1]);
  CHECK(items[2].what == Price::What::Cut);
  CHECK(items[4].item == "rib-30");
  CHECK(read.value().changed == Texts{"sheet rib-36"});
  CHECK(read.value().taken == Texts{"trim jamb-4x1.5"});
  CHECK(read.value().added == Texts{"sheet rib-30"});
}

TEST_CASE("a table with semicolons has a decimal comma") {
  const auto read =
      withPricesOf(Job{}, "what;item;thickness_mm;per;price\r\nsheet;rib-36;0,5;square metre;1.012,50\r\n");
  REQUIRE(read);
  CHECK(read.value().job.prices.items.at(0).cents == 101'250);
  CHECK(read.value().job.prices.items.at(0).thickness == Length::nanometres(500'000));
  CHECK(priceFaults(Job{}, "what;item;per;price\nsheet;rib-36;foot;12.50\n") ==
        "line 2, price: \"12.50\" is no sum of money here: groups are of three digits; write it as 1234,50 or "
        "1.234,50\n");
}

TEST_CASE("every fault is named with line and column, and nothing is taken") {
  CHECK(priceFaults(job(),
                    "what,item,colour,thickness_in,per,price\n"
                    "sheets,rib,,,foot,1\n"
                    "sheet,,,,foot,1\n"
                    "sheet,a,,,furlong,1\n"
                    "sheet,b,,x,foot,1\n"
                    "sheet,c,,,,1\n"
                    "sheet,d,,,foot,\"1,5\"\n"
                    "sheet,e,,,foot,-1\n"
                    "sheet,f,,,foot,20000000.01\n"
                    "cut,,,,foot,1\n"
                    "sheet,g,,,foot,1\n"
                    "sheet,g,,,metre,2\n"
                    "sheet,h,,-1,foot,1\n") ==
        "line 2, what: \"sheets\" is none of: sheet, trim, cut, charge\n"
        "line 3, item: is blank; it is needed\n"
        "line 4, per: \"furlong\" is none of: each, foot, metre, square foot, square metre, pound, kilogram\n"
        "line 5, thickness_in: \"x\" is no length; write 7' 6\", 7 ft 6 in or 2286 mm\n"
        "line 6, per: is blank; it is needed\n"
        "line 7, price: \"1,5\" is no sum of money here: groups are of three digits; write it as 1234.50 or 1,234.50\n"
        "line 8, price: is less than nothing\n"
        "line 9, price: is more than a price may be, 20,000,000.00\n"
        "line 10, per: a cut is paid for each; write each, or leave it blank\n"
        "line 12, item: sheet g stands in the table twice\n"
        "line 13, thickness_in: -1\" is out of range; it may be more than 0, at most 25 mm\n");
  CHECK(priceFaults(job(), "item,price\nrib,1\n") == "line 1: no column is called what\n");
  CHECK(priceFaults(job(), "what,item,price\nsheet,rib,1\n") == "line 2, price: needs a column per\n");
}

TEST_CASE("random price lists come back from their table as they were") {
  std::mt19937_64 dice(17);
  const auto below = [&](int most) { return static_cast<int>(dice() % static_cast<unsigned>(most)); };
  for (int round = 0; round < 300; ++round) {
    Job of;
    of.units = below(2) == 0 ? UnitSystem::FeetInches : UnitSystem::Millimetres;
    for (int i = below(12); i > 0; --i) {
      Price one = price(static_cast<Price::What>(below(4)), Texts{"a", "b;\"c\"", "Ü d", "e,f"}[dice() % 4],
                        below(2'000'000'000));
      if (one.what == Price::What::Sheet || one.what == Price::What::Trim) {
        one.per = static_cast<Price::Per>(below(7));
        one.colour = Texts{"", "red", "light, \"stone\"", "x\ny"}[dice() % 3];
        if (below(2) == 0) one.thickness = Length::nanometres(1 + below(24'000'000));
      }
      if (one.what == Price::What::Cut) one.item.clear();
      const auto& items = of.prices.items;
      if (std::none_of(items.begin(), items.end(), [&](const Price& p) { return nameTheSame(p, one); }))
        of.prices.items.push_back(one);
    }
    const std::string csv = csvText(priceTable(of, {}, of.units), below(2) == 0);
    CHECK(withPricesOf(of, csv).value().job == of);
    CHECK(withPricesOf(withoutPrices(of), csv).value().job == of);
  }
}
