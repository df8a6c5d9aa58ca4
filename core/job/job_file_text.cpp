#include "core/job/job_file_text.h"

#include <algorithm>
#include <charconv>
#include <optional>

#include "core/job/job_file_joined.h"
#include "core/units/typed_text.h"

namespace ribwright {
namespace {

constexpr int steepestRoof = 50;
constexpr Angle steepestRoofAngle = Angle::degrees(89);

bool isFigure(char c) { return c >= '0' && c <= '9'; }

Fault noSlope(std::string_view text, std::string_view why) {
  return Fault{"", joined(inQuotes(text), " is no slope: ", why)};
}

constexpr std::string_view slopeRemedy = "write rise and run as 4:12 or 150 in 250, or an angle as 9.5 deg";

std::optional<Length> slopeSide(std::string_view text, UnitSystem units) {
  const auto length = parseLength(trimmed(text), LengthStyle{units, '.'});
  if (!length) return std::nullopt;
  return length.value();
}

// "150 in 250" is a rise in a run, but `in` may also be the unit of either: the one way to divide the text that gives
// two lengths counts.
std::optional<Slope> riseAndRun(std::string_view text, UnitSystem units) {
  const std::string_view divider = text.find(':') == std::string_view::npos ? " in " : ":";
  std::optional<Slope> found;
  for (auto at = text.find(divider); at != std::string_view::npos; at = text.find(divider, at + 1)) {
    const auto rise = slopeSide(text.substr(0, at), units);
    const auto run = slopeSide(text.substr(at + divider.size()), units);
    if (!rise || !run) continue;
    if (found) return std::nullopt;
    found = Slope{Slope::As::RisePerRun, *rise, *run, {}};
  }
  return found;
}

Outcome<Slope> angledSlope(std::string_view text, std::string_view degrees) {
  const auto angle = degreesFromText(trimmed(degrees));
  if (!angle) return noSlope(text, angle.faults().front().message);
  Slope slope;
  slope.as = Slope::As::Angle;
  slope.angle = angle.value();
  if (slope.angle < Angle{}) return noSlope(text, "it falls; state the lower eave as the first side");
  if (slope.angle > steepestRoofAngle)
    return noSlope(text, "it is steeper than 89 degrees; write the roof's own slope");
  return slope;
}

std::string decimal(Length length, UnitSystem units) {
  return units == UnitSystem::FeetInches ? decimalInches(length) : decimalMillimetres(length);
}

}  // namespace

Outcome<Length> fileLength(std::string_view text, UnitSystem units) {
  auto inches = parseLength(text, LengthStyle{UnitSystem::FeetInches, '.'});
  const auto millimetres = parseLength(text, LengthStyle{UnitSystem::Millimetres, '.'});
  if (inches.ok() && millimetres.ok() && inches.value() == millimetres.value()) return inches;
  constexpr std::string_view remedy = "write feet and inches as 7' 6\" or millimetres as 2286 mm";
  if (inches.ok() || millimetres.ok()) return Fault{"", joined(inQuotes(text), " has no unit; ", remedy)};
  // A reason brings its own remedy; without one the parser would offer bare numbers too.
  const std::string& message = (units == UnitSystem::FeetInches ? inches : millimetres).faults().front().message;
  if (message.find(" is no length: ") != std::string::npos) return Fault{"", message};
  return Fault{"", joined(inQuotes(text), " is no length; ", remedy)};
}

std::string slopeText(const Slope& slope, UnitSystem units) {
  if (slope.as == Slope::As::Angle) return joined(degreesText(slope.angle), " deg");
  const std::string_view divider = units == UnitSystem::FeetInches ? ":" : " in ";
  return joined(decimal(slope.rise, units), divider, decimal(slope.run, units));
}

Outcome<Slope> slopeFromText(std::string_view text, UnitSystem units) {
  const std::string_view typed = trimmed(text);
  for (const std::string_view mark : {"degrees", "degree", "deg", "°"}) {
    if (typed.ends_with(mark)) return angledSlope(text, typed.substr(0, typed.size() - mark.size()));
  }
  const auto slope = riseAndRun(typed, units);
  if (!slope) return noSlope(text, slopeRemedy);
  if (slope->run <= Length()) return noSlope(text, joined("its run is not more than 0; ", slopeRemedy));
  if (slope->rise < Length()) return noSlope(text, "it falls; state the lower eave as the first side");
  const Length far = Length::millimetres(10'000'000);
  if (slope->rise > far || slope->run > far)
    return noSlope(text, "rise and run are at most 10 km; write smaller numbers");
  if (slope->rise > slope->run * steepestRoof) {
    return noSlope(text, "it is steeper than 50 in 1; write the roof's own slope");
  }
  return *slope;
}

std::string degreesText(Angle angle) {
  const bool negative = angle.microdegrees < 0;
  const auto size =
      negative ? 0 - static_cast<std::uint64_t>(angle.microdegrees) : static_cast<std::uint64_t>(angle.microdegrees);
  const std::string text = joined(negative ? "-" : "", size / 1'000'000);
  std::string behind = std::to_string(size % 1'000'000);
  behind.insert(0, 6 - behind.size(), '0');
  behind.erase(behind.find_last_not_of('0') + 1);
  return joined(text, behind.empty() ? "" : ".", behind);
}

Outcome<Angle> degreesFromText(std::string_view digits) {
  const Fault plain{"",
                    std::string(digits) + " is no angle here; write plain degrees with at most six decimals, as 9.5"};
  const bool negative = digits.starts_with('-');
  std::string_view left = negative ? digits.substr(1) : digits;
  std::int64_t count = 0;
  int decimals = -1;  // -1: before the point
  std::size_t whole = 0;
  for (const char c : left) {
    if (c == '.' && decimals < 0 && whole > 0) {
      decimals = 0;
      continue;
    }
    if (!isFigure(c)) return plain;
    if (decimals < 0 && ++whole > 7) return plain;
    if (decimals >= 0 && ++decimals > 6) return plain;
    count = count * 10 + (c - '0');
  }
  if (whole == 0 || decimals == 0) return plain;
  for (int i = std::max(decimals, 0); i < 6; ++i) count *= 10;
  return Angle{negative ? -count : count};
}

std::string pathKey(std::string_view key) {
  const auto plain = [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || isFigure(c) || c == '_'; };
  const bool word = !key.empty() && key.size() <= 60 && std::all_of(key.begin(), key.end(), plain);
  return word ? std::string(key) : inQuotes(key);
}

namespace {

// Edit distance by the usual table, one row at a time.
std::size_t lettersToChange(std::string_view a, std::string_view b) {
  std::vector<std::size_t> row(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j) row[j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    std::size_t diagonal = row[0];
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t above = row[j];
      row[j] = std::min({above + 1, row[j - 1] + 1, diagonal + (a[i - 1] == b[j - 1] ? 0 : 1)});
      diagonal = above;
    }
  }
  return row[b.size()];
}

}  // namespace

std::string_view nearestOf(std::string_view text, const std::vector<std::string_view>& candidates) {
  const std::string_view start = text.substr(0, 100);
  std::string_view nearest;
  std::size_t fewest = SIZE_MAX;
  for (const std::string_view candidate : candidates) {
    const std::size_t changes = lettersToChange(start, candidate);
    if (changes >= fewest) continue;
    fewest = changes;
    nearest = candidate;
  }
  return nearest;
}

std::size_t characterCount(std::string_view utf8) {
  return static_cast<std::size_t>(
      std::count_if(utf8.begin(), utf8.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

}  // namespace ribwright
