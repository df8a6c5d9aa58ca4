// Of openings and penetrations.

#include "core/drawing/opening_kind.h"
#include "core/drawing/particular_list.h"
#include "core/job/by_id.h"

namespace ribwright {

namespace {

void addSize(ParticularList& list, Length width, Length height) {
  list.add("part.size", list.say("part.times", {{"width", list.text(width)}, {"height", list.text(height)}}));
}

// Sheets whose metal would otherwise lie over it.
void addCutSheets(ParticularList& list, const CutRegion& cut) {
  std::vector<std::string> marks;
  for (const Piece& piece : list.layout().pieces) {
    const bool beside = piece.left < cut.right && piece.right > cut.left;
    if (beside && (piece.notched || piece.above || piece.below || piece.rip)) marks.push_back(piece.mark);
  }
  list.add("part.cuts", ParticularList::joined(marks));
}

void addCut(ParticularList& list, const CutRegion& cut) {
  list.add("part.cut-width", cut.right - cut.left);
  if (!cut.reachesFloor) list.add("part.cut-height", cut.top - cut.bottom);
  addCutSheets(list, cut);
}

}  // namespace

void addOpening(ParticularList& list, const Opening& opening) {
  const CutRegion* cut = byId(list.layout().cuts, opening.id);
  list.add("part.kind", list.say(openingKindId(opening.kind)));
  addSize(list, opening.width, opening.height);
  if (!cut || !cut->steelLeft) return list.add("part.from-left", list.say("paper.unknown"));
  list.addPlace(*cut->steelLeft);
  list.add("part.from-right", list.layout().face.width - *cut->steelRight);
  list.add("part.sill", cut->reachesFloor ? list.say("paper.floor") : list.text(opening.sill));
  list.add("part.head", opening.sill + opening.height);
  addCut(list, *cut);
  if (opening.jambTrim > Length()) list.add("part.jamb-trim", opening.jambTrim);
}

void addPenetration(ParticularList& list, const Penetration& penetration) {
  const CutRegion* cut = byId(list.layout().cuts, penetration.id);
  const bool round = penetration.shape == Penetration::Shape::Round;
  list.add("part.kind", list.say("part.penetration"));
  if (round) list.add("part.diameter", penetration.width);
  if (!round) addSize(list, penetration.width, penetration.height);
  if (cut && cut->steelLeft) list.addPlace(*cut->steelLeft + half(penetration.width));
  list.add("part.centre", penetration.centre);
  list.add("part.clearance", penetration.clearance);
  if (cut) addCut(list, *cut);
}

}  // namespace ribwright
