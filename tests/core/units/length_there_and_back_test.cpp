// What is written is read again, the same: every mark of a tape, every nanometre of a stretch, and at random over the
// range.
#include <random>

#include "tests/core/units/length_samples.h"

namespace ribwright {
namespace {

// One assertion for many lengths; the first that does not come back is named.
struct ThereAndBack {
  std::int64_t tried = 0;
  std::string firstLost;

  void lost(Length length, const std::string& text, const LengthStyle& style) {
    if (!firstLost.empty()) return;
    firstLost = std::to_string(length.nanometres()) + " nm written as " + text;
    firstLost += style.units == UnitSystem::FeetInches ? " in feet and inches" : " in millimetres";
    firstLost += style.decimalSign == ',' ? " with a comma" : " with a point";
  }
  void exact(Length length, const std::string& text, const LengthStyle& style) {
    ++tried;
    const auto found = parseLength(text, style);
    if (!found || found.value() != length) lost(length, text, style);
  }
  // Whoever reads a file or a table: exact text is read by any default unit, table decimals by their own.
  void files(Length length) {
    exact(length, exactText(length, UnitSystem::FeetInches), kFeetInches);
    exact(length, exactText(length, UnitSystem::Millimetres), kFeetInches);
    exact(length, exactText(length, UnitSystem::FeetInches), kMillimetres);
    exact(length, exactText(length, UnitSystem::Millimetres), kMillimetres);
    exact(length, decimalInches(length), kFeetInches);
    exact(length, decimalMillimetres(length), kMillimetres);
  }
  // show(parse(show(x))) = show(x), and what is shown is off by no more than half of its last figure.
  void shown(Length length, const LengthStyle& style, int denominator, int decimals, Length halfStep) {
    ++tried;
    const std::string text = shownText(length, style, denominator, decimals);
    const auto found = parseLength(text, style);
    if (!found || shownText(found.value(), style, denominator, decimals) != text) return lost(length, text, style);
    const Length off = found.value() - length;
    if (off > halfStep || -off > halfStep) lost(length, text, style);
  }
  void people(Length length) {
    for (const LengthStyle& style : kStyles) {
      const bool feet = style.units == UnitSystem::FeetInches;
      for (int figure = 0; figure <= 6; ++figure) {
        Length halfStep = Length::nanometres(feet ? 12'700'000 >> figure : 500'000);
        for (int i = 0; !feet && i < figure; ++i) halfStep = Length::nanometres(halfStep.nanometres() / 10);
        // A 64th halved has half a nanometre.
        if (feet && figure == 6) halfStep += Length::nanometres(1);
        shown(length, style, feet ? 1 << figure : 16, feet ? 0 : figure, halfStep);
      }
    }
  }
};

TEST_CASE("every sixty-fourth of an inch within 100 ft either way reads back exactly") {
  ThereAndBack run;
  for (std::int64_t count = -100 * 12 * 64; count <= 100 * 12 * 64; ++count) run.files(Length::sixtyFourths(count));
  CHECK(run.firstLost == "");
  CHECK(run.tried == 6 * (2 * 76'800 + 1));
}

TEST_CASE("every nanometre beside a few marks reads back exactly") {
  ThereAndBack run;
  for (const Length middle : {Length(), Length::feet(12, 3, 32), -Length::feet(12), Length::millimetres(8534)})
    for (std::int64_t off = -40'000; off <= 40'000; ++off) run.files(middle + Length::nanometres(off));
  CHECK(run.firstLost == "");
}

TEST_CASE("every nanometre of three millimetres reads back exactly") {
  ThereAndBack run;
  for (std::int64_t count = 0; count <= 3'000'000; ++count)
    run.exact(Length::nanometres(count), exactText(Length::nanometres(count), UnitSystem::FeetInches), kFeetInches);
  for (std::int64_t count = 0; count <= 1'000'000; ++count)
    run.exact(Length::nanometres(-count), decimalInches(Length::nanometres(-count)), kFeetInches);
  CHECK(run.firstLost == "");
}

TEST_CASE("random lengths of every size read back exactly") {
  std::mt19937_64 random(1959);
  ThereAndBack run;
  for (int i = 0; i < 100'000; ++i) {
    const int bits = 1 + static_cast<int>(random() % 63);
    const auto count = static_cast<std::int64_t>(random() >> (64 - bits));
    run.files(Length::nanometres(i % 2 == 0 ? count : -count));
  }
  for (const std::int64_t count : {INT64_MAX, INT64_MIN, INT64_MIN + 1}) run.files(Length::nanometres(count));
  CHECK(run.firstLost == "");
}

TEST_CASE("what is shown can be typed back, in every unit, decimal sign and fineness") {
  std::mt19937_64 random(1893);
  ThereAndBack run;
  for (int i = 0; i < 20'000; ++i) {
    const auto size = static_cast<std::int64_t>(random() >> (4 + random() % 59));
    run.people(Length::nanometres(i % 2 == 0 ? size : -size));
  }
  for (std::int64_t half = -12 * 128; half <= 12 * 128; ++half) run.people(scaled(Length::sixtyFourths(half), 1, 2));
  CHECK(run.firstLost == "");
}

// Independent of the writer's arithmetic: the decimal is taken apart by long division here.
TEST_CASE("decimal inches are the shortest: one figure less reads another nanometre") {
  std::mt19937_64 random(26);
  for (int i = 0; i < 20'000; ++i) {
    const auto count = static_cast<std::int64_t>(random() >> (10 + random() % 50));
    std::string text = decimalInches(Length::nanometres(count));
    const std::size_t point = text.find('.');
    if (point == std::string::npos) continue;
    INFO(text);
    REQUIRE(text.size() - point - 1 <= 9);
    REQUIRE(text.back() != '0');
    // Both neighbours with a figure less: the cut one and the next above.
    const std::string cut = text.substr(0, text.size() - 1);
    Int128 figures = 0;
    Int128 below = 1;
    for (std::size_t k = 0; k < cut.size(); ++k) {
      if (k == point) continue;
      figures = figures * 10 + (cut[k] - '0');
      if (k > point) below *= 10;
    }
    for (const Int128 candidate : {figures, figures + 1})
      if (roundHalfEven(candidate * 25'400'000, below) == count) FAIL("shorter would do");
  }
}

}  // namespace
}  // namespace ribwright
