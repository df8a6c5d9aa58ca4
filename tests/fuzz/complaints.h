// What the checker holds against a layout, each with its place; after some thirty it stops listening.
#pragma once

#include <string>
#include <vector>

namespace ribwright::fuzz {

class Complaints {
 public:
  void at(std::string place) { place_ = std::move(place); }
  void add(const std::string& what) {
    if (lines_.size() < 30) lines_.push_back(place_ + ": " + what);
  }
  // Adds when not `holds`; gives `holds` back.
  bool check(bool holds, const std::string& what) {
    if (!holds) add(what);
    return holds;
  }
  const std::vector<std::string>& lines() const { return lines_; }
  std::string text() const {
    std::string all;
    for (const std::string& line : lines_) all += line + "\n";
    return all;
  }

 private:
  std::string place_;
  std::vector<std::string> lines_;
};

}  // namespace ribwright::fuzz
