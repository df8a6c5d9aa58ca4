// However wrong a pattern is, a foreman reads tens of lines, each with a key of its own.
#include <catch2/catch.hpp>
#include <map>
#include <random>
#include <set>

#include "screwed_walls.h"

using namespace ribwright;
using namespace ribwright::examples;

namespace {

constexpr int kSeed = 20260302;

class Wrong {
 public:
  explicit Wrong(unsigned seed) : engine_(seed) {}

  int upTo(int most) { return static_cast<int>(engine_() % static_cast<unsigned>(most + 1)); }
  Length length(Length most) {
    return Length::nanometres(static_cast<std::int64_t>(engine_()) % (most.nanometres() + 1));
  }

  // A long gable wall with openings, flush girts and columns, and a pattern whose numbers mean nothing.
  Job job() {
    const int sheets = 60 + upTo(60);
    const Length width = Length::inches(36) * sheets;
    Job made = screwed(freeWall(width, {{Length(), Length::feet(12)},
                                        {half(width), Length::feet(12) + length(Length::feet(20))},
                                        {width, Length::feet(12)}}));
    Wall& wall = made.walls[0];
    if (upTo(1)) wall.hang = Hang::RightToLeft;
    if (upTo(1)) wall.girtSetting = GirtSetting::Flush;
    wall.columns.flange = length(Length::inches(10));
    wall.columns.bays.assign(static_cast<std::size_t>(sheets / 8), Length::feet(24));
    wall.baseAngle.row = length(Length::inches(3));
    wall.rakeAngle.row = length(Length::inches(3));
    made.members[0].flange = Length::inches(1) + length(Length::inches(3));
    for (int i = 0; i < 6; ++i) wall.openings.push_back(opening(i, width));
    for (PatternRow& row : made.patterns[0].rows) offsets(row.offsets);
    made.patterns[0].stitchScrew = "1/4x1";
    made.patterns[0].stitchSpacing = Length::inches(0, 32) + length(Length::inches(30));
    made.patterns[0].limits = static_cast<ScrewPattern::Limits>(upTo(3));
    made.settings.cornerZones = {CornerZones::Rule::Typed, length(Length::feet(8))};
    return made;
  }

 private:
  Opening opening(int number, Length width) {
    Opening made;
    made.id = std::string("W").append(std::to_string(number));
    made.place.distance = Length::inches(36 * 9) * number + length(Length::feet(8));
    made.width = Length::feet(2) + length(Length::feet(8));
    made.height = Length::feet(3) + length(Length::feet(5));
    made.sill = length(Length::feet(3)) - Length::feet(1);
    made.frame.face = Length::inches(1) + length(Length::inches(2));
    if (made.place.distance + made.width > width) made.place.distance = Length::feet(1);
    return made;
  }

  void offsets(std::vector<Length>& stated) {
    stated.assign(static_cast<std::size_t>(upTo(8)), Length());
    for (Length& x : stated) x = length(Length::inches(37));
  }

  std::mt19937 engine_;
};

}  // namespace

TEST_CASE("findings of screws stay few, with keys that differ and can be written into a job") {
  std::map<std::string, int> seen;
  for (unsigned i = 0; i < 40; ++i) {
    const Job job = Wrong(kSeed + i).job();
    INFO("seed " << kSeed + i);
    std::set<std::string> keys;
    int offsets = 0;
    for (const PatternRow& row : job.patterns[0].rows) offsets += static_cast<int>(row.offsets.size());
    int ofScrews = 0;
    std::size_t refused = 0;
    const Plan made = plan(job);
    for (const auto& wall : made.walls) refused += wall->holes.refusals.size();
    for (const Finding& finding : made.findings) {
      CHECK(finding.id != "check-failed");
      CHECK(finding.key().size() <= 300);
      CHECK(saysAll(finding));
      ++seen[finding.id];
      const bool mine = finding.id.find("screw") != std::string::npos || finding.id == "jamb-under-rib";
      if (!mine) continue;
      ++ofScrews;
      CHECK(keys.insert(finding.key()).second);
    }
    // One for each offset of the pattern at most, and a few for each opening and column.
    const int places = 6 * 8 + static_cast<int>(job.walls[0].columns.bays.size()) + 12;
    CHECK(ofScrews <= offsets + places);
    CHECK(refused > static_cast<std::size_t>(ofScrews));
  }
  for (const char* id :
       {"screw-off-flat", "screw-on-lap-edge", "screws-too-near", "screw-near-cut", "screw-face-narrow",
        "row-off-screw-face", "screw-off-steel-end", "jamb-under-rib", "screw-spacing"}) {
    INFO(id);
    CHECK(seen[id] > 0);
  }
}
