// The commands that need no window. Each writes what was asked for to standard output, faults to standard error, and
// gives the program's exit code.
#pragma once

#include <string>
#include <vector>

#include "app/command_line.h"
#include "core/job/job.h"
#include "core/plan/plan.h"
#include "core/words/words.h"

namespace ribwright {

inline constexpr int exitDone = 0;     // done, and nothing stops
inline constexpr int exitStops = 1;    // done, but some finding is a stop
inline constexpr int exitRefused = 2;  // the job cannot be read or the command is wrong; nothing half-written

int printOrder(const Request& request);
int printFindings(const Request& request);
int writePacket(const Request& request);
int printCuttingPlan(const Request& request);

// What those commands share.

struct PlannedJob {
  Job job;  // as it was read
  Plan plan;
  LengthStyle style;  // to show both in
};
// Faults: of the job file.
Outcome<PlannedJob> readAndPlan(const Request& request);

// Of pages and findings: English where none is asked for.
const Words& wordsOf(const Request& request);

// "stop 0, look 2, note 1"
std::string gradeCounts(const Plan& plan);

// Gives the exit code of a plan, or refuses when standard output takes no more (a full disk).
int print(const std::string& text, const Plan& plan);
// Gives that code, or refuses likewise.
int print(const std::string& text, int code);

// Every fault on a line of its own to standard error; gives exitRefused.
int refuse(const std::vector<Fault>& faults);

}  // namespace ribwright
