// Looks for a plan that serves with the stocks at hand.
#pragma once

#include <optional>
#include <set>
#include <string>

#include "core/cutting/column_generation.h"

namespace ribwright {

// What is still to be cut, and the stocks that are left for it.
struct CutState {
  Counts demand, stocks;

  bool done() const;
  void take(std::size_t stock, std::int64_t times, const Counts& counts);
};

enum class Served { Yes, No, Unknown };

class PlanSearch {
 public:
  PlanSearch(const CutProblem& problem, PatternPool& pool, CuttingWork& work)
      : problem_(problem), pool_(pool), work_(work) {}

  // Price lists of the whole problem: what they refute is not looked at.
  void add(const PiecePoints& prices) { known_.push_back(prices); }

  // Rounds fractions to whole stock pieces, the largest first; `seconds` times along the way it may take a second
  // choice. No: proved by a price list alone, which `refutation()` then is. Unknown: none was found that way.
  Served round(const CutState& state, int seconds);
  // The same at the least cost that comes of the fractions; never No.
  Served roundCheaply(const CutState& state);
  // Tries everything that can be cut. No: proved by having tried.
  Served tryAll(const CutState& state);

  // The cuts, when Yes.
  const StockCuts& cuts() const { return cuts_; }
  const std::optional<PiecePoints>& refutation() const { return refutation_; }

 private:
  struct Look {                       // what the linear program says of a state
    Served served = Served::Unknown;  // Yes: cuts_ are complete
    std::vector<LpCut> fractions{};
    std::optional<PiecePoints> prices{};  // the last ones, good for all that follows from the state
  };
  Look look(const CutState& state, Aim aim);
  Aim servingAim() const;
  bool refutedByKnown(const CutState& state);
  Served roundFrom(const CutState& state, const Look& look, Aim aim, int seconds);
  Served tryFrom(const CutState& state);
  Served tryEach(const CutState& state, const Look& look);
  bool fits(const CutState& state);
  void cut(CutState& state, const LpCut& cut, std::int64_t times);

  const CutProblem& problem_;
  PatternPool& pool_;
  CuttingWork& work_;
  std::vector<PiecePoints> known_;
  std::set<Counts> failed_;  // states that were tried in vain
  StockCuts cuts_;
  std::optional<PiecePoints> refutation_;
};

}  // namespace ribwright
