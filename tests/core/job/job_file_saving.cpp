// A job is saved whole or not at all: every call that saving makes is made to fail once, and the file is the old one or
// the new one, nothing between.
#include <sys/stat.h>
#include <unistd.h>

#include <catch2/catch.hpp>
#include <cerrno>
#include <filesystem>
#include <fstream>

#include "core/job/file_reading.h"
#include "core/job/file_writing.h"
#include "core/job/job_file.h"
#include "tests/core/job/failing_disk.h"
#include "tests/core/temporary_folder.h"

namespace ribwright {
namespace {

namespace fs = std::filesystem;

// With a name that is awkward.
class JobFolder : public TemporaryFolder {
 public:
  JobFolder() : TemporaryFolder("job file é ") {}
  std::vector<std::string> files() const {
    std::vector<std::string> names;
    for (const auto& file : fs::directory_iterator(path())) names.push_back(file.path().filename().string());
    std::sort(names.begin(), names.end());
    return names;
  }
};

std::string textOrNone(const std::string& path) {
  const auto text = readWhole(path, 1 << 20);
  return text ? text.value() : "(none)";
}

Job named(const std::string& name) {
  Job job;
  job.name = name;
  return job;
}

void everyCallFailsOnce(int error) {
  const std::string older = writeJob(named("old")), newer = writeJob(named("new"));
  std::vector<std::string> failed;
  for (int call = 1;; ++call) {
    INFO("call " << call << ", error " << error);
    JobFolder folder;
    const std::string path = folder / "my job.json";
    REQUIRE(saveJob(named("old"), path));
    FailingDisk disk(call, error, 20);
    const auto saved = saveJob(named("new"), path, disk);
    if (disk.calls() < call) {  // nothing left to fail
      CHECK(saved.ok());
      CHECK(textOrNone(path) == newer);
      break;
    }
    failed.push_back(disk.failed());
    const std::string text = textOrNone(path);
    CHECK((text == older || text == newer));
    if (saved) CHECK(text == newer);
    if (!saved) {
      CHECK(saved.faults().size() == 1);
      CHECK(saved.faults().front().place == path);
    }
    // Nothing half-written is left over; only a whole new file may be, and then the fault says where.
    for (const std::string& file : folder.files()) {
      if (file == "my job.json") continue;
      CHECK(textOrNone(folder / file) == newer);
      REQUIRE_FALSE(saved);
      CHECK(saved.faults().front().message.find(folder / file) != std::string::npos);
    }
  }
  for (const char* call : {"create", "write", "sync", "close", "rename", "syncFolder"}) {
    INFO(call);
    CHECK(std::count(failed.begin(), failed.end(), call) > 0);
  }
}

}  // namespace

TEST_CASE("whichever call fails, the file is all old or all new, and the fault says which") {
  everyCallFailsOnce(ENOSPC);
  everyCallFailsOnce(EIO);
}

TEST_CASE("when even the clean-up fails, the old file stands and the fault names what is left") {
  JobFolder folder;
  const std::string path = folder / "job.json";
  REQUIRE(saveJob(named("old"), path));
  class FullDisk : public FailingDisk {
   public:
    FullDisk() : FailingDisk(2, ENOSPC) {}
    int remove(const std::string&) override { return EIO; }
  } disk;
  const auto saved = saveJob(named("new"), path, disk);
  REQUIRE_FALSE(saved);
  CHECK(textOrNone(path) == writeJob(named("old")));
  CHECK(oneLine(saved.faults().front()) ==
        path +
            ": cannot be written: No space left on device; the file is as it was, and a part "
            "of the new one is left in " +
            (folder / ".job.json.new-1"));
}

TEST_CASE("a rename that is held up for a moment is tried again") {
  JobFolder folder;
  const std::string path = folder / "job.json";
  REQUIRE(saveJob(named("old"), path));
  const std::string newer = writeJob(named("new"));
  FailingDisk disk(5, EBUSY);  // create, write, sync, close, rename
  const auto saved = saveJob(named("new"), path, disk);
  CHECK(disk.failed() == "rename");
  REQUIRE(saved);
  CHECK(saved.value().path == path);
  CHECK(saved.value().bytes == newer.size());
  CHECK(textOrNone(path) == newer);
  CHECK(folder.files() == std::vector<std::string>{"job.json"});
}

TEST_CASE("what is saved is what is loaded, and no temporary stays") {
  JobFolder folder;
  const std::string path = folder / "new.json";
  REQUIRE(saveJob(named("first"), path));
  REQUIRE(saveJob(named("second"), path));
  const auto loaded = loadJob(path);
  REQUIRE(loaded);
  CHECK(loaded.value() == named("second"));
  CHECK(folder.files() == std::vector<std::string>{"new.json"});
}

TEST_CASE("a left-over temporary of another program run is not touched") {
  JobFolder folder;
  const std::string path = folder / "job.json";
  std::ofstream(folder / ".job.json.new-1") << "of another";
  REQUIRE(saveJob(named("a"), path));
  CHECK(textOrNone(folder / ".job.json.new-1") == "of another");
  CHECK(folder.files() == std::vector<std::string>{".job.json.new-1", "job.json"});
}

TEST_CASE("permissions stay, and a link stays a link") {
  JobFolder folder;
  const std::string path = folder / "job.json", link = folder / "link.json";
  REQUIRE(saveJob(named("a"), path));
  REQUIRE(::chmod(path.c_str(), 0640) == 0);
  fs::create_symlink(path, link);
  REQUIRE(saveJob(named("b"), link));
  CHECK(fs::is_symlink(link));
  CHECK(textOrNone(path) == writeJob(named("b")));
  struct stat found {};
  REQUIRE(::stat(path.c_str(), &found) == 0);
  CHECK((found.st_mode & 07777U) == 0640U);
}

TEST_CASE("a job that could not be read again is refused before the file is touched") {
  JobFolder folder;
  const std::string path = folder / "job.json";
  REQUIRE(saveJob(named("good"), path));
  Job job = named("bad");
  job.walls.resize(1);
  job.walls[0].letter = "A";
  job.walls[0].bands.resize(1);
  job.walls[0].openings.resize(1);
  job.walls[0].openings[0] = {"W1", Opening::Kind::Window, {}, Length(), Length::feet(3), {}, {}, {}};
  FailingDisk disk(0, 0);
  const auto saved = saveJob(job, path, disk);
  REQUIRE_FALSE(saved);
  CHECK(oneLine(saved.faults().front()) ==
        "walls[0].openings[0].width: \"0\"\" is out of range; it may be more than 0, at most 10 km");
  CHECK(disk.calls() == 0);
  CHECK(textOrNone(path) == writeJob(named("good")));
  const auto broken = saveJob(named("\xff"), path, disk);
  REQUIRE_FALSE(broken);
  CHECK(oneLine(broken.faults().front()) == "a text of this job is no sound UTF-8; type it anew");
}

TEST_CASE("files that cannot be read or written are told by their path") {
  JobFolder folder;
  CHECK(loadJob(folder / "none.json").faults() ==
        std::vector<Fault>{{folder / "none.json", "cannot be read: No such file or directory"}});
  CHECK(loadJob(folder / "").faults() == std::vector<Fault>{{folder / "", "cannot be read: Is a directory"}});
  const auto saved = saveJob(Job(), folder / "no such folder/job.json");
  REQUIRE_FALSE(saved);
  CHECK(oneLine(saved.faults().front()) ==
        (folder / "no such folder/job.json") +
            ": cannot be written: No such file or directory; choose a folder that can be "
            "written to");
  fs::create_directory(folder / "folder.json");
  CHECK(saveJob(Job(), folder / "folder.json").faults().front().message ==
        "cannot be written: Is a directory; choose a folder that can be written to");
}

}  // namespace ribwright
