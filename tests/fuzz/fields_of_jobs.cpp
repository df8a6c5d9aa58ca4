// For every field of every job: the text that is shown gives the same job, whatever else is typed is either refused or
// gives a job whose file reads back equal, and so do items added, removed and moved.
#include <catch2/catch.hpp>
#include <filesystem>
#include <string>
#include <vector>

#include "core/editing/job_fields.h"
#include "core/job/job_file.h"
#include "tests/fuzz/random_building.h"
#include "tests/fuzz/random_job.h"

namespace ribwright::fuzz {
namespace {

constexpr std::uint64_t kFieldSeed = 20'261'126;

// Every text field below a path, and every list of objects.
struct Places {
  std::vector<Field> texts, lists, optional;
};

void gather(const Job& job, const Field& field, Places& places) {
  if (field.absent && !field.isText()) {
    places.optional.push_back(field);
    return;
  }
  if (field.isText()) places.texts.push_back(field);
  if (field.kind == FieldKind::List) {
    places.lists.push_back(field);
    const auto list = fieldAt(job, field.path);
    REQUIRE(list);
    for (const Field& item : list.value().fields) {
      for (const Field& below : item.fields) gather(job, below, places);
    }
    return;
  }
  for (const Field& below : field.fields) gather(job, below, places);
}

Places placesOf(const Job& job) {
  Places places;
  const auto whole = fieldAt(job, "");
  for (const Field& field : whole.value().fields) gather(job, field, places);
  return places;
}

void holdReadsBack(const Outcome<Job>& made) {
  if (!made) {
    CHECK_FALSE(made.faults().empty());
    return;
  }
  const auto again = readJob(writeJob(made.value()), "");
  INFO((again ? std::string() : oneLine(again.faults().front())));
  REQUIRE(again);
  CHECK(again.value() == made.value());
}

std::string anyText(FieldDice& dice, const Field& field) {
  switch (dice.small(0, 7)) {
    case 0:
      return "";
    case 1:
      return dice.line();
    case 2:
      return std::to_string(dice.whole(-3, 200));
    case 3:
      return dice.small(0, 1) == 0 ? "2' 3-1/4\"" : "-750 mm";
    case 4:
      return field.choices.empty()
                 ? dice.id()
                 : field.choices[static_cast<std::size_t>(dice.small(0, static_cast<int>(field.choices.size()) - 1))];
    case 5:
      return dice.small(0, 1) == 0 ? "true" : "7, 9, 12";
    case 6:
      return dice.small(0, 1) == 0 ? "3.5:12" : "9.5 deg";
    default:
      return "20', 2@25'\n\xff";
  }
}

void hold(const Job& job, FieldDice& dice, int share) {
  const Places places = placesOf(job);
  for (const Field& field : places.texts) {
    if (dice.small(1, share) > 1) continue;
    const auto same = withField(job, field.path, field.text);
    INFO(field.path << ": \"" << field.text << "\" " << (same ? "" : oneLine(same.faults().front())));
    REQUIRE(same);
    CHECK(same.value() == job);
    holdReadsBack(withField(job, field.path, anyText(dice, field)));
    holdReadsBack(withFieldAbsent(job, field.path));
  }
  for (const Field& field : places.optional) {
    if (dice.small(1, share) > 1) continue;
    holdReadsBack(withFieldStated(job, field.path));
  }
  for (const Field& list : places.lists) {
    if (dice.small(1, share) > 1) continue;
    INFO(list.path);
    holdReadsBack(withItemAdded(job, list.path, static_cast<std::size_t>(dice.small(0, static_cast<int>(list.items)))));
    if (list.items == 0) continue;
    const auto at = static_cast<std::size_t>(dice.small(0, static_cast<int>(list.items) - 1));
    holdReadsBack(withItemRemoved(job, list.path, at));
    holdReadsBack(withItemMoved(job, list.path, at, list.items - 1));
  }
}

}  // namespace

TEST_CASE("every field of the sample jobs takes its own text, and refuses or holds any other") {
  for (const auto& file : std::filesystem::directory_iterator(RIBWRIGHT_ROOT "/sample-jobs")) {
    const auto job = loadJob(file.path().string());
    if (file.path().extension() != ".json") continue;
    REQUIRE(job);
    INFO(file.path().string());
    FieldDice dice(kFieldSeed, 0);
    hold(job.value(), dice, 1);
  }
}

TEST_CASE("every field of random jobs takes its own text, and refuses or holds any other") {
  for (int i = 0; i < 12; ++i) {
    INFO("job " << i);
    FieldDice dice(kFieldSeed, i);
    const Job job = filledJob(kFieldSeed, i);
    REQUIRE(faultsOf(job).empty());
    hold(job, dice, 20);
  }
}

TEST_CASE("every list of a job takes a new item at its end") {
  for (const char* name : {"gable-workshop", "metric-hall"}) {
    Job job = loadJob(std::string(RIBWRIGHT_ROOT "/sample-jobs/") + name + ".json").value();
    for (const char* first : {"facts.orders", "patterns", "site.sight_points"}) {
      const std::size_t items = fieldAt(job, first).value().items;
      job = withItemAdded(job, first, items).value();
    }
    const Places places = placesOf(job);
    for (const Field& list : places.lists) {
      INFO(name << " " << list.path);
      const auto more = withItemAdded(job, list.path, list.items);
      INFO((more ? std::string() : oneLine(more.faults().front())));
      REQUIRE(more);
      CHECK(fieldAt(more.value(), list.path).value().items == list.items + 1);
    }
  }
}

}  // namespace ribwright::fuzz
