// Cross-sections whose laps lie on a rib, on a corrugation or in the pan.
#include "tests/core/tape_lengths.h"
#include "tests/fuzz/random_screws.h"

namespace ribwright::fuzz {
namespace {

using Line = std::vector<SectionPoint>;

// One rib about x: trapezoidal, or a crest of short chords whose valleys are chords too.
void addRib(Line& line, Length x) {
  line.insert(line.end(), {{x - mm(22), {}}, {x - mm(10), mm(30)}, {x + mm(10), mm(30)}, {x + mm(22), {}}});
}

void addWave(Line& line, Length x, Length halfPitch) {
  const auto tenths = [](std::int64_t count) { return Length::nanometres(100'000 * count); };
  const Length valley = x - halfPitch;
  line.insert(line.end(), {{valley - tenths(15), {}}, {valley + tenths(15), {}}});
  line.insert(line.end(), {{valley + tenths(60), tenths(7)}, {valley + tenths(120), tenths(35)}});
  line.insert(line.end(), {{x - tenths(120), tenths(145)}, {x - tenths(60), tenths(173)}});
  line.insert(line.end(), {{x - tenths(15), mm(18)}, {x + tenths(15), mm(18)}});
  line.insert(line.end(), {{x + tenths(60), tenths(173)}, {x + tenths(120), tenths(145)}});
  const Length next = x + halfPitch;
  line.insert(line.end(), {{next - tenths(120), tenths(35)}, {next - tenths(60), tenths(7)}});
}

// What lies between both metal edges.
Line cutTo(const Line& line, Length from, Length to) {
  const auto heightAt = [&](Length x) {
    for (std::size_t i = 0; i + 1 < line.size(); ++i) {
      const SectionPoint &a = line[i], &b = line[i + 1];
      if (a.x < x && x <= b.x) return a.y + scaled(b.y - a.y, (x - a.x).nanometres(), (b.x - a.x).nanometres());
    }
    return Length();
  };
  Line cut{{from, heightAt(from)}};
  for (const SectionPoint& point : line) {
    if (from < point.x && point.x < to) cut.push_back(point);
  }
  cut.push_back({to, heightAt(to)});
  return cut;
}

}  // namespace

void addSections(Job& job, Dice& dice) {
  for (Profile& profile : job.profiles) {
    const bool waves = dice.oneIn(4);
    if (!waves && dice.oneIn(2)) continue;
    const std::int64_t ribs = wholeTimes(profile.cover, mm(waves ? 70 : 140));
    Line line;
    for (std::int64_t i = -1; i <= ribs + 1; ++i) {
      const Length x = scaled(profile.cover, i, ribs);
      waves ? addWave(line, x, half(scaled(profile.cover, 1, ribs))) : addRib(line, x);
    }
    profile.section = cutTo(line, -profile.over, profile.cover + profile.under);
  }
}

}  // namespace ribwright::fuzz
