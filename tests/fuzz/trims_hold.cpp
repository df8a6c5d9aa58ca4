// Trim of random buildings against a reckoning of its own: what is counted, how long it is, that its parts are cut from
// sticks once each, and that everything adds up. Places are found again from what is stated and from the laid out
// face's corners alone; nothing of core/takeoff is called but what is checked.
#include <catch2/catch.hpp>

#include <cmath>
#include <map>
#include <set>

#include "core/editing/trim_edits.h"
#include "core/takeoff/trim_cuts.h"
#include "tests/fuzz/complaints.h"
#include "tests/fuzz/random_building.h"

namespace ribwright::fuzz {
namespace {

using Where = TrimRule::Where;

struct TrimmedBuilding {
  Job job;
  Plan made;
  TrimTakeoff takeoff;
};

// Now and then a kerf, stock or rule of its own, so that splices, ends and drops all come about.
TrimmedBuilding building(int index) {
  Dice dice(kSeed + 31, index);
  TrimmedBuilding one;
  one.job = takeShippedTrim(randomJob(kSeed, index)).value();
  one.job.settings.kerf = dice.length(Length(), Length::inches(0, 32));
  for (Trim& trim : one.job.trims) {
    if (dice.oneIn(3)) trim.stocked = {dice.length(Length::feet(4), Length::feet(22))};
    if (dice.oneIn(3)) trim.endTrim = dice.length(Length(), Length::inches(3));
    if (dice.oneIn(6)) trim.stocked.clear();
  }
  for (TrimRule& rule : one.job.trimRules) {
    if (dice.oneIn(6)) rule.allowance = dice.length(-Length::inches(6), Length::inches(12));
    if (dice.oneIn(9)) rule.times = dice.small(1, 3);
    if (dice.oneIn(9)) rule.parts = dice.small(1, 3);
  }
  for (Wall& wall : one.job.walls) {
    for (Opening& opening : wall.openings) {
      if (dice.oneIn(2)) opening.jambTrim = dice.length(Length(), Length::inches(6));
    }
  }
  one.made = plan(one.job);
  one.takeoff = trimTakeoff(one.job, one.made.layouts());
  return one;
}

void refuse(Complaints& complaints, bool wrong, const std::string& what) { complaints.check(!wrong, what); }

const TrimRule& ruleOf(const Job& job, const std::string& id) {
  for (const TrimRule& rule : job.trimRules) {
    if (rule.id == id) return rule;
  }
  throw std::logic_error("no rule " + id);
}

const Trim& trimOf(const Job& job, const std::string& id) {
  for (const Trim& trim : job.trims) {
    if (trim.id == id) return trim;
  }
  throw std::logic_error("no trim " + id);
}

// By its own arithmetic: 2 x |length x parts - (size x times + allowance x parts)| <= parts.
void checkLength(const Job& job, const TrimPiece& piece, Complaints& complaints) {
  const TrimRule& rule = ruleOf(job, piece.rule);
  const Int128 exact =
      Int128(piece.place.size.nanometres()) * rule.times + Int128(rule.allowance.nanometres()) * rule.parts;
  const Int128 off = Int128(piece.length.nanometres()) * rule.parts - exact;
  refuse(complaints, (off < 0 ? -off : off) * 2 > rule.parts,
         piece.id + ": length is not size x times / parts + allowance");
  refuse(complaints, rule.where != piece.place.where, piece.id + ": a rule of another place");
}

void checkParts(const Job& job, const TrimPiece& piece, Complaints& complaints) {
  const Trim& trim = trimOf(job, piece.trim);
  Length sum, longest;
  for (const Length stock : trim.stocked) longest = std::max(longest, stock - trim.endTrim);
  const auto splices = static_cast<std::int64_t>(piece.parts.size()) - 1;
  for (std::size_t i = 0; i < piece.parts.size(); ++i) {
    const TrimPart& part = piece.parts[i];
    refuse(complaints, part.at != sum - trim.spliceLap * static_cast<std::int64_t>(i), piece.id + ": parts do not lap");
    refuse(complaints, part.length <= Length(), piece.id + ": a part of nothing");
    refuse(complaints, splices > 0 && part.length > longest, piece.id + ": a part longer than stock");
    sum += part.length;
  }
  refuse(complaints, sum - trim.spliceLap * splices != piece.length, piece.id + ": parts less laps are not the piece");
  const bool fewer = splices > 0 && longest * splices - trim.spliceLap * (splices - 1) >= piece.length;
  refuse(complaints, fewer, piece.id + ": fewer parts would do");
}

// Length along a straight top, whole nanometres next above.
bool isAlong(Length size, Length run, Length rise) {
  const Int128 square = Int128(run.nanometres()) * run.nanometres() + Int128(rise.nanometres()) * rise.nanometres();
  const Int128 n = size.nanometres();
  return n * n >= square && (n - 1) * (n - 1) < square;
}

void checkPlace(const TrimPlace& place, Complaints& complaints) {
  const Length run = place.to.u - place.from.u, rise = place.to.z - place.from.z;
  const std::string name = place.wall + place.other + " " + place.opening;
  refuse(complaints, place.size <= Length(), name + ": a place of no size");
  refuse(complaints, !isAlong(place.size, run, rise), name + ": its size is not its extent");
}

// How many of each are counted at an opening, from what is stated of it alone, where the sheets stand far enough above
// and below it that nothing is left out.
void checkOpening(const Wall& wall, const WallLayout& layout, const CutRegion& cut, const Opening& opening,
                  const std::vector<TrimPlace>& places, Complaints& complaints) {
  std::map<Where, int> counted;
  for (const TrimPlace& place : places) {
    if (place.wall == wall.letter && place.opening == opening.id) ++counted[place.where];
  }
  Length highest = layout.face.bottom.vertices().front().z, lowest = layout.face.top.vertices().front().z;
  for (const FaceVertex& vertex : layout.face.bottom.vertices()) highest = std::max(highest, vertex.z);
  for (const FaceVertex& vertex : layout.face.top.vertices()) lowest = std::min(lowest, vertex.z);
  const Length head = opening.sill + opening.height;
  const bool within =
      *cut.steelLeft >= Length() && *cut.steelRight <= layout.face.width && head < lowest && head > highest;
  const std::string name = wall.letter + " " + opening.id;
  for (const auto& [where, count] : counted) {
    const bool pair = where == Where::Jamb || where == Where::JambCover;
    refuse(complaints, count > (pair ? 2 : 1), name + ": counted more than once");
  }
  if (!within || !(cut.reachesFloor || opening.sill > highest)) return;
  refuse(complaints, counted[Where::Head] != 1, name + ": one head");
  refuse(complaints, counted[Where::Jamb] != 2, name + ": two jambs");
  refuse(complaints, counted[Where::Sill] != (cut.reachesFloor ? 0 : 1), name + ": one sill, or none over the floor");
  for (const TrimPlace& place : places) {
    if (place.wall != wall.letter || place.opening != opening.id) continue;
    const bool across = place.where == Where::Head || place.where == Where::Sill;
    refuse(complaints, across && place.size != opening.width + opening.jambTrim * 2, name + ": over its jamb trims");
    refuse(complaints, place.where == Where::HeaderCover && place.size != opening.width, name + ": steel to steel");
    refuse(complaints, place.where == Where::Jamb && !cut.reachesFloor && place.size != opening.height,
           name + ": its height");
  }
}

// Positions on each wall's base line: what base trim covers and openings leave out make up the wall.
void checkBase(const Wall& wall, const WallLayout& layout, const std::vector<TrimPlace>& places,
               Complaints& complaints) {
  const bool trimmed = wall.base.form == Base::Form::BaseTrim || wall.base.form == Base::Form::OnWall;
  std::vector<const TrimPlace*> mine;
  for (const TrimPlace& place : places) {
    if (place.wall == wall.letter && place.where == Where::Base) mine.push_back(&place);
  }
  refuse(complaints, !trimmed && !mine.empty(), wall.letter + ": base trim under sheets that hang over");
  if (!trimmed) return;
  // Every middle between two neighbouring marks along the wall is either in an opening across the base or in one piece.
  std::set<Length> marks{Length(), layout.face.width};
  for (const CutRegion& cut : layout.cuts) {
    if (cut.steelLeft) marks.insert({*cut.steelLeft, *cut.steelRight});
  }
  for (const TrimPlace* place : mine) marks.insert({place->from.u, place->to.u});
  for (const FaceVertex& vertex : layout.face.bottom.vertices()) marks.insert(vertex.u);
  for (auto at = marks.begin(); std::next(at) != marks.end(); ++at) {
    if (*at < Length() || *std::next(at) > layout.face.width) continue;
    const Length u = half(*at + *std::next(at)), z = layout.face.bottom.heightAt(u, Beside::Right);
    int pieces = 0, openings = 0;
    for (const TrimPlace* place : mine) pieces += place->from.u <= u && u < place->to.u && place->from.z == z ? 1 : 0;
    for (const CutRegion& cut : layout.cuts) {
      if (cut.penetration || *cut.steelLeft > u || u >= *cut.steelRight) continue;
      openings += *cut.steelTop > z && (cut.reachesFloor || *cut.steelBottom <= z) ? 1 : 0;
    }
    if (*std::next(at) - *at > Length::nanometres(1))
      refuse(complaints, pieces != (openings > 0 ? 0 : 1), wall.letter + ": base trim missing or doubled");
  }
}

void checkTop(const Wall& wall, const WallLayout& layout, const std::vector<TrimPlace>& places,
              Complaints& complaints) {
  Length run;
  for (const TrimPlace& place : places) {
    if (place.wall != wall.letter || (place.where != Where::Rake && place.where != Where::Eave)) continue;
    run += place.to.u - place.from.u;
    refuse(complaints, (place.where == Where::Eave) != (place.from.z == place.to.z), wall.letter + ": eaves are level");
    const bool ends = place.from.z == layout.face.top.heightAt(place.from.u, Beside::Right) &&
                      place.to.z == layout.face.top.heightAt(place.to.u, Beside::Left);
    refuse(complaints, !ends, wall.letter + ": a rake off the top");
  }
  refuse(complaints, run != layout.face.width, wall.letter + ": the top is not trimmed from corner to corner");
}

void checkCorners(const Job& job, const Plan& made, const std::vector<TrimPlace>& places, Complaints& complaints) {
  const auto& outline = job.building.outline;
  std::map<std::string, const WallLayout*> sheeted;
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    const Wall& wall = job.walls[i];
    if (made.walls[i]->layout.sheeted && !wall.line && !wall.width) sheeted[wall.letter] = &made.walls[i]->layout;
  }
  std::size_t expected = 0;
  for (std::size_t i = 0; i < outline.size() && outline.size() <= 26; ++i) {
    const std::size_t after = (i + 1) % outline.size(), beyond = (i + 2) % outline.size();
    const double ax = (outline[after].x - outline[i].x).inMetres(), ay = (outline[after].y - outline[i].y).inMetres();
    const double bx = (outline[beyond].x - outline[after].x).inMetres(),
                 by = (outline[beyond].y - outline[after].y).inMetres();
    const double angle = std::atan2(ax * by - ay * bx, ax * bx + ay * by);
    const std::string left(1, static_cast<char>('A' + static_cast<int>(i))),
        right(1, static_cast<char>('A' + static_cast<int>(after)));
    if (std::abs(angle) < 1e-9 || (!sheeted.contains(left) && !sheeted.contains(right))) continue;
    ++expected;
    for (const TrimPlace& place : places) {
      if (place.wall != left || place.other != right) continue;
      refuse(complaints, (place.where == Where::OutsideCorner) != (angle > 0), left + right + ": turned the other way");
      if (sheeted.contains(left)) {
        const WallFace& face = sheeted[left]->face;
        refuse(complaints, place.to.z > face.top.heightAt(face.width, Beside::Left),
               left + right + ": above its sheets");
      }
    }
  }
  std::size_t counted = 0;
  for (const TrimPlace& place : places) counted += place.isCorner() ? 1 : 0;
  refuse(complaints, counted != expected, "corners: " + std::to_string(counted) + " for " + std::to_string(expected));
}

void checkPlaces(const TrimmedBuilding& one, Complaints& complaints) {
  const auto places = trimPlaces(one.job, one.made.layouts());
  for (const TrimPlace& place : places) checkPlace(place, complaints);
  for (std::size_t i = 0; i < one.job.walls.size(); ++i) {
    const Wall& wall = one.job.walls[i];
    const WallLayout& layout = one.made.walls[i]->layout;
    if (!layout.sheeted) continue;
    checkTop(wall, layout, places, complaints);
    checkBase(wall, layout, places, complaints);
    for (const CutRegion& cut : layout.cuts) {
      for (const Opening& opening : wall.openings) {
        if (!cut.penetration && opening.id == cut.id) checkOpening(wall, layout, cut, opening, places, complaints);
      }
    }
  }
  checkCorners(one.job, one.made, places, complaints);
}

void checkPieces(const TrimmedBuilding& one, Complaints& complaints) {
  std::set<std::string> ids;
  for (const TrimPiece& piece : one.takeoff.pieces) {
    refuse(complaints, !ids.insert(piece.id).second, piece.id + ": called like another");
    checkLength(one.job, piece, complaints);
    checkParts(one.job, piece, complaints);
  }
}

void checkStick(const Job& job, const TrimBatch& batch, const TrimStick& stick, Complaints& complaints) {
  const std::string name = batch.trim + " stick " + std::to_string(stick.number);
  Length taken = stick.ends, end;
  for (std::size_t i = 0; i < stick.cuts.size(); ++i) {
    const TrimCut& cut = stick.cuts[i];
    refuse(complaints, i > 0 && cut.at != end + job.settings.kerf, name + ": not a kerf apart");
    end = cut.at + cut.length;
    taken += cut.length;
  }
  const auto gaps = static_cast<std::int64_t>(stick.cuts.size()) - 1 + (stick.drop > Length() ? 1 : 0);
  refuse(complaints, !batch.madeToLength && stick.kerfs != job.settings.kerf * gaps, name + ": a kerf a cut");
  refuse(complaints, stick.cuts.empty() || end > stick.stock - (stick.ends - half(stick.ends)), name + ": overfull");
  refuse(complaints, taken + stick.kerfs + stick.drop + stick.waste != stick.stock, name + ": does not add up");
  refuse(complaints, stick.drop > Length() && stick.drop < job.settings.leastDrop, name + ": a drop too short to keep");
  refuse(complaints, stick.waste < Length(), name + ": less than nothing left");
  refuse(complaints, stick.waste >= job.settings.leastDrop + job.settings.kerf && stick.waste > job.settings.kerf,
         name + ": a drop thrown away");
}

void checkSticks(const TrimmedBuilding& one, const std::vector<TrimBatch>& batches, Complaints& complaints) {
  std::map<std::pair<int, int>, int> cutOf;
  for (const TrimBatch& batch : batches) {
    const Trim& trim = trimOf(one.job, batch.trim);
    const std::set<Length> stocked(trim.stocked.begin(), trim.stocked.end());
    Length bought;
    for (const TrimStick& stick : batch.sticks) {
      checkStick(one.job, batch, stick, complaints);
      bought += stick.stock;
      refuse(complaints, !batch.madeToLength && !stocked.contains(stick.stock),
             batch.trim + ": a length that is not sold");
      for (const TrimCut& cut : stick.cuts) {
        ++cutOf[{cut.piece, cut.part}];
        const TrimPiece& piece = one.takeoff.pieces.at(static_cast<std::size_t>(cut.piece));
        refuse(complaints, piece.trim != batch.trim || piece.colour != batch.colour,
               piece.id + ": cut from another trim");
        refuse(complaints, piece.parts.at(static_cast<std::size_t>(cut.part)).length != cut.length,
               piece.id + ": cut wrong");
      }
    }
    refuse(complaints, batch.atLeast() > bought, batch.trim + ": a bound above what is bought");
    refuse(complaints, batch.proved() && batch.atLeast() != bought, batch.trim + ": proved, and yet less would do");
  }
  std::size_t parts = 0;
  for (const TrimPiece& piece : one.takeoff.pieces) parts += piece.parts.size();
  refuse(complaints, cutOf.size() != parts, "parts that are cut from no stick");
  for (const auto& [part, times] : cutOf) refuse(complaints, times != 1, "a part cut more than once");
}

}  // namespace

