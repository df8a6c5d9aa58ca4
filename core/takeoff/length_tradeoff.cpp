#include "core/takeoff/length_tradeoff.h"

#include <algorithm>
#include <stdexcept>

namespace ribwright {
namespace {

using Index = std::size_t;

// Different lengths wanted, rising, and what a stretch of neighbours costs at its longest.
class Wanted {
 public:
  Wanted(std::vector<WantedLength> items, const Spares& spares) : spares_(spares) {
    std::sort(items.begin(), items.end(),
              [](const WantedLength& a, const WantedLength& b) { return a.length < b.length; });
    before_.push_back(0);
    for (const WantedLength& item : items) {
      if (item.count < 0) throw std::invalid_argument("fewer than no sheets wanted");
      if (item.count == 0) continue;
      if (items_.empty() || items_.back().length != item.length) {
        items_.push_back({item.length, 0});
        before_.push_back(before_.back());
      }
      items_.back().count += item.count;
      before_.back() += item.count;
    }
  }

  Index size() const { return items_.size(); }
  Length length(Index at) const { return items_[at].length; }
  // Sheets of the lengths `from` to `last`, both among them.
  int sheets(Index from, Index last) const { return before_[last + 1] - before_[from]; }
  Length bought(Index from, Index last) const {
    const int count = sheets(from, last);
    return items_[last].length * (std::int64_t(count) + sparesOf(spares_, count));
  }

  // `lasts`: the longest of each stretch, rising.
  LengthChoice choice(const std::vector<Index>& lasts) const {
    LengthChoice made;
    Index from = 0;
    for (const Index last : lasts) {
      const int count = sheets(from, last);
      made.lengths.push_back(length(last));
      made.bought += bought(from, last);
      made.spares += length(last) * sparesOf(spares_, count);
      for (; from <= last; ++from) made.cutAway += (length(last) - length(from)) * items_[from].count;
    }
    return made;
  }

 private:
  Spares spares_;
  std::vector<WantedLength> items_;
  std::vector<int> before_;  // sheets of the lengths before each, and of all
};

// Of the lengths from `from` on, cut in exactly so many stretches: what they buy at least, and where the first one
// ends. Of equals the first stretch that ends lowest is taken, so that the choice is the lowest from its shortest
// length on.
struct Best {
  Length bought;
  Index last = 0;
};

// A row for 1, 2 ... `most` stretches. Of `k` stretches the last k - 1 need a length each.
std::vector<std::vector<Best>> bestOf(const Wanted& wanted, Index most) {
  const Index n = wanted.size();
  std::vector<std::vector<Best>> rows;
  for (Index k = 1; k <= most; ++k) {
    std::vector<Best>& row = rows.emplace_back(n + 1 - k);
    for (Index from = 0; from < row.size(); ++from) {
      Best& best = row[from];
      if (k == 1) {
        best = {wanted.bought(from, n - 1), n - 1};
        continue;
      }
      const std::vector<Best>& rest = rows[k - 2];
      best = {wanted.bought(from, from) + rest[from + 1].bought, from};
      for (Index last = from + 1; last + 1 < rest.size(); ++last) {
        const Length bought = wanted.bought(from, last) + rest[last + 1].bought;
        if (bought < best.bought) best = {bought, last};
      }
    }
  }
  return rows;
}

std::vector<Index> lastsOf(const std::vector<std::vector<Best>>& rows, Index stretches) {
  std::vector<Index> lasts;
  Index from = 0;
  for (Index k = stretches; k > 0; --k) {
    lasts.push_back(rows[k - 1][from].last);
    from = lasts.back() + 1;
  }
  return lasts;
}

std::vector<LengthChoice> choices(const Wanted& wanted, Index most) {
  const auto rows = bestOf(wanted, most);
  std::vector<LengthChoice> made;
  for (Index k = 1; k <= most; ++k) {
    const bool better = made.empty() || rows[k - 1][0].bought < made.back().bought;
    made.push_back(better ? wanted.choice(lastsOf(rows, k)) : made.back());
  }
  return made;
}

LengthChoice asWanted(const Wanted& wanted) {
  std::vector<Index> lasts(wanted.size());
  for (Index at = 0; at < lasts.size(); ++at) lasts[at] = at;
  return wanted.choice(lasts);
}

}  // namespace

int sparesOf(const Spares& spares, int count) {
  const std::int64_t part = (std::int64_t(count) * spares.percent + 99) / 100;
  return static_cast<int>(std::max<std::int64_t>(part, spares.fewest));
}

LengthChoice chooseLengths(std::vector<WantedLength> wanted, const Spares& spares, int most) {
  if (most < 0) throw std::invalid_argument("fewer than no lengths");
  const Wanted all(std::move(wanted), spares);
  if (most == 0) return asWanted(all);
  if (all.size() == 0) return {};
  return choices(all, std::min(static_cast<Index>(most), all.size())).back();
}

std::vector<LengthChoice> lengthTradeOff(std::vector<WantedLength> wanted, const Spares& spares) {
  const Wanted all(std::move(wanted), spares);
  return choices(all, all.size());
}

Length orderLength(const LengthChoice& choice, Length wanted) {
  const auto found = std::lower_bound(choice.lengths.begin(), choice.lengths.end(), wanted);
  if (found == choice.lengths.end()) throw std::invalid_argument("no chosen length is long enough");
  return *found;
}

}  // namespace ribwright
