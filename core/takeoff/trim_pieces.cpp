#include "core/takeoff/trim_pieces.h"

#include <map>
#include <set>
#include <stdexcept>

#include "core/job/by_id.h"
#include "core/job/stated_words.h"
#include "core/takeoff/trim_order.h"
#include "core/takeoff/trim_rules.h"
#include "core/takeoff/trim_splices.h"

namespace ribwright {
namespace {

std::string what(const TrimPlace& place) {
  if (place.isCorner()) return "corner";
  std::string word(trimWhereWords[static_cast<int>(place.where)]);
  if (place.side != TrimPlace::Side::None) word += place.side == TrimPlace::Side::Left ? " left" : " right";
  return word;
}

std::string idOf(const TrimPiece& piece) {
  std::string id = piece.at + " " + what(piece.place);
  if (piece.place.number > 0) id += " " + std::to_string(piece.place.number);
  if (piece.again > 1) id += " (" + std::to_string(piece.again) + ")";
  return id;
}

class PieceWork {
 public:
  explicit PieceWork(const Job& job) : job_(job) {
    for (const Wall& wall : job.walls) {
      for (const Opening& opening : wall.openings) ++called_[opening.id];
    }
  }

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
    piece.place = place;
    takeName(piece);
    piece.rule = rule.id;
    piece.trim = rule.trim;
    piece.colour = rule.colour.empty() ? trim->colour : rule.colour;
    piece.length = length;
    piece.lip = rule.lip;
    piece.laps = rule.laps;
    piece.parts = splicedParts(length, *trim);
    takeoff.pieces.push_back(std::move(piece));
  }

  std::string at(const TrimPlace& place) const {
    if (place.opening.empty()) return place.wall + place.other;
    return called_.at(place.opening) > 1 ? place.wall + " " + place.opening : place.opening;
  }

  // Whatever openings are called, no two pieces are called alike.
  void takeName(TrimPiece& piece) {
    piece.at = at(piece.place);
    for (piece.id = idOf(piece); !given_.insert(piece.id).second; piece.id = idOf(piece)) ++piece.again;
  }

  const Job& job_;
  std::map<std::string, int> called_;  // openings by what they are called
  std::set<std::string> given_;
};

}  // namespace

Phrase trimPieceName(const TrimPiece& piece) {
  Phrase name{"trim.piece." + what(piece.place), {{"at", piece.at}}};
  if (piece.place.number > 0)
    name = {"trim.piece.numbered", {{"piece", name}, {"number", std::int64_t(piece.place.number)}}};
  if (piece.again > 1) name = {"trim.piece.again", {{"piece", name}, {"number", std::int64_t(piece.again)}}};
  return name;
}

TrimTakeoff trimTakeoff(const Job& job, const std::vector<const WallLayout*>& layouts) {
  if (job.trimRules.empty()) return {};
  PieceWork work(job);
  for (const TrimPlace& place : trimPlaces(job, layouts)) work.takePlace(place);
  intoSettingOrder(work.takeoff.pieces, layouts);
  return std::move(work.takeoff);
}

}  // namespace ribwright
