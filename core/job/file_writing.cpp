#include "core/job/file_writing.h"

#include <cerrno>
#include <chrono>
#include <filesystem>
#include <system_error>
#include <thread>

namespace ribwright {
namespace {

namespace fs = std::filesystem;

constexpr int namesToTry = 100;
constexpr int renamesToTry = 4;  // a scanner or a synced folder may hold the file for a moment

std::string reason(int error) { return std::generic_category().message(error); }

// The file that a link points to; the path itself when it is none, or points nowhere yet.
std::string realTarget(const std::string& path) {
  std::error_code error;
  const fs::path real = fs::canonical(path, error);
  return error ? path : real.string();
}

// ".job.json.new-1" beside job.json.
std::string temporaryName(const std::string& target, int number) {
  const fs::path path(target);
  std::string name = ".";
  name += path.filename().string();
  name += ".new-";
  name += std::to_string(number);
  return (path.parent_path() / name).string();
}

int createTemporary(const std::string& target, Storage& storage, std::string& temporary) {
  int error = EEXIST;
  for (int number = 1; number <= namesToTry && error == EEXIST; ++number) {
    temporary = temporaryName(target, number);
    error = storage.create(temporary, target);
  }
  return error;
}

int writeAll(std::string_view bytes, Storage& storage) {
  while (!bytes.empty()) {
    std::size_t written = 0;
    const int error = storage.write(bytes, written);
    if (error != 0) return error;
    if (written == 0) return EIO;  // a disk that takes nothing and says nothing would hold us for ever
    bytes.remove_prefix(written);
  }
  return 0;
}

int fill(std::string_view bytes, Storage& storage) {
  int error = writeAll(bytes, storage);
  if (error == 0) error = storage.sync();
  const int closing = storage.close();
  return error != 0 ? error : closing;
}

int renamePatiently(const std::string& from, const std::string& to, Storage& storage) {
  int error = 0;
  for (int attempt = 0; attempt < renamesToTry; ++attempt) {
    if (attempt > 0) std::this_thread::sleep_for(std::chrono::milliseconds(20 << attempt));
    error = storage.rename(from, to);
    if (error != EBUSY && error != EACCES && error != EPERM && error != EINTR) break;
  }
  return error;
}

}  // namespace

std::vector<Fault> writeWhole(const std::string& path, std::string_view bytes, Storage& storage) {
  const std::string target = realTarget(path);
  std::string temporary;
  if (const int error = createTemporary(target, storage, temporary)) {
    return {{path, "cannot be written: " + reason(error) + "; choose a folder that can be written to"}};
  }
  if (const int error = fill(bytes, storage)) {
    std::string message = "cannot be written: " + reason(error) + "; the file is as it was";
    if (storage.remove(temporary) != 0) message += ", and a part of the new one is left in " + temporary;
    return {{path, message}};
  }
  if (const int error = renamePatiently(temporary, target, storage)) {
    return {
        {path, "cannot be replaced: " + reason(error) + "; it is as it was, and the new one is whole in " + temporary}};
  }
  const std::string folder = fs::path(target).parent_path().string();
  if (const int error = storage.syncFolder(folder.empty() ? "." : folder)) {
    return {
        {path, "is written, but its folder could not be flushed to the disk: " + reason(error) + "; save once more"}};
  }
  return {};
}

}  // namespace ribwright
