#include "core/units/outcome.h"

#include <catch2/catch.hpp>

namespace ribwright {
namespace {

TEST_CASE("a fault is one line: place, what is wrong, what would be right") {
  CHECK(oneLine({"job.json: walls[1].girts[3].height", "\"7 fo\" is no length; write 7' 6\""}) ==
        "job.json: walls[1].girts[3].height: \"7 fo\" is no length; write 7' 6\"");
  CHECK(oneLine({"", "no file given"}) == "no file given");
}

TEST_CASE("what was pasted over several lines is still said in one") {
  CHECK(oneLine({"list\n2", "\"a\r\nb\tc\" is no length"}) == "list 2: \"a  b c\" is no length");
}

TEST_CASE("an outcome holds a value or its faults, never both") {
  const Outcome<int> good = 14;
  CHECK(good.ok());
  CHECK(static_cast<bool>(good));
  CHECK(good.value() == 14);
  CHECK_THROWS_AS(good.faults(), std::bad_variant_access);

  const Outcome<int> bad = Fault{"x", "y"};
  CHECK_FALSE(bad.ok());
  CHECK(bad.faults() == std::vector<Fault>{{"x", "y"}});
  CHECK_THROWS_AS(bad.value(), std::bad_variant_access);
}

TEST_CASE("the value can be changed and taken out") {
  Outcome<std::string> name = std::string("wall A");
  name.value() += "1";
  const std::string taken = std::move(name).value();
  CHECK(taken == "wall A1");
}

}  // namespace
}  // namespace ribwright
