// Exact areas.
//
// Unit: half square nanometres in a signed 128-bit integer, so that the area of a trapezoid with whole corners is whole.
// 64-bit products of nanometres overflow beyond 3 m by 3 m; that is why a length times a length is this type.
// Range: any product of two Lengths fits (2^127 half nm2); a sum of 2^0 .. 10^6 such wall-sized areas stays far inside.
#pragma once

#include <compare>

#include "core/units/length.h"

namespace ribwright {

class Area {
 public:
  constexpr Area() = default;

  static constexpr Area halfSquareNanometres(Int128 count) { return Area(count); }
  // Two upright parallel sides `left` and `right`, `width` apart.
  static constexpr Area trapezoid(Length left, Length right, Length width) {
    return Area(Int128((left + right).nanometres()) * width.nanometres());
  }

  constexpr Int128 halfSquareNanometres() const { return halves_; }
  // For tables only (areas are printed with two decimals).
  constexpr double inSquareMetres() const { return static_cast<double>(halves_) / 2e18; }
  constexpr double inSquareFeet() const { return static_cast<double>(halves_) / (2 * 304.8e6 * 304.8e6); }

  constexpr auto operator<=>(const Area&) const = default;
  friend constexpr Area operator+(Area a, Area b) { return Area(a.halves_ + b.halves_); }
  friend constexpr Area operator-(Area a, Area b) { return Area(a.halves_ - b.halves_); }
  friend constexpr Area operator*(Area a, int times) { return Area(a.halves_ * times); }
  constexpr Area& operator+=(Area other) { return *this = *this + other; }

 private:
  explicit constexpr Area(Int128 halves) : halves_(halves) {}
  Int128 halves_ = 0;
};

constexpr Area operator*(Length a, Length b) {
  return Area::halfSquareNanometres(Int128(a.nanometres()) * b.nanometres() * 2);
}

}  // namespace ribwright
