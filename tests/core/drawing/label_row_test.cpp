#include "core/drawing/label_row.h"

#include <catch2/catch.hpp>
#include <random>

using namespace ribwright;

TEST_CASE("labels with room stand at their own places") {
  const auto places = rowOf({{10, 4}, {30, 4}, {50, 4}}, 0, 60, 1, {});
  REQUIRE(places);
  CHECK(*places == std::vector<double>{10, 30, 50});
}

TEST_CASE("two labels at one place share the distance") {
  const auto places = rowOf({{20, 6}, {20, 6}}, 0, 60, 2, {});
  REQUIRE(places);
  CHECK(places->at(0) == Approx(16));
  CHECK(places->at(1) == Approx(24));
}

TEST_CASE("a label at the end of a row stays inside it") {
  const auto places = rowOf({{1, 8}, {59, 8}}, 0, 60, 1, {});
  REQUIRE(places);
  CHECK(places->at(0) == Approx(4));
  CHECK(places->at(1) == Approx(56));
}

TEST_CASE("labels that are wider than the row together have no place") {
  CHECK_FALSE(rowOf({{10, 40}, {50, 40}}, 0, 60, 1, {}));
  CHECK_FALSE(rowOf({{10, 70}}, 0, 60, 1, {}));
}

TEST_CASE("no label stands over a barred line") {
  const auto places = rowOf({{30, 8}}, 0, 60, 1, {30});
  REQUIRE(places);
  CHECK(std::abs(places->at(0) - 30) >= 4);
  CHECK_FALSE(rowOf({{30, 8}}, 26, 34, 1, {30}));
}

TEST_CASE("in any row that is found, labels keep order and gap, stay inside and off the lines") {
  std::mt19937 dice(20260301);
  const auto any = [&](double low, double high) { return std::uniform_real_distribution<>(low, high)(dice); };
  int found = 0;
  for (int round = 0; round < 2000; ++round) {
    std::vector<RowLabel> labels;
    for (int i = 0; i < 1 + round % 9; ++i) labels.push_back({any(0, 100), any(1, 16)});
    std::sort(labels.begin(), labels.end(), [](const auto& a, const auto& b) { return a.wanted < b.wanted; });
    std::vector<double> barred;
    for (int i = 0; i < round % 4; ++i) barred.push_back(any(0, 100));
    std::sort(barred.begin(), barred.end());
    const auto places = rowOf(labels, 0, 100, 1, barred);
    if (!places) continue;
    ++found;
    for (std::size_t i = 0; i < labels.size(); ++i) {
      const double left = places->at(i) - labels[i].width / 2, right = places->at(i) + labels[i].width / 2;
      REQUIRE(left > -1e-9);
      REQUIRE(right < 100 + 1e-9);
      if (i > 0) REQUIRE(left - (places->at(i - 1) + labels[i - 1].width / 2) > 1 - 1e-9);
      for (const double line : barred) REQUIRE((line <= left || line >= right));
    }
  }
  CHECK(found > 1500);
}
