// Lists to be cut as tables, and plans as tables.
#include "core/output/cutting_tables.h"

#include <catch2/catch.hpp>

using namespace ribwright;

namespace {

std::string faultsIn(std::string_view csv, UnitSystem units = UnitSystem::FeetInches) {
  const auto lines = readCutLines(csv, units);
  if (lines) return "";
  std::string all;
  for (const Fault& fault : lines.faults()) all += oneLine(fault) + "\n";
  return all;
}

}  // namespace

TEST_CASE("A list to be cut has a length and a quantity a row; other columns are passed over") {
  const auto lines =
      readCutLines("colour,quantity,length,mark\nred,3,8' 2\",head\nred,0,42,\n", UnitSystem::FeetInches);
  REQUIRE(lines.ok());
  REQUIRE(lines.value().size() == 2);
  CHECK(lines.value()[0].length == Length::inches(98));
  CHECK(lines.value()[0].quantity == 3);
  CHECK(lines.value()[0].mark == "head");
  CHECK(lines.value()[1].length == Length::inches(42));
  CHECK(lines.value()[1].quantity == 0);
}

TEST_CASE("A bare length is in the units asked for, or in those of its column's name") {
  const auto first = [](std::string_view csv, UnitSystem units) { return readCutLines(csv, units).value()[0].length; };
  CHECK(first("length,quantity\n100,1\n", UnitSystem::Millimetres) == Length::millimetres(100));
  CHECK(first("length_in,quantity\n100,1\n", UnitSystem::Millimetres) == Length::inches(100));
  CHECK(first("length_mm,quantity\n100,1\n", UnitSystem::FeetInches) == Length::millimetres(100));
  CHECK(first("length_mm,length,quantity\n100,2' 0\",1\n", UnitSystem::FeetInches) == Length::inches(24));
}

TEST_CASE("What is wrong in a list to be cut is named with line and column") {
  CHECK(faultsIn("size,quantity\n1,2\n") == "line 1: has no column length; name it length, length_in or length_mm\n");
  CHECK(faultsIn("length,quantity\n0,1\n5,-1\n") ==
        "line 2, length: \"0\" is no length to cut; it is more than nothing\n"
        "line 3, quantity: \"-1\" is no count; write a whole number of pieces\n");
}

TEST_CASE("A plan's table says for each pattern what is cut from each stock, and what it leaves") {
  const std::int64_t inch = Length::inches(1).nanometres();
  const CuttingList list{{{120 * inch}}, inch, 2 * inch, {{50 * inch, 3}, {30 * inch, 1}}};
  const CuttingPlan plan{{{0, 1, {2, 0}}, {0, 1, {1, 1}}}, 2, 2, {}, false};
  const Table table = cuttingPlanTable(list, plan, {"a", "b"}, lengthFigures(UnitSystem::FeetInches));
  CHECK(table.columns == std::vector<std::string>{"pattern", "times", "stock", "stock_in", "length", "length_in",
                                                  "quantity", "mark", "left", "left_in"});
  REQUIRE(table.rows.size() == 3);
  // 120 - 2 - 2 x 51 = 16; 120 - 2 - 51 - 31 = 36
  CHECK(table.rows[0] ==
        std::vector<std::string>{"1", "1", "10' 0\"", "120", "4' 2\"", "50", "2", "a", "1' 4\"", "16"});
  CHECK(table.rows[2] ==
        std::vector<std::string>{"2", "1", "10' 0\"", "120", "2' 6\"", "30", "1", "b", "3' 0\"", "36"});
  const Table bare = cuttingPlanTable({{{10}}, 0, 0, {{4, 2}}}, {{{0, 1, {2}}}, 1, 1, {}, false}, {}, bareFigures());
  CHECK(bare.rows == std::vector<std::vector<std::string>>{{"1", "1", "10", "4", "2", "2"}});
}
