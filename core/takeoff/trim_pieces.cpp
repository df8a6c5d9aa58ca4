#include "core/takeoff/trim_pieces.h"

#include <algorithm>
#include <set>
#include <stdexcept>

#include "core/job/by_id.h"
#include "core/takeoff/trim_order.h"
#include "core/takeoff/trim_rules.h"
#include "core/takeoff/trim_splices.h"

namespace ribwright {
namespace {

using Where = TrimRule::Where;

std::string what(const TrimPlace& place) {
  switch (place.where) {
    case Where::Head:
      return "head";
    case Where::Jamb:
      return "jamb";
    case Where::Sill:
      return "sill";
    case Where::HeaderCover:
      return "header cover";
    case Where::JambCover:
      return "jamb cover";
    case Where::OutsideCorner:
    case Where::InsideCorner:
      return "corner";
    case Where::Rake:
      return "rake";
    case Where::Eave:
      return "eave";
    case Where::Base:
      return "base";
    case Where::Transition:
      return "transition";
  }
  return "";
}

bool onAnotherWall(const Job& job, const TrimPlace& place) {
  return std::any_of(job.walls.begin(), job.walls.end(),
                     [&](const Wall& wall) { return wall.letter != place.wall && byId(wall.openings, place.opening); });
}

std::string at(const Job& job, const TrimPlace& place) {
  if (place.opening.empty()) return place.wall + place.other;
  return onAnotherWall(job, place) ? place.wall + " " + place.opening : place.opening;
}

class PieceWork {
 public:
  explicit PieceWork(const Job& job) : job_(job) {}

  void takePlace(const TrimPlace& place) {
    const auto rules = rulesAt(job_.trimRules, place);
    if (rules.empty() && isExpected(place)) miss(TrimMiss::Why::NoRule, place, {}, {});
    for (const TrimRule* rule : rules) takeRule(place, *rule);
  }
  TrimTakeoff takeoff;

 private:
  void miss(TrimMiss::Why why, const TrimPlace& place, const std::string& rule, Length length) {
    takeoff.misses.push_back({why, place, rule, length});
  }

  void takeRule(const TrimPlace& place, const TrimRule& rule) {
    if (rule.trim.empty()) return miss(TrimMiss::Why::NoTrim, place, rule.id, {});
    const Length length = scaled(place.size, rule.times, rule.parts) + rule.allowance;
    if (length <= rule.lip * 2) return miss(TrimMiss::Why::NoLength, place, rule.id, length);
    const Trim* trim = byId(job_.trims, rule.trim);
    if (!trim) throw std::invalid_argument("trim: no trim " + rule.trim);
    TrimPiece piece;
    piece.id = idOf(place);
    piece.place = place;
    piece.rule = rule.id;
    piece.trim = rule.trim;
    piece.colour = rule.colour.empty() ? trim->colour : rule.colour;
    piece.length = length;
    piece.lip = rule.lip;
    piece.laps = rule.laps;
    piece.parts = splicedParts(length, *trim);
    takeoff.pieces.push_back(std::move(piece));
  }

  // Whatever openings are called, no two pieces are called alike.
  std::string idOf(const TrimPlace& place) {
    std::string id = at(job_, place) + " " + what(place);
    if (place.side != TrimPlace::Side::None) id += place.side == TrimPlace::Side::Left ? " left" : " right";
    if (place.number > 0) id += " " + std::to_string(place.number);
    std::string unique = id;
    for (int more = 2; !given_.insert(unique).second; ++more) unique = id + " (" + std::to_string(more) + ")";
    return unique;
  }

  const Job& job_;
  std::set<std::string> given_;
};

}  // namespace

TrimTakeoff trimTakeoff(const Job& job, const std::vector<const WallLayout*>& layouts) {
  if (job.trimRules.empty()) return {};
  PieceWork work(job);
  for (const TrimPlace& place : trimPlaces(job, layouts)) work.takePlace(place);
  intoSettingOrder(work.takeoff.pieces, layouts);
  return std::move(work.takeoff);
}

}  // namespace ribwright
