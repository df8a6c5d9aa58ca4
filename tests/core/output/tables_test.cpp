#include "core/output/tables.h"

#include <catch2/catch.hpp>

#include "plan_by_hand.h"
#include "table_units.h"

using namespace ribwright;

namespace {

std::string shown(const Table& table) { return csvText(table, false); }

}  // namespace

// Metal 38-1/4 x 170 in twice, of it 38-1/4 x 145-3/4 and a rake from 157-1/4 to 170 in: 82.18 of 90.31 ft2.
// 2 sheets of 14 ft 2 in: 28 ft 4 in = 28.333... ft; 3 ft x 14 ft 2 in x 2 = 85 ft2; 45.359237 kg = 100 lb.
TEST_CASE("the sheet order adds up cover, length and quantity") {
  CHECK(shown(sheetOrderTable(planByHand(), feetInches)) ==
        "line,profile,thickness_in,colour,length,length_in,quantity,total_length_ft,area_sqft,weight_lb,marks,"
        "spares,blank_lengths_in,metal_sqft,pieces_sqft,cut_outs_sqft,drops_sqft,waste_sqft,spares_sqft,waste_lb\r\n"
        "1,rib-36-1.25-at-12,0.0215,\"barn red, dark\",\"14' 2\"\"\",170,2,28.333333333,85.00,100.0,A1 A2,"
        "0,146 170,90.31,82.18,0.00,0.00,8.13,0.00,9.0\r\n"
        "2,rib-36-1.25-at-12,0.0215,translucent,\"10' 0-1/8\"\"\",120.125,1,10.010416667,30.03,,C1,"
        "0,120,31.91,26.15,0.00,0.00,5.76,0.00,\r\n");
}

// 14 ft 2 in = 4318 mm; 10 ft 0-1/8 in = 3051.175 mm; 85 ft2 = 7.8967584 m2; 30.03125 ft2 = 2.78999... m2.
TEST_CASE("in millimetres the order's units change, in the header and in the figures") {
  CHECK(shown(sheetOrderTable(planByHand(), millimetres)) ==
        "line,profile,thickness_mm,colour,length,length_mm,quantity,total_length_m,area_m2,weight_kg,marks,"
        "spares,blank_lengths_mm,metal_m2,pieces_m2,cut_outs_m2,drops_m2,waste_m2,spares_m2,waste_kg\r\n"
        "1,rib-36-1.25-at-12,0.5461,\"barn red, dark\",4318 mm,4318,2,8.636,7.90,45.4,A1 A2,"
        "0,3708.4 4318,8.39,7.63,0.00,0.00,0.76,0.00,4.1\r\n"
        "2,rib-36-1.25-at-12,0.5461,translucent,3051.175 mm,3051.175,1,3.051175,2.79,,C1,"
        "0,3048,2.96,2.43,0.00,0.00,0.53,0.00,\r\n");
}

TEST_CASE("pieces stand wall by wall in hanging order, with their metal in u and z") {
  CHECK(shown(pieceTable(planByHand(), feetInches)) ==
        "wall,mark,module,hang_order,left_in,right_in,bottom_in,low_edge_in,high_edge_in,blank_length_in,kind,batch,"
        "left_edge_in,right_edge_in,peak_u_in,order_code\r\n"
        "A,A1,1,1,0,38.25,-1.75,144,144,146,full,,144,144,0,1a\r\n"
        "A,A2,2,2,34.5,72.75,-1.75,155.5,168.25,170,rake,,155.5,168.25,72.75,1b\r\n"
        "C,C1,1,1,100,138.25,10,90,130,120,mixed,,90,130,138.25,2a\r\n");
}

