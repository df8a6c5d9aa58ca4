#include "core/fastening/girt_rows.h"

#include <algorithm>

#include "core/job/by_id.h"
#include "core/layout/girt_row.h"

namespace ribwright {
namespace {

struct StandingGirt {
  std::int32_t index;  // into Wall::girts
  ScrewFace face;
  Length from, to;  // on the wall
  bool known;
};

std::vector<StandingGirt> standing(const Wall& wall, const std::vector<Member>& members, Length width) {
  std::vector<StandingGirt> all;
  for (std::size_t i = 0; i < wall.girts.size(); ++i) {
    const Girt& girt = wall.girts[i];
    const auto [from, to] = girtReach(girt, width);
    if (from >= to) continue;
    const bool known = byId(members, girt.member) != nullptr;
    all.push_back({static_cast<std::int32_t>(i), girtFace(girt, members), from, to, known});
  }
  return all;
}

// Girts that stand one over the other, and what their faces have in common.
struct Nest {
  std::vector<const StandingGirt*> girts;
  Length low, high;
};

std::vector<Nest> nestsOver(const std::vector<StandingGirt>& girts, Length from, Length to) {
  std::vector<Nest> nests;
  for (const StandingGirt& girt : girts) {
    if (girt.from > from || girt.to < to) continue;
    const auto joined = std::find_if(nests.begin(), nests.end(), [&](const Nest& nest) {
      return std::max(nest.low, girt.face.low) <= std::min(nest.high, girt.face.high);
    });
    if (joined == nests.end()) {
      nests.push_back({{&girt}, girt.face.low, girt.face.high});
      continue;
    }
    joined->girts.push_back(&girt);
    joined->low = std::max(joined->low, girt.face.low);
    joined->high = std::min(joined->high, girt.face.high);
  }
  return nests;
}

Stretch stretchOf(const Wall& wall, const Nest& nest, Length from, Length to, Length width) {
  Stretch stretch;
  stretch.from = from;
  stretch.to = to;
  stretch.low = nest.low;
  stretch.high = nest.high;
  const bool alone = nest.girts.size() == 1;
  stretch.row = alone ? nest.girts.front()->face.row : nest.low + half(nest.high - nest.low);
  for (const StandingGirt* girt : nest.girts) {
    stretch.name += (stretch.name.empty() ? "" : "+") + wall.girts[static_cast<std::size_t>(girt->index)].id;
    stretch.girts.push_back(girt->index);
    stretch.known = stretch.known && girt->known;
    stretch.endsAtFrom = stretch.endsAtFrom || (girt->from == from && from > Length());
    stretch.endsAtTo = stretch.endsAtTo || (girt->to == to && to < width);
  }
  return stretch;
}

// A girt alone goes on over the places where others begin and end.
void append(SupportRow& row, const Stretch& stretch) {
  if (!row.stretches.empty()) {
    Stretch& last = row.stretches.back();
    const bool goesOn = last.girts == stretch.girts && last.to == stretch.from && last.girts.size() == 1;
    if (goesOn) {
      last.to = stretch.to;
      last.endsAtTo = stretch.endsAtTo;
      return;
    }
  }
  row.stretches.push_back(stretch);
}

bool isInTheWay(const InTheWay& thing, Length row) {
  return (!thing.above || row > *thing.above) && (!thing.below || row < *thing.below);
}

// A part of a stretch: its own steel, the flange that stands there instead, or nothing.
struct Part {
  Length from, to;
  bool steel = true;
  const InTheWay* flange = nullptr;
  bool isLike(const Part& other) const { return steel == other.steel && flange == other.flange; }
};

// Where two things stand over each other neither counts.
Part partBetween(Length from, Length to, const std::vector<const InTheWay*>& things) {
  Part part{from, to};
  if (things.size() == 1 && things.front()->isFlange) part.flange = things.front();
  part.steel = things.empty() || part.flange;
  return part;
}

std::vector<Part> partsOf(const Stretch& whole, const std::vector<InTheWay>& inTheWay) {
  std::vector<const InTheWay*> things;
  std::vector<Length> cuts = {whole.from, whole.to};
  for (const InTheWay& thing : inTheWay) {
    if (!isInTheWay(thing, whole.row) || thing.to <= whole.from || thing.from >= whole.to) continue;
    things.push_back(&thing);
    cuts.insert(cuts.end(), {std::max(thing.from, whole.from), std::min(thing.to, whole.to)});
  }
  std::sort(cuts.begin(), cuts.end());
  std::sort(things.begin(), things.end(), [](const InTheWay* a, const InTheWay* b) { return a->from < b->from; });
  std::vector<Part> parts;
  std::vector<const InTheWay*> here;
  std::size_t next = 0;
  for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
    if (cuts[i] == cuts[i + 1]) continue;
    std::erase_if(here, [&](const InTheWay* thing) { return thing->to <= cuts[i]; });
    for (; next < things.size() && things[next]->from <= cuts[i]; ++next) {
      if (things[next]->to > cuts[i]) here.push_back(things[next]);
    }
    const Part part = partBetween(cuts[i], cuts[i + 1], here);
    if (!parts.empty() && parts.back().isLike(part)) {
      parts.back().to = part.to;
    } else {
      parts.push_back(part);
    }
  }
  return parts;
}

void appendParts(const Stretch& whole, const std::vector<InTheWay>& inTheWay, std::vector<Stretch>& stretches) {
  for (const Part& part : partsOf(whole, inTheWay)) {
    if (!part.steel) continue;
    Stretch stretch = part.flange ? part.flange->flange : whole;
    stretch.from = part.from;
    stretch.to = part.to;
    stretch.row = whole.row;
    stretch.girts = whole.girts;
    stretch.endsAtFrom = !part.flange && (part.from != whole.from || whole.endsAtFrom);
    stretch.endsAtTo = !part.flange && (part.to != whole.to || whole.endsAtTo);
    stretches.push_back(std::move(stretch));
  }
}

}  // namespace

std::vector<SupportRow> girtRows(const Wall& wall, const std::vector<Member>& members, Length wallWidth,
                                 const std::vector<InTheWay>& inTheWay) {
  const std::vector<StandingGirt> girts = standing(wall, members, wallWidth);
  std::vector<SupportRow> rows(girts.size());
  std::vector<Length> cuts;
  for (std::size_t i = 0; i < girts.size(); ++i) {
    rows[i].kind = SupportKind::Girt;
    rows[i].id = wall.girts[static_cast<std::size_t>(girts[i].index)].id;
    cuts.insert(cuts.end(), {girts[i].from, girts[i].to});
  }
  std::sort(cuts.begin(), cuts.end());
  cuts.erase(std::unique(cuts.begin(), cuts.end()), cuts.end());
  for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
    for (const Nest& nest : nestsOver(girts, cuts[i], cuts[i + 1])) {
      const auto first = static_cast<std::size_t>(nest.girts.front() - girts.data());
      append(rows[first], stretchOf(wall, nest, cuts[i], cuts[i + 1], wallWidth));
    }
  }
  for (SupportRow& row : rows) {
    std::vector<Stretch> parts;
    for (const Stretch& stretch : row.stretches) appendParts(stretch, inTheWay, parts);
    row.stretches = std::move(parts);
  }
  std::vector<std::size_t> order(rows.size());
  for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return girts[a].face.row < girts[b].face.row; });
  std::vector<SupportRow> rising;
  for (const std::size_t i : order) {
    if (!rows[i].stretches.empty()) rising.push_back(std::move(rows[i]));
  }
  return rising;
}

}  // namespace ribwright
