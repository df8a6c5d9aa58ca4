// Where a job names one of its own things by id: profiles, members, screws, patterns and trims anywhere; girts and openings of
// a wall on that wall.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/job/job.h"
#include "core/units/outcome.h"

namespace ribwright {

struct Naming {
  std::string path;  // of the field that names it
  std::string* name;
};

// The fields that name things of the list at this path ("walls[1].girts"), whichever of them; none for a list whose
// things nobody names. What was ordered keeps the names that it was ordered by.
std::vector<Naming> namingsOf(Job& job, std::string_view list);

// The thing at `path` ("walls[1].girts[2]") was called `before` and is called `after`: so it is called wherever the job
// names it, in what was put aside too.
void callBy(Job& job, std::string_view path, const std::string& before, const std::string& after);

// Paths of the fields that name it; empty when nobody does.
std::vector<std::string> whoNames(const Job& job, std::string_view path, const std::string& id);

// Sheets that are marked with this wall's letter hang or were ordered.
bool isMarkedOnSite(const Job& job, const std::string& letter);

// Another letter for a wall, in what was put aside. Faults: the wall takes its place from the outline by its letter;
// sheets that are marked with it hang or were ordered.
std::vector<Fault> callWallBy(Job& job, std::size_t wall, const std::string& before, const std::string& after);

}  // namespace ribwright
