#include "core/editing/next_ids.h"

#include <algorithm>
#include <charconv>
#include <string_view>

#include "core/job/job_file_joined.h"

namespace ribwright {
namespace {

// "W12" is W and 12; a number of 0 stands for none, or for one too long to count on from.
struct Numbered {
  std::string_view letters;
  int number = 0;
};

Numbered numberedOf(std::string_view id) {
  const std::size_t last = id.find_last_not_of("0123456789");
  const std::size_t digits = last == std::string_view::npos ? 0 : last + 1;
  Numbered read{id.substr(0, digits), 0};
  if (id.size() - digits <= 8) std::from_chars(id.data() + digits, id.data() + id.size(), read.number);
  return read;
}

class Highest {
 public:
  explicit Highest(std::string_view letters) : letters_(letters) {}
  void look(std::string_view id) {
    const Numbered read = numberedOf(id);
    if (read.letters == letters_) highest_ = std::max(highest_, read.number);
  }
  std::string next() const { return joined(letters_, highest_ + 1); }

 private:
  std::string_view letters_;
  int highest_ = 0;
};

std::string nextInBuilding(const Job& job, std::string_view letters) {
  Highest highest(letters);
  for (const Wall& wall : job.walls) {
    for (const Opening& opening : wall.openings) highest.look(opening.id);
    for (const Penetration& penetration : wall.penetrations) highest.look(penetration.id);
  }
  return highest.next();
}

// The second where a wall is called by the first: D1 is a sheet of wall D.
std::string_view usualLetters(const Job& job, Opening::Kind kind) {
  const auto free = [&](std::string_view one, std::string_view other) {
    const bool taken =
        std::any_of(job.walls.begin(), job.walls.end(), [&](const Wall& wall) { return wall.letter == one; });
    return taken ? other : one;
  };
  if (isDoor(kind)) return free("D", "DR");
  if (kind == Opening::Kind::Louvre) return free("L", "LV");
  return kind == Opening::Kind::Window ? free("W", "WN") : free("F", "FR");
}

bool isAlike(Opening::Kind one, Opening::Kind other) { return one == other || (isDoor(one) && isDoor(other)); }

}  // namespace

bool isDoor(Opening::Kind kind) {
  return kind == Opening::Kind::WalkDoor || kind == Opening::Kind::OverheadDoor || kind == Opening::Kind::SlidingDoor;
}

std::string nextOpeningId(const Job& job, Opening::Kind kind) {
  std::string_view letters = usualLetters(job, kind);
  for (const Wall& wall : job.walls) {
    for (const Opening& opening : wall.openings) {
      const Numbered read = numberedOf(opening.id);
      if (isAlike(opening.kind, kind) && read.number > 0 && !read.letters.empty() && read.letters.size() <= 3)
        letters = read.letters;
    }
  }
  return nextInBuilding(job, letters);
}

std::string nextOpeningIdLike(const Job& job, const Opening& opening) {
  const Numbered read = numberedOf(opening.id);
  if (read.number == 0 || read.letters.empty()) return nextOpeningId(job, opening.kind);
  return nextInBuilding(job, read.letters);
}

std::string nextPenetrationId(const Job& job) { return nextInBuilding(job, "P"); }

std::string nextGirtId(const Job& job, std::size_t wall) {
  const Wall& of = job.walls.at(wall);
  Highest highest("g");
  for (const Girt& girt : of.girts) highest.look(girt.id);
  for (const GirtSurvey& survey : of.survey.girts) highest.look(survey.girt);
  for (const std::string& id : of.endLaps.girts) highest.look(id);
  return highest.next();
}

}  // namespace ribwright
