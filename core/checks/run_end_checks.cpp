// The ends of runs: rips and corners.
#include "core/checks/screw_words.h"

namespace ribwright {

namespace {

void checkRips(const WallLook& look, const RunLook& one, std::vector<Finding>& findings) {
  const Length limit = look.job.settings.cornerTrimLeg + Length::inches(2);
  for (const Module& module : one.run->modules) {
    if (!module.startRipped && !module.leadRipped) continue;
    const std::string mark = look.wall.letter + std::to_string(module.number);
    const Length width = module.metalRight - module.metalLeft;
    if (width < limit) {
      findings.push_back(
          look.finding(Grade::Look, "narrow-rip", mark, {{"width", width}, {"limit", limit}}, "common practice"));
    }
    const bool rightward = one.frame.hand == Hand::LeftToRight;
    const Length cutEdge = module.startRipped == rightward ? module.metalLeft : module.metalRight;
    const Length x = one.frame.toHanging(cutEdge) - one.frame.toHanging(module.startLine);
    if (const auto rib = ribAt(one.section, x); rib && rib->from < x && x < rib->to) {
      findings.push_back(look.finding(Grade::Note, "rip-on-rib", mark, {{"edge", cutEdge}}, "common practice"));
    }
  }
}

// A rib under the corner trim's leg keeps the trim off the pan.
void checkCornerTrim(const WallLook& look, const RunLook& one, std::vector<Finding>& findings) {
  const auto& modules = one.run->modules;
  if (modules.empty() || one.section.ribs.empty()) return;
  const Length leg = look.job.settings.cornerTrimLeg;
  const auto at = [&](Length corner, bool leftCorner, const Module& module) {
    const Length inner = leftCorner ? corner + leg : corner - leg;
    Length from = one.frame.toHanging(corner) - one.frame.toHanging(module.startLine);
    Length to = one.frame.toHanging(inner) - one.frame.toHanging(module.startLine);
    if (to < from) std::swap(from, to);
    for (const Rib& rib : one.section.ribs) {
      if (rib.from >= to || rib.to <= from) continue;
      findings.push_back(look.finding(Grade::Note, "rib-under-corner-trim", leftCorner ? "left" : "right",
                                      {{"corner", phrase(leftCorner ? "screws.left" : "screws.right")}, {"leg", leg}},
                                      "common practice"));
      return;
    }
  };
  const bool rightward = one.frame.hand == Hand::LeftToRight;
  const Module& leftmost = rightward ? modules.front() : modules.back();
  const Module& rightmost = rightward ? modules.back() : modules.front();
  if (one.run->left == Length()) at(Length(), true, leftmost);
  if (one.run->right == look.layout.face.width) at(look.layout.face.width, false, rightmost);
}

}  // namespace

void checkRunEnds(const WallLook& look, std::vector<Finding>& findings) {
  for (const RunLook& one : look.runs) {
    checkRips(look, one, findings);
    checkCornerTrim(look, one, findings);
  }
}

}  // namespace ribwright
