// Cutting lists whose optimum others have proved, in tests/outside/cutting: each is proved anew, to the same total, and
// a checker that calls nothing of the cutter agrees.
#include <catch2/catch.hpp>
#include <fstream>
#include <sstream>

#include "core/cutting/cutting_list_text.h"
#include "core/cutting/stock_cutter.h"
#include "core/output/csv_reading.h"
#include "tests/fuzz/cutting_checker.h"

namespace ribwright::fuzz {
namespace {

const std::string kFolder = RIBWRIGHT_ROOT "/tests/outside/cutting/";

std::string textOf(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

}  // namespace

TEST_CASE("Every list with a published or proven optimum is proved to come to it, and the checker agrees") {
  const auto table = readCsv(textOf(kFolder + "optimum.csv"));
  REQUIRE(table.ok());
  REQUIRE(table.value().table.rows.size() == 83);
  for (const auto& row : table.value().table.rows) {
    const std::string name = row[0] + "/" + row[1];
    INFO(name);
    const auto list = readCuttingList(textOf(kFolder + name + ".txt"));
    REQUIRE(list.ok());
    const auto plan = cutStock(list.value());
    REQUIRE(plan.ok());
    CHECK(std::to_string(plan.value().total) == row[2]);
    CHECK(plan.value().proved());
    CHECK(checkCutting(list.value(), plan.value()).text() == "");
  }
}

}  // namespace ribwright::fuzz
