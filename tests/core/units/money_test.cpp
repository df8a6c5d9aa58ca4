// Money: exact amounts, divided to the cent, and its text there and back.
#include "core/units/money.h"

#include <catch2/catch.hpp>
#include <numeric>
#include <random>

#include "core/units/area.h"

using namespace ribwright;

namespace {

Money cents(std::int64_t count) { return Money::cents(count); }

std::string read(std::string_view text, char sign = '.') {
  const auto money = parseMoney(text, sign);
  return money ? moneyText(money.value()) : "refused";
}

std::string whyNot(std::string_view text, char sign = '.') {
  const auto money = parseMoney(text, sign);
  return money ? "read" : money.faults().front().message;
}

ExactRatio feet(Length length) { return *ratio(length.nanometres(), Length::feet(1).nanometres()); }

}  // namespace

TEST_CASE("a quantity times a price is exact and rounded once, half to even") {
  CHECK(amount(feet(Length::feet(12, 3)), cents(310)) == cents(3798));  // 37.975
  CHECK(amount(feet(Length::feet(12, 6)), cents(301)) == cents(3762));  // 37.625
  CHECK(amount(feet(Length::feet(0, 6)), cents(1)) == cents(0));        // 0.005
  CHECK(amount(feet(Length::feet(1, 6)), cents(1)) == cents(2));        // 0.015
  CHECK(amount({-3, 2}, cents(1)) == cents(-2));
  CHECK(amount({1, 1}, cents(mostCents)) == cents(mostCents));
  CHECK(!amount({2, 1}, cents(mostCents)));
  CHECK(!amount({Int128(1) << 124, 3}, cents(2'000'000'000)));
  // 1/3 ft each, three of them: no third of a cent is lost on the way.
  CHECK(amount(feet(Length::inches(4) * 3), cents(100)) == cents(100));
}

TEST_CASE("money outside its range is an error, not another sum") {
  CHECK_THROWS_AS(cents(INT64_MAX) + cents(1), std::overflow_error);
  CHECK_THROWS_AS(cents(INT64_MIN) - cents(1), std::overflow_error);
  CHECK_THROWS_AS(-cents(INT64_MIN), std::overflow_error);
}

TEST_CASE("what is divided adds up to the cent, the largest remainders first") {
  CHECK(apportioned(cents(100), {1, 1, 1}) == std::vector<Money>{cents(34), cents(33), cents(33)});
  CHECK(apportioned(cents(100), {1, 2, 4}) == std::vector<Money>{cents(14), cents(29), cents(57)});
  CHECK(apportioned(cents(-5), {1, 1}) == std::vector<Money>{cents(-3), cents(-2)});
  CHECK(apportioned(cents(7), {0, 0}) == std::vector<Money>{cents(7), cents(0)});
  CHECK(apportioned(cents(7), {0, 3}) == std::vector<Money>{cents(0), cents(7)});
  CHECK_THROWS_AS(apportioned(cents(1), {}), std::invalid_argument);
  CHECK_THROWS_AS(apportioned(cents(1), {2, -1}), std::invalid_argument);
  CHECK_THROWS_AS(apportioned(cents(mostCents), {Int128(1) << 120}), std::overflow_error);
}

TEST_CASE("random sums divided: no part is a cent or more off its exact share") {
  std::mt19937_64 dice(7);
  for (int round = 0; round < 2000; ++round) {
    const Money whole = cents(static_cast<std::int64_t>(dice() % 2'000'000) - 1'000'000);
    std::vector<Int128> shares(1 + dice() % 9);
    for (Int128& share : shares) share = dice() % 4 == 0 ? 0 : static_cast<Int128>(dice() % 1'000'000'000) << 40;
    const Int128 all = std::accumulate(shares.begin(), shares.end(), Int128(0));
    const auto parts = apportioned(whole, shares);
    CHECK(std::accumulate(parts.begin(), parts.end(), Money()) == whole);
    for (std::size_t i = 0; all > 0 && i < shares.size(); ++i) {
      const Int128 off = Int128(parts[i].cents()) * all - Int128(whole.cents()) * shares[i];
      CHECK((off < all && off > -all));
    }
  }
}

TEST_CASE("sums as they are written") {
  CHECK(moneyText(cents(123450)) == "1234.50");
  CHECK(moneyText(cents(-5)) == "-0.05");
  CHECK(moneyText(cents(123450), ',') == "1234,50");
  CHECK(shownMoney(cents(123456789), '.', "USD") == "1,234,567.89\u00a0USD");
  CHECK(shownMoney(cents(-123450), ',', "EUR") == "\u22121.234,50\u00a0EUR");
  CHECK(shownMoney(cents(99900), '.', "$") == "$999.00");
  CHECK(shownMoney(cents(0), '.', "") == "0.00");
  CHECK(shownMoney(cents(100), ',', "€") == "1,00\u00a0€");
  CHECK(shownDifference(cents(1820), '.', "$") == "+$18.20");
  CHECK(shownDifference(cents(-1820), '.', "$") == "\u2212$18.20");
  CHECK(shownDifference(cents(0), '.', "$") == "$0.00");
  CHECK(moneyText(cents(INT64_MIN)) == "-92233720368547758.08");
}

TEST_CASE("sums as they are read, by the decimal sign that holds") {
  const auto [text, sign, value] = GENERATE(table<const char*, char, const char*>({
      {"1234.50", '.', "1234.50"},
      {"1,234.50", '.', "1234.50"},
      {"12,345,678.9", '.', "12345678.90"},
      {" 3 ", '.', "3.00"},
      {"0.05", '.', "0.05"},
      {"+2.5", '.', "2.50"},
      {"-2.50", '.', "-2.50"},
      {"\u22122.50", '.', "-2.50"},
      {"1 234", '.', "1234.00"},
      {"1\u00a0234.50", '.', "1234.50"},
      {"1.234,50", ',', "1234.50"},
      {"1234,5", ',', "1234.50"},
      {"1\u202f234,50", ',', "1234.50"},
      {"10000000000000.00", '.', "10000000000000.00"},
  }));
  CAPTURE(text);
  CHECK(read(text, sign) == value);
}

TEST_CASE("sums that could mean two things, or nothing, are refused") {
  const auto [text, sign] = GENERATE(table<const char*, char>({
      {"1,234", '.'},
      {"1.234", ','},
      {"1,50", '.'},
      {"1.50", ','},
      {"12,34.50", '.'},
      {"1234,567.00", '.'},
      {"1.505", '.'},
      {"1.", '.'},
      {".50", '.'},
      {"", '.'},
      {"-", '.'},
      {"$3", '.'},
      {"3 USD", '.'},
      {"1e3", '.'},
      {"1,234 567.00", '.'},
      {"10000000000000.01", '.'},
      {"99999999999999999999999999999999999999999999", '.'},
      {"1.5.0", '.'},
      {"--1", '.'},
  }));
  CAPTURE(text);
  CHECK(read(text, sign) == "refused");
}

TEST_CASE("a refused sum says why and what would be right") {
  CHECK(whyNot("1,234") ==
        "\"1,234\" can be read in two ways; write it without groups or with its cents, as 1234.50 or 1,234.50");
  CHECK(whyNot("1,505", ',') == "\"1,505\" is finer than a cent; write it as 1234,50 or 1.234,50");
  CHECK(whyNot("3 USD") ==
        "\"3 USD\" is no sum of money; write the figure alone, as 1234.50 or 1,234.50");
}

TEST_CASE("what is shown parses to what is shown") {
  std::mt19937_64 dice(11);
  for (int round = 0; round < 4000; ++round) {
    const auto size = static_cast<std::int64_t>(dice() >> (14 + dice() % 48)) % mostCents;
    const Money money = cents(dice() % 2 == 0 ? size : -size);
    for (const char sign : {'.', ','}) {
      CHECK(parseMoney(moneyText(money, sign), sign).value() == money);
      CHECK(parseMoney(shownMoney(money, sign, ""), sign).value() == money);
    }
  }
}
