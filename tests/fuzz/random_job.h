// Random jobs that fill every field of every type with values that a job file may hold: awkward texts, any nanometre,
// both ends of every range. They need not be buildings (see random_building.h for those).
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/job/job_file_form.h"
#include "tests/fuzz/dice.h"

namespace ribwright::fuzz {

inline constexpr LengthRange kSteelThickness{Length(), Length::millimetres(25), true};

// Job `index` of a seed; always the same.
Job filledJob(std::uint64_t seed, int index);

// Dice for the single values of a job file.
class FieldDice : public Dice {
 public:
  using Dice::Dice;

  bool flag() { return oneIn(2); }
  int whole(int lowest, int highest);  // often one of the ends
  Length within(const LengthRange& range);
  Angle degrees(std::int64_t lowest, std::int64_t highest);
  Slope slope();
  std::string line();  // may be empty; quotes, backslashes, letters of other alphabets
  std::string note();  // with new lines and tabs
  std::string id();    // another one each time
  // One that is there, or empty.
  template <class M>
  std::string idOf(const std::vector<M>& items) {
    return items.empty() || oneIn(4) ? std::string() : of(items).id;
  }
  template <class E>
  E choice(int last) {
    return static_cast<E>(small(0, last));
  }
  template <class Make>
  auto list(int most, Make make) {
    std::vector<decltype(make())> items(static_cast<std::size_t>(small(0, most)));
    for (auto& item : items) item = make();
    return items;
  }
  template <class Make>
  auto maybe(Make make) {
    return flag() ? std::optional(make()) : std::nullopt;
  }
  // Rising places along a wall, each one past the one before.
  std::vector<Length> rising(int most);

 private:
  std::string pieces(int most);
  int ids_ = 0;
};

Wall filledWall(FieldDice& dice, const Job& job, const std::string& letter);

// How it is ordered, trimmed and paid for (random_ordered_job.cpp).
void fillOrdering(FieldDice& dice, Job& job);

}  // namespace ribwright::fuzz
