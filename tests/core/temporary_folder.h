// A folder of a test's own, gone afterwards with all that is in it.
#pragma once

#include <stdlib.h>

#include <filesystem>
#include <stdexcept>
#include <string>
#include <system_error>

namespace ribwright {

class TemporaryFolder {
 public:
  // `name` is the beginning of its name; an awkward one, with blanks and quotes, tests more.
  explicit TemporaryFolder(const std::string& name) {
    std::string pattern = (std::filesystem::temp_directory_path() / name).string();
    pattern.append(6, 'X');  // what mkdtemp puts letters of its own in place of
    if (::mkdtemp(pattern.data()) == nullptr) throw std::runtime_error("no temporary folder: " + pattern);
    path_ = pattern;
  }
  ~TemporaryFolder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
  }
  TemporaryFolder(const TemporaryFolder&) = delete;
  TemporaryFolder& operator=(const TemporaryFolder&) = delete;

  const std::filesystem::path& path() const { return path_; }
  std::string operator/(const std::string& file) const { return (path_ / file).string(); }

 private:
  std::filesystem::path path_;
};

}  // namespace ribwright
