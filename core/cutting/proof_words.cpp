#include "core/cutting/proof_words.h"

#include <algorithm>
#include <map>

namespace ribwright {
namespace {

using NumberText = std::function<std::string(std::int64_t)>;

class Proving {
 public:
  Proving(const CuttingList& list, const CuttingPlan& plan, const NumberText& lengthText, const NumberText& costText)
      : list_(list), plan_(plan), lengthText_(lengthText), costText_(costText) {}

  std::vector<Phrase> words() {
    if (plan_.total == 0) return {};
    for (std::size_t l = 0; l < plan_.proof.size(); ++l) {
      if (plan_.proof.size() > 1) say("list", {{"number", static_cast<std::int64_t>(l + 1)}});
      sayList(plan_.proof[l]);
    }
    countsPieces() ? concludeFewest() : concludeCheapest();
    if (plan_.provedBySearch) say("searched", {});
    if (!plan_.proved()) say("open", {{"bound", costText_(plan_.bound)}, {"total", costText_(plan_.total)}});
    return std::move(said_);
  }

 private:
  void say(const std::string& id, WordValues values) { said_.push_back({"cutting.proof." + id, std::move(values)}); }

  // One kind of stock, as many as wanted, one list: the simplest of proofs.
  bool countsPieces() const {
    return list_.stocks.size() == 1 && costOf(list_, 0) > 0 && plan_.proof.size() == 1 && !plan_.provedBySearch;
  }

  Phrase rangeText(const PointRange& range) const {
    if (range.longest == range.shortest) return {"", {{"one", lengthText_(range.longest)}}};
    return {"cutting.proof.range", {{"from", lengthText_(range.shortest)}, {"to", lengthText_(range.longest)}}};
  }

  void sayList(const PriceList& prices) {
    std::map<std::int64_t, WordValues, std::greater<>> byPoints;
    for (const PointRange& range : pointRanges(list_, prices))
      byPoints[range.points].emplace_back("range", rangeText(range));
    for (auto& [points, ranges] : byPoints)
      say(points == 1 ? "point" : "points", {{"lengths", Phrase{"", std::move(ranges)}}, {"points", points}});
    for (std::size_t k = 0; k < list_.stocks.size(); ++k)
      say("most", {{"stock", lengthText_(list_.stocks[k].length)}, {"most", prices.mostPerStock[k]}});
    say("worth", {{"worth", worthOf(list_, prices)}});
  }

  void concludeFewest() {
    const std::int64_t fewest = plan_.bound / costOf(list_, 0);
    const std::int64_t held = (fewest - 1) * plan_.proof.front().mostPerStock.front();
    say("fewest", {{"less", fewest - 1}, {"held", held}, {"fewest", fewest}});
  }

  void concludeCheapest() {
    if (plan_.bound == 0) return;
    say(plan_.proof.size() == 1 ? "cheapest.one" : "cheapest", {{"bound", costText_(plan_.bound)}});
  }

  const CuttingList& list_;
  const CuttingPlan& plan_;
  const NumberText &lengthText_, &costText_;
  std::vector<Phrase> said_;
};

}  // namespace

std::vector<PointRange> pointRanges(const CuttingList& list, const PriceList& prices) {
  std::map<std::int64_t, std::int64_t, std::greater<>> pointsOf;
  for (std::size_t i = 0; i < list.demands.size(); ++i)
    if (list.demands[i].count > 0) pointsOf[list.demands[i].length] = prices.points[i];
  std::vector<PointRange> ranges;
  for (const auto& [length, points] : pointsOf) {
    if (!ranges.empty() && ranges.back().points == points)
      ranges.back().shortest = length;
    else
      ranges.push_back({length, length, points});
  }
  return ranges;
}

std::int64_t worthOf(const CuttingList& list, const PriceList& prices) {
  std::int64_t worth = 0;
  for (std::size_t i = 0; i < list.demands.size(); ++i) worth += prices.points[i] * list.demands[i].count;
  return worth;
}

std::vector<Phrase> proofWords(const CuttingList& list, const CuttingPlan& plan, const NumberText& lengthText,
                               const NumberText& costText) {
  return Proving(list, plan, lengthText, costText).words();
}

}  // namespace ribwright
