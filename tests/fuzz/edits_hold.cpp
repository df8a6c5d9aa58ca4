// What must hold of every edit, whatever it is given: a job that the file holds and gives back equal, or faults and the
// job left alone; all of it undone to the first byte and done again to the last.
#include <catch2/catch.hpp>
#include <filesystem>
#include <map>
#include <set>

#include "core/editing/history.h"
#include "core/job/by_id.h"
#include "core/job/job_file.h"
#include "tests/fuzz/complaints.h"
#include "tests/fuzz/layout_text.h"
#include "tests/fuzz/random_building.h"
#include "tests/fuzz/random_edits.h"
#include "tests/fuzz/random_job.h"

namespace ribwright::fuzz {
namespace {

std::vector<Job> sampleJobs() {
  std::vector<Job> jobs;
  for (const auto& file : std::filesystem::directory_iterator(RIBWRIGHT_ROOT "/sample-jobs")) {
    if (file.path().extension() == ".json") jobs.push_back(loadJob(file.path().string()).value());
  }
  return jobs;
}

// Columns, bands, girts and pipes too, so that there is something to edit.
Job furnished(Job job, Dice& dice) {
  for (Wall& wall : job.walls) {
    for (int bay = dice.small(0, 4); bay > 0; --bay)
      wall.columns.bays.push_back(dice.length(Length::feet(6), Length::feet(25)));
    for (int girt = 1; girt <= 3 && wall.girts.empty(); ++girt) {
      wall.girts.resize(wall.girts.size() + 1);
      wall.girts.back().id = "g" + std::to_string(girt);
      wall.girts.back().height = Length::feet(3 * girt);
    }
    for (Opening& opening : wall.openings) {
      if (!dice.oneIn(2)) continue;
      opening.place.from = Anchor::From::Column;
      opening.place.column = dice.small(1, 5);
    }
    for (const Girt& girt : wall.girts) {
      if (dice.oneIn(2)) wall.survey.girts.push_back({girt.id, {{Length::feet(1), girt.height, {}, "A", "2024"}}});
    }
  }
  return job;
}

std::size_t readings(const Job& job) {
  std::size_t count = 0;
  for (const Wall& wall : job.walls) {
    for (const GirtSurvey& survey : wall.survey.girts) count += survey.readings.size();
  }
  return count;
}

template <class Item>
void lookForAll(const std::vector<Item>& before, const std::vector<Item>& after, Complaints& complaints) {
  for (const Item& item : before) complaints.check(byId(after, item.id) != nullptr, item.id + " is gone");
}

void lookAtAnchor(const std::string& id, const Anchor& before, const Anchor& after, Complaints& complaints) {
  complaints.check(before.from == after.from && before.to == after.to, id + " is anchored otherwise");
}

void lookAtAnchors(const Wall& before, const Wall& after, Complaints& complaints) {
  for (const Opening& opening : before.openings) {
    if (const Opening* is = byId(after.openings, opening.id))
      lookAtAnchor(opening.id, opening.place, is->place, complaints);
  }
  for (const Penetration& penetration : before.penetrations) {
    if (const Penetration* is = byId(after.penetrations, penetration.id))
      lookAtAnchor(penetration.id, penetration.place, is->place, complaints);
  }
}

void lookAtEdited(const Job& before, const Job& after, bool removes, Complaints& complaints) {
  const std::string text = writeJob(after);
  const auto read = readJob(text, "edited");
  if (!read) return complaints.add("the file refuses it: " + oneLine(read.faults().front()));
  complaints.check(read.value() == after, "the file gives another job back");
  complaints.check(writeJob(read.value()) == text, "the file is written otherwise");
  complaints.check(readings(after) >= readings(before), "a reading is gone");
  if (!complaints.check(before.walls.size() == after.walls.size(), "a wall is gone")) return;
  for (std::size_t i = 0; i < before.walls.size(); ++i) {
    lookAtAnchors(before.walls[i], after.walls[i], complaints);
    if (removes) continue;
    lookForAll(before.walls[i].openings, after.walls[i].openings, complaints);
    lookForAll(before.walls[i].penetrations, after.walls[i].penetrations, complaints);
    lookForAll(before.walls[i].girts, after.walls[i].girts, complaints);
    complaints.check(after.walls[i].bands.size() >= before.walls[i].bands.size(), "a band is gone");
    complaints.check(after.walls[i].top.size() >= before.walls[i].top.size(), "a top point is gone");
    complaints.check(after.walls[i].expansionJoints.size() >= before.walls[i].expansionJoints.size(),
                     "a joint is gone");
  }
  if (!removes) complaints.check(after.site.sightPoints.size() >= before.site.sightPoints.size(), "a sight is gone");
}

struct Tally {
  std::map<std::string, int> done, refused;
};

// A bad fault has no word, or stands for what only the checker may say.
void lookAtFaults(const TriedEdit& edit, Complaints& complaints) {
  for (const Fault& fault : edit.outcome.faults()) {
    complaints.check(!fault.message.empty(), "a fault without words");
    complaints.check(fault.message != "the text is not read back equal", fault.message);
  }
}

bool tryOne(const Job& job, const Plan* plan, Dice& dice, History& history, Tally& tally, Complaints& complaints) {
  const Job kept = job;
  const TriedEdit edit = randomEdit(job, plan, dice);
  complaints.at(edit.name);
  complaints.check(job == kept, "the job that it was given is another");
  (edit.outcome ? tally.done : tally.refused)[edit.name]++;
  if (!edit.outcome) {
    lookAtFaults(edit, complaints);
    return false;
  }
  lookAtEdited(job, edit.outcome.value(), edit.removes, complaints);
  const bool redoable = history.canRedo(), same = edit.outcome.value() == job;
  complaints.check(history.push(edit.name, edit.outcome.value()) != same, "a step of nothing, or no step of something");
  if (same) complaints.check(history.canRedo() == redoable, "an edit of nothing drops what can be redone");
  return !same;
}

void undoAllAndRedo(const Job& first, History& history, Complaints& complaints) {
  while (history.redo()) {
  }
  const std::string last = writeJob(history.job());
  while (history.undo()) {
  }
  complaints.check(writeJob(history.job()) == writeJob(first), "undone to the end it is not the first job");
  while (history.redo()) {
  }
  complaints.check(writeJob(history.job()) == last, "done again to the end it is not the last job");
}

void editOnAndOn(const Job& first, Dice& dice, int times, bool planned, Tally& tally, Complaints& complaints) {
  History history(first);
  Plan known = planned ? plan(first) : Plan{};
  for (int i = 0; i < times; ++i) {
    if (dice.oneIn(5)) dice.oneIn(3) ? history.redo() : history.undo();
    const Job job = history.job();
    if (planned) known = plan(job, known);
    tryOne(job, planned ? &known : nullptr, dice, history, tally, complaints);
  }
  undoAllAndRedo(first, history, complaints);
  if (planned)
    complaints.check(planText(plan(history.job(), known)) == planText(plan(history.job())),
                     "the plan that follows from another differs");
}

}  // namespace

TEST_CASE("random edits of random buildings and sample jobs hold in the file, in the plan, undone and done again") {
  Tally tally;
  const std::vector<Job> samples = sampleJobs();
  REQUIRE(samples.size() >= 5);
  for (int index = 0; index < 130; ++index) {
    Dice dice(kSeed + 40, index);
    const bool sample = index % 13 == 0;
    const Job job = sample ? samples[static_cast<std::size_t>(index / 13) % samples.size()]
                           : furnished(randomJob(kSeed + 40, index), dice);
    REQUIRE(faultsOf(job).empty());
    Complaints complaints;
    editOnAndOn(job, dice, sample ? 12 : 40, true, tally, complaints);
    INFO("building " << index << " of seed " << kSeed + 40 << "\n" << complaints.text());
    CHECK(complaints.lines().empty());
  }
  // Each kind of edit was done, and not only refused.
  CHECK(tally.done.size() >= 45);
  for (const auto& [name, count] : tally.refused) {
    INFO(name);
    CHECK(tally.done[name] > 0);
  }
}

TEST_CASE("random edits of jobs that hold anything a file may hold give what a file may hold") {
  Tally tally;
  for (int index = 0; index < 300; ++index) {
    Dice dice(kSeed + 41, index);
    const Job job = filledJob(kSeed + 41, index);
    if (job.walls.empty()) continue;
    Complaints complaints;
    editOnAndOn(job, dice, 20, false, tally, complaints);
    INFO("job " << index << " of seed " << kSeed + 41 << "\n" << complaints.text());
    CHECK(complaints.lines().empty());
  }
  CHECK(tally.done.size() >= 35);
}

}  // namespace ribwright::fuzz