TEST_CASE("in millimetres every length column of the pieces says so") {
  const Table table = pieceTable(planByHand(), millimetres);
  CHECK(table.columns == std::vector<std::string>{"wall", "mark", "module", "hang_order", "left_mm", "right_mm",
                                                  "bottom_mm", "low_edge_mm", "high_edge_mm", "blank_length_mm", "kind",
                                                  "batch", "left_edge_mm", "right_edge_mm", "peak_u_mm", "order_code"});
  CHECK(table.rows.at(1) == std::vector<std::string>{"A", "A2", "2", "2", "876.3", "1847.85", "-44.45", "3949.7",
                                                     "4273.55", "4318", "rake", "", "3949.7", "4273.55", "1847.85",
                                                     "1b"});
}

// Clockwise from the bottom of the starting edge. On wall C, hung right to left, that is the right edge: x = 138-1/4 in
// - u, and clockwise goes first to the left along the bottom, since the ring turns as it does on the wall.
TEST_CASE("cuts begin at the bottom of the starting edge and go round clockwise as the sheet lies face up") {
  CHECK(shown(cutTable(planByHand(), feetInches)) ==
        "mark,ring,corner,x_in,y_in\r\n"
        "A1,0,1,0,0\r\nA1,0,2,0,145.75\r\nA1,0,3,38.25,145.75\r\nA1,0,4,38.25,0\r\n"
        "A2,0,1,0,0\r\nA2,0,2,0,157.25\r\nA2,0,3,38.25,170\r\nA2,0,4,38.25,0\r\n"
        "C1,0,1,0,0\r\nC1,0,2,38.25,0\r\nC1,0,3,38.25,80\r\nC1,0,4,18.25,80\r\nC1,0,5,18.25,120\r\nC1,0,6,0,120\r\n"
        "C1,1,1,24.25,20\r\nC1,1,2,28.25,20\r\nC1,1,3,28.25,26\r\nC1,1,4,24.25,26\r\n");
}

TEST_CASE("cuts in millimetres") {
  const Table table = cutTable(planByHand(), millimetres);
  CHECK(table.columns == std::vector<std::string>{"mark", "ring", "corner", "x_mm", "y_mm"});
  CHECK(table.rows.at(5) == std::vector<std::string>{"A2", "0", "2", "0", "3994.15"});
}

TEST_CASE("a piece that stands on one point of its starting edge begins there") {
  Plan plan;
  WallLayout wall = frontByHand();
  wall.pieces.resize(1);
  wall.pieces[0].mark = "A9";
  wall.pieces[0].bottom = Length();
  wall.pieces[0].rings = {
      {{Length(), Length::feet(1)}, {Length::inches(38, 16), Length::feet(2)}, {Length::feet(1), Length()}}};
  plan.walls = {wallPlan(wall)};
  CHECK(shown(cutTable(plan, feetInches)) ==
        "mark,ring,corner,x_in,y_in\r\nA9,0,1,0,12\r\nA9,0,2,38.25,24\r\nA9,0,3,12,0\r\n");
}

TEST_CASE("findings stand in the plan's order, in words, with their source") {
  Plan plan;
  plan.findings = {{Grade::Stop, "no-such-words", "B", "B7", {}, "UFGS 07413"},
                   {Grade::Note, "other", "", "", {}, "common practice"}};
  CHECK(shown(findingTable(plan, {})) ==
        "grade,id,wall,mark,where,why,do,source\r\n"
        "stop,no-such-words,B,B7,finding.no-such-words.where,finding.no-such-words.why,finding.no-such-words.do,"
        "UFGS 07413\r\n"
        "note,other,,,finding.other.where,finding.other.why,finding.other.do,common practice\r\n");
}

TEST_CASE("an empty plan gives tables of headers alone") {
  const Plan plan;
  CHECK(sheetOrderTable(plan, feetInches).rows.empty());
  CHECK(pieceTable(plan, feetInches).rows.empty());
  CHECK(cutTable(plan, feetInches).rows.empty());
  CHECK(holeTable(plan, feetInches).rows.empty());
  CHECK(findingTable(plan, {}).rows.empty());
}
