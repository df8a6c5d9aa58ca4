// What people measured on a wall, good and bad: girts a little or a lot off the plan, stick checks, stations that do
// not reach a corner, girts that nobody looked at, a slab that falls, a chalk line that was snapped elsewhere.
#pragma once

#include <cstdint>

#include "core/job/job.h"
#include "tests/fuzz/dice.h"

namespace ribwright::fuzz {

// Survey of every wall; most patterns confirmed against a plan sheet, most girts with a member. Layout and screws stay
// as they were but for the members.
Job withSurvey(Job job, Dice& dice);

// One free wall of two to eight sheets, girts a few feet apart, screws mostly where they hold: most of its batches have
// a survey that could clear them.
Job surveyedWall(std::uint64_t seed, int index);

}  // namespace ribwright::fuzz
