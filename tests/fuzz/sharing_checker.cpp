#include "tests/fuzz/sharing_checker.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <string>

#include "tests/fuzz/parts_apart.h"

namespace ribwright::fuzz {
namespace {

using Way = Blank::Way;
using Rings = std::vector<std::vector<BlankPoint>>;

// What the checker reads of a piece's statement.
struct Stated {
  const Wall* wall = nullptr;
  const Band* band = nullptr;
  const Profile* profile = nullptr;
  const Piece* piece = nullptr;
  const Module* module = nullptr;
  bool rightToLeft = false;

  Length needed(const Job& job) const {
    const bool inPlace = piece->rake && wall->rakeCut == RakeCut::InPlace;
    return piece->top - piece->bottom + (inPlace ? job.settings.rakeAllowance : Length());
  }
  bool mayShare(const Job& job) const {
    const auto reach = job.settings.sharing.reach;
    return !module->hung && (reach == Sharing::Reach::On || (reach == Sharing::Reach::PerWall && wall->shares));
  }
  auto sheet() const {
    return std::tuple(profile->id, band->thickness.value_or(profile->thickness),
                      module->translucent ? std::string() : band->colour, module->translucent);
  }
};

Stated statedOf(const Job& job, const Plan& plan, const PieceRef& ref) {
  const WallLayout& layout = plan.walls.at(std::size_t(ref.wall))->layout;
  Stated stated;
  stated.piece = &layout.pieces.at(std::size_t(ref.piece));
  const SheetRun& run = layout.runs.at(std::size_t(stated.piece->run));
  stated.module = &run.modules.at(std::size_t(stated.piece->module));
  stated.rightToLeft = layout.direction.hand == Hand::RightToLeft;
  for (const Wall& wall : job.walls) {
    if (wall.letter == layout.letter) stated.wall = &wall;
  }
  stated.band = &stated.wall->bands.at(std::size_t(run.band));
  for (const Profile& profile : job.profiles) {
    if (profile.id == stated.band->profile) stated.profile = &profile;
  }
  return stated;
}

// The flat sheets of random buildings are their own mirror image; the ribbed ones are not where lip and leg differ.
bool looksAlikeTurned(const Profile& profile) {
  const auto& points = profile.section;
  for (std::size_t i = 0; i < points.size(); ++i) {
    const auto &a = points[i], &b = points[points.size() - 1 - i];
    if (a.x - points.front().x != points.back().x - b.x || a.y != b.y) return false;
  }
  return true;
}

// One part of a blank back on its wall.
Ring turnedBack(const std::vector<BlankPoint>& ring, const BlankPart& part, const Stated& stated) {
  Ring back;
  for (const BlankPoint& point : ring) {
    // As the piece lies by itself: from its lower end, and from its own lip's side.
    const Length high = part.upsideDown ? part.to - point.y : point.y - part.from;
    Length across = point.x + stated.profile->over;  // from the blank's lip edge
    if (part.turned) across = stated.profile->metalWidth() - across;
    const Length fromLine = across - stated.profile->over;
    back.push_back({stated.rightToLeft ? stated.module->startLine - fromLine : stated.module->startLine + fromLine,
                    stated.piece->bottom + high});
  }
  return back;
}

bool sameRing(const Ring& a, Ring b) {
  if (a.size() != b.size()) return false;
  for (std::size_t i = 0; i < b.size(); ++i) {
    if (a == b) return true;
    std::rotate(b.begin(), b.begin() + 1, b.end());
  }
  return a.empty();
}

Ring asRing(const std::vector<BlankPoint>& points) {
  Ring ring;
  for (const BlankPoint& point : points) ring.push_back({point.x, point.y});
  return ring;
}

// The upper side of a part over x, seen with its own lower end down: corners of its ring, or nothing where it goes
// back, steps, or turns.
std::vector<FaceVertex> topOf(const Ring& back) {
  Length left = back.front().u, right = left;
  for (const FaceVertex& v : back) {
    left = std::min(left, v.u);
    right = std::max(right, v.u);
  }
  const auto topAt = [&](Length u) {
    std::optional<std::size_t> at;
    for (std::size_t i = 0; i < back.size(); ++i) {
      if (back[i].u == u && (!at || back[i].z > back[*at].z)) at = i;
    }
    return *at;
  };
  std::vector<FaceVertex> top;
  for (std::size_t i = topAt(left);; i = (i + 1) % back.size()) {
    if (!top.empty() && back[i].u <= top.back().u) return {};
    top.push_back(back[i]);
    if (i == topAt(right)) break;
  }
  bool up = false, down = false;
  for (std::size_t i = 1; i < top.size(); ++i) {
    up = up || top[i].z > top[i - 1].z;
    down = down || top[i].z < top[i - 1].z;
  }
  return up == down ? std::vector<FaceVertex>{} : top;
}

// Has one slope, of a rake that is cut before hanging, and a lower end that is whole.
std::vector<FaceVertex> rakeOf(const Stated& stated) {
  if (stated.wall->rakeCut == RakeCut::InPlace || !stated.piece->rake || !stated.piece->lowerEndFactory) return {};
  return topOf(stated.piece->rings.front());
}

// p/q, q > 0.
struct Ratio {
  Int128 p = 0, q = 1;
};

Ratio heightOn(const std::vector<FaceVertex>& top, Length x) {
  for (std::size_t i = 1; i < top.size(); ++i) {
    if (x > top[i].u) continue;
    const Int128 run = (top[i].u - top[i - 1].u).nanometres();
    return {Int128(top[i - 1].z.nanometres()) * run +
                Int128((top[i].z - top[i - 1].z).nanometres()) * (x - top[i - 1].u).nanometres(),
            run};
  }
  return {top.back().z.nanometres(), 1};
}

// As it lies in the blank: x of the blank, heights above its own lower end.
std::vector<FaceVertex> lying(std::vector<FaceVertex> top, const Stated& stated, bool turned) {
  for (FaceVertex& v : top) {
    v.z = v.z - stated.piece->bottom;
    v.u = stated.rightToLeft ? stated.module->startLine - v.u : v.u - stated.module->startLine;
    if (turned) v.u = stated.profile->metalWidth() - stated.profile->over * 2 - v.u;
  }
  std::sort(top.begin(), top.end());
  return top;
}

// The two do not come nearer than the kerf, measured upright to the next nanometre, in a blank of this length.
bool fitsIn(Length length, const std::vector<FaceVertex>& a, const std::vector<FaceVertex>& b, Length kerf) {
  Int128 upright = kerf.nanometres();
  for (const auto* top : {&a, &b}) {
    for (std::size_t i = 1; i < top->size(); ++i) {
      const Int128 run = ((*top)[i].u - (*top)[i - 1].u).nanometres();
      const Int128 rise = ((*top)[i].z - (*top)[i - 1].z).nanometres();
      const Int128 square = Int128(kerf.nanometres()) * kerf.nanometres() * (run * run + rise * rise);
      while (upright * upright * run * run < square) {  // halving steps to the next nanometre
        Int128 step = 1;
        while ((upright + step * 2) * (upright + step * 2) * run * run < square) step *= 2;
        upright += step;
      }
    }
  }
  const Length from = std::max(a.front().u, b.front().u), to = std::min(a.back().u, b.back().u);
  std::set<Length> places{from, to};
  for (const auto* top : {&a, &b}) {
    for (const FaceVertex& v : *top) {
      if (v.u > from && v.u < to) places.insert(v.u);
    }
  }
  for (const Length x : places) {
    const Ratio one = heightOn(a, x), other = heightOn(b, x);
    // Places are corners of one of them: there that one is whole.
    const Int128 sum = one.p * other.q + other.p * one.q, below = one.q * other.q;
    if ((Int128(length.nanometres()) - upright) * below < sum) return false;
  }
  const auto high = [](const std::vector<FaceVertex>& top) { return std::max(top.front().z, top.back().z); };
  return length >= high(a) && length >= high(b);
}

class Checker {
 public:
  Checker(const Job& job, const Plan& plan, const std::vector<SharedBlank>& blanks)
      : job_(job), plan_(plan), blanks_(blanks) {}

