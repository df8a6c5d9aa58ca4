// Work is kept in three places by turns: whichever call fails and whichever file is torn, one that was kept still
// reads.
#include "core/job/kept_files.h"

#include <sys/stat.h>

#include <catch2/catch.hpp>
#include <cerrno>
#include <filesystem>
#include <fstream>

#include "core/job/job_file.h"
#include "tests/core/job/failing_disk.h"
#include "tests/core/temporary_folder.h"

namespace ribwright {
namespace {

namespace fs = std::filesystem;

struct KeptFolder : TemporaryFolder {
  KeptFolder() : TemporaryFolder("kept work é ") {}
  KeptPlace place() const { return {path().string(), "my shed.json", "0123456789abcdef"}; }
  std::size_t files() const {
    return static_cast<std::size_t>(std::distance(fs::directory_iterator(path()), fs::directory_iterator()));
  }
};

std::string nameOf(std::uint64_t number) { return "State " + std::to_string(number); }

KeptWork state(std::uint64_t number) {
  Job job;
  job.name = nameOf(number);
  return {"/jobs/my shed.json", std::string(64, 'a'), "2026-03-02T16:05:09Z", "desk", 4711, "0123456789abcdef", number,
          writeJob(job)};
}

bool keepState(const KeptPlace& place, std::uint64_t number) {
  DiskStorage disk;
  return writeKept(place, state(number), disk).empty();
}

std::string newest(const KeptPlace& place) {
  const auto found = newestKept(place);
  return found ? found->job.name : "(none)";
}

void cutInHalf(const std::string& path) { fs::resize_file(path, fs::file_size(path) / 2); }

}  // namespace

TEST_CASE("the newest of what was kept is found by its number, not by its date") {
  const KeptFolder folder;
  CHECK(newest(folder.place()) == "(none)");
  for (std::uint64_t number = 1; number <= 7; ++number) {
    REQUIRE(keepState(folder.place(), number));
    CHECK(newest(folder.place()) == nameOf(number));
  }
  CHECK(folder.files() == 3);
  for (int place = 1; place <= keptPlaces; ++place) {
    const bool isNewest = place == 1 + 7 % keptPlaces;
    fs::last_write_time(folder.place().path(place),
                        fs::file_time_type::clock::now() - std::chrono::hours(isNewest ? 1000 : 1));
  }
  CHECK(newest(folder.place()) == nameOf(7));
}

TEST_CASE("a torn newest keeping leaves the one before, and that the one before it") {
  const KeptFolder folder;
  for (std::uint64_t number = 1; number <= 5; ++number) REQUIRE(keepState(folder.place(), number));
  for (const std::uint64_t number : {5, 4, 3}) {
    CHECK(newest(folder.place()) == nameOf(number));
    cutInHalf(folder.place().path(1 + static_cast<int>(number % keptPlaces)));
  }
  CHECK(newest(folder.place()) == "(none)");
}

TEST_CASE("whichever call of keeping fails, what was kept before or the new one reads") {
  for (const int error : {ENOSPC, EIO, EACCES}) {
    for (int call = 1;; ++call) {
      INFO("call " << call << ", error " << error);
      const KeptFolder folder;
      for (std::uint64_t number = 1; number <= 4; ++number) REQUIRE(keepState(folder.place(), number));
      FailingDisk disk(call, error, 200);
      const bool kept = writeKept(folder.place(), state(5), disk).empty();
      const std::string found = newest(folder.place());
      CHECK((found == nameOf(5) || (!kept && found == nameOf(4))));
      if (disk.calls() < call) {  // nothing left to fail
        CHECK(call > 6);
        break;
      }
    }
  }
}

TEST_CASE("work that reads as kept but not as a job is passed over") {
  const KeptFolder folder;
  REQUIRE(keepState(folder.place(), 1));
  KeptWork broken = state(2);
  broken.job = "{\"ribwright\": 1, \"walls\": 7}";
  DiskStorage disk;
  REQUIRE(writeKept(folder.place(), broken, disk).empty());
  CHECK(newest(folder.place()) == nameOf(1));
  KeptWork another = state(3);
  another.window = "ffffffffffffffff";
  REQUIRE(writeKept(folder.place(), another, disk).empty());
  CHECK(newest(folder.place()) == nameOf(1));
}

TEST_CASE("a pipe or a link under the name of kept work is not read") {
  const KeptFolder folder;
  REQUIRE(keepState(folder.place(), 1));
  fs::rename(folder.place().path(2), folder / "elsewhere");
  fs::create_symlink(folder / "elsewhere", folder.place().path(2));
  REQUIRE(::mkfifo(folder.place().path(3).c_str(), 0600) == 0);
  CHECK(newest(folder.place()) == "(none)");
}

TEST_CASE("kept work is known by its name, locks and temporaries are not") {
  const auto known = keptPlaceOf("/jobs", ".my shed.json.kept-0123456789abcdef-3");
  REQUIRE(known);
  CHECK(*known == KeptPlace{"/jobs", "my shed.json", "0123456789abcdef"});
  CHECK(known->path(3) == "/jobs/.my shed.json.kept-0123456789abcdef-3");
  for (const char* name : {"my shed.json", ".my shed.json.kept-0123456789abcdef-4", ".kept-0123456789abcdef-1",
                           ".a.kept-0123456789abcdef-0", "a.kept-0123456789abcdef-1", ".a.kept-0123456789ABCDEF-1",
                           ".a.kept-0123456789abcdef-lock", "..a.kept-0123456789abcdef-1.new-1", ""}) {
    INFO(name);
    CHECK_FALSE(keptPlaceOf("/jobs", name));
  }
}

TEST_CASE("what one window kept goes whole, and nothing of another's") {
  const KeptFolder folder;
  KeptPlace other = folder.place();
  other.window = "1111111111111111";
  for (std::uint64_t number = 1; number <= 3; ++number) REQUIRE(keepState(folder.place(), number));
  REQUIRE(keepState(other, 1));
  std::ofstream(folder / "..my shed.json.kept-0123456789abcdef-1.new-1") << "half";
  std::ofstream(folder / "my shed.json") << "the job";
  CHECK(folder.files() == 6);
  CHECK(removeKept(folder.place()));
  CHECK(folder.files() == 2);
  CHECK(fs::exists(folder / "my shed.json"));
  CHECK(fs::exists(other.path(2)));
  CHECK(removeKept(folder.place()));
}

}  // namespace ribwright
