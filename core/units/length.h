// Exact lengths.
//
// Unit: nanometres in a signed 64-bit integer, so that both 1/64 in (396 875 nm) and 0.000001 mm are whole.
// 1 in = 25.4 mm exactly (Federal Register, 1 July 1959, "Refinement of Values for the Yard and the Pound").
// Range: every sum, difference and multiple is checked; leaving the 64-bit range throws std::overflow_error.
// A length never converts from a bare number, and a length times a length is an Area (see area.h).
#pragma once

#include <compare>
#include <cstdint>
#include <stdexcept>

namespace ribwright {

__extension__ typedef __int128 Int128;

class Length {
 public:
  constexpr Length() = default;

  static constexpr Length nanometres(std::int64_t count) { return Length(count); }
  static constexpr Length millimetres(std::int64_t count) { return Length(1'000'000) * count; }
  static constexpr Length sixtyFourths(std::int64_t count) { return Length(396'875) * count; }
  static constexpr Length inches(std::int64_t whole, std::int64_t sixtyFourthsMore = 0) {
    return sixtyFourths(64) * whole + sixtyFourths(sixtyFourthsMore);
  }
  static constexpr Length feet(std::int64_t whole, std::int64_t inchesMore = 0,
                               std::int64_t sixtyFourthsMore = 0) {
    return inches(12) * whole + inches(inchesMore, sixtyFourthsMore);
  }

  constexpr std::int64_t nanometres() const { return nanometres_; }
  // For pixels, fits and weights only; never to decide where metal is.
  constexpr double inMillimetres() const { return static_cast<double>(nanometres_) / 1e6; }
  constexpr double inInches() const { return static_cast<double>(nanometres_) / 25.4e6; }
  constexpr double inFeet() const { return static_cast<double>(nanometres_) / 304.8e6; }
  constexpr double inMetres() const { return static_cast<double>(nanometres_) / 1e9; }

  constexpr auto operator<=>(const Length&) const = default;

  friend constexpr Length operator+(Length a, Length b) {
    std::int64_t sum = 0;
    if (__builtin_add_overflow(a.nanometres_, b.nanometres_, &sum)) overflow();
    return Length(sum);
  }
  friend constexpr Length operator-(Length a, Length b) {
    std::int64_t difference = 0;
    if (__builtin_sub_overflow(a.nanometres_, b.nanometres_, &difference)) overflow();
    return Length(difference);
  }
  friend constexpr Length operator*(Length a, std::int64_t times) {
    std::int64_t product = 0;
    if (__builtin_mul_overflow(a.nanometres_, times, &product)) overflow();
    return Length(product);
  }
  friend constexpr Length operator*(std::int64_t times, Length a) { return a * times; }
  constexpr Length operator-() const { return Length() - *this; }
  constexpr Length& operator+=(Length other) { return *this = *this + other; }
  constexpr Length& operator-=(Length other) { return *this = *this - other; }

  // As long, whichever way it points.
  friend constexpr Length absolute(Length length) { return length.nanometres_ < 0 ? -length : length; }

  // How many whole `part`s fit (towards minus infinity), and what is left (0 <= rest < part).
  // Throws std::domain_error unless part > 0.
  friend constexpr std::int64_t wholeTimes(Length whole, Length part) {
    if (part.nanometres_ <= 0) throw std::domain_error("length divided by nothing");
    const std::int64_t quotient = whole.nanometres_ / part.nanometres_;
    return quotient - (whole.nanometres_ % part.nanometres_ < 0 ? 1 : 0);
  }
  friend constexpr Length rest(Length whole, Length part) {
    return whole - part * wholeTimes(whole, part);
  }
  // The smallest multiple of `step` that is not less than `length`.
  friend constexpr Length roundUp(Length length, Length step) {
    return step * -wholeTimes(-length, step);
  }
  // Half of it; an odd nanometre falls to the lower side.
  friend constexpr Length half(Length length) {
    return Length(wholeTimes(length, Length(2)));
  }

 private:
  explicit constexpr Length(std::int64_t nanometres) : nanometres_(nanometres) {}
  [[noreturn]] static void overflow() { throw std::overflow_error("length out of range"); }

  std::int64_t nanometres_ = 0;
};

// ASTM E29 section 6: nearest, and a tie goes to the even neighbour. Throws std::domain_error when below == 0.
constexpr Int128 roundHalfEven(Int128 above, Int128 below) {
  if (below == 0) throw std::domain_error("division by nothing");
  if (below < 0) {
    above = -above;
    below = -below;
  }
  Int128 quotient = above / below;
  Int128 remainder = above % below;
  if (remainder < 0) {
    remainder += below;
    quotient -= 1;
  }
  const Int128 twice = remainder * 2;
  if (twice > below || (twice == below && quotient % 2 != 0)) quotient += 1;
  return quotient;
}

// `length` times above/below, rounded half to even; the product goes through 128 bits.
constexpr Length scaled(Length length, std::int64_t above, std::int64_t below) {
  const Int128 result = roundHalfEven(Int128(length.nanometres()) * above, below);
  if (result > INT64_MAX || result < INT64_MIN) throw std::overflow_error("length out of range");
  return Length::nanometres(static_cast<std::int64_t>(result));
}

// The nearest multiple of `step`, a tie to the even multiple (ASTM E29). Throws unless step > 0.
constexpr Length roundTo(Length length, Length step) {
  if (step <= Length()) throw std::domain_error("length rounded to nothing");
  return step * static_cast<std::int64_t>(roundHalfEven(length.nanometres(), step.nanometres()));
}

}  // namespace ribwright
