// Roof slopes, rake heights and rake lengths against published values. Documents are named with what was read in them;
// rows marked "arithmetic only" were worked out from a formula and check no rule.
#include <array>
#include <catch2/catch.hpp>

#include "core/layout/height_line.h"
#include "core/layout/roof_line.h"
#include "core/layout/whole_root.h"
#include "core/units/angle.h"
#include "core/units/length_text.h"

namespace ribwright {
namespace {

// The length along a slope over a level distance, as a rake trim is measured.
Length along(const Slope& slope, Length level) { return distance({}, {level, riseOver(slope, level)}); }

// A length in whole 1/parts of an inch.
std::int64_t inchParts(Length length, std::int64_t parts) {
  return static_cast<std::int64_t>(roundHalfEven(Int128(length.nanometres()) * parts, Length::inches(1).nanometres()));
}

Slope metric(std::int64_t rise, std::int64_t run) {
  return Slope{Slope::As::RisePerRun, Length::millimetres(rise), Length::millimetres(run), {}};
}

Slope degrees(std::int64_t thousandths) {
  return Slope{Slope::As::Angle, {}, Length::inches(12), Angle{thousandths * 1000}};
}

// The steel line of a gable over walls A and C, as the layout gets it.
HeightLine gable(Length width, Length eave, const Slope& slope) {
  Building building;
  building.outline = {{}, {width, {}}, {width, width}, {{}, width}};
  building.roof.kind = Roof::Kind::Gable;
  building.roof.ends = Roof::Ends::AC;
  building.roof.eave = eave;
  building.roof.slope = slope;
  Wall wall;
  wall.letter = "A";
  const auto line = steelLine(building, wall, width);
  if (!line) FAIL(line.faults().front().message);
  return line.value();
}

// Rafter table of the framing square, first line, "length of common rafters per foot of run"; rises 13 and 16 also in
// U.S. Army subcourse EN0069, 7 in NAVEDTRA 14044. Hundredths of an inch for rises 2 to 18.
TEST_CASE("framing square: length of a slope per foot of run") {
  constexpr std::array published{1217, 1237, 1265, 1300, 1342, 1389, 1442, 1500, 1562,
                                 1628, 1697, 1769, 1844, 1921, 2000, 2081, 2163};
  for (std::size_t i = 0; i < published.size(); ++i) {
    const auto rise = static_cast<std::int64_t>(i) + 2;
    INFO("rise " << rise);
    CHECK(inchParts(along(Slope::per12(rise), Length::inches(12)), 100) == published[i]);
  }
}

TEST_CASE("arithmetic only: rise 1 is 12.04 in per foot of run") {
  CHECK(inchParts(along(Slope::per12(1), Length::inches(12)), 100) == 1204);
}

struct Jack {
  int rise;
  Length page16, page24;
  int thousandths16, thousandths24;
};

// Rafter table of the framing square, "difference in length of jacks", 16 and 24 in apart. The page is in eighths and
// sixteenths, with slips of up to 1/8 in in its 24 in column; the exact column beside it is arithmetic.
TEST_CASE("framing square: difference in length of jacks") {
  const auto in = [](std::int64_t whole, std::int64_t sixteenths) { return Length::inches(whole, sixteenths * 4); };
  const std::array rows{
      Jack{2, in(16, 4), in(24, 5), 16'221, 24'331},   Jack{3, in(16, 8), in(24, 12), 16'492, 24'739},
      Jack{4, in(16, 14), in(25, 3), 16'865, 25'298},  Jack{5, in(17, 5), in(26, 0), 17'333, 26'000},
      Jack{6, in(17, 14), in(26, 14), 17'889, 26'833}, Jack{7, in(18, 8), in(27, 14), 18'523, 27'785},
      Jack{8, in(19, 4), in(28, 14), 19'230, 28'844},  Jack{9, in(20, 0), in(30, 0), 20'000, 30'000},
      Jack{10, in(20, 14), in(31, 4), 20'827, 31'241}, Jack{11, in(21, 12), in(32, 10), 21'705, 32'558},
      Jack{12, in(22, 10), in(34, 0), 22'627, 33'941}};
  for (const Jack& row : rows) {
    INFO("rise " << row.rise);
    const Length at16 = along(Slope::per12(row.rise), Length::inches(16));
    const Length at24 = along(Slope::per12(row.rise), Length::inches(24));
    CHECK(inchParts(at16, 1000) == row.thousandths16);
    CHECK(inchParts(at24, 1000) == row.thousandths24);
    const Length eighth = Length::inches(0, 8);
    CHECK((at16 - row.page16 <= eighth && row.page16 - at16 <= eighth));
    CHECK((at24 - row.page24 <= eighth && row.page24 - at24 <= eighth));
  }
}

// The same table with decimals, rises 7, 8, 9 and 12, each within its last decimal (19.22 is cut off
// from 19.2296, 27.79 stands for 27.7849); and Audel's guide, volume 3, rise 10.
TEST_CASE("framing square and Audel: jacks in hundredths of an inch") {
  struct Row {
    int rise, apart, hundredths;
  };
  for (const Row& row :
       {Row{7, 16, 1852}, Row{7, 24, 2779}, Row{8, 16, 1922}, Row{8, 24, 2884}, Row{9, 16, 2000}, Row{9, 24, 3000},
        Row{12, 16, 2263}, Row{12, 24, 3394}, Row{10, 16, 2083}, Row{10, 20, 2600}}) {
    INFO("rise " << row.rise << ", " << row.apart << " in apart");
    const Length off =
        along(Slope::per12(row.rise), Length::inches(row.apart)) - scaled(Length::inches(1), row.hundredths, 100);
    const Length last = scaled(Length::inches(1), 1, 100);
    // Audel prints 26 in without decimals.
    const Length allowed = row.apart == 20 ? half(Length::inches(1)) : last;
    CHECK((off <= allowed && -off <= allowed));
  }
}

// NAVEDTRA 14044 figure 2-17: span 16 ft, rise 7: 13.89 x 8 = 111.12 in, 9 ft 3-1/8 in.
TEST_CASE("NAVEDTRA 14044: a rake of 8 ft run at 7 in 12 is 9 ft 3-1/8 in") {
  const Length rake = along(Slope::per12(7), Length::feet(8));
  CHECK(shownText(rake, {}, 16) == "9' 3-1/8\"");
}

// NAVEDTRA 14044, gable-end studs 24 in apart, rise 6: (24/12) x 6 = 12 in from one to the next.
TEST_CASE("NAVEDTRA 14044: gable studs 24 in apart at 6 in 12 differ by 12 in") {
  const HeightLine top = gable(Length::feet(32), Length::feet(8), Slope::per12(6));
  for (int stud = 0; stud < 8; ++stud)
    CHECK(top.heightAt(Length::inches(24 * (stud + 1)), Beside::Left) -
              top.heightAt(Length::inches(24 * stud), Beside::Right) ==
          Length::inches(12));
}

// Worked examples of a published text whose title was not kept: 600 mm along is 360 mm up; 1200 mm from the wall's face
// is 720 mm up.
TEST_CASE("150 in 250: 360 mm over 600 mm, 720 mm over 1200 mm") {
  CHECK(riseOver(metric(150, 250), Length::millimetres(600)) == Length::millimetres(360));
  CHECK(riseOver(metric(150, 250), Length::millimetres(1200)) == Length::millimetres(720));
}

// Worked examples of a published text whose title was not kept, 16 in apart: 7 in 12 is 9.33 in, 9-5/16 on the tape; 16
// in 12 is 21.3 in.
TEST_CASE("16 in along: 9-5/16 in at 7 in 12, 21.3 in at 16 in 12") {
  const Length atSeven = riseOver(Slope::per12(7), Length::inches(16));
  CHECK(inchParts(atSeven, 100) == 933);
  CHECK(shownText(atSeven, {}, 16) == "9-5/16\"");
  CHECK(inchParts(riseOver(Slope::per12(16), Length::inches(16)), 10) == 213);
}

// A frame of a published text whose title was not kept: 12 m wide, 8 m at the eave, 9 m at the ridge: 9.46 degrees.
TEST_CASE("12 m wide from 8 m to 9 m is 2 in 12, or 9.46 degrees") {
  const Length halfWidth = Length::millimetres(6000);
  CHECK(gable(Length::millimetres(12'000), Length::millimetres(8000), Slope::per12(2))
            .heightAt(halfWidth, Beside::Left) == Length::millimetres(9000));
  // 1 m lies between the rises at the two angles that would be printed so.
  CHECK(riseOver(degrees(9455), halfWidth) < Length::millimetres(1000));
  CHECK(riseOver(degrees(9465), halfWidth) > Length::millimetres(1000));
}

TEST_CASE("arithmetic only: 36 in cover at 1 in 12 steps 3 in a sheet, cut at 4.764 degrees") {
  const HeightLine top = gable(Length::feet(60), Length::feet(14), Slope::per12(1));
  for (int edge = 0; edge <= 10; ++edge)
    CHECK(top.heightAt(Length::inches(36 * edge), Beside::Right) == Length::feet(14, 3 * edge));
  CHECK(inchParts(riseOver(degrees(4764), Length::inches(36)), 1000) == 3000);
}

TEST_CASE("arithmetic only: rake trim over a run of 20 ft") {
  const Length run = Length::feet(20);
  CHECK(inchParts(along(Slope::per12(0, 32), run), 100) == 24'021);
  CHECK(inchParts(along(Slope::per12(1), run), 100) == 24'083);
  CHECK(inchParts(along(Slope::per12(4), run), 100) == 25'298);
}

}  // namespace
}  // namespace ribwright
