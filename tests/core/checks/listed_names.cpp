// Names in a finding, one after the other.
#include <catch2/catch.hpp>

#include "core/checks/screw_words.h"

using namespace ribwright;

namespace {

std::string said(const WordValue& names) { return Words::of("en").say("screws.sheets", {{"marks", names}}, {}); }

}  // namespace

TEST_CASE("of many names six are named and the rest are counted") {
  const std::vector<std::string> names = {"B1", "B2", "B3", "B4", "B5", "B6", "B7", "B8"};
  CHECK(said(listed(names)) == "sheets B1, B2, B3, B4, B5, B6 and 2 more");
  CHECK(said(listed(names, 8)) == "sheets B1, B2, B3, B4, B5, B6, B7, B8");
  CHECK(said(listed(std::vector<std::string>())) == "sheets ");
}

// Two places that are one are told by it: "head of W1", not "head of W1, head of W1".
TEST_CASE("a name that stands alone is that name") {
  const WordValue head = phrase("screws.row.head", {{"id", std::string("W1")}});
  CHECK(listed(std::vector<WordValue>{head}) == head);
  CHECK_FALSE(listed(std::vector<WordValue>{head, head}) == head);
}
