// The wall's diagonals: a wall that leans, or is not as wide as planned.
#include "core/checks/common_practice.h"
#include "core/checks/screw_words.h"
#include "core/checks/wall_look.h"
#include "core/fastening/squareness.h"

namespace ribwright {
namespace {

void checkLean(const WallLook& look, const Squareness& square, std::vector<Finding>& findings) {
  const Length limit = mostLean(square.height), mark = tapeMark(look.job.units);
  if (absolute(square.lean) <= limit) return;
  findings.push_back(look.finding(Grade::Look, "wall-out-of-square", "",
                                  {{"lean", roundTo(absolute(square.lean), mark)},
                                   {"side", phrase(square.lean < Length() ? "square.left" : "square.right")},
                                   {"height", square.height},
                                   {"rising", *look.wall.survey.diagonalRising},
                                   {"falling", *look.wall.survey.diagonalFalling},
                                   {"limit", roundTo(limit, mark)}},
                                  kCommon));
}

void checkWidth(const WallLook& look, const Squareness& square, std::vector<Finding>& findings) {
  const Length planned = look.layout.face.width, off = square.width - planned, mark = tapeMark(look.job.units);
  if (absolute(off) <= mostOffWidth) return;
  findings.push_back(look.finding(Grade::Look, "wall-width-off-plan", "",
                                  {{"width", roundTo(square.width, mark)},
                                   {"planned", planned},
                                   {"off", roundTo(absolute(off), mark)},
                                   {"side", phrase(off < Length() ? "square.less" : "square.more")}},
                                  kCommon));
}

}  // namespace

void checkDiagonals(const WallLook& look, std::vector<Finding>& findings) {
  if (!look.layout.sheeted) return;
  const auto square = squareness(look.wall, look.layout.face);
  if (!square) return;
  checkLean(look, *square, findings);
  checkWidth(look, *square, findings);
}

}  // namespace ribwright
