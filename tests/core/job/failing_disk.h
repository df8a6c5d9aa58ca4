// A disk on which one call fails.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

#include "core/job/file_writing.h"

namespace ribwright {

// The disk, but call number `fails` (1, 2 ...) goes wrong, and a write takes at most `most` bytes at once.
class FailingDisk : public Storage {
 public:
  FailingDisk(int fails, int error, std::size_t most = SIZE_MAX) : fails_(fails), error_(error), most_(most) {}

  int create(const std::string& path, const std::string& target) override {
    return failsNow("create") ? error_ : disk_.create(path, target);
  }
  int write(std::string_view bytes, std::size_t& written) override {
    if (!failsNow("write")) return disk_.write(bytes.substr(0, most_), written);
    // A full disk takes a part before it says no.
    disk_.write(bytes.substr(0, bytes.size() / 2), written);
    return error_;
  }
  int sync() override { return failsNow("sync") ? error_ : disk_.sync(); }
  int close() override {
    const int result = disk_.close();  // closed, whatever is reported
    return failsNow("close") ? error_ : result;
  }
  int rename(const std::string& from, const std::string& to) override {
    return failsNow("rename") ? error_ : disk_.rename(from, to);
  }
  int syncFolder(const std::string& folder) override {
    return failsNow("syncFolder") ? error_ : disk_.syncFolder(folder);
  }
  int remove(const std::string& path) override { return failsNow("remove") ? error_ : disk_.remove(path); }

  int calls() const { return calls_; }
  const std::string& failed() const { return failed_; }

 private:
  bool failsNow(const char* call) {
    if (++calls_ != fails_) return false;
    failed_ = call;
    return true;
  }

  DiskStorage disk_;
  int fails_, error_, calls_ = 0;
  std::size_t most_;
  std::string failed_;
};

}  // namespace ribwright
