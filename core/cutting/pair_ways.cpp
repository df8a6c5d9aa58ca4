#include "core/cutting/pair_ways.h"

#include <algorithm>

#include "core/cutting/bought_length.h"
#include "core/cutting/rake_fit.h"

namespace ribwright {
namespace {

class Ways {
 public:
  Ways(const SharePiece& first, const SharePiece& second, const Settings& settings)
      : first_(first), second_(second), settings_(settings), lengths_(first.profile->lengths) {}

  std::optional<PairWay> best() {
    if (settings_.sharing.rakePairs) rakePair();
    if (settings_.sharing.ripPairs) ripPair();
    if (settings_.sharing.drops) drop();
    return best_;
  }

 private:
  bool mayTurn() const { return first_.mayTurn && second_.mayTurn; }

  void rakePair() {
    if (first_.rake.empty() || second_.rake.empty() || first_.rises != second_.rises) return;
    const bool turning = first_.rightToLeft == second_.rightToLeft;
    if (turning && !mayTurn()) return;
    const auto length = rakeFit(first_.rake, turning ? turned(second_).rake : second_.rake, settings_.kerf);
    if (length) take(Blank::Way::RakePair, turning, *length);
  }

  void ripPair() {
    const Length length = std::max(first_.needed, second_.needed);
    if (besides(second_)) {
      take(Blank::Way::RipPair, false, length);
    } else if (mayTurn() && besides(turned(second_))) {
      take(Blank::Way::RipPair, true, length);
    }
  }

  bool besides(const SharePiece& second) const {
    return first_.right + settings_.kerf <= second.left || second.right + settings_.kerf <= first_.left;
  }

  void drop() {
    if (!lengths_.stocked.empty() || second_.needed >= lengths_.shortest) return;
    const Length length = first_.needed + settings_.kerf + second_.needed;
    if (settings_.sharing.gangs && length <= lengths_.shortest) return;
    take(Blank::Way::Drop, false, length);
  }

  void take(Blank::Way way, bool turning, Length length) {
    const Length bought = boughtLength(lengths_, length);
    const Length saved = first_.bought + second_.bought - bought;
    if (saved <= Length() || bought > longestBought(lengths_) || (best_ && saved <= best_->saved)) return;
    best_ = PairWay{way, turning, length, saved};
  }

  const SharePiece &first_, &second_;
  const Settings& settings_;
  const SheetLengths& lengths_;
  std::optional<PairWay> best_;
};

// Worth looking at together; most are not.
bool mayMeet(const SharePiece& first, const SharePiece& second) {
  const Length whole = first.profile->metalWidth();
  const auto isRip = [&](const SharePiece& p) { return p.right - p.left < whole; };
  return (!first.rake.empty() && !second.rake.empty()) || (isRip(first) && isRip(second)) ||
         second.needed < first.profile->lengths.shortest;
}

}  // namespace

bool comesFirst(const SharePiece& a, const SharePiece& b) {
  return a.needed != b.needed ? a.needed > b.needed : a.ref < b.ref;
}

std::optional<PairWay> pairWay(const SharePiece& first, const SharePiece& second, const Settings& settings) {
  if (!mayMeet(first, second)) return std::nullopt;
  return Ways(first, second, settings).best();
}

}  // namespace ribwright
