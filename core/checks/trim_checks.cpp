#include "core/checks/trim_checks.h"

#include <algorithm>
#include <map>

#include "core/job/by_id.h"
#include "core/job/stated_words.h"
#include "core/takeoff/trim_pieces.h"
#include "core/takeoff/trim_splices.h"

namespace ribwright {
namespace {

using Where = TrimRule::Where;

constexpr const char* commonPractice = "common practice";

struct Counted {
  std::int64_t count = 0;
  const TrimMiss* first = nullptr;
};

// What the place is, where it has no piece and so no id.
std::string placeName(const TrimPlace& place) {
  return place.opening.empty() ? place.wall + place.other : place.wall + " " + place.opening;
}

void checkMisses(const TrimTakeoff& takeoff, std::vector<Finding>& findings) {
  std::map<std::pair<TrimMiss::Why, std::string>, Counted> byRule;
  std::map<Where, Counted> byWhere;
  for (const TrimMiss& miss : takeoff.misses) {
    Counted& one = miss.why == TrimMiss::Why::NoRule ? byWhere[miss.place.where] : byRule[{miss.why, miss.rule}];
    if (one.count++ == 0) one.first = &miss;
  }
  for (const auto& [where, one] : byWhere) {
    const std::string word(trimWhereWords[static_cast<int>(where)]);
    findings.push_back({Grade::Note,
                        "trim-without-rule",
                        "",
                        word,
                        {{"what", Phrase{"choice.trim_rule.where." + word}},
                         {"count", one.count},
                         {"first", placeName(one.first->place)}},
                        ""});
  }
  for (const auto& [key, one] : byRule) {
    const bool noTrim = key.first == TrimMiss::Why::NoTrim;
    findings.push_back({Grade::Look,
                        noTrim ? "trim-rule-without-trim" : "trim-without-length",
                        "",
                        key.second,
                        {{"count", one.count}, {"first", placeName(one.first->place)}},
                        ""});
    if (!noTrim) findings.back().values.push_back({"length", one.first->length});
  }
}

void checkStock(const Job& job, const TrimTakeoff& takeoff, std::vector<Finding>& findings) {
  for (const Trim& trim : job.trims) {
    const auto isOf = [&](const TrimPiece& piece) { return piece.trim == trim.id; };
    const auto count = std::count_if(takeoff.pieces.begin(), takeoff.pieces.end(), isOf);
    if (count == 0 || longestPart(trim) > Length()) continue;
    findings.push_back({trim.stocked.empty() ? Grade::Note : Grade::Look,
                        trim.stocked.empty() ? "trim-not-stocked" : "trim-stock-too-short",
                        "",
                        trim.id,
                        {{"count", std::int64_t(count)}},
                        ""});
  }
}

struct Spliced {
  std::int64_t count = 0;
  const TrimPiece* longest = nullptr;
};

// Water stands on a head: a splice there is looked at one by one. Along a wall splices are ordinary.
void checkSplices(const Job& job, const TrimTakeoff& takeoff, std::vector<Finding>& findings) {
  std::map<std::string, Spliced> byRule;
  const auto stock = [&](const TrimPiece& piece) { return longestPart(*byId(job.trims, piece.trim)); };
  for (const TrimPiece& piece : takeoff.pieces) {
    if (piece.parts.size() < 2) continue;
    if (piece.place.where == Where::Head) {
      findings.push_back({Grade::Look,
                          "trim-head-spliced",
                          piece.place.wall,
                          piece.place.opening,
                          {{"piece", trimPieceName(piece)}, {"length", piece.length}, {"stock", stock(piece)}},
                          commonPractice,
                          piece.rule});
      continue;
    }
    Spliced& one = byRule[piece.rule];
    ++one.count;
    if (!one.longest || one.longest->length < piece.length) one.longest = &piece;
  }
  for (const auto& [rule, one] : byRule) {
    findings.push_back({Grade::Note,
                        "trim-longer-than-stock",
                        "",
                        rule,
                        {{"count", one.count},
                         {"piece", trimPieceName(*one.longest)},
                         {"length", one.longest->length},
                         {"stock", stock(*one.longest)},
                         {"lap", byId(job.trims, one.longest->trim)->spliceLap}},
                        commonPractice});
  }
}

}  // namespace

void checkTrims(const Job& job, const std::vector<const WallLayout*>& layouts, std::vector<Finding>& findings) {
  const TrimTakeoff takeoff = trimTakeoff(job, layouts);
  checkMisses(takeoff, findings);
  checkStock(job, takeoff, findings);
  checkSplices(job, takeoff, findings);
}

}  // namespace ribwright
