#include "core/job/file_reading.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <system_error>

namespace ribwright {
namespace {

Fault cannotRead(const std::string& path, int error) {
  return Fault{path, "cannot be read: " + std::generic_category().message(error)};
}

}  // namespace

Outcome<std::string> readWhole(const std::string& path, std::size_t most) {
  const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
  if (file < 0) return cannotRead(path, errno);
  std::string text;
  std::array<char, 1 << 16> part;
  int error = 0;
  for (;;) {
    const ssize_t count = ::read(file, part.data(), part.size());
    if (count < 0 && errno == EINTR) continue;
    if (count < 0) error = errno;
    if (count <= 0) break;
    text.append(part.data(), static_cast<std::size_t>(count));
    if (text.size() > most) break;
  }
  ::close(file);  // only read from: nothing can be lost
  if (error != 0) return cannotRead(path, error);
  if (text.size() > most) {
    return Fault{path, "is larger than " + std::to_string(most >> 20) + " MiB; no job is so large"};
  }
  return text;
}

}  // namespace ribwright
