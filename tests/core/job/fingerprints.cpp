// A page's fingerprint tells what has changed since it was printed.
#include <catch2/catch.hpp>

#include <functional>

#include "core/job/fingerprint.h"
#include "core/job/job_file.h"

using namespace ribwright;

namespace {

Job workshop() { return loadJob(RIBWRIGHT_ROOT "/sample-jobs/gable-workshop.json").value(); }

std::vector<StatedPart> changedBy(const std::function<void(Job&)>& edit, const std::string& of) {
  Job job = workshop();
  const Fingerprint printed = of.empty() ? fingerprintOf(job) : fingerprintOf(job, job.walls.at(1));
  edit(job);
  return changedSince(job, printed).value();
}

using Parts = std::vector<StatedPart>;

}  // namespace

TEST_CASE("a fingerprint reads back as it is printed, capitals or not") {
  const Job job = workshop();
  for (const Fingerprint& made : {fingerprintOf(job), fingerprintOf(job, job.walls[1])}) {
    CHECK(readFingerprint(made.text()).value() == made);
    CHECK(readFingerprint("  " + made.text() + " ").value() == made);
  }
  CHECK(fingerprintOf(job).text().size() == 3 + 6 * 4);
  CHECK(fingerprintOf(job, job.walls[1]).text().substr(0, 2) == "B.");
  std::string capitals = fingerprintOf(job, job.walls[1]).text();
  for (char& letter : capitals) letter = static_cast<char>(std::toupper(letter));
  CHECK(readFingerprint(capitals).value() == fingerprintOf(job, job.walls[1]));
}

TEST_CASE("what is no fingerprint is refused") {
  for (const char* text : {"", "A", "A.abc", "A.abc.abc.abc.abc.abc.ab", "A.abc.abc.abc.abc.abc.ab!",
                           ".abc.abc.abc.abc.abc.abc", "A.abc.abc.abc.abc.abc.abc.abc", "A.abc.abc.abc.abc.abc.abi"}) {
    INFO(text);
    CHECK_FALSE(readFingerprint(text));
  }
}

TEST_CASE("each part of a wall changes its own group") {
  CHECK(changedBy([](Job& job) { job.walls[1].eaveHoldDown += Length::inches(1); }, "B") ==
        Parts{StatedPart::Building});
  CHECK(changedBy([](Job& job) { job.walls[1].hang = Hang::RightToLeft; }, "B") == Parts{StatedPart::Sheets});
  CHECK(changedBy([](Job& job) { job.walls[1].openings[0].width += Length::nanometres(1); }, "B") ==
        Parts{StatedPart::Openings});
  CHECK(changedBy([](Job& job) { job.walls[1].girts[0].height += Length::inches(1); }, "B") ==
        Parts{StatedPart::Steel});
  CHECK(changedBy([](Job& job) { job.walls[1].openings[0].frame.face += Length::inches(1); }, "B") ==
        Parts{StatedPart::Steel});
  CHECK(changedBy([](Job& job) { job.patterns[0].rows[0].offsets[0] += Length::inches(0, 8); }, "B") ==
        Parts{StatedPart::Screws});
  CHECK(changedBy([](Job& job) { job.walls[1].survey.propsInPlace = !job.walls[1].survey.propsInPlace; }, "B") ==
        Parts{StatedPart::Survey});
  CHECK(changedBy([](Job& job) { job.profiles[0].thickness += Length::nanometres(1000); }, "B") ==
        Parts{StatedPart::Sheets});
}

TEST_CASE("another wall's change leaves a wall's fingerprint and changes the job's") {
  const auto edit = [](Job& job) { job.walls[0].openings[0].sill += Length::inches(1); };
  CHECK(changedBy(edit, "B").empty());
  CHECK(changedBy(edit, "") == Parts{StatedPart::Openings});
}

TEST_CASE("how sheets are bought and trimmed is on pages of the whole job alone") {
  const std::vector<std::function<void(Job&)>> edits = {
      [](Job& job) { job.settings.sharing.reach = Sharing::Reach::On; },
      [](Job& job) { job.walls[1].shares = !job.walls[1].shares; },
      [](Job& job) { job.settings.spares.percent += 3; },
      [](Job& job) { job.settings.bundles.mostSheets += 1; },
      [](Job& job) { job.settings.mostOrderLengths += 2; },
      [](Job& job) { job.settings.kerf += Length::inches(0, 4); },
      [](Job& job) { job.settings.leastDrop += Length::inches(1); },
      [](Job& job) {
        job.trims.push_back({"one more", {}, {}, {}, {}, {}, {}, {}, {}});
      },
      [](Job& job) {
        job.trimRules.push_back({"one more", {}, {}, {}, {}, 1, 1, {}, {}, {}});
      },
  };
  for (const auto& edit : edits) {
    CHECK(changedBy(edit, "B").empty());
    CHECK(changedBy(edit, "") == Parts{StatedPart::Sheets});
  }
  const auto price = [](Job& job) { job.prices.items.resize(job.prices.items.size() + 1); };
  CHECK(changedBy(price, "").empty());
}

TEST_CASE("revision, date, note, progress and silencing change no fingerprint") {
  const auto edit = [](Job& job) {
    job.revision = "Z";
    job.date = "2031-01-01";
    job.note = "seen";
    job.number = "1";
    job.name = "other";
    job.facts.hung.push_back({"B1", Length::inches(38), "", ""});
    job.silenced.push_back({"narrow-rip|B|B1", "seen"});
  };
  CHECK(changedBy(edit, "B").empty());
  CHECK(changedBy(edit, "").empty());
}

TEST_CASE("a page of a wall that the job does not have") {
  Job job = workshop();
  const Fingerprint printed = fingerprintOf(job, job.walls[1]);
  job.walls.erase(job.walls.begin() + 1);
  CHECK_FALSE(changedSince(job, printed));
}
