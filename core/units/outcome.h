// A value, or the faults that stood in its way.
//
// A fault is something a person can cause: it names the place and says what is wrong and what would be right, in one line:
//   job.json: walls[1].girts[3].height: "7 fo" is no length; write feet and inches as 7' 6" or millimetres as 2286 mm
#pragma once

#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace ribwright {

struct Fault {
  std::string place;    // where: a path in a file, a column of a table, a word of the command line; may be empty
  std::string message;  // what is wrong, then what would be right
  bool operator==(const Fault&) const = default;
};

std::string oneLine(const Fault& fault);

template <class T>
class [[nodiscard]] Outcome {
 public:
  Outcome(T value) : held_(std::move(value)) {}
  Outcome(Fault fault) : held_(std::vector<Fault>{std::move(fault)}) {}
  Outcome(std::vector<Fault> faults) : held_(std::move(faults)) {}

  bool ok() const { return std::holds_alternative<T>(held_); }
  explicit operator bool() const { return ok(); }
  // Only when ok(); std::bad_variant_access otherwise.
  const T& value() const& { return std::get<T>(held_); }
  T& value() & { return std::get<T>(held_); }
  T&& value() && { return std::get<T>(std::move(held_)); }
  // Only when not ok(); never empty.
  const std::vector<Fault>& faults() const { return std::get<std::vector<Fault>>(held_); }

 private:
  std::variant<T, std::vector<Fault>> held_;
};

}  // namespace ribwright
