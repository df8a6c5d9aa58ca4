#include "core/drawing/particulars.h"

#include <algorithm>
#include <charconv>

#include "core/drawing/particular_list.h"
#include "core/drawing/wall_view.h"

namespace ribwright {

namespace {

std::optional<std::size_t> numberIn(std::string_view text) {
  std::size_t number = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (error != std::errc() || end != text.data() + text.size()) return std::nullopt;
  return number;
}

template <class Things, class Name>
const typename Things::value_type* named(const Things& things, const std::string& id, const Name& name) {
  const auto found = std::find_if(things.begin(), things.end(), [&](const auto& each) { return each.*name == id; });
  return found == things.end() ? nullptr : &*found;
}

std::optional<std::size_t> girtIndex(const Wall& wall, const std::string& id) {
  if (id.starts_with('#')) {
    const auto number = numberIn(std::string_view(id).substr(1));
    if (number && *number >= 1 && *number <= wall.girts.size()) return *number - 1;
  }
  const Girt* girt = id.empty() ? nullptr : named(wall.girts, id, &Girt::id);
  if (!girt) return std::nullopt;
  return static_cast<std::size_t>(girt - wall.girts.data());
}

void addColumnNamed(ParticularList& list, const std::string& id) {
  const auto number = numberIn(id);
  if (number && *number <= list.wall.columns.bays.size() + 1) addColumn(list, static_cast<int>(*number));
}

void addScrewNamed(ParticularList& list, const std::string& id) {
  const auto number = numberIn(id);
  if (number && *number < list.plan.holes.holes.size()) addScrew(list, list.plan.holes.holes[*number]);
}

void addPart(ParticularList& list, const Part& part) {
  switch (part.kind) {
    case Part::Kind::Face:
      return addFace(list);
    case Part::Kind::Piece:
      if (const Piece* piece = named(list.layout().pieces, part.id, &Piece::mark)) addPiece(list, *piece);
      return;
    case Part::Kind::Opening:
      if (const Opening* opening = named(list.wall.openings, part.id, &Opening::id)) addOpening(list, *opening);
      return;
    case Part::Kind::Penetration:
      if (const Penetration* hole = named(list.wall.penetrations, part.id, &Penetration::id))
        addPenetration(list, *hole);
      return;
    case Part::Kind::Girt:
      if (const auto girt = girtIndex(list.wall, part.id)) addGirt(list, *girt);
      return;
    case Part::Kind::Column:
      return addColumnNamed(list, part.id);
    case Part::Kind::Screw:
      return addScrewNamed(list, part.id);
    case Part::Kind::Batch:
      if (const DrillBatch* batch = named(list.plan.batches, part.id, &DrillBatch::id)) addBatch(list, *batch);
      return;
  }
}

const char* titleId(Part::Kind kind) {
  switch (kind) {
    case Part::Kind::Piece:
      return "part.title.piece";
    case Part::Kind::Opening:
      return "part.title.opening";
    case Part::Kind::Penetration:
      return "part.title.penetration";
    case Part::Kind::Girt:
      return "part.title.girt";
    case Part::Kind::Column:
      return "part.title.column";
    case Part::Kind::Screw:
      return "part.title.screw";
    case Part::Kind::Batch:
      return "part.title.batch";
    case Part::Kind::Face:
      break;
  }
  return "paper.wall";
}

}  // namespace

std::optional<std::size_t> wallIndex(const Job& job, std::string_view letter) {
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    if (job.walls[i].letter == letter) return i;
  }
  return std::nullopt;
}

std::vector<Particular> particularsOf(const Job& job, const Plan& plan, const Part& part, const Words& words,
                                      const LengthStyle& style) {
  static const std::vector<std::string> noCodes;
  const auto wall = wallIndex(job, part.wall);
  if (!wall) return {};
  const auto& codes = *wall < plan.order.codes.size() ? plan.order.codes[*wall] : noCodes;
  ParticularList list{job, job.walls[*wall], *plan.walls[*wall], codes, words, style, {}};
  addPart(list, part);
  return list.all;
}

std::string titleOf(const Job& job, const Part& part, const Words& words) {
  const auto wall = wallIndex(job, part.wall);
  if (part.kind == Part::Kind::Face && wall) return wallTitle(job.walls[*wall], words);
  return words.say(titleId(part.kind), {{"letter", part.wall}, {"id", part.id}}, {});
}

std::string lineOf(const Job& job, const Plan& plan, const Part& part, const Words& words, const LengthStyle& style) {
  constexpr std::size_t most = 4;
  const auto all = particularsOf(job, plan, part, words, style);
  if (all.empty()) return "";
  std::string line = titleOf(job, part, words) + ":";
  for (std::size_t i = 0; i < all.size() && i < most; ++i)
    line.append(i == 0 ? " " : "; ").append(all[i].name).append(" ").append(all[i].value);
  return line;
}

std::optional<Part> partOf(const Job& job, const Plan& plan, const Finding& finding) {
  const auto index = wallIndex(job, finding.wall);
  if (!index || finding.mark.empty()) return std::nullopt;
  const Wall& wall = job.walls[*index];
  // Two openings that overlap stand as "D1+D2", nested girts as "g1+g2": the first is as good as any.
  for (const std::string& mark : {finding.mark, finding.mark.substr(0, finding.mark.find('+'))}) {
    if (named(plan.walls[*index]->layout.pieces, mark, &Piece::mark)) return Part{Part::Kind::Piece, wall.letter, mark};
    if (named(wall.openings, mark, &Opening::id)) return Part{Part::Kind::Opening, wall.letter, mark};
    if (named(wall.penetrations, mark, &Penetration::id)) return Part{Part::Kind::Penetration, wall.letter, mark};
    if (named(wall.girts, mark, &Girt::id)) return Part{Part::Kind::Girt, wall.letter, mark};
  }
  return std::nullopt;
}

}  // namespace ribwright
