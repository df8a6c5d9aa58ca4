#include "tests/fuzz/random_cutting.h"

#include <algorithm>

namespace ribwright::fuzz {
namespace {

// One of the ways in which lengths of trim lie among one another.
std::int64_t trimLength(Dice& dice, int kind, int index, std::int64_t longest, std::int64_t first, std::int64_t step) {
  switch (kind) {
    case 0:  // heads, jambs and corners of all sizes
      return dice.between(longest / 8, longest * 3 / 4);
    case 1:  // short pieces
      return dice.between(longest / 20, longest / 3);
    case 2:  // a gable: each as much longer than the last
      return first + step * index > longest ? dice.between(longest / 10, longest) : first + step * index;
    case 3:  // halves and little ones
      return dice.oneIn(3) ? dice.between(longest * 2 / 5, longest * 3 / 5) : dice.between(longest / 16, longest / 4);
    case 4:  // of one kind
      return dice.between(longest / 5, longest / 2);
    default:
      return dice.between(longest / 10, longest);
  }
}

std::int64_t piecesIn(const CuttingList& list) {
  std::int64_t pieces = 0;
  for (const CutDemand& demand : list.demands) pieces += demand.count;
  return pieces;
}

}  // namespace

CuttingList tinyCuttingList(Dice& dice) {
  CuttingList list;
  const std::int64_t unit = dice.of({std::int64_t(1), std::int64_t(1), std::int64_t(7), std::int64_t(396'875)});
  const int stocks = dice.small(1, 3);
  std::int64_t longest = 0;
  for (int k = 0; k < stocks; ++k) {
    Stock stock{dice.between(10, 40) * unit};
    longest = std::max(longest, stock.length);
    if (dice.oneIn(3)) stock.cost = dice.between(0, 20);
    if (k > 0 && dice.oneIn(2)) stock.supply = dice.between(0, 3);
    list.stocks.push_back(stock);
  }
  if (dice.oneIn(2)) list.kerf = dice.between(0, 2) * unit;
  if (dice.oneIn(3)) list.endTrim = dice.between(0, 3) * unit;
  const int lines = dice.small(1, 5);
  for (int i = 0; i < lines; ++i) {
    const std::int64_t length = dice.between(2, std::max<std::int64_t>(2, longest / unit - 3)) * unit;
    list.demands.push_back({dice.oneIn(6) ? list.demands.empty() ? length : list.demands.back().length : length,
                            dice.between(dice.oneIn(8) ? 0 : 1, 3)});
  }
  return list;
}

CuttingList trimCuttingList(Dice& dice, int stocks) {
  CuttingList list;
  list.kerf = 2;
  while (static_cast<int>(list.stocks.size()) < stocks) {
    const std::int64_t feet = dice.of({8, 10, 12, 14, 16, 20, 21, 24, 26, 30});
    const Stock stock{feet * 192 + (dice.oneIn(3) ? 32 : 0)};  // some come 2 in longer than they are called
    if (std::find(list.stocks.begin(), list.stocks.end(), stock) == list.stocks.end()) list.stocks.push_back(stock);
  }
  std::int64_t longest = 0;
  for (const Stock& stock : list.stocks) longest = std::max(longest, stock.length);
  const int lengths = dice.small(4, 60), kind = dice.small(0, 5);
  const std::int64_t first = dice.between(longest / 12, longest / 3), step = dice.between(3, 60);
  const std::int64_t often = dice.oneIn(4) ? 60 : 12;
  for (int i = 0; i < lengths && piecesIn(list) < 1'940; ++i)
    list.demands.push_back(
        {trimLength(dice, kind, i, longest, first, step), dice.between(1, dice.oneIn(4) ? 60 : often)});
  return list;
}

}  // namespace ribwright::fuzz