  Complaints all() {
    once();
    for (const SharedBlank& shared : blanks_) {
      const PieceRef& first = shared.blank.parts.front().piece;
      complaints_.at(statedOf(job_, plan_, first).piece->mark + " of wall " +
                     plan_.walls[std::size_t(first.wall)]->layout.letter);
      places(shared);
      who(shared.blank);
      lengths(shared.blank);
    }
    leftAlone();
    return complaints_;
  }

 private:
  void once() {
    std::set<PieceRef> seen;
    std::size_t pieces = 0;
    for (const auto& wall : plan_.walls) pieces += wall->layout.pieces.size();
    for (const SharedBlank& shared : blanks_) {
      for (const BlankPart& part : shared.blank.parts)
        complaints_.check(seen.insert(part.piece).second, "a piece comes from two blanks");
    }
    complaints_.check(seen.size() == pieces, "a piece comes from no blank");
  }

  void places(const SharedBlank& shared) {
    const BlankCuts& cuts = shared.cuts;
    complaints_.check(cuts.length == shared.blank.length + shared.spare, "the sheet is as long as it is bought");
    std::vector<Ring> outer;
    Int128 steel = 0;
    for (const PlacedPart& placed : cuts.parts) {
      const Stated stated = statedOf(job_, plan_, placed.part.piece);
      complaints_.check(placed.rings.size() == stated.piece->rings.size(), "rings are missing");
      for (std::size_t i = 0; i < placed.rings.size() && i < stated.piece->rings.size(); ++i) {
        complaints_.check(sameRing(turnedBack(placed.rings[i], placed.part, stated), stated.piece->rings[i]),
                          "turned back it is another piece");
        steel -= twiceArea(asRing(placed.rings[i])) * (i == 0 ? 1 : -1);
      }
      for (const BlankPoint& point : placed.rings.front()) {
        const bool within = point.x >= -stated.profile->over &&
                            point.x <= stated.profile->cover + stated.profile->under && point.y >= Length() &&
                            point.y <= cuts.length && point.x >= placed.part.left && point.x <= placed.part.right &&
                            point.y >= placed.part.from && point.y <= placed.part.to;
        complaints_.check(within, "a corner lies outside its room or the blank");
      }
      outer.push_back(asRing(placed.rings.front()));
    }
    for (std::size_t i = 0; i < outer.size(); ++i) {
      for (std::size_t j = i + 1; j < outer.size(); ++j)
        complaints_.check(apart(outer[i], outer[j], job_.settings.kerf), "two parts are nearer than the kerf");
    }
    const Int128 sheet = Int128((cuts.right - cuts.left).nanometres()) * cuts.length.nanometres() * 2;
    complaints_.check(steel <= sheet, "more steel comes out of the blank than is in it");
  }

