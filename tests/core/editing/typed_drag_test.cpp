// What is typed while something is dragged.
#include "core/editing/typed_drag.h"

#include <catch2/catch.hpp>

#include "tests/core/editing/length_styles.h"
#include "tests/core/tape_lengths.h"

using namespace ribwright;

namespace {

TypedDrag typed(std::string_view text, const LengthStyle& style = feetInches) {
  const auto read = parseTypedDrag(text, style);
  INFO(text);
  REQUIRE(read);
  return read.value();
}

FacePoint end(std::string_view text, FacePoint pointer, DragFor drag = DragFor::Moving) {
  return endOfDrag(typed(text), {ft(10), ft(4)}, pointer, drag);
}

}  // namespace

TEST_CASE("one length is one, two are across and up, with a sign of equality they are places") {
  CHECK(typed("4' 6") == TypedDrag{false, ft(4, 6), {}, {}});
  CHECK(typed(" 2 * 4' ") == TypedDrag{false, ft(8), {}, {}});
  for (const char* text : {"4' x 3'", "4'x3'", "4' X 3'", "4', 3'", "4'; 3'", "4' \u00d7 3'", "48 x 36"})
    CHECK(typed(text) == TypedDrag{false, {}, ft(4), ft(3)});
  CHECK(typed("4' x") == TypedDrag{false, {}, ft(4), {}});
  CHECK(typed("x 3'") == TypedDrag{false, {}, {}, ft(3)});
  CHECK(typed("= 12' 6") == TypedDrag{true, ft(12, 6), {}, {}});
  CHECK(typed("=12' x 3'") == TypedDrag{true, {}, ft(12), ft(3)});
}

TEST_CASE("with a decimal comma a comma stands within a length") {
  CHECK(typed("1,5 m", metric) == TypedDrag{false, Length::millimetres(1500), {}, {}});
  CHECK(typed("1,5 m; 900", metric) == TypedDrag{false, {}, Length::millimetres(1500), Length::millimetres(900)});
}

TEST_CASE("what cannot be read is refused") {
  for (const char* text : {"", " ", "=", "x", "4 fo", "4' x 3' x 2'", "4' x fo", "= x"}) {
    INFO(text);
    const auto read = parseTypedDrag(text, feetInches);
    REQUIRE_FALSE(read);
    CHECK_FALSE(read.faults().front().message.empty());
  }
}

TEST_CASE("one length goes along the longer way of the drag, to the side of the pointer") {
  CHECK(end("4'", {ft(13), ft(5)}) == FacePoint{ft(14), ft(4)});
  CHECK(end("4'", {ft(7), ft(5)}) == FacePoint{ft(6), ft(4)});
  CHECK(end("4'", {ft(11), ft(1)}) == FacePoint{ft(10), ft(0)});
  CHECK(end("-4'", {ft(13), ft(5)}) == FacePoint{ft(6), ft(4)});
  CHECK(end("4'", {ft(10), ft(4)}) == FacePoint{ft(14), ft(4)});
}

TEST_CASE("while drawing the other way stays at the pointer, while moving where the drag began") {
  CHECK(end("4'", {ft(13), ft(5)}, DragFor::Drawing) == FacePoint{ft(14), ft(5)});
  CHECK(end("4' x", {ft(13), ft(5)}) == FacePoint{ft(14), ft(5)});
  CHECK(end("x 3'", {ft(13), ft(2)}) == FacePoint{ft(13), ft(1)});
  CHECK(end("4' x 3'", {ft(7), ft(5)}) == FacePoint{ft(6), ft(7)});
}

TEST_CASE("a place is where the drag ends, whatever it began at") {
  CHECK(end("= 12' 6", {ft(13), ft(5)}) == FacePoint{ft(12, 6), ft(4)});
  CHECK(end("= 12' 6", {ft(11), ft(9)}) == FacePoint{ft(10), ft(12, 6)});
  CHECK(end("= 2' x 7'", {ft(13), ft(5)}) == FacePoint{ft(2), ft(7)});
}
