// Random buildings that have a meaning, though not always a good one: every roof, base, top, start, band, joint, end
// lap and opening that the trade's rules know, on sixteenths of an inch, whole millimetres and awkward nanometres.
#pragma once

#include <cstdint>
#include <string>

#include "core/job/job.h"
#include "core/plan/plan.h"
#include "tests/fuzz/dice.h"

namespace ribwright::fuzz {

inline constexpr std::uint64_t kSeed = 20'240'601;

// "W3".
inline std::string numbered(char letter, int number) { return std::string(1, letter).append(std::to_string(number)); }

// Building `index` of a seed; always the same.
Job randomJob(std::uint64_t seed, int index);

// The particulars of one wall whose top and width are known to it or to its building already.
void addParticulars(Job& job, Wall& wall, Dice& dice);
void addOpenings(const Job& job, Wall& wall, Dice& dice);

// The first sheets of one wall hang, their leading edges measured a little off the plan, or just where they should be.
Job withHungSheets(Job job, const Plan& plan, Dice& dice, bool onTheirPlaces = false);
// One statement changed, anywhere in the job.
Job edited(Job job, Dice& dice);

}  // namespace ribwright::fuzz
