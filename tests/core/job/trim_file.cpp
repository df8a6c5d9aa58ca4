// Sets of trim that ship.
#include "core/job/trim_file.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <set>

#include "core/job/job_file_joined.h"

using namespace ribwright;

namespace {

double developed(const Trim& trim) {
  double width = 0;
  for (std::size_t i = 0; i + 1 < trim.section.size(); ++i) {
    const SectionPoint &a = trim.section[i], &b = trim.section[i + 1];
    width += std::hypot((b.x - a.x).inMillimetres(), (b.y - a.y).inMillimetres());
  }
  return width;
}

}  // namespace

TEST_CASE("both sets have a rule for every place, its trim, and a girth that is the section's developed width") {
  for (const UnitSystem units : {UnitSystem::FeetInches, UnitSystem::Millimetres}) {
    const TrimSet& set = shippedTrim(units);
    std::set<TrimRule::Where> places;
    std::set<std::string> named, trims;
    for (const TrimRule& rule : set.rules) {
      places.insert(rule.where);
      named.insert(rule.trim);
      CHECK(rule.lip * 2 <= rule.allowance);
    }
    CHECK(places.size() == static_cast<std::size_t>(TrimRule::Where::Transition) + 1);
    for (const Trim& trim : set.trims) {
      INFO(trim.id);
      trims.insert(trim.id);
      CHECK(std::abs(developed(trim) - trim.girth.inMillimetres()) < 2);
      CHECK(trim.stocked.size() >= 2);
    }
    CHECK(named == trims);
  }
}

// Common practice
TEST_CASE("a shipped head is 2 in longer than wide and laps over, its sill lies under") {
  for (const TrimRule& rule : shippedTrim(UnitSystem::FeetInches).rules) {
    if (rule.where == TrimRule::Where::Head) {
      CHECK(rule.allowance == Length::inches(2));
      CHECK(rule.lip == Length::inches(1));
      CHECK(rule.laps == TrimRule::Laps::Over);
    }
    if (rule.where == TrimRule::Where::Sill) CHECK(rule.laps == TrimRule::Laps::Under);
  }
}

TEST_CASE("a set whose rule names no trim of its own, or two of one name, is refused") {
  const char* trim = R"({"id": "t", "girth": "6\"", "thickness": "0.5 mm"})";
  const auto text = [&](const std::string& trims, const char* rule) {
    return "{\"trims\": [" + trims + "], \"rules\": [" + rule + "]}";
  };
  CHECK(readTrimSet(text(trim, R"({"id": "r", "trim": "t"})"), "t.json").ok());
  CHECK_FALSE(readTrimSet(text(trim, R"({"id": "r", "trim": "other"})"), "t.json").ok());
  CHECK_FALSE(readTrimSet(text(joined(trim, ", ", trim), R"({"id": "r", "trim": "t"})"), "t.json").ok());
}
