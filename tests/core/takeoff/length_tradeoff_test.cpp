// Which lengths to order when there may be only so many, against every choice there is.
#include "core/takeoff/length_tradeoff.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <optional>
#include <random>

#include "walls_by_hand.h"

namespace ribwright {
namespace {

// What a set of lengths buys, each sheet at the least that is long enough; nothing where the longest is missing.
std::optional<Length> boughtAt(const std::vector<Length>& lengths, const std::vector<WantedLength>& wanted,
                               const Spares& spares) {
  std::vector<int> counts(lengths.size());
  for (const WantedLength& one : wanted) {
    std::size_t at = 0;
    while (at < lengths.size() && lengths[at] < one.length) ++at;
    if (at == lengths.size()) return std::nullopt;
    counts[at] += one.count;
  }
  Length bought;
  for (std::size_t i = 0; i < lengths.size(); ++i) {
    if (counts[i] == 0) return std::nullopt;  // a length for nothing
    int more = 0;
    while (more < spares.fewest || more * 100 < counts[i] * spares.percent) ++more;
    bought += lengths[i] * (counts[i] + more);
  }
  return bought;
}

// Every subset of the lengths wanted.
std::vector<Length> bestByTrying(const std::vector<WantedLength>& wanted, const Spares& spares, std::size_t most) {
  std::vector<Length> all;
  for (const WantedLength& one : wanted) all.push_back(one.length);
  std::sort(all.begin(), all.end());
  all.erase(std::unique(all.begin(), all.end()), all.end());
  std::vector<Length> best;
  std::optional<Length> least;
  for (unsigned set = 1; set < 1U << all.size(); ++set) {
    std::vector<Length> lengths;
    for (std::size_t i = 0; i < all.size(); ++i) {
      if (set >> i & 1U) lengths.push_back(all[i]);
    }
    if (lengths.size() > most) continue;
    const auto bought = boughtAt(lengths, wanted, spares);
    if (!bought) continue;
    const auto rank = [](Length steel, const std::vector<Length>& of) { return std::tuple(steel, of.size(), of); };
    if (!least || rank(*bought, lengths) < rank(*least, best)) {
      least = bought;
      best = lengths;
    }
  }
  return best;
}

TEST_CASE("Spares are the greater of a part, up to the next whole one, and a number") {
  CHECK(sparesOf({0, 0}, 50) == 0);
  CHECK(sparesOf({5, 0}, 20) == 1);
  CHECK(sparesOf({5, 0}, 21) == 2);
  CHECK(sparesOf({5, 3}, 20) == 3);
  CHECK(sparesOf({100, 3}, 7) == 7);
}

// 10 of 100, 1 of 110, 10 of 120. One length: 21 x 120 = 2520; two: {100, 120} buys 1000 + 11 x 120 = 2320, {110, 120}
// 1210 + 1200 = 2410; three: 1000 + 110 + 1200 = 2310.
TEST_CASE("With ever more lengths ever less is bought") {
  const std::vector<WantedLength> wanted = {{inch(120), 10}, {inch(110), 1}, {inch(100), 10}};
  const auto curve = lengthTradeOff(wanted, {});
  REQUIRE(curve.size() == 3);
  CHECK(curve[0] == LengthChoice{{inch(120)}, inch(2520), {}, inch(210)});
  CHECK(curve[1] == LengthChoice{{inch(100), inch(120)}, inch(2320), {}, inch(10)});
  CHECK(curve[2] == LengthChoice{{inch(100), inch(110), inch(120)}, inch(2310), {}, {}});
}

// With a spare of every length the third one does not pay: 110 more for the spare against 10 saved.
TEST_CASE("Spares are counted in the choice") {
  const std::vector<WantedLength> wanted = {{inch(100), 10}, {inch(110), 1}, {inch(120), 10}};
  const LengthChoice three = chooseLengths(wanted, {0, 1}, 3);
  CHECK(three == LengthChoice{{inch(100), inch(120)}, inch(2540), inch(220), inch(10)});
  CHECK(chooseLengths(wanted, {0, 1}, 0).lengths == std::vector<Length>{inch(100), inch(110), inch(120)});
}

TEST_CASE("Of choices that buy alike the one with fewest lengths stands, then the lowest") {
  // {10, 30} and {20, 30} both buy 10 + 30 x 2 = 70 and 20 x 2 + 30 = 70.
  CHECK(chooseLengths({{inch(10), 1}, {inch(20), 1}, {inch(30), 1}}, {}, 2).lengths ==
        std::vector<Length>{inch(10), inch(30)});
  // A spare each: {10, 20} buys 10 x 2 + 20 x 2 = 60, {20} buys 20 x 3 = 60.
  CHECK(chooseLengths({{inch(10), 1}, {inch(20), 1}}, {0, 1}, 2).lengths == std::vector<Length>{inch(20)});
}

TEST_CASE("Order lengths are the best of all choices there are") {
  std::mt19937_64 dice(20'261);
  const auto roll = [&](int lowest, int highest) {
    return lowest + static_cast<int>(dice() % static_cast<std::uint64_t>(highest - lowest + 1));
  };
  for (int list = 0; list < 400; ++list) {
    std::vector<WantedLength> wanted(static_cast<std::size_t>(roll(1, 9)));
    const int apart = roll(1, 3) == 1 ? 30 : 9;  // close together: many ties
    for (WantedLength& one : wanted) one = {inch(20 + roll(1, apart)), roll(1, roll(1, 2) == 1 ? 3 : 30)};
    const Spares spares = roll(1, 3) == 1 ? Spares{} : Spares{roll(0, 3) * 5, roll(0, 2)};
    const auto curve = lengthTradeOff(wanted, spares);
    for (std::size_t most = 1; most <= curve.size(); ++most) {
      INFO("list " << list << ", most " << most);
      const LengthChoice& choice = curve[most - 1];
      REQUIRE(choice.lengths == bestByTrying(wanted, spares, most));
      REQUIRE(choice.bought == boughtAt(choice.lengths, wanted, spares));
      REQUIRE(choice == chooseLengths(wanted, spares, static_cast<int>(most)));
      REQUIRE((most == 1 || choice.bought <= curve[most - 2].bought));
      Length needed;
      for (const WantedLength& one : wanted) needed += one.length * one.count;
      REQUIRE(choice.bought == needed + choice.cutAway + choice.spares);
    }
  }
}

TEST_CASE("More lengths allowed than wanted changes nothing") {
  CHECK(chooseLengths({{inch(10), 1}, {inch(20), 5}}, {}, 99).lengths == std::vector<Length>{inch(10), inch(20)});
  CHECK(chooseLengths({}, {}, 3) == LengthChoice{});
  CHECK(lengthTradeOff({}, {}).empty());
}

TEST_CASE("A blank goes into the least chosen length that holds it") {
  const LengthChoice choice = chooseLengths({{inch(10), 9}, {inch(20), 1}, {inch(30), 9}}, {}, 2);
  CHECK(orderLength(choice, inch(10)) == inch(10));
  CHECK(orderLength(choice, inch(20)) == inch(30));
  CHECK_THROWS_AS(orderLength(choice, inch(31)), std::invalid_argument);
}

TEST_CASE("Fewer than no lengths or sheets are a mistake of the program") {
  CHECK_THROWS_AS(chooseLengths({{inch(10), 1}}, {}, -1), std::invalid_argument);
  CHECK_THROWS_AS(chooseLengths({{inch(10), -1}}, {}, 1), std::invalid_argument);
}

}  // namespace
}  // namespace ribwright
