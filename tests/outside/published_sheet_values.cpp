// Sheet thicknesses, weights, widths and tolerances against published values. Each test names its document and edition;
// rows that were remembered and not seen in a copy of their source are said to be, and rows worked out from a formula
// alone check arithmetic.
#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

#include "core/job/gauge.h"
#include "core/job/job_file.h"
#include "core/job/section.h"
#include "core/job/sheet_weight.h"
#include "core/job/tolerances.h"

namespace ribwright {
namespace {

constexpr auto statute = GaugeSystem::UnitedStatesStandard;
constexpr auto manufacturers = GaugeSystem::ManufacturersStandard;
constexpr auto galvanized = GaugeSystem::GalvanizedSheet;

// Whole ten-thousandths of an inch, as the charts print.
std::int64_t tenThousandths(Length length) {
  return static_cast<std::int64_t>(roundHalfEven(length.nanometres(), 2540));
}
Length tenThousandthsOfInch(std::int64_t count) { return Length::nanometres(2540) * count; }

std::int64_t thickness(GaugeSystem system, int gauge) { return tenThousandths(gaugeThickness(system, gauge).value()); }
double pounds(GaugeSystem system, int gauge) { return gaugePoundsPerSquareFoot(system, gauge).value(); }

struct StatuteRow {
  int gauge;
  int above, below;  // inches as the fraction that the statute prints
  double millimetres;
  double pounds, kilograms;  // a square foot, a square metre; kilograms 0: not printed
};

// 15 U.S.C. 206 (Act of 3 March 1893), gauges 16 to 27.
TEST_CASE("15 U.S.C. 206: thickness and weight of gauges 16 to 27") {
  for (const StatuteRow& row :
       {StatuteRow{16, 1, 16, 1.5875, 2.5, 12.21}, StatuteRow{18, 1, 20, 1.27, 2, 9.765},
        StatuteRow{20, 3, 80, 0.9525, 1.5, 7.324}, StatuteRow{22, 1, 32, 0.79375, 1.25, 6.103},
        StatuteRow{24, 1, 40, 0.635, 1, 4.882}, StatuteRow{25, 7, 320, 0.555625, 0.875, 4.272},
        StatuteRow{26, 3, 160, 0.47625, 0.75, 3.662}, StatuteRow{27, 11, 640, 0.4365625, 0.6875, 0}}) {
    INFO("gauge " << row.gauge);
    const Length length = gaugeThickness(statute, row.gauge).value();
    CHECK(length == scaled(Length::inches(1), row.above, row.below));
    CHECK(std::abs(length.inMillimetres() - row.millimetres) <= 0.5000001e-6);  // a thickness is whole nanometres
    CHECK(pounds(statute, row.gauge) == row.pounds);
    if (row.kilograms > 0) {
      // The statute prints four significant figures.
      const double lastPlace = row.kilograms > 10 ? 0.01 : 0.001;
      CHECK(std::abs(kilogramsPerSquareMetre(row.pounds) - row.kilograms) <= 0.5001 * lastPlace);
    }
  }
}

// The same statute, gauges 28 to 30: from memory, not seen in a copy.
TEST_CASE("15 U.S.C. 206, from memory: gauges 28 to 30 are 1/64, 9/640 and 1/80 in") {
  CHECK(gaugeThickness(statute, 28) == scaled(Length::inches(1), 1, 64));
  CHECK(gaugeThickness(statute, 29) == scaled(Length::inches(1), 9, 640));
  CHECK(gaugeThickness(statute, 30) == scaled(Length::inches(1), 1, 80));
}

struct ChartRow {
  int gauge;
  std::int64_t manufacturers, galvanized;  // ten-thousandths of an inch
  double galvanizedPounds;                 // a square foot, three decimals
};

// Gauge chart of the Manufacturers' Standard Gage and the Galvanized Sheet Gage (41.82 lb/ft2 an inch; coating 2.5
// oz/ft2); weights from a duct-trade association's galvanized table, based on ASTM A924/A653.
TEST_CASE("Gauge chart: Manufacturers' Standard and Galvanized Sheet thicknesses, galvanized weights") {
  for (const ChartRow& row :
       {ChartRow{16, 598, 635, 2.656}, ChartRow{18, 478, 516, 2.156}, ChartRow{20, 359, 396, 1.656},
        ChartRow{22, 299, 336, 1.406}, ChartRow{24, 239, 276, 1.156}, ChartRow{25, 209, 247, 1.031},
        ChartRow{26, 179, 217, 0.906}, ChartRow{27, 164, 202, 0.844}, ChartRow{28, 149, 187, 0.781},
        ChartRow{29, 135, 172, 0.719}, ChartRow{30, 120, 157, 0.656}}) {
    INFO("gauge " << row.gauge);
    CHECK(thickness(manufacturers, row.gauge) == row.manufacturers);
    CHECK(thickness(galvanized, row.gauge) == row.galvanized);
    CHECK(std::abs(pounds(galvanized, row.gauge) - row.galvanizedPounds) <= 0.00050001);
    CHECK(pounds(manufacturers, row.gauge) == pounds(statute, row.gauge));
  }
}

TEST_CASE("26 gauge is three thicknesses") {
  CHECK(gaugeThickness(statute, 26) == scaled(Length::inches(1), 3, 160));  // 0.01875 in
  CHECK(thickness(manufacturers, 26) == 179);
  CHECK(thickness(galvanized, 26) == 217);
}

TEST_CASE("A gauge that the tables do not hold has no thickness") {
  CHECK(knownGauges() == std::vector<int>{16, 18, 20, 22, 24, 25, 26, 27, 28, 29, 30});
  for (const int gauge : {-1, 0, 15, 17, 19, 23, 31}) {
    for (const GaugeSystem system : {statute, manufacturers, galvanized}) {
      CHECK_FALSE(gaugeThickness(system, gauge));
      CHECK_FALSE(gaugePoundsPerSquareFoot(system, gauge));
    }
  }
}

struct LimitsRow {
  int gauge;
  std::int64_t least, nominal, most;
};

// The same duct-trade table: least and most thickness of galvanized sheet. It prints 0.020 for the most of 29 gauge.
TEST_CASE("Duct-trade galvanized table: the chart's thickness is the nominal one, midway between its limits") {
  for (const LimitsRow& row : {LimitsRow{29, 142, 172, 202}, LimitsRow{26, 187, 217, 247}, LimitsRow{24, 236, 276, 316},
                               LimitsRow{22, 296, 336, 376}, LimitsRow{20, 356, 396, 436}}) {
    INFO("gauge " << row.gauge);
    CHECK(thickness(galvanized, row.gauge) == row.nominal);
    CHECK(2 * thickness(galvanized, row.gauge) == row.least + row.most);
  }
}

// The same table, 26 gauge by weight: 0.7591, 0.906, 1.004 lb/ft2.
TEST_CASE("Duct-trade galvanized table: 26 gauge lies inside its limits of weight") {
  CHECK(pounds(galvanized, 26) > 0.7591);
  CHECK(pounds(galvanized, 26) < 1.004);
}

// 15 U.S.C. 206 prints 6.103 kg/m2 beside 1.25 lb/ft2.
TEST_CASE("15 U.S.C. 206: 1.25 lb/ft2 is 6.103 kg/m2") {
  CHECK(std::abs(kilogramsPerSquareMetre(1.25) - 6.103) <= 0.0005);
}

// EN 1991-1-1 Table A.4: practice takes 7850 kg/m3 for steel. The products are arithmetic.
TEST_CASE("EN 1991-1-1 Table A.4: 0.50 mm of steel weighs 3.925 kg/m2, 0.70 mm 5.495") {
  CHECK(steelKilogramsPerSquareMetre(Length::nanometres(500'000)) == Approx(3.925).epsilon(1e-12));
  CHECK(steelKilogramsPerSquareMetre(Length::nanometres(700'000)) == Approx(5.495).epsilon(1e-12));
  CHECK(steelKilogramsPerSquareMetre(Length::millimetres(1)) == Approx(7.85).epsilon(1e-12));
}

struct En10143Row {
  int micrometres;
  int normal[3], special[3];  // +/- micrometres for coils to 1200, to 1500, over 1500 mm wide
};

// EN 10143:2006, yield strength under 260 MPa: thickness tolerances, normal and special.
TEST_CASE("EN 10143:2006: thickness tolerances by thickness and width") {
  const En10143Row rows[] = {
      {200, {40, 50, 60}, {30, 35, 40}},  {400, {40, 50, 60}, {30, 35, 40}},     {401, {40, 50, 60}, {35, 40, 45}},
      {600, {40, 50, 60}, {35, 40, 45}},  {601, {50, 60, 70}, {40, 45, 50}},     {800, {50, 60, 70}, {40, 45, 50}},
      {801, {60, 70, 80}, {45, 50, 60}},  {1000, {60, 70, 80}, {45, 50, 60}},    {1001, {70, 80, 90}, {50, 60, 70}},
      {1200, {70, 80, 90}, {50, 60, 70}}, {1201, {100, 110, 120}, {60, 70, 80}}, {1600, {100, 110, 120}, {60, 70, 80}}};
  const int widths[3][2] = {{600, 1200}, {1201, 1500}, {1501, 2000}};
  for (const En10143Row& row : rows) {
    for (int column = 0; column < 3; ++column) {
      for (const int width : widths[column]) {
        INFO(row.micrometres << " um, " << width << " mm wide");
        const Length thick = Length::nanometres(1000) * row.micrometres, wide = Length::millimetres(width);
        const Length normal = Length::nanometres(1000) * row.normal[column];
        const Length special = Length::nanometres(1000) * row.special[column];
        CHECK(thicknessTolerance(thick, wide, ThicknessTolerance::Normal) ==
              ToleranceRange{thick - normal, thick + normal});
        CHECK(thicknessTolerance(thick, wide, ThicknessTolerance::Special) ==
              ToleranceRange{thick - special, thick + special});
      }
    }
  }
}

TEST_CASE("EN 10143:2006: a coil 1000 mm wide of 0.50 mm measures 0.46 to 0.54 mm") {
  const auto range =
      thicknessTolerance(Length::nanometres(500'000), Length::millimetres(1000), ThicknessTolerance::Normal);
  CHECK(range == ToleranceRange{Length::nanometres(460'000), Length::nanometres(540'000)});
}

TEST_CASE("EN 10143:2006: what lies outside the rows seen has no tolerance here") {
  for (const int micrometres : {199, 1601}) {
    CHECK_FALSE(thicknessTolerance(Length::nanometres(1000) * micrometres, Length::millimetres(1000),
                                   ThicknessTolerance::Normal));
  }
}

// MBMA Metal Building Systems Manual 2012, Table 9.1: no less than 0.95 of the design thickness. The thicknesses, by
// mil, are of a trade table.
TEST_CASE("MBMA 2012 Table 9.1: least delivered thickness is 0.95 of the design thickness") {
  CHECK(tenThousandths(leastDeliveredThickness(tenThousandthsOfInch(346))) == 329);
  CHECK(tenThousandths(leastDeliveredThickness(tenThousandthsOfInch(451))) == 428);
  CHECK(tenThousandths(leastDeliveredThickness(tenThousandthsOfInch(566))) == 538);
  CHECK(tenThousandths(leastDeliveredThickness(tenThousandthsOfInch(713))) == 677);
}

// EN 508-1 Annex D.1.9: S <= 0.005 w.
TEST_CASE("EN 508-1 D.1.9: ends of a 1000 mm sheet are square within 5 mm, of a 914.4 mm one within 4.57") {
  CHECK(squarenessLimit(Length::millimetres(1000)) == Length::millimetres(5));
  CHECK(squarenessLimit(Length::feet(3)) == Length::nanometres(4'572'000));
}

// EN 508-1 Annex D.1.10: +10/-5 mm for l <= 3000 mm.
TEST_CASE("EN 508-1 D.1.10: a sheet of 2900 mm measures 2895 to 2910") {
  CHECK(lengthTolerance(Length::millimetres(2900)) ==
        ToleranceRange{Length::millimetres(2895), Length::millimetres(2910)});
  CHECK(lengthTolerance(Length::millimetres(3000)) ==
        ToleranceRange{Length::millimetres(2995), Length::millimetres(3010)});
  CHECK_FALSE(lengthTolerance(Length::millimetres(3000) + Length::nanometres(1)));
}

// EN 508-1 Annex D.1.4: +/-2 mm to 50 mm deep, +/-3 to 100, +/-4 above.
TEST_CASE("EN 508-1 D.1.4: tolerance of the pitch by depth") {
  CHECK(pitchTolerance(Length::millimetres(20)) == Length::millimetres(2));
  CHECK(pitchTolerance(Length::millimetres(50)) == Length::millimetres(2));
  CHECK(pitchTolerance(Length::millimetres(51)) == Length::millimetres(3));
  CHECK(pitchTolerance(Length::millimetres(100)) == Length::millimetres(3));
  CHECK(pitchTolerance(Length::millimetres(101)) == Length::millimetres(4));
}

const Profile& shipped(const std::string& id) {
  const auto& profiles = shippedProfiles();
  const auto profile = std::find_if(profiles.begin(), profiles.end(), [&](const Profile& p) { return p.id == id; });
  if (profile == profiles.end()) FAIL(id);
  return *profile;
}

// The developed width of one cover of a sheet, over the cover: whole corrugations, so without what the edges cut off.
double developedWidthFactor(const Profile& profile) {
  double developed = 0;
  for (std::size_t i = 1; i < profile.section.size(); ++i) {
    const SectionPoint &a = profile.section[i - 1], &b = profile.section[i];
    const double from = std::max(a.x.inMillimetres(), 0.0),
                 to = std::min(b.x.inMillimetres(), profile.cover.inMillimetres());
    if (to <= from) continue;
    const double dx = (b.x - a.x).inMillimetres(), dy = (b.y - a.y).inMillimetres();
    developed += std::hypot(dx, dy) * (to - from) / dx;
  }
  return developed / profile.cover.inMillimetres();
}

// ASTM A796/A760/A929, 2-2/3 x 1/2 in corrugations with an inside radius of 11/16 in (from memory, and reproduced by
// geometry): areas 0.619, 0.775, 0.968, 1.356 in2/ft at 0.052, 0.064, 0.079, 0.109 in specified, which carry 0.0478,
// 0.0598, 0.0747, 0.1046 in of bare steel (gauges 18, 16, 14, 12).
TEST_CASE("ASTM A796: the 2-2/3 x 1/2 in corrugation develops 1.080 of its width") {
  const Profile& profile = shipped("corrugated-24-0.5-at-2.667");
  const double factor = developedWidthFactor(profile);
  CHECK(std::abs(factor - 1.080) < 0.0005);
  CHECK(std::abs(factor * 12 * 0.0478 - 0.619) < 0.001);
  CHECK(std::abs(factor * 12 * 0.0598 - 0.775) < 0.001);
  CHECK(std::abs(factor * 12 * 0.0747 - 0.968) < 0.001);
  CHECK(std::abs(factor * 12 * 0.1046 - 1.356) < 0.001);
}

// The same: at 0.052 in specified the tangent is 0.778 in long and stands at 26.65 degrees.
TEST_CASE(
    "ASTM A796: between the curves of the 2-2/3 x 1/2 in corrugation lies a tangent of 0.778 in at 26.65 degrees") {
  const Profile& profile = shipped("corrugated-24-0.5-at-2.667");
  int tangents = 0;
  for (std::size_t i = 2; i + 1 < profile.section.size(); ++i) {  // the first and last tangents are cut by the edges
    const double dx = (profile.section[i].x - profile.section[i - 1].x).inInches();
    const double dy = (profile.section[i].y - profile.section[i - 1].y).inInches();
    if (std::hypot(dx, dy) < 0.2) continue;  // a chord of a curve
    ++tangents;
    // The curves are chords of 4.1 degrees, whose ends stand on the curve: the tangent is whole, to the coordinates'
    // 1/1000 mm.
    CHECK(std::hypot(dx, dy) == Approx(0.778).margin(0.0005));
    CHECK(std::atan2(std::abs(dy), dx) * 180 / M_PI == Approx(26.65).margin(0.05));
  }
  CHECK(tangents == 18);  // two a corrugation, nine corrugations
}

// A published width and lap rule of the sheet-metal trade, whose document is not named where it was collected: a sheet
// with 2-1/2 in corrugations is 26 in wide and covers 24 in with a lap of one corrugation, 21-1/2 in with two.
TEST_CASE("Width and lap rule: 26 in of 2-1/2 in corrugations cover 24 in with one lap, 21-1/2 in with two") {
  Profile sheet;
  sheet.cover = Length::inches(24);
  sheet.over = sheet.under = Length::inches(1);
  sheet.section = {{-sheet.over, Length()}, {sheet.cover + sheet.under, Length()}};
  CHECK(sheet.metalWidth() == Length::inches(26));
  const Profile twoLaps = lappedBy(sheet, Length::inches(2, 32));
  CHECK(twoLaps.cover == Length::inches(21, 32));
  CHECK(twoLaps.metalWidth() == Length::inches(26));
  CHECK(sectionOf(twoLaps).metalWidth == Length::inches(26));
}

}  // namespace
}  // namespace ribwright
