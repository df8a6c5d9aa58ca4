#include "core/editing/history.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "core/job/job_file.h"

using namespace ribwright;

namespace {

Job twoWalls() {
  Job job;
  job.name = "shed";
  job.building.outline = {{Length(), Length()}, {Length::feet(30), Length()}};
  for (const char* letter : {"A", "B"}) {
    Wall wall;
    wall.letter = letter;
    job.walls.push_back(wall);
  }
  return job;
}

Job withDrop(Job job, std::size_t wall, Length drop) {
  job.walls[wall].base.drop = drop;
  return job;
}

}  // namespace

TEST_CASE("a job that was just opened has nothing to undo and is as the file holds it") {
  History history(twoWalls());
  CHECK(history.job() == twoWalls());
  CHECK_FALSE(history.canUndo());
  CHECK_FALSE(history.canRedo());
  CHECK_FALSE(history.undo());
  CHECK_FALSE(history.redo());
  CHECK(history.undoName().empty());
  CHECK(history.redoName().empty());
  CHECK(history.isSaved());
}

TEST_CASE("undoing all gives the first bytes, redoing all the last") {
  History history(twoWalls());
  const std::string first = writeJob(twoWalls());
  Job job = twoWalls();
  for (int inch = 1; inch <= 200; ++inch) {
    job = withDrop(job, static_cast<std::size_t>(inch % 2), Length::inches(inch));
    CHECK(history.push("lower the sheets' ends", job));
  }
  const std::string last = writeJob(job);
  int undone = 0;
  while (history.undo()) ++undone;
  CHECK(undone == 200);
  CHECK(writeJob(history.job()) == first);
  while (history.redo()) --undone;
  CHECK(undone == 0);
  CHECK(writeJob(history.job()) == last);
}

TEST_CASE("undo and redo are named by the edit that they take back or do again") {
  History history(twoWalls());
  history.push("lower wall A", withDrop(twoWalls(), 0, Length::inches(3)));
  history.push("lower wall B", withDrop(history.job(), 1, Length::inches(4)));
  CHECK(history.undoName() == "lower wall B");
  history.undo();
  CHECK(history.undoName() == "lower wall A");
  CHECK(history.redoName() == "lower wall B");
}

TEST_CASE("a new edit drops what could be redone") {
  History history(twoWalls());
  history.push("one", withDrop(twoWalls(), 0, Length::inches(1)));
  history.push("two", withDrop(twoWalls(), 0, Length::inches(2)));
  history.undo();
  history.push("three", withDrop(twoWalls(), 0, Length::inches(3)));
  CHECK_FALSE(history.canRedo());
  CHECK(history.size() == 3);
  CHECK(history.job().walls[0].base.drop == Length::inches(3));
}

TEST_CASE("an edit that changes nothing keeps what can be redone, and the file's mark") {
  History history(twoWalls());
  history.push("one", withDrop(twoWalls(), 0, Length::inches(1)));
  history.undo();
  CHECK_FALSE(history.push("nothing", twoWalls()));
  CHECK(history.canRedo());
  CHECK(history.isSaved());
  CHECK(history.redoName() == "one");
}

TEST_CASE("saved means the same state, not an equal one") {
  History history(twoWalls());
  history.push("one", withDrop(twoWalls(), 0, Length::inches(1)));
  CHECK_FALSE(history.isSaved());
  history.markSaved();
  CHECK(history.isSaved());
  history.undo();
  CHECK_FALSE(history.isSaved());
  history.redo();
  CHECK(history.isSaved());
}

TEST_CASE("no state is the file's once the file's own was dropped") {
  History history(twoWalls());
  history.push("one", withDrop(twoWalls(), 0, Length::inches(1)));
  history.markSaved();
  history.undo();
  history.push("two", withDrop(twoWalls(), 0, Length::inches(2)));
  CHECK_FALSE(history.isSaved());
  history.undo();
  CHECK_FALSE(history.isSaved());
  history.redo();
  CHECK_FALSE(history.isSaved());
}

TEST_CASE("walls that an edit leaves alone are kept once") {
  const KeptJob before = keep(twoWalls(), nullptr);
  const KeptJob after = keep(withDrop(twoWalls(), 1, Length::inches(5)), &before);
  CHECK(after.rest == before.rest);
  CHECK(after.walls[0] == before.walls[0]);
  CHECK(after.walls[1] != before.walls[1]);
}

TEST_CASE("a change beside the walls keeps the walls") {
  const KeptJob before = keep(twoWalls(), nullptr);
  Job renamed = twoWalls();
  renamed.name = "barn";
  const KeptJob after = keep(renamed, &before);
  CHECK(after.rest != before.rest);
  CHECK(after.walls == before.walls);
  CHECK(jobOf(after) == renamed);
  CHECK_FALSE(isKept(renamed, before));
  CHECK(isKept(renamed, after));
}

TEST_CASE("typing into one field is one step, taken back at once") {
  History history(twoWalls());
  const StateId first = history.id();
  CHECK(history.push("drop 1", withDrop(twoWalls(), 0, Length::inches(1)), "drop of A"));
  CHECK(history.push("drop 12", withDrop(twoWalls(), 0, Length::inches(12)), "drop of A"));
  CHECK(history.size() == 2);
  CHECK(history.undoName() == "drop 12");
  CHECK(history.undo());
  CHECK(history.job() == twoWalls());
  CHECK(history.id() == first);
  CHECK(history.isSaved());
}

TEST_CASE("typing that comes back to where it began leaves no step and the file's mark") {
  History history(twoWalls());
  history.push("drop 1", withDrop(twoWalls(), 0, Length::inches(1)), "drop of A");
  CHECK(history.push("drop as before", twoWalls(), "drop of A"));
  CHECK_FALSE(history.canUndo());
  CHECK(history.isSaved());
}

TEST_CASE("a step ends with the field, with a save and with going back") {
  const auto drop = [](int inches) { return withDrop(twoWalls(), 0, Length::inches(inches)); };
  History history(twoWalls());
  history.push("one", drop(1), "drop of A");
  history.push("two", drop(2), "drop of B");
  CHECK(history.size() == 3);
  history.endMerging();
  history.push("three", drop(3), "drop of B");
  CHECK(history.size() == 4);
  history.markSaved();
  history.push("four", drop(4), "drop of B");
  CHECK(history.size() == 5);
  CHECK_FALSE(history.isSaved());
  history.undo();
  CHECK(history.isSaved());
  history.push("five", drop(5), "drop of B");
  CHECK(history.size() == 5);
  CHECK(history.undoName() == "five");
}

TEST_CASE("no two states ever have one id") {
  History history(twoWalls());
  std::vector<StateId> ids{history.id()};
  for (int inch = 1; inch <= 6; ++inch) {
    history.push("drop", withDrop(twoWalls(), 0, Length::inches(inch)), inch < 4 ? "typing" : "");
    ids.push_back(history.id());
    if (inch == 5) history.undo();
  }
  std::sort(ids.begin(), ids.end());
  CHECK(std::adjacent_find(ids.begin(), ids.end()) == ids.end());
}

TEST_CASE("a job that was begun and never saved is not the file's") {
  History history = History::unsaved(twoWalls());
  CHECK_FALSE(history.isSaved());
  history.push("one", withDrop(twoWalls(), 0, Length::inches(1)));
  history.undo();
  CHECK_FALSE(history.isSaved());
  history.markSaved();
  CHECK(history.isSaved());
}
