// Writing a file whole or not at all.
//
// The bytes go to a temporary in the same folder (so that the rename stays on one disk), are flushed to the disk and
// only then take the file's place in one step. A failure or a power cut at any moment leaves the old file or the new
// one:
//   before the rename       the old file stands untouched; a temporary may be left over after a power cut
//   the rename fails        the old file stands; the whole new one stays beside it and the fault names it
//   after the rename        the new file stands; if the folder cannot be flushed, a power cut may still bring back the
//   old one
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/units/outcome.h"

namespace ribwright {

// The few calls that writing needs, each of which can fail: errno's number, 0 when it went well.
class Storage {
 public:
  virtual ~Storage() = default;
  // A new file beside `target`, with its permissions if it exists; EEXIST when the name is taken.
  virtual int create(const std::string& path, const std::string& target) = 0;
  // Into the file just created; `written` may be less than all.
  virtual int write(std::string_view bytes, std::size_t& written) = 0;
  virtual int sync() = 0;
  virtual int close() = 0;  // the file is no longer open, whatever is returned
  virtual int rename(const std::string& from, const std::string& to) = 0;
  virtual int syncFolder(const std::string& folder) = 0;
  virtual int remove(const std::string& path) = 0;
};

class DiskStorage : public Storage {
 public:
  DiskStorage() = default;
  DiskStorage(const DiskStorage&) = delete;
  DiskStorage& operator=(const DiskStorage&) = delete;
  ~DiskStorage() override;

  int create(const std::string& path, const std::string& target) override;
  int write(std::string_view bytes, std::size_t& written) override;
  int sync() override;
  int close() override;
  int rename(const std::string& from, const std::string& to) override;
  int syncFolder(const std::string& folder) override;
  int remove(const std::string& path) override;

 private:
  int file_ = -1;
};

// A link is followed: the file that it points to is the one replaced. Faults carry the path; none: all is on the disk.
std::vector<Fault> writeWhole(const std::string& path, std::string_view bytes, Storage& storage);

}  // namespace ribwright
