// The trade's frozen example from a stated job to the tables.
#include <catch2/catch.hpp>
#include <map>

#include "core/output/tables.h"

using namespace ribwright;

namespace {

// Gable end, 40 ft wide, eave 12 ft, 4:12, hold-down 0, cover 36 in, lip 1-1/2, leg 3/4, drop 1-3/4, flush, hung left
// to right, no allowance, increment 1/2 in.
Job frozenExample() {
  Job job;
  Profile profile;
  profile.id = "rib-36";
  profile.cover = Length::inches(36);
  profile.over = Length::inches(1, 32);
  profile.under = Length::inches(0, 48);
  profile.thickness = Length::millimetres(1);
  profile.coatingGramsPerSquareMetre = 0;
  profile.section = {{Length::inches(-1, -32), Length()}, {Length::inches(36, 48), Length()}};
  profile.lengths.increment = Length::inches(0, 32);
  job.profiles = {profile};
  Wall wall;
  wall.letter = "A";
  wall.width = Length::feet(40);
  wall.top = {
      {Length(), Length::feet(12)}, {Length::feet(20), Length::feet(18, 8)}, {Length::feet(40), Length::feet(12)}};
  wall.rakeHoldDown = wall.eaveHoldDown = Length();
  wall.hang = Hang::LeftToRight;
  wall.bands.resize(1);
  wall.bands[0].profile = "rib-36";
  job.walls = {wall};
  return job;
}

std::map<std::string, std::string> column(const Table& table, const std::string& key, const std::string& name) {
  const auto at = [&](const std::string& wanted) {
    for (std::size_t i = 0; i < table.columns.size(); ++i)
      if (table.columns[i] == wanted) return i;
    FAIL("no column " << wanted);
    return table.columns.size();
  };
  std::map<std::string, std::string> values;
  for (const auto& row : table.rows) values[row[at(key)]] = row[at(name)];
  return values;
}

}  // namespace

// The trade model, section 12: 14 sheets; blanks of sheet 1: 158-1/2, 6: 218-1/2, 7 (ridge): 226, 8: 222, 14: 150 in.
TEST_CASE("the frozen example's blanks stand in the piece table") {
  const Table pieces = pieceTable(plan(frozenExample()), UnitSystem::FeetInches);
  CHECK(pieces.rows.size() == 14);
  auto blanks = column(pieces, "mark", "blank_length_in");
  CHECK(blanks["A1"] == "158.5");
  CHECK(blanks["A6"] == "218.5");
  CHECK(blanks["A7"] == "226");
  CHECK(blanks["A8"] == "222");
  CHECK(blanks["A14"] == "150");
}

// Flush: module lines at 1-1/2 + 36 n. Sheet 7's metal reaches from 216 to 254-1/4 in with the ridge (240 in, 224 in
// high) on it; its left edge is 144 + 216/3 = 216 in high, its right edge 144 + (480 - 254.25)/3 = 219-1/4 in. Sheet 14
// ends at the corner.
TEST_CASE("the frozen example's ridge sheet and last sheet lie where the rule says") {
  const Table pieces = pieceTable(plan(frozenExample()), UnitSystem::FeetInches);
  CHECK(pieces.rows.at(6) == std::vector<std::string>{"A", "A7", "7", "7", "216", "254.25", "-1.75", "216", "224",
                                                      "226", "rake", "", "216", "219.25", "240", "1a"});
  CHECK(pieces.rows.at(13) == std::vector<std::string>{"A", "A14", "14", "14", "468", "480", "-1.75", "144", "148",
                                                       "150", "mixed", "", "148", "144", "468", "14a"});
}

TEST_CASE("the frozen example's ridge sheet is cut with one corner more, from its starting edge and its lowest end") {
  const Table cuts = cutTable(plan(frozenExample()), UnitSystem::FeetInches);
  std::vector<std::vector<std::string>> ridge;
  for (const auto& row : cuts.rows)
    if (row[0] == "A7") ridge.push_back(row);
  CHECK(ridge == std::vector<std::vector<std::string>>{{"A7", "0", "1", "0", "0"},
                                                       {"A7", "0", "2", "0", "217.75"},
                                                       {"A7", "0", "3", "24", "225.75"},
                                                       {"A7", "0", "4", "38.25", "221"},
                                                       {"A7", "0", "5", "38.25", "0"}});
}

// Sheet 1 and its mirror image are no pair here (the last sheet is a rip), so every length is ordered once, the longest
// first. 38-1/4 in developed, 226 in long, 1 mm of steel: 0.97155 m x 5.7404 m x 0.001 m x 7850 kg/m3 = 43.8 kg.
// Metal 38-1/4 in wide: sheet 7 is 217-3/4 in high at 216, 225-3/4 at the ridge, 221 at 254-1/4 in: 8505.09 of 8644.5
// in2. Sheet 14 is 12 in wide, from 149-3/4 down to 145-3/4 in: 1773 of 5737.5 in2.
TEST_CASE("the frozen example's order goes from the ridge down") {
  const Table order = sheetOrderTable(plan(frozenExample()), UnitSystem::FeetInches);
  REQUIRE(order.rows.size() == 14);
  CHECK(order.rows[0] == std::vector<std::string>{"1",    "rib-36", "0.03937008",   "",      "18' 10\"",
                                                  "226",  "1",      "18.833333333", "56.50", "96.5",
                                                  "A7",   "0",      "226",          "60.03", "59.06",
                                                  "0.00", "0.00",   "0.97",         "0.00",  "1.6"});
  CHECK(order.rows[13] == std::vector<std::string>{"14",    "rib-36", "0.03937008", "",      "12' 6\"", "150", "1",
                                                   "12.5",  "37.50",  "64.1",       "A14",   "0",       "150", "39.84",
                                                   "12.31", "0.00",   "0.00",       "27.53", "0.00",    "44.3"});
}
