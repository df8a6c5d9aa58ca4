#include "core/output/file_set.h"

#include <unistd.h>

#include <cerrno>
#include <filesystem>
#include <system_error>

namespace ribwright {
namespace {

namespace fs = std::filesystem;

constexpr int namesToTry = 100;

class FileSet {
 public:
  FileSet(fs::path folder, const std::vector<PacketFile>& files, Storage& storage)
      : folder_(std::move(folder)), files_(files), storage_(storage) {}

  std::vector<Fault> write() {
    std::vector<Fault> faults = makeFolders();
    if (faults.empty()) faults = writeNew();
    if (faults.empty()) faults = keepOld();
    if (faults.empty()) faults = takePlaces();
    if (faults.empty()) faults = flush();
    tidy(faults.empty());
    return faults;
  }

 private:
  std::vector<Fault> makeFolders() {
    std::error_code error;
    for (fs::path path = folder_; !path.empty() && !fs::exists(path, error); path = path.parent_path())
      made_.push_back(path);
    fs::create_directories(folder_, error);
    if (!error && !fs::is_directory(folder_, error)) error = std::make_error_code(std::errc::not_a_directory);
    for (int number = 1; !error && hidden_.empty() && number <= namesToTry; ++number) {
      const fs::path name = folder_ / (".packet.new-" + std::to_string(number));
      if (fs::create_directory(name, error)) hidden_ = name;
    }
    if (!error && hidden_.empty()) error = std::make_error_code(std::errc::file_exists);
    if (!error) return {};
    return {{folder_.string(), "cannot be written to: " + error.message() + "; choose a folder that can"}};
  }

  std::vector<Fault> writeNew() {
    for (const PacketFile& file : files_) {
      auto faults = writeWhole((hidden_ / file.name).string(), file.bytes, storage_);
      for (Fault& fault : faults) fault.place = placeOf(file);
      if (!faults.empty()) return faults;
    }
    return {};
  }

  std::vector<Fault> keepOld() {
    for (const PacketFile& file : files_) {
      std::error_code error;
      const fs::file_status old = fs::status(placeOf(file), error);
      if (old.type() == fs::file_type::not_found) continue;
      if (fs::is_directory(old)) return {{placeOf(file), "is a folder, and a file is to stand there; move it away"}};
      // A rename would replace a write-protected file without asking.
      if (::access(placeOf(file).c_str(), W_OK) != 0) error = {errno, std::generic_category()};
      if (!error) fs::copy_file(placeOf(file), oldOf(file), error);
      if (error) return {{placeOf(file), "cannot be replaced: " + error.message() + "; move it away"}};
    }
    return {};
  }

  std::vector<Fault> takePlaces() {
    for (; placed_ < files_.size(); ++placed_) {
      const PacketFile& file = files_[placed_];
      const int error = storage_.rename((hidden_ / file.name).string(), placeOf(file));
      if (error == 0) continue;
      std::string message = "cannot be replaced: " + std::generic_category().message(error);
      if (putBack()) return {{placeOf(file), message + "; all files are as they were"}};
      const std::string kept = hidden_.string();
      hidden_.clear();  // the only copies lie there
      return {{placeOf(file), message + "; files replaced before it are kept as they were in " + kept}};
    }
    return {};
  }

  // False when something could not be put back.
  bool putBack() {
    bool whole = true;
    for (; placed_ > 0; --placed_) {
      const PacketFile& file = files_[placed_ - 1];
      std::error_code ignored;
      const bool replaced = fs::exists(oldOf(file), ignored);
      const int error =
          replaced ? storage_.rename(oldOf(file).string(), placeOf(file)) : storage_.remove(placeOf(file));
      whole = whole && error == 0;
    }
    return whole;
  }

  std::vector<Fault> flush() {
    const int error = storage_.syncFolder(folder_.string());
    if (error == 0) return {};
    return {{folder_.string(), "is written, but could not be flushed to the disk: " +
                                   std::generic_category().message(error) + "; write it once more"}};
  }

  // What was made on the way goes again; folders only as far as they are empty.
  void tidy(bool done) {
    std::error_code ignored;
    if (!hidden_.empty()) fs::remove_all(hidden_, ignored);
    if (done) return;
    for (const fs::path& path : made_) fs::remove(path, ignored);
  }

  std::string placeOf(const PacketFile& file) const { return (folder_ / file.name).string(); }
  fs::path oldOf(const PacketFile& file) const { return hidden_ / (file.name + ".old"); }

  fs::path folder_, hidden_;
  const std::vector<PacketFile>& files_;
  Storage& storage_;
  std::vector<fs::path> made_;  // innermost first
  std::size_t placed_ = 0;
};

}  // namespace

std::vector<Fault> writeFileSet(const std::string& directory, const std::vector<PacketFile>& files, Storage& storage) {
  return FileSet(directory, files, storage).write();
}

}  // namespace ribwright