  void who(const Blank& blank) {
    const auto& parts = blank.parts;
    const Stated first = statedOf(job_, plan_, parts.front().piece);
    for (const BlankPart& part : parts) {
      const Stated stated = statedOf(job_, plan_, part.piece);
      complaints_.check(std::tuple(blank.sheet.profile, blank.sheet.thickness, blank.sheet.colour,
                                   blank.sheet.translucent) == stated.sheet(),
                        "its sheet is of another class");
      complaints_.check(part.upsideDown == (stated.rightToLeft != part.turned), "the wrong end is up");
      if (part.turned) {
        complaints_.check(looksAlikeTurned(*stated.profile), "turned though its profile does not lap turned");
        complaints_.check(!stated.band->directionalFinish && !first.band->directionalFinish,
                          "turned though its finish has a direction");
      }
      if (parts.size() > 1) complaints_.check(stated.mayShare(job_), "it may not share");
    }
    const Sharing& on = job_.settings.sharing;
    const std::map<Way, bool> isOn{{Way::Alone, true},
                                   {Way::RakePair, on.rakePairs},
                                   {Way::RipPair, on.ripPairs},
                                   {Way::Drop, on.drops},
                                   {Way::Gang, on.gangs}};
    complaints_.check(isOn.at(blank.way), "a kind of sharing that is off");
    const std::size_t many = parts.size();
    complaints_.check(blank.way == Way::Alone  ? many == 1
                      : blank.way == Way::Gang ? many >= 2
                                               : many == 2,
                      "the wrong number of parts");
    if (blank.way == Way::RakePair && many == 2) {
      const auto a = rakeOf(first), b = rakeOf(statedOf(job_, plan_, parts[1].piece));
      if (!complaints_.check(!a.empty() && !b.empty(), "a rake pair of a piece that has no one slope")) return;
      complaints_.check((a.back().z > a.front().z) == (b.back().z > b.front().z), "slopes go different ways");
      complaints_.check(parts[0].upsideDown != parts[1].upsideDown, "one stands, one hangs");
    }
  }