TEST_CASE("Trim of random buildings: every place once, lengths by their rules, every part from one stick") {
  CuttingOptions little;
  little.effort = 300'000;
  int bad = 0, pieces = 0, spliced = 0;
  for (int i = 0; i < 400 && bad < 5; ++i) {
    const TrimmedBuilding one = building(i);
    Complaints complaints;
    checkPlaces(one, complaints);
    checkPieces(one, complaints);
    checkSticks(one, trimBatches(one.job, one.takeoff, little), complaints);
    INFO("seed " << kSeed << ", building " << i);
    CHECK(complaints.text() == "");
    bad += complaints.text().empty() ? 0 : 1;
    pieces += static_cast<int>(one.takeoff.pieces.size());
    for (const TrimPiece& piece : one.takeoff.pieces) spliced += piece.parts.size() > 1 ? 1 : 0;
  }
  CHECK(pieces > 5000);
  CHECK(spliced > 500);
}

TEST_CASE("The same building gives the same sticks") {
  CuttingOptions little;
  little.effort = 300'000;
  for (int i = 0; i < 20; ++i) {
    const TrimmedBuilding one = building(i), again = building(i);
    CHECK(one.takeoff.pieces == again.takeoff.pieces);
    CHECK(trimBatches(one.job, one.takeoff, little) == trimBatches(again.job, again.takeoff, little));
  }
}

}  // namespace ribwright::fuzz
