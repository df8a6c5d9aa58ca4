// The disk behind file_writing.h (POSIX).
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>

#include "core/job/file_writing.h"

namespace ribwright {

DiskStorage::~DiskStorage() {
  if (file_ >= 0) ::close(file_);
}

int DiskStorage::create(const std::string& path, const std::string& target) {
  struct stat old {};
  const bool replaces = ::stat(target.c_str(), &old) == 0;
  if (replaces && S_ISDIR(old.st_mode)) return EISDIR;
  // A rename would replace a write-protected file without asking.
  if (replaces && ::access(target.c_str(), W_OK) != 0) return errno;
  file_ = ::open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
  if (file_ < 0) return errno;
  if (!replaces || ::fchmod(file_, old.st_mode & 07777U) == 0) return 0;
  const int error = errno;
  close();
  remove(path);
  return error;
}

int DiskStorage::write(std::string_view bytes, std::size_t& written) {
  ssize_t count = -1;
  do {
    count = ::write(file_, bytes.data(), bytes.size());
  } while (count < 0 && errno == EINTR);
  written = count < 0 ? 0 : static_cast<std::size_t>(count);
  return count < 0 ? errno : 0;
}

int DiskStorage::sync() { return ::fsync(file_) == 0 ? 0 : errno; }

int DiskStorage::close() {
  const int result = ::close(file_);
  file_ = -1;
  return result == 0 || errno == EINTR ? 0 : errno;  // Linux: closed all the same
}

int DiskStorage::rename(const std::string& from, const std::string& to) {
  return std::rename(from.c_str(), to.c_str()) == 0 ? 0 : errno;
}

int DiskStorage::syncFolder(const std::string& folder) {
  const int open = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (open < 0) return errno;
  const int error = ::fsync(open) == 0 ? 0 : errno;
  ::close(open);
  return error == EINVAL || error == ENOTSUP ? 0 : error;  // some file systems flush folders by themselves
}

int DiskStorage::remove(const std::string& path) { return ::unlink(path.c_str()) == 0 ? 0 : errno; }

}  // namespace ribwright
