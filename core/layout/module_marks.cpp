#include "core/layout/module_marks.h"

#include "core/layout/hanging_frame.h"

namespace ribwright {

std::vector<ModuleMark> moduleMarks(const WallLayout& layout) {
  std::vector<ModuleMark> marks;
  const Hand hand = layout.direction.hand;
  for (std::size_t index = 0; index < layout.runs.size(); ++index) {
    const SheetRun& run = layout.runs[index];
    const HangingFrame frame{run.left, run.right, hand};
    int count = 0;
    for (const Module& module : run.modules) {
      const Length u = hand == Hand::LeftToRight ? module.metalRight : module.metalLeft;
      marks.push_back({layout.letter + std::to_string(module.number), static_cast<std::int32_t>(index), u,
                       frame.toHanging(u), module.hung, ++count % plumbCheckEvery == 0});
    }
  }
  return marks;
}

}  // namespace ribwright
