// What a person types while dragging or drawing, in place of where the pointer is.
//
//   4' 6"         one length: so far along the main way of the drag, the longer of its two ways on the face
//   4' x 3'       two lengths, between them x, × or ; (with a decimal point also a comma): so far across and so far up
//   4' 6 x        a side that is left blank stays where the pointer is; so does the other one of "x 3'"
//   = 12' 6"      with a sign of equality before it: not how far, but the place itself: u, or z, or both
//
// With one length the other way stays where the drag began when something is moved, and at the pointer when it is
// drawn. How far is measured from the start of the drag to the side that the pointer is on; a negative length goes to
// the other side. Each length as parseLength reads it in the job's own style.
#pragma once

#include <optional>
#include <string_view>

#include "core/job/building.h"
#include "core/units/length_text.h"
#include "core/units/outcome.h"

namespace ribwright {

struct TypedDrag {
  bool place = false;                // the lengths are places, not how far
  std::optional<Length> main;        // one length
  std::optional<Length> across, up;  // two, of which one may be absent
  bool operator==(const TypedDrag&) const = default;
};

// Faults: nothing typed; a length that cannot be read; more than two.
Outcome<TypedDrag> parseTypedDrag(std::string_view text, const LengthStyle& style);

enum class DragFor { Moving, Drawing };
// Where the drag ends that began at `start` with the pointer now at `pointer`.
FacePoint endOfDrag(const TypedDrag& typed, const FacePoint& start, const FacePoint& pointer, DragFor drag);

}  // namespace ribwright
