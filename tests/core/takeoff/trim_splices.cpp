// Pieces longer than what is sold.
#include <catch2/catch.hpp>

#include "core/takeoff/trim_splices.h"
#include "trimmed_by_hand.h"

namespace ribwright {
namespace {

Trim stocked(Lengths lengths) {
  Trim trim;
  trim.stocked = std::move(lengths);
  return trim;
}

Lengths lengthsOf(const std::vector<TrimPart>& parts) {
  Lengths lengths;
  for (const TrimPart& part : parts) lengths.push_back(part.length);
  return lengths;
}

TEST_CASE("What fits the longest stocked length is one part") {
  const Trim trim = stocked({feet(10, 2), feet(20, 2)});
  CHECK(lengthsOf(splicedParts(feet(20, 2), trim)) == Lengths{feet(20, 2)});
  CHECK(splicedParts(feet(20, 2) + Length::nanometres(1), trim).size() == 2);
}

TEST_CASE("60 ft of eave from 20 ft 2 in, lapped 2 in: two whole lengths and 20 ft") {
  const auto parts = splicedParts(feet(60), stocked({feet(10, 2), feet(20, 2)}));
  CHECK(lengthsOf(parts) == Lengths{feet(20, 2), feet(20, 2), feet(20)});
  CHECK(parts[1].at == feet(20));
  CHECK(parts[2].at + parts[2].length == feet(60));
}

TEST_CASE("A rest under 1 ft is never cut: the last two are even") {
  const Trim trim = stocked({feet(10, 2)});
  CHECK(lengthsOf(splicedParts(feet(20, 10), trim)) == Lengths{feet(10, 2), feet(5, 6), feet(5, 6)});
  CHECK(lengthsOf(splicedParts(feet(21), trim)) == Lengths{feet(10, 2), feet(10, 2), feet(1)});
  CHECK(lengthsOf(splicedParts(feet(10, 2) + Length::nanometres(1), trim)) ==
        Lengths{feet(5, 2), feet(5, 2) + Length::nanometres(1)});
}

TEST_CASE("Ends that are trimmed off are not part of what can be cut") {
  Trim trim = stocked({feet(10, 4)});
  trim.endTrim = inch(2);
  CHECK(longestPart(trim) == feet(10, 2));
  CHECK(lengthsOf(splicedParts(feet(20), trim)) == Lengths{feet(10, 2), feet(10)});
}

TEST_CASE("A trim that is not stocked, or only in stubs, comes in one length") {
  CHECK(longestPart(stocked({})) == Length());
  CHECK(lengthsOf(splicedParts(feet(60), stocked({}))) == Lengths{feet(60)});
  CHECK(lengthsOf(splicedParts(feet(60), stocked({inch(11)}))) == Lengths{feet(60)});
  Trim wideLap = stocked({feet(10)});
  wideLap.spliceLap = feet(6);
  CHECK(lengthsOf(splicedParts(feet(60), wideLap)) == Lengths{feet(60)});
}

TEST_CASE("Whatever the length, the parts are the fewest and add up to it") {
  const Trim trim = stocked({feet(10)});
  for (int inches = 1; inches < 700; ++inches) {
    const auto parts = splicedParts(inch(inches), trim);
    Length sum, next;
    for (const TrimPart& part : parts) {
      CHECK(part.length > Length());
      CHECK(part.length <= feet(10));
      CHECK(part.at == next);
      next += part.length - trim.spliceLap;
      sum += part.length;
    }
    const auto splices = static_cast<std::int64_t>(parts.size()) - 1;
    CHECK(sum == inch(inches) + trim.spliceLap * splices);
    if (splices > 0) CHECK(feet(10) * splices - trim.spliceLap * (splices - 1) < inch(inches));
  }
}

TEST_CASE("A rake of 20 ft 10-9/16 in comes in a whole length and a rest that is long enough") {
  const Trimmed trimmed(workshop());
  const TrimPiece& rake = trimmed.piece("B rake 1");  // with 4 in for its plumb cuts: 21 ft 2-9/16 in
  REQUIRE(rake.parts.size() == 2);
  CHECK(rake.parts[0].length == feet(20, 2));
  CHECK(rake.parts[1].length == rake.length - feet(20));
  CHECK(roundTo(rake.parts[1].length, Length::sixtyFourths(4)) == Length::feet(1, 2, 36));
}

}  // namespace
}  // namespace ribwright
