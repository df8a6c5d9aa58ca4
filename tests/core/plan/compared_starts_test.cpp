// Starts of one wall side by side.
#include <catch2/catch.hpp>
#include <set>

#include "core/job/job_file.h"
#include "core/plan/compared_starts.h"

using namespace ribwright;

namespace {

Job sample(const std::string& name) {
  auto job = loadJob(std::string(RIBWRIGHT_ROOT) + "/sample-jobs/" + name + ".json");
  REQUIRE(job.ok());
  return std::move(job).value();
}

const ComparedStart& of(const std::vector<ComparedStart>& all, Start::Rule rule) {
  for (const ComparedStart& one : all) {
    if (one.start.rule == rule) return one;
  }
  FAIL("no such start");
  return all.front();
}

}  // namespace

TEST_CASE("every start with something to go by is compared: ridge only on a gable, jambs of each opening") {
  const Job job = sample("gable-workshop");
  const Plan all = plan(job);
  const auto front = startsFor(job, all, 0);  // three openings, no ridge
  CHECK(front.size() == 3 + 3 * 2 + 1);
  const auto gable = startsFor(job, all, 1);  // two openings, a ridge
  CHECK(gable.size() == 3 + 2 + 2 * 2 + 1);
}

TEST_CASE("a typed start that stands is compared too, and marked") {
  Job job = sample("gable-workshop");
  Start typed;
  typed.rule = Start::Rule::Typed;
  typed.offset = Length::inches(7);
  job = withStart(job, 0, typed);
  const auto all = comparedStarts(job, plan(job), 0);
  REQUIRE(std::count_if(all.begin(), all.end(), [](const ComparedStart& one) { return one.stands; }) == 1);
  CHECK(of(all, Start::Rule::Typed).stands);
}

TEST_CASE("every figure is what a fresh plan of that start gives") {
  for (const char* name : {"gable-workshop", "metric-hall", "l-shape", "lean-to"}) {
    const Job job = sample(name);
    const Plan before = plan(job);
    for (std::size_t wall = 0; wall < job.walls.size(); ++wall) {
      for (const ComparedStart& one : comparedStarts(job, before, wall)) {
        const Job other = withStart(job, wall, one.start);
        const Plan fresh = plan(other);
        const WallLayout& layout = fresh.walls[wall]->layout;
        CHECK(one.sheets == static_cast<int>(layout.pieces.size()));
        std::set<std::pair<int, Length>> lengths;
        Area steel;
        for (const Piece& piece : layout.pieces) {
          const int band = layout.runs[static_cast<std::size_t>(piece.run)].band;
          const std::string& id = other.walls[wall].bands[static_cast<std::size_t>(band)].profile;
          for (std::size_t i = 0; i < job.profiles.size(); ++i) {
            if (job.profiles[i].id != id) continue;
            lengths.emplace(static_cast<int>(i), piece.blankLength);
            steel += piece.blankLength * job.profiles[i].metalWidth();
          }
        }
        CHECK(one.lengths == static_cast<int>(lengths.size()));
        CHECK(one.steel == steel);
        int stops = 0, looks = 0, seams = 0;
        for (const Finding& finding : fresh.findings) {
          if (finding.wall != other.walls[wall].letter) continue;
          stops += finding.grade == Grade::Stop;
          looks += finding.grade == Grade::Look;
          seams += finding.id == "seam-near-jamb";
        }
        CHECK(one.stops == stops);
        CHECK(one.looks == looks);
        if (layout.runs.size() == 1) CHECK(one.seamsNearJambs == seams);
        const Module& first = layout.runs.front().modules.front();
        CHECK(one.firstRip.has_value() == (first.startRipped || first.leadRipped));
        if (one.firstRip) CHECK(*one.firstRip == first.metalRight - first.metalLeft);
        const Module& last = layout.runs.back().modules.back();
        if (one.lastRip) CHECK(*one.lastRip == last.metalRight - last.metalLeft);
      }
    }
  }
}

TEST_CASE("the best comes first, and the search of the layout is no worse than any rule") {
  const Job job = sample("gable-workshop");
  for (std::size_t wall = 0; wall < 4; ++wall) {
    const auto all = comparedStarts(job, plan(job), wall);
    for (std::size_t i = 1; i < all.size(); ++i) CHECK_FALSE(all[i].rank < all[i - 1].rank);
    CHECK_FALSE(of(all, Start::Rule::EqualRips).rank < of(all, Start::Rule::BestOfSearch).rank);
  }
}

TEST_CASE("the search over the tape's marks is the same every time, and stops with the best so far") {
  const Job job = sample("gable-workshop");
  double last = -1;
  const auto whole = searchStarts(job, 1, [&](double done) {
    CHECK(done > last);
    last = done;
    return true;
  });
  REQUIRE(whole.best);
  CHECK(whole.whole);
  CHECK(whole.best->offset < Length::feet(3));
  const auto again = searchStarts(job, 1, [](double) { return true; });
  CHECK(again.best == whole.best);
  const Plan before = plan(job);
  const StartRank found = comparedStart(job, before, 1, *whole.best).rank;
  for (int sixteenths = 0; sixteenths < 36 * 16; sixteenths += 37) {
    Start other = *whole.best;
    other.offset = Length::inches(0, 4) * sixteenths;
    CHECK_FALSE(comparedStart(job, before, 1, other).rank < found);
  }
  int asked = 0;
  const auto stopped = searchStarts(job, 1, [&](double) { return ++asked <= 3; });
  CHECK_FALSE(stopped.whole);
  REQUIRE(stopped.best);
  CHECK(stopped.best->offset < Length::inches(0, 12));
  CHECK_FALSE(searchStarts(job, 1, [](double) { return false; }).best);
}
