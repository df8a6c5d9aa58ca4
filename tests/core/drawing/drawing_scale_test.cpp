#include "core/drawing/drawing_scale.h"

#include <catch2/catch.hpp>

#include "core/drawing/paper.h"

using namespace ribwright;

// ANSI Y14.1: A is 8.5 by 11 in, B is 11 by 17 in. ISO 216: A4 is 210 by 297 mm, A3 is 297 by 420 mm.
TEST_CASE("papers lie and have their standard's size") {
  CHECK(extentOf(PaperSize::Letter).width == Length::inches(11).inMillimetres());
  CHECK(extentOf(PaperSize::Letter).height == Length::inches(8, 32).inMillimetres());
  CHECK(extentOf(PaperSize::Tabloid).width == Length::inches(17).inMillimetres());
  CHECK(extentOf(PaperSize::Tabloid).height == Length::inches(11).inMillimetres());
  CHECK(extentOf(PaperSize::A4).width == 297);
  CHECK(extentOf(PaperSize::A4).height == 210);
  CHECK(extentOf(PaperSize::A3).width == 420);
  CHECK(extentOf(PaperSize::A3).height == 297);
}

TEST_CASE("every paper is found by its name, and no other word names one") {
  for (const PaperSize paper : {PaperSize::Letter, PaperSize::Tabloid, PaperSize::A4, PaperSize::A3}) {
    CHECK(paperNamed(nameOf(paper)) == paper);
  }
  CHECK_FALSE(paperNamed("A4"));
  CHECK_FALSE(paperNamed("legal"));
  CHECK_FALSE(paperNamed(""));
}

TEST_CASE("scales of feet-inches jobs are said as fractions of an inch to the foot") {
  std::vector<std::string> words;
  for (const DrawingScale& scale : usualScales(UnitSystem::FeetInches)) {
    words.push_back(scaleWords(scale, UnitSystem::FeetInches, Words::of("en")));
  }
  CHECK(words == std::vector<std::string>{"1/2 in = 1 ft (1:24)", "3/8 in = 1 ft (1:32)", "1/4 in = 1 ft (1:48)",
                                          "3/16 in = 1 ft (1:64)", "1/8 in = 1 ft (1:96)", "3/32 in = 1 ft (1:128)",
                                          "1/16 in = 1 ft (1:192)"});
}

TEST_CASE("scales of metric jobs are said as ratios") {
  CHECK(scaleWords({75}, UnitSystem::Millimetres, Words::of("en")) == "1:75");
  CHECK(usualScales(UnitSystem::Millimetres).front() == DrawingScale{20});
  CHECK(usualScales(UnitSystem::Millimetres).back() == DrawingScale{200});
}

TEST_CASE("40 ft at 1/4 in to the foot is 10 in on paper") {
  CHECK(onPaper(Length::feet(40), {48}) == Approx(Length::inches(10).inMillimetres()));
  CHECK(onPaper(Length::millimetres(5000), {50}) == Approx(100));
}

TEST_CASE("the scale bar stands for whole feet or tenths of a metre at every usual scale") {
  for (const DrawingScale& scale : usualScales(UnitSystem::FeetInches)) {
    CHECK(rest(scaleBarOnPaper(UnitSystem::FeetInches) * scale.below, Length::feet(1)) == Length());
  }
  for (const DrawingScale& scale : usualScales(UnitSystem::Millimetres)) {
    CHECK(rest(scaleBarOnPaper(UnitSystem::Millimetres) * scale.below, Length::millimetres(100)) == Length());
  }
}
