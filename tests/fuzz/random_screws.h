// What screws need, added to a random building: steel, screws and patterns as plans state them, good and bad.
#pragma once

#include "core/job/job.h"
#include "tests/fuzz/dice.h"

namespace ribwright::fuzz {

// Sheets keep their covers, lips, legs and lengths. End laps may move, since they go by the girts.
Job withScrews(Job job, Dice& dice);

// Its parts.
void addSections(Job& job, Dice& dice);  // ribs or corrugations in the lap, or the pan as it was
void addScrews(Job& job, Dice& dice);
void addPatterns(Job& job, Dice& dice);
void addMembers(Job& job, Dice& dice);
void addSteel(const Job& job, Wall& wall, Dice& dice);

// One statement about screws, patterns or steel changed. Of a job with screws and walls.
Job withScrewEdit(Job job, Dice& dice);

}  // namespace ribwright::fuzz
