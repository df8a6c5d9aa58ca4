// A line of heights along a wall: the top or the bottom of its sheets, of a cut, of a band.
//
// heightAt is the only place where a sloped height is rounded: measured from the segment's lower end,
//   z = zLow + roundHalfEven((zHigh - zLow) * |u - uLow| / |uHigh - uLow|)
// through 128 bits, so that a wall moved or mirrored gives the same heights moved or mirrored. Beyond its ends a line
// goes straight on. Two vertices at one u are a step; then `side` says which of the two heights is meant.
#pragma once

#include <optional>
#include <vector>

#include "core/units/length.h"

namespace ribwright {

struct FaceVertex {
  Length u, z;
  auto operator<=>(const FaceVertex&) const = default;
};

enum class Beside { Left, Right };  // the height just left of a place, or just right of it

class HeightLine {
 public:
  HeightLine() = default;
  // u never falls, at least one vertex; throws std::invalid_argument otherwise.
  explicit HeightLine(std::vector<FaceVertex> vertices);
  static HeightLine level(Length z);

  Length heightAt(Length u, Beside side) const;
  // Index of the segment that holds just left or just right of u; segments that are one level run, or one slope, differ
  // in index.
  int segmentAt(Length u, Beside side) const;
  const std::vector<FaceVertex>& vertices() const { return vertices_; }
  bool isLevelAt(Length u, Beside side) const;
  // Seen in a mirror: u becomes width - u.
  HeightLine mirrored(Length width) const;
  HeightLine raised(Length by) const;
  HeightLine moved(Length along) const;
  Length highest(Length from, Length to) const;
  Length lowest(Length from, Length to) const;
  bool operator==(const HeightLine&) const = default;

 private:
  std::vector<FaceVertex> vertices_;
};

}  // namespace ribwright
