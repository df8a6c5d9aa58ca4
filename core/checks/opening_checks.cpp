// Where openings stand on the wall, and how sheets meet their jambs.
#include <algorithm>

#include "core/checks/wall_look.h"
#include "core/layout/wall_face.h"

namespace ribwright {

namespace {

void checkAnchors(const WallLook& look, std::vector<Finding>& findings) {
  const auto missing = [&](const std::string& id, const Anchor& anchor) {
    findings.push_back(
        look.finding(Grade::Stop, "opening-column-missing", id, {{"column", std::int64_t(anchor.column)}}, ""));
  };
  for (const Opening& opening : look.wall.openings) {
    if (!leftJamb(look.wall, look.layout.face.width, opening)) missing(opening.id, opening.place);
  }
  for (const Penetration& penetration : look.wall.penetrations) {
    if (!centreOf(look.wall, look.layout.face.width, penetration)) missing(penetration.id, penetration.place);
  }
}

void checkOnWall(const WallLook& look, const CutRegion& cut, std::vector<Finding>& findings) {
  const WallFace& face = look.layout.face;
  const Length left = *cut.steelLeft, right = *cut.steelRight;
  if (left < Length() || right > face.width) {
    findings.push_back(look.finding(Grade::Stop, "opening-off-wall", cut.id,
                                    {{"left", left}, {"right", right}, {"width", face.width}}, ""));
    return;
  }
  if (*cut.steelTop > face.steel.lowest(left, right)) {
    findings.push_back(look.finding(Grade::Look, "opening-above-top", cut.id,
                                    {{"head", *cut.steelTop}, {"top", face.steel.lowest(left, right)}}, ""));
  }
}

bool overlap(const CutRegion& a, const CutRegion& b) {
  return *a.steelLeft < *b.steelRight && *b.steelLeft < *a.steelRight && *a.steelBottom < *b.steelTop &&
         *b.steelBottom < *a.steelTop;
}

Length distanceTo(Length from, Length to) { return from < to ? to - from : from - to; }

std::string jambName(const CutRegion& cut, Length edge) { return edge == cut.left ? "left jamb" : "right jamb"; }

// Metal of this module at a jamb's cut edge: does the cut run along a rib?
void checkRibAtJamb(const WallLook& look, const RunLook& one, const CutRegion& cut, Length edge,
                    std::vector<Finding>& findings) {
  if (edge <= one.run->left || edge >= one.run->right) return;
  for (const Module& module : one.run->modules) {
    if (edge <= module.metalLeft || edge >= module.metalRight) continue;
    const Length x = one.frame.toHanging(edge) - one.frame.toHanging(module.startLine);
    if (!ribAt(one.section, x)) continue;
    findings.push_back(look.finding(Grade::Look, "cut-on-rib", cut.id,
                                    {{"edge", edge}, {"sheet", look.wall.letter + std::to_string(module.number)}},
                                    "common practice"));
    findings.back().part = jambName(cut, edge);
    return;
  }
}

void checkSeams(const WallLook& look, const RunLook& one, const CutRegion& cut, Length edge, bool leftJambEdge,
                std::vector<Finding>& findings) {
  for (std::size_t k = 0; k + 1 < one.run->modules.size(); ++k) {
    const Length seam = one.run->modules[k].leadLine;
    const bool beside = leftJambEdge ? seam <= edge : seam >= edge;
    const Length gap = distanceTo(seam, edge);
    if (!beside || gap >= look.job.settings.seamFromJamb) continue;
    findings.push_back(look.finding(Grade::Look, "seam-near-jamb", cut.id,
                                    {{"gap", gap}, {"edge", edge}, {"limit", look.job.settings.seamFromJamb}},
                                    "common practice"));
    findings.back().part = jambName(cut, edge);
  }
}

// A leg beside a jamb that the neighbour does not cover wholly: from the cut edge to the sheet's metal edge.
void checkLegs(const WallLook& look, const RunLook& one, const CutRegion& cut, std::vector<Finding>& findings) {
  const auto& modules = one.run->modules;
  const auto legOf = [&](std::size_t k, Length edge, bool leftwards) {
    const Module& module = modules[k];
    if (edge <= module.metalLeft || edge >= module.metalRight) return;
    const Length leg = leftwards ? edge - module.metalLeft : module.metalRight - edge;
    if (leg >= look.job.settings.narrowLeg) return;
    for (const std::size_t other : {k - 1, k + 1}) {
      if (other >= modules.size()) continue;
      const Length from = leftwards ? module.metalLeft : edge, to = leftwards ? edge : module.metalRight;
      if (modules[other].metalLeft <= from && modules[other].metalRight >= to) return;
    }
    findings.push_back(look.finding(Grade::Look, "uncovered-leg", cut.id,
                                    {{"leg", leg},
                                     {"sheet", look.wall.letter + std::to_string(module.number)},
                                     {"limit", look.job.settings.narrowLeg}},
                                    "common practice"));
    findings.back().part = jambName(cut, edge);
  };
  for (std::size_t k = 0; k < modules.size(); ++k) {
    legOf(k, cut.left, true);
    legOf(k, cut.right, false);
  }
}

}  // namespace

void checkOpeningPlaces(const WallLook& look, std::vector<Finding>& findings) {
  checkAnchors(look, findings);
  const auto& cuts = look.layout.cuts;
  for (std::size_t i = 0; i < cuts.size(); ++i) {
    checkOnWall(look, cuts[i], findings);
    for (std::size_t j = i + 1; j < cuts.size(); ++j) {
      if (!overlap(cuts[i], cuts[j])) continue;
      findings.push_back(look.finding(Grade::Stop, "openings-overlap", cuts[i].id + "+" + cuts[j].id,
                                      {{"one", cuts[i].id}, {"other", cuts[j].id}}, ""));
    }
  }
}

void checkJambs(const WallLook& look, std::vector<Finding>& findings) {
  for (const CutRegion& cut : look.layout.cuts) {
    if (cut.penetration) continue;
    for (const RunLook& one : look.runs) {
      const bool meets = (!one.run->ceiling || cut.bottom < *one.run->ceiling || cut.reachesFloor) &&
                         (!one.run->floor || cut.top > *one.run->floor);
      if (!meets || cut.right <= one.run->left || cut.left >= one.run->right) continue;
      for (const bool left : {true, false}) {
        const Length edge = left ? cut.left : cut.right;
        checkRibAtJamb(look, one, cut, edge, findings);
        checkSeams(look, one, cut, edge, left, findings);
      }
      checkLegs(look, one, cut, findings);
    }
  }
}

}  // namespace ribwright