  Length bought(const Profile& profile, Length length) const {
    if (!profile.lengths.stocked.empty()) return length;
    const Int128 step = profile.lengths.increment.nanometres();
    const Length least = std::max(length, profile.lengths.shortest);
    return Length::nanometres(std::int64_t((least.nanometres() + step - 1) / step * step));
  }

  bool canBeBought(const Profile& profile, Length length) const {
    if (profile.lengths.stocked.empty()) return bought(profile, length) <= profile.lengths.longest;
    return length <= *std::max_element(profile.lengths.stocked.begin(), profile.lengths.stocked.end());
  }

  void lengths(const Blank& blank) {
    Length sum, longest, alone;
    const Profile& profile = *statedOf(job_, plan_, blank.parts.front().piece).profile;
    for (const BlankPart& part : blank.parts) {
      const Length needed = statedOf(job_, plan_, part.piece).needed(job_);
      longest = std::max(longest, needed);
      sum += needed + job_.settings.kerf;
      alone += bought(profile, needed);
    }
    sum = sum - job_.settings.kerf;
    if (blank.way == Way::Alone) {
      const auto own = statedOf(job_, plan_, blank.parts.front().piece);
      const bool shelf = !profile.lengths.stocked.empty();  // cut to just what is needed
      complaints_.check(blank.length == (shelf ? own.needed(job_) : own.piece->blankLength),
                        "alone it is another length");
      return;
    }
    complaints_.check(bought(profile, blank.length) < alone, "nothing is saved");
    complaints_.check(blank.saved == alone - bought(profile, blank.length), "what is saved is told wrong");
    complaints_.check(canBeBought(profile, blank.length), "longer than it is made");
    if (blank.way == Way::RipPair) complaints_.check(blank.length == longest, "a rip pair is as long as the longer");
    if (blank.way == Way::Drop || blank.way == Way::Gang)
      complaints_.check(blank.length == sum, "end to end is the sum and its kerfs");
    if (blank.way == Way::Gang)
      complaints_.check(blank.length <= profile.lengths.shortest, "a gang is longer than the shortest length made");
    if (blank.way == Way::RakePair) {
      const Stated first = statedOf(job_, plan_, blank.parts[0].piece),
                   second = statedOf(job_, plan_, blank.parts[1].piece);
      const auto a = lying(rakeOf(first), first, blank.parts[0].turned);
      const auto b = lying(rakeOf(second), second, blank.parts[1].turned);
      complaints_.check(fitsIn(blank.length, a, b, job_.settings.kerf), "a rake pair does not fit");
      complaints_.check(!fitsIn(blank.length - Length::nanometres(1), a, b, job_.settings.kerf),
                        "a rake pair fits in a nanometre less");
    }
  }

