// Of walls and sheets.
#include <algorithm>

#include "core/drawing/particular_list.h"
#include "core/drawing/start_words.h"
#include "core/job/by_id.h"

namespace ribwright {

namespace {

std::string yesOrCut(const ParticularList& list, bool factory) {
  return list.say(factory ? "part.edge.factory" : "part.edge.cut");
}

std::string kindOf(const ParticularList& list, const Piece& piece, const Module& module) {
  std::vector<std::string> kinds;
  const auto add = [&](bool is, const char* id) {
    if (is) kinds.push_back(list.say(id));
  };
  add(piece.rip, "paper.kind.rip");
  add(piece.rake, "paper.kind.rake");
  add(piece.notched, "paper.kind.notched");
  add(piece.above, "paper.kind.above");
  add(piece.below, "paper.kind.below");
  add(kinds.empty(), "paper.kind.full");
  add(module.translucent, "part.translucent");
  return ParticularList::joined(kinds);
}

// The sheets of the neighbour at the next (step 1) or previous (step -1) place of the run, by their marks.
std::string neighbour(const ParticularList& list, const Piece& piece, int step) {
  std::vector<std::string> marks;
  for (const Piece& other : list.layout().pieces) {
    const bool beside = other.run == piece.run && other.module == piece.module + step;
    if (beside && other.bottom < piece.top && other.top > piece.bottom) marks.push_back(other.mark);
  }
  return ParticularList::joined(marks);
}

void addSideLaps(ParticularList& list, const Piece& piece) {
  const SheetRun& run = list.layout().runs.at(static_cast<std::size_t>(piece.run));
  const auto lapWith = [&](const char* id, int step) {
    const auto other = static_cast<std::size_t>(piece.module + step);
    const std::string marks = neighbour(list, piece, step);
    if (piece.module + step < 0 || other >= run.modules.size() || marks.empty()) return;
    const Module& beside = run.modules[other];
    const Length lap = std::min(beside.metalRight, piece.right) - std::max(beside.metalLeft, piece.left);
    if (lap > Length()) list.add(id, list.say("part.lap", {{"marks", marks}, {"lap", list.text(lap)}}));
  };
  lapWith("part.lies-over", -1);
  lapWith("part.lies-under", 1);
}

void addEndLap(ParticularList& list, const Piece& piece) {
  for (const Piece& other : list.layout().pieces) {
    const bool above = other.run == piece.run && other.module == piece.module && other.tier == piece.tier + 1;
    if (!above || other.bottom >= piece.top) continue;
    list.add("part.end-lap",
             list.say("part.lap", {{"marks", other.mark}, {"lap", list.text(piece.top - other.bottom)}}));
  }
}

void addTopEdge(ParticularList& list, const Piece& piece) {
  if (piece.leftEdge == piece.rightEdge && piece.highEdge == piece.lowEdge) return list.add("part.top", piece.leftEdge);
  list.add("part.top-left", piece.leftEdge);
  list.add("part.top-right", piece.rightEdge);
  if (piece.highEdge > std::max(piece.leftEdge, piece.rightEdge)) list.add("part.top-highest", piece.highEdge);
}

void addScrewCount(ParticularList& list, const Piece& piece) {
  std::size_t own = 0, shared = 0;
  for (const Hole& hole : list.plan.holes.holes) {
    for (int sheet = 0; sheet < hole.sheets; ++sheet) {
      const auto index = static_cast<std::size_t>(hole.pieces.at(static_cast<std::size_t>(sheet)));
      if (&list.layout().pieces.at(index) == &piece) ++(sheet == 0 ? own : shared);
    }
  }
  if (own + shared == 0) return;
  list.add("part.screws",
           list.say("part.screws.of-sheet", {{"own", std::int64_t(own)}, {"shared", std::int64_t(shared)}}));
}

std::string orderCode(const ParticularList& list, const Piece& piece) {
  const auto index = static_cast<std::size_t>(&piece - list.layout().pieces.data());
  return index < list.codes.size() ? list.codes[index] : std::string();
}

std::string hangWords(const ParticularList& list) {
  const HangDirection& direction = list.layout().direction;
  const char* reason = direction.reason == HandReason::SightPoint ? "part.hang.sight-point"
                       : direction.reason == HandReason::Wind     ? "part.hang.wind"
                       : direction.reason == HandReason::Typed    ? "part.hang.typed"
                                                                  : "part.hang.default";
  const bool right = direction.hand == Hand::LeftToRight;
  return list.say("part.hang",
                  {{"way", list.say(right ? "part.hang.right" : "part.hang.left")}, {"reason", list.say(reason)}});
}

void addProfiles(ParticularList& list) {
  std::vector<std::string> names;
  for (const Band& band : list.wall.bands) {
    const Profile* profile = byId(list.job.profiles, band.profile);
    if (!profile) continue;
    std::string name = profile->name.empty() ? profile->id : profile->name;
    if (!band.colour.empty()) name.append(", ").append(band.colour);
    names.push_back(std::move(name));
  }
  std::string all;
  for (const std::string& name : names) all.append(all.empty() ? "" : "; ").append(name);
  list.add("part.profile", std::move(all));
}

void addSheeted(ParticularList& list) {
  const WallLayout& layout = list.layout();
  std::size_t sheets = 0;
  for (const SheetRun& run : layout.runs) sheets += run.modules.size();
  list.addCount("part.sheets", sheets);
  list.add("part.hangs", hangWords(list));
  list.add("part.start", list.words.say(startPhrase(list.wall.start, list.style), list.style));
  if (layout.pieces.size() != sheets) list.addCount("part.pieces", layout.pieces.size());
  const auto longest = std::max_element(layout.pieces.begin(), layout.pieces.end(),
                                        [](const Piece& a, const Piece& b) { return a.blankLength < b.blankLength; });
  if (longest != layout.pieces.end())
    list.add("part.longest", list.say("part.of", {{"value", list.text(longest->blankLength)}, {"of", longest->mark}}));
  addProfiles(list);
  if (!list.plan.holes.holes.empty()) list.addCount("part.screws", list.plan.holes.holes.size());
}

}  // namespace

void addFace(ParticularList& list) {
  const WallFace& face = list.layout().face;
  if (face.top.vertices().empty()) return list.add("part.status", list.say("part.not-laid-out"));
  list.add("part.width", face.width);
  const Length high = face.steel.highest(Length(), face.width), low = face.steel.lowest(Length(), face.width);
  list.add("part.eave", low);
  if (high != low) list.add("part.highest", high);
  if (list.wall.cladding == Cladding::Sheeted) addSheeted(list);
  if (list.wall.cladding == Cladding::ByOthers) list.add("part.cladding", list.say("paper.by-others"));
  if (list.wall.cladding == Cladding::Open) list.add("part.cladding", list.say("paper.open"));
  if (!list.wall.openings.empty()) list.addCount("part.openings", list.wall.openings.size());
  if (!list.wall.girts.empty()) list.addCount("part.girts", list.wall.girts.size());
  if (!list.plan.holes.holes.empty()) addWallDrilling(list);
}

void addPiece(ParticularList& list, const Piece& piece) {
  const SheetRun& run = list.layout().runs.at(static_cast<std::size_t>(piece.run));
  const Module& module = run.modules.at(static_cast<std::size_t>(piece.module));
  list.add("part.kind", kindOf(list, piece, module));
  list.add("part.metal-width", piece.right - piece.left);
  list.add("part.blank", piece.blankLength);
  list.add("part.order", orderCode(list, piece));
  addTopEdge(list, piece);
  list.add("part.bottom", piece.bottom);
  list.add("part.left-edge", piece.left);
  list.add("part.right-edge", piece.right);
  list.add("part.starting-edge", yesOrCut(list, piece.startingEdgeFactory));
  list.add("part.leading-edge", yesOrCut(list, piece.leadingEdgeFactory));
  list.add("part.lower-end", yesOrCut(list, piece.lowerEndFactory));
  addSideLaps(list, piece);
  addEndLap(list, piece);
  list.add("part.hang-order", std::to_string(piece.hangOrder));
  list.add("part.module", list.say("part.module.of",
                                   {{"module", std::int64_t(module.number)}, {"line", list.text(module.startLine)}}));
  if (list.layout().runs.size() > 1)
    list.add("part.run",
             list.say("part.run.of", {{"run", std::int64_t(piece.run + 1)}, {"band", std::int64_t(run.band + 1)}}));
  addScrewCount(list, piece);
  if (module.hung) return list.add("part.status", list.say("part.hung"));
  if (!list.plan.holes.holes.empty()) addPieceDrilling(list, piece);
}

}  // namespace ribwright
