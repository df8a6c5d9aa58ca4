#include "core/output/file_set.h"

#include <catch2/catch.hpp>
#include <cerrno>
#include <filesystem>
#include <fstream>
#include <map>
#include <sstream>

#include "tests/core/temporary_folder.h"

using namespace ribwright;
namespace fs = std::filesystem;

namespace {

using Contents = std::map<std::string, std::string>;

struct Folder : TemporaryFolder {
  Folder() : TemporaryFolder("rib wright's set, ") {}
};

std::string bytesOf(const fs::path& path) {
  std::ifstream file(path, std::ios::binary);
  std::ostringstream bytes;
  bytes << file.rdbuf();
  return bytes.str();
}

// Every name in it, hidden ones too.
Contents contentsOf(const fs::path& folder) {
  Contents contents;
  for (const auto& entry : fs::directory_iterator(folder))
    contents[entry.path().filename().string()] = entry.is_directory() ? "(folder)" : bytesOf(entry.path());
  return contents;
}

void put(const fs::path& path, const std::string& bytes) { std::ofstream(path, std::ios::binary) << bytes; }

// A disk on which the n-th call fails (1, 2 ...), or every call from the n-th on.
class FailingStorage : public DiskStorage {
 public:
  FailingStorage(int fails, bool forEver) : fails_(fails), forEver_(forEver) {}
  int calls() const { return calls_; }

  int create(const std::string& path, const std::string& target) override {
    return now() ? ENOSPC : DiskStorage::create(path, target);
  }
  int write(std::string_view bytes, std::size_t& written) override {
    return now() ? ENOSPC : DiskStorage::write(bytes, written);
  }
  int sync() override { return now() ? EIO : DiskStorage::sync(); }
  int close() override {
    const int closed = DiskStorage::close();
    return now() ? EIO : closed;
  }
  int rename(const std::string& from, const std::string& to) override {
    return now() ? EROFS : DiskStorage::rename(from, to);
  }
  int syncFolder(const std::string& folder) override { return now() ? EIO : DiskStorage::syncFolder(folder); }
  int remove(const std::string& path) override { return now() ? EROFS : DiskStorage::remove(path); }

 private:
  bool now() {
    ++calls_;
    return forEver_ ? calls_ >= fails_ : calls_ == fails_;
  }
  int fails_, calls_ = 0;
  bool forEver_;
};

const std::vector<PacketFile> threeFiles = {
    {"a.csv", "", 0, "new a"}, {"b.csv", "", 0, ""}, {"contents.csv", "", 0, std::string("new\0c", 5)}};
const Contents before = {{"a.csv", "old a"}, {"contents.csv", "old c"}, {"mine.txt", "mine"}};
const Contents after = {
    {"a.csv", "new a"}, {"b.csv", ""}, {"contents.csv", std::string("new\0c", 5)}, {"mine.txt", "mine"}};

void lay(const fs::path& folder) {
  for (const auto& [name, bytes] : before) put(folder / name, bytes);
}

}  // namespace

TEST_CASE("a set of files replaces what bears their names and leaves the rest") {
  const Folder folder;
  lay(folder.path());
  DiskStorage storage;
  CHECK(writeFileSet(folder.path().string(), threeFiles, storage).empty());
  CHECK(contentsOf(folder.path()) == after);
}

TEST_CASE("a folder that is missing is made, with those above it") {
  const Folder folder;
  DiskStorage storage;
  const fs::path to = folder.path() / "job 7" / "for the yard";
  CHECK(writeFileSet(to.string() + "/", threeFiles, storage).empty());
  CHECK(contentsOf(to).size() == 3);
}

TEST_CASE("whichever call of the disk fails, the folder is all old or all new") {
  int calls = 0;
  bool went = false;
  for (int n = 1; !went; ++n) {
    REQUIRE(n < 200);
    const Folder folder;
    lay(folder.path());
    FailingStorage storage(n, false);
    const auto faults = writeFileSet(folder.path().string(), threeFiles, storage);
    const Contents found = contentsOf(folder.path());
    INFO("call " << n << " fails");
    went = faults.empty() && storage.calls() < n;
    CHECK((found == before || found == after));
    if (!went && found == before) CHECK(faults.size() == 1);
    if (found == before) CHECK_FALSE(faults.empty());
    calls = n;
  }
  // Each file: create, sync, close, rename, flush its folder, and write unless empty; then each takes its place, then
  // one flush.
  CHECK(calls - 1 == 3 * 5 + 2 + 3 + 1);
}

TEST_CASE("a folder that was made goes again when the set cannot be written") {
  const Folder folder;
  FailingStorage storage(3, true);
  const auto faults = writeFileSet((folder.path() / "job 7" / "yard").string(), threeFiles, storage);
  REQUIRE(faults.size() == 1);
  CHECK(faults[0].place == (folder.path() / "job 7" / "yard" / "a.csv").string());
  CHECK(contentsOf(folder.path()).empty());
}

TEST_CASE("a disk that dies while files take their places leaves the old ones and says where") {
  const Folder folder;
  lay(folder.path());
  FailingStorage storage(3 * 5 + 2 + 2, true);  // a.csv has taken its place; nothing goes any more
  const auto faults = writeFileSet(folder.path().string(), threeFiles, storage);
  REQUIRE(faults.size() == 1);
  const fs::path kept = folder.path() / ".packet.new-1";
  CHECK(faults[0].message.find("kept as they were in " + kept.string()) != std::string::npos);
  CHECK(bytesOf(kept / "a.csv.old") == "old a");
  CHECK(bytesOf(kept / "contents.csv.old") == "old c");
}

TEST_CASE("a folder that stands where a file is to go is named, and nothing is touched") {
  const Folder folder;
  lay(folder.path());
  fs::create_directory(folder.path() / "b.csv");
  const Contents first = contentsOf(folder.path());
  DiskStorage storage;
  const auto faults = writeFileSet(folder.path().string(), threeFiles, storage);
  REQUIRE(faults.size() == 1);
  CHECK(oneLine(faults[0]) ==
        (folder.path() / "b.csv").string() + ": is a folder, and a file is to stand there; move it away");
  CHECK(contentsOf(folder.path()) == first);
}

TEST_CASE("a file that stands where the folder is to be is named, and stays") {
  const Folder folder;
  put(folder.path() / "packet", "mine");
  DiskStorage storage;
  const auto faults = writeFileSet((folder.path() / "packet").string(), threeFiles, storage);
  REQUIRE(faults.size() == 1);
  CHECK(faults[0].place == (folder.path() / "packet").string());
  CHECK(faults[0].message == "cannot be written to: Not a directory; choose a folder that can");
  CHECK(contentsOf(folder.path()) == Contents{{"packet", "mine"}});
}

TEST_CASE("a link to a folder is followed, a hidden folder left from a power cut is no hindrance") {
  const Folder folder;
  fs::create_directories(folder.path() / "real" / ".packet.new-1");
  fs::create_directory_symlink(folder.path() / "real", folder.path() / "link");
  DiskStorage storage;
  CHECK(writeFileSet((folder.path() / "link").string(), threeFiles, storage).empty());
  CHECK(contentsOf(folder.path() / "real").size() == 4);
}
