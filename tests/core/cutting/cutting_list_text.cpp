// Cutting lists as plain text, and where such text is wrong.
#include "core/cutting/cutting_list_text.h"

#include <catch2/catch.hpp>

using namespace ribwright;

namespace {

std::string faultsIn(std::string_view text) {
  const auto list = readCuttingList(text);
  if (list) return "";
  std::string all;
  for (const Fault& fault : list.faults()) all += oneLine(fault) + "\n";
  return all;
}

}  // namespace

TEST_CASE("A plain list says stock, cost, supply, kerf, trim, and length and count a line") {
  const auto list = readCuttingList(
      "# north wall\n"
      "stock 1952 3888   # both\n"
      "cost 14 27\r\n"
      "supply 40 -\n"
      "kerf 2\n"
      "\n"
      "trim 8\n"
      "1520 12\n"
      "  300\t4");
  REQUIRE(list.ok());
  CHECK(list.value() == CuttingList{{{1952, 14, 40}, {3888, 27, {}}}, 2, 8, {{1520, 12}, {300, 4}}});
}

TEST_CASE("Stock alone and one length make a list; kerf and trim are nothing, cost and supply are open") {
  const auto list = readCuttingList("stock 10\n3 2\n");
  REQUIRE(list.ok());
  CHECK(list.value() == CuttingList{{{10}}, 0, 0, {{3, 2}}});
}

TEST_CASE("What is wrong in a plain list is named with its line") {
  CHECK(faultsIn("") ==
        "stocks: no stock is stated; state at least one length\ndemands: no length is wanted; state at least one\n");
  CHECK(faultsIn("stock 10\nx 2\n") == "line 2: \"x\" is no whole number; write digits alone\n");
  CHECK(faultsIn("stock 10\n3 2.5\n") == "line 2: \"2.5\" is no whole number; write digits alone\n");
  CHECK(faultsIn("stock 10\n3\n") ==
        "line 2: holds no length and its count; write two whole numbers, or stock, cost, supply, kerf or trim first\n");
  CHECK(faultsIn("stock 10\n\n# x\nstock 12\n3 1\n") == "line 4: stock is there twice; state it once\n");
  CHECK(faultsIn("stock 10 20\ncost 5\n3 1\n") ==
        "line 2: cost has 1 numbers where stock has 2; state one for each stock\n");
  CHECK(faultsIn("stock 10\nkerf\n3 1\n") ==
        "line 2: kerf wants a number after it\nline 2: kerf takes one number, as in: kerf 2\n");
  CHECK(faultsIn("stock 10\ncost -\n3 1\n") == "line 2: \"-\" is no whole number; write digits alone\n");
  CHECK(faultsIn("stock 10\n\n11 1\n") ==
        "line 3: 11 is longer than any stock leaves (10); state a longer stock or make the piece of two\n");
  CHECK(faultsIn("stock 10\nkerf -1\n3 1\n") == "line 2: -1 is out of range; it is 0 to 1000000000000000\n");
  CHECK(faultsIn("stock 10 0\ncost 4 -2\n3 1\n") ==
        "line 1: 0 is out of range; it is 1 to 1000000000000000\n"
        "line 2: -2 is out of range; it is 0 to 1000000000000000\n");
}

TEST_CASE("A plain list is told from a table by its first word") {
  CHECK(looksLikeCuttingList("# x\n\nstock 10\n"));
  CHECK(looksLikeCuttingList("10 2\nstock 10\n"));
  CHECK(looksLikeCuttingList("kerf 2\n"));
  CHECK(!looksLikeCuttingList("length,quantity\n10,2\n"));
  CHECK(!looksLikeCuttingList("stock,length\n"));
  CHECK(!looksLikeCuttingList(""));
}
