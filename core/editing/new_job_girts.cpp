#include "core/editing/new_job_girts.h"

#include "core/job/job_file_tree.h"

namespace ribwright {

namespace {

// Nothing that is hung needs a girt this near to the eave purlin or the rake angle (common practice).
constexpr Length nearTop = Length::feet(1);

}  // namespace

std::vector<Length> sideGirtsThatFit(const NewJobRead& read, const WallFace& face) {
  std::vector<Length> there;
  const Length top = face.steel.highest(Length(), face.width);
  for (const Length height : read.sideGirts) {
    if (height < top) there.push_back(height);
  }
  return there;
}

GirtHeights endGirtHeights(const NewJobRead& read, const WallFace& face) {
  if (read.endGirtsStated) return {read.endGirts, read.endGirts};
  const Length top = face.steel.highest(Length(), face.width);
  GirtHeights heights;
  for (const Length height : read.sideGirts) {
    if (height < top) heights.there.push_back(height);
  }
  const std::size_t typed = heights.there.size();
  if (typed < read.sideGirts.size() || typed < 2) return heights;
  const Length spacing = heights.there[typed - 1] - heights.there[typed - 2];
  // Too many are told of by the job file's own limit.
  while (heights.there.size() <= mostItems && heights.there.back() + spacing + nearTop <= top)
    heights.there.push_back(heights.there.back() + spacing);
  return heights;
}

}  // namespace ribwright
