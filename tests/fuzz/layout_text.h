// A layout as text, every field in nanometres: for comparing two of them and for showing where they part.
#pragma once

#include <string>

#include "core/plan/plan.h"

namespace ribwright::fuzz {

std::string layoutText(const WallLayout& layout);
// All walls, the order and the findings.
std::string planText(const Plan& plan);
// The first line in which two texts differ, both sides; empty when they are equal.
std::string firstDifference(const std::string& a, const std::string& b);
// A job's walls in a few lines, to find a case again.
std::string jobText(const Job& job);

}  // namespace ribwright::fuzz