  // No two that are alone could have shared: then more would have been saved.
  void leftAlone() {
    std::vector<Stated> alone;
    for (const SharedBlank& shared : blanks_) {
      const Stated stated = statedOf(job_, plan_, shared.blank.parts.front().piece);
      if (shared.blank.way == Way::Alone && stated.mayShare(job_)) alone.push_back(stated);
    }
    if (alone.size() > 60) alone.resize(60);
    for (std::size_t i = 0; i < alone.size(); ++i) {
      for (std::size_t j = i + 1; j < alone.size(); ++j) {
        if (alone[i].sheet() != alone[j].sheet()) continue;
        complaints_.at(alone[i].piece->mark + " and " + alone[j].piece->mark);
        complaints_.check(!couldShare(alone[i], alone[j]), "left alone though they could share");
      }
    }
  }

  bool saves(const Stated& a, const Stated& b, Length length) const {
    return canBeBought(*a.profile, length) &&
           bought(*a.profile, length) < bought(*a.profile, a.needed(job_)) + bought(*a.profile, b.needed(job_));
  }

  bool couldShare(const Stated& a, const Stated& b) const {
    const Sharing& on = job_.settings.sharing;
    const Length kerf = job_.settings.kerf;
    const bool mayTurn = looksAlikeTurned(*a.profile) && !a.band->directionalFinish && !b.band->directionalFinish;
    const auto side = [](const Stated& s, bool turned) {
      const Length one = s.rightToLeft ? s.module->startLine - s.piece->right : s.piece->left - s.module->startLine;
      const Length width = s.piece->right - s.piece->left;
      const Length left = turned ? s.profile->metalWidth() - s.profile->over * 2 - one - width : one;
      return std::pair(left, left + width);
    };
    for (const bool turned : {false, true}) {
      if (turned && !mayTurn) continue;
      const auto one = side(a, false), other = side(b, turned);
      const bool besides = one.second + kerf <= other.first || other.second + kerf <= one.first;
      if (on.ripPairs && besides && saves(a, b, std::max(a.needed(job_), b.needed(job_)))) return true;
      if (!on.rakePairs || turned != (a.rightToLeft == b.rightToLeft)) continue;
      const auto p = rakeOf(a), q = rakeOf(b);
      if (p.empty() || q.empty() || (p.back().z > p.front().z) != (q.back().z > q.front().z)) continue;
      const auto first = lying(p, a, false), second = lying(q, b, turned);
      if (first.front().u >= second.back().u || second.front().u >= first.back().u) continue;
      Length most;
      const Length step = a.profile->lengths.stocked.empty() ? a.profile->lengths.increment : Length::inches(1);
      const Length both = bought(*a.profile, a.needed(job_)) + bought(*a.profile, b.needed(job_));
      most = both - step;  // the longest that saves a step
      if (canBeBought(*a.profile, most) && saves(a, b, most) && fitsIn(most, first, second, kerf)) return true;
    }
    const Length shortest = a.profile->lengths.shortest;
    const Length sum = a.needed(job_) + b.needed(job_) + kerf;
    if (!a.profile->lengths.stocked.empty()) return false;
    if (sum <= shortest) return on.gangs || on.drops;
    return on.drops && std::min(a.needed(job_), b.needed(job_)) < shortest && saves(a, b, sum);
  }

  const Job& job_;
  const Plan& plan_;
  const std::vector<SharedBlank>& blanks_;
  Complaints complaints_;
};

}  // namespace

Complaints checkSharing(const Job& job, const Plan& plan, const std::vector<SharedBlank>& blanks) {
  return Checker(job, plan, blanks).all();
}

}  // namespace ribwright::fuzz
