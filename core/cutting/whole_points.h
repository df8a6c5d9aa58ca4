// A proof that a person can check: as few price lists as will do, in as few whole points as will do.
#pragma once

#include "core/cutting/piece_points.h"

namespace ribwright {

struct Proof {
  std::vector<PiecePoints> lists;
  std::vector<Counts> searched;  // choices of stocks, and fewer of each, that were searched through instead
};

// Whether every choice of stocks that costs less than `bound` is refuted by one of the lists or searched through.
bool proves(const CutProblem& problem, const Proof& proof, std::int64_t bound, CuttingWork& work);

// `proof` proves the bound, and so does what comes of it. Where the work is stopped, it stays as it then is.
Proof inFewPoints(const CutProblem& problem, Proof proof, std::int64_t bound, CuttingWork& work);

}  // namespace ribwright
