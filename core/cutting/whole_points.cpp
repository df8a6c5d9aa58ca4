#include "core/cutting/whole_points.h"

#include <algorithm>
#include <numeric>

#include "core/cutting/stock_choice.h"

namespace ribwright {
namespace {

std::optional<Counts> choiceLeft(const CutProblem& problem, const Proof& proof, std::int64_t bound, CuttingWork& work) {
  StockChoice choice(problem);
  for (const PiecePoints& list : proof.lists) choice.add(list);
  for (const Counts& searched : proof.searched) choice.forbid(searched);
  return choice.anyBelow(bound, work);
}

class Reduction {
 public:
  Reduction(const CutProblem& problem, Proof proof, std::int64_t bound, CuttingWork& work)
      : problem_(problem), proof_(std::move(proof)), bound_(bound), work_(work) {}

  Proof run() {
    leaveOut(proof_.lists);
    leaveOut(proof_.searched);
    for (std::size_t l = 0; l < proof_.lists.size(); ++l) scaleDown(l);
    leaveOut(proof_.lists);
    return std::move(proof_);
  }

 private:
  template <class Part>
  void leaveOut(std::vector<Part>& parts) {
    for (std::size_t i = parts.size(); i-- > 0 && !work_.stopped();) {
      Part without = parts[i];
      parts.erase(parts.begin() + static_cast<std::ptrdiff_t>(i));
      if (!holds()) parts.insert(parts.begin() + static_cast<std::ptrdiff_t>(i), std::move(without));
    }
  }

  // One scale after the other, then in steps of an eighth.
  void scaleDown(std::size_t list) {
    const PiecePoints full = proof_.lists[list];
    const std::vector<double> shares(full.points.begin(), full.points.end());
    const std::int64_t greatest = *std::max_element(full.points.begin(), full.points.end());
    for (std::int64_t scale = 1; scale < greatest && !work_.stopped(); scale += 1 + scale / 64 * 8) {
      auto fewer =
          priced(problem_, problem_.demand, Counts(problem_.stocks.size(), 1), wholePoints(shares, scale), work_);
      if (!fewer) break;
      proof_.lists[list] = std::move(fewer->prices);
      if (holds()) return;
    }
    proof_.lists[list] = full;
  }

  bool isRefuted(const Counts& stocks) const {
    const auto coversAll = [&](const Counts& searched) {
      for (std::size_t k = 0; k < stocks.size(); ++k)
        if (stocks[k] > searched[k]) return false;
      return true;
    };
    return std::any_of(proof_.lists.begin(), proof_.lists.end(),
                       [&](const PiecePoints& list) { return refutes(list, problem_.demand, stocks); }) ||
           std::any_of(proof_.searched.begin(), proof_.searched.end(), coversAll);
  }

  // Choices that once slipped through mostly do so again, and are looked at first.
  bool holds() {
    work_.spend(static_cast<std::int64_t>(slippery_.size() * proof_.lists.size() * problem_.kinds()));
    for (std::size_t i = slippery_.size(); i-- > 0;)
      if (!isRefuted(slippery_[i])) return false;
    const auto slipped = choiceLeft(problem_, proof_, bound_, work_);
    if (slipped) slippery_.push_back(*slipped);
    return !slipped && !work_.stopped();
  }

  const CutProblem& problem_;
  Proof proof_;
  const std::int64_t bound_;
  CuttingWork& work_;
  std::vector<Counts> slippery_;
};

}  // namespace

bool proves(const CutProblem& problem, const Proof& proof, std::int64_t bound, CuttingWork& work) {
  return !choiceLeft(problem, proof, bound, work);
}

Proof inFewPoints(const CutProblem& problem, Proof proof, std::int64_t bound, CuttingWork& work) {
  return Reduction(problem, std::move(proof), bound, work).run();
}

}  // namespace ribwright
