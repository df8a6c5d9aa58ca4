// Jobs are planned and drawn for the board in one thread while another reads and draws the plans made before. Either
// must come to what it comes to alone; and no two may touch the same thing, which the thread sanitizer looks for
// (tests/run threads).
#include <catch2/catch.hpp>
#include <condition_variable>
#include <filesystem>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>
#include <utility>
#include <vector>

#include "core/drawing/board_picture.h"
#include "core/drawing/packet_pages.h"
#include "core/drawing/particulars.h"
#include "core/job/job_file.h"
#include "core/plan/compared_starts.h"
#include "core/plan/plan.h"
#include "core/words/words.h"

using namespace ribwright;

namespace {

constexpr int states = 6;

std::vector<Job> sampleJobs() {
  std::vector<Job> jobs;
  for (const auto& file : std::filesystem::directory_iterator(RIBWRIGHT_ROOT "/sample-jobs"))
    jobs.push_back(loadJob(file.path().string()).value());
  return jobs;
}

// The same job as it is edited on and on: now one wall of it changes, now all.
Job edited(Job job, int state) {
  if (state % 3 == 2) job.settings.jambClearance += Length::inches(0, 4 * state);
  job.walls[static_cast<std::size_t>(state) % job.walls.size()].base.drop += Length::inches(state, 8);
  return job;
}

// What a window shows of a job, boiled down to what can be compared.
struct Seen {
  std::vector<std::string> said;
  std::size_t holes = 0, pages = 0, things = 0;
  bool operator==(const Seen&) const = default;
};

Seen seen(const Job& job, const Plan& plan, const Words& words) {
  const LengthStyle style{job.units, job.decimalSign};
  Seen all;
  for (const Finding& finding : plan.findings) {
    if (const auto part = partOf(job, plan, finding)) all.said.push_back(lineOf(job, plan, *part, words, style));
  }
  for (std::size_t wall = 0; wall < job.walls.size(); ++wall) {
    all.holes += plan.walls[wall]->holes.holes.size();
    all.things += boardPicture(job, plan, wall, words).things.size();
  }
  for (const Particular& row : particularsOf(job, plan, {Part::Kind::Face, job.walls[0].letter, ""}, words, style))
    all.said.push_back(row.name + ": " + row.value);
  all.pages = packetPages(job, plan, job.walls[0].letter, PaperSize::Letter, words).size();
  return all;
}

struct Planned {
  std::shared_ptr<const Job> job;
  std::shared_ptr<const Plan> plan;
  std::size_t things = 0;
};

Planned planned(Job job, const Plan& previous) {
  Planned made{std::make_shared<const Job>(std::move(job)), nullptr};
  made.plan = std::make_shared<const Plan>(plan(*made.job, previous));
  made.things = boardPicture(*made.job, *made.plan, 0, Words::of("en")).things.size();
  return made;
}

// Hands on what one thread made to the other.
class Handover {
 public:
  void give(std::optional<Planned> made) {
    const std::lock_guard lock(mutex_);
    waiting_.push_back(std::move(made));
    changed_.notify_one();
  }
  std::optional<Planned> take() {
    std::unique_lock lock(mutex_);
    changed_.wait(lock, [this] { return !waiting_.empty(); });
    auto made = std::move(waiting_.front());
    waiting_.erase(waiting_.begin());
    return made;
  }

 private:
  std::mutex mutex_;
  std::condition_variable changed_;
  std::vector<std::optional<Planned>> waiting_;  // an empty one: there are no more
};

}  // namespace

// First of the cases here: the words must not have been read before.
TEST_CASE("Words are the same ones, whichever thread asks for them first") {
  std::vector<std::vector<const Words*>> asked(4);
  std::vector<std::thread> threads;
  for (auto& mine : asked) {
    threads.emplace_back([&mine] {
      for (const char* language : {"en", "es", "en"}) mine.push_back(&Words::of(language));
    });
  }
  for (std::thread& thread : threads) thread.join();
  for (const auto& mine : asked) CHECK(mine == asked[0]);
  CHECK(asked[0][0] == asked[0][2]);
  CHECK(asked[0][0] != asked[0][1]);
}

TEST_CASE("Plans made beside the window are those made alone, and so is what is read meanwhile") {
  for (const Job& job : sampleJobs()) {
    INFO(job.name);
    Handover handover;
    std::thread beside([&] {
      Planned last;
      for (int state = 0; state < states; ++state) {
        last = planned(edited(job, state), last.plan ? *last.plan : Plan{});
        handover.give(last);
      }
      handover.give(std::nullopt);
    });
    std::vector<Planned> made;
    std::vector<Seen> meanwhile;
    while (const auto next = handover.take()) {
      made.push_back(*next);
      meanwhile.push_back(seen(*next->job, *next->plan, Words::of("es")));
      // A preview, planned here from the plan that the other thread goes on from.
      const Plan preview = plan(edited(*next->job, 1), *next->plan);
      CHECK(preview.findings == plan(edited(*next->job, 1)).findings);
    }
    beside.join();
    REQUIRE(made.size() == states);
    for (std::size_t state = 0; state < states; ++state) {
      const Job alone = edited(job, static_cast<int>(state));
      const Plan fresh = plan(alone);
      CHECK(made[state].plan->findings == fresh.findings);
      CHECK(made[state].things == boardPicture(alone, fresh, 0, Words::of("en")).things.size());
      CHECK(meanwhile[state] == seen(alone, fresh, Words::of("es")));
    }
  }
}

TEST_CASE("Starts are compared in two threads as in one") {
  const Job job = loadJob(RIBWRIGHT_ROOT "/sample-jobs/gable-workshop.json").value();
  const Plan shared = plan(job);
  std::vector<ComparedStart> here, beside;
  std::thread thread([&] { beside = comparedStarts(job, shared, 0); });
  here = comparedStarts(job, shared, 0);
  thread.join();
  CHECK(here == beside);
  CHECK(here.size() > 2);
}
