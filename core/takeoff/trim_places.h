// Every place of a job that is trimmed, with its size: edges of openings, corners, tops, bases and band limits.
//
// What is measured where is said at TrimRule (core/job/trim.h). Places are in the wall face seen from outside: u to the
// right from the left corner, z up from the top of concrete.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/layout/wall_layout.h"

namespace ribwright {

struct TrimPlace {
  enum class Side { None, Left, Right };  // of the opening, of its jambs

  TrimRule::Where where = TrimRule::Where::Head;
  std::string wall;     // its letter; at a corner the wall whose right corner it is
  std::string other{};  // at a corner: the wall whose left corner it is; otherwise empty
  std::string opening{};
  std::optional<Opening::Kind> kind{};  // of the opening
  Side side = Side::None;
  int number = 0;  // 1, 2 ... from the left, of several of one kind on one wall that no opening tells apart; else 0
  Length size;     // > 0
  // Where it lies on the face of `wall`, from left to right, upright ones from bottom to top. A corner has the u of
  // that wall's right corner; on `other` it is 0.
  FaceVertex from{}, to{};
  bool operator==(const TrimPlace&) const = default;

  bool upright() const { return from.u == to.u; }
  bool isCorner() const { return !other.empty(); }
};

// Wall by wall in the order of `layouts`: openings as they are stated, each sill, jambs, head, covers; tops, bases,
// transitions from the left; then the corners of the outline, after wall A first. Layouts of walls that were not laid
// out, or carry no sheets, have none. Throws std::invalid_argument when a layout's wall is not in the job.
std::vector<TrimPlace> trimPlaces(const Job& job, const std::vector<const WallLayout*>& layouts);

}  // namespace ribwright
