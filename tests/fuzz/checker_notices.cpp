// The checker and the random buildings are tools of proof, so they are proved first: buildings have what they promise,
// and a layout that is wrong by a nanometre is found out.
#include <catch2/catch.hpp>
#include <functional>
#include <map>
#include <set>

#include "core/job/job_file.h"
#include "tests/fuzz/layout_checker.h"
#include "tests/fuzz/random_building.h"

namespace ribwright::fuzz {
namespace {

Plan withLayout(const Plan& plan, std::size_t wall, const WallLayout& layout) {
  Plan changed = plan;
  auto copy = std::make_shared<WallPlan>(*plan.walls[wall]);
  copy->layout = layout;
  changed.walls[wall] = copy;
  return changed;
}

using SpoilLayout = std::function<bool(WallLayout&)>;  // false: nothing to spoil here

bool complains(const Job& job, const Plan& plan, int index) {
  Dice dice(kSeed, index);
  return !checkLayout(job, plan, dice).lines().empty();
}

// In how many of the first buildings a sound layout was spoiled, and in how many of them the checker found it.
std::pair<int, int> spoiledAndFound(const SpoilLayout& spoil) {
  int spoiled = 0, found = 0;
  for (int i = 0; i < 200 && spoiled < 25; ++i) {
    const Job job = randomJob(kSeed, i);
    const Plan good = plan(job);
    WallLayout layout = good.walls.front()->layout;
    if (layout.pieces.empty() || layout.runs.front().modules.empty() || !spoil(layout) || complains(job, good, i))
      continue;
    ++spoiled;
    if (complains(job, withLayout(good, 0, layout), i)) ++found;
  }
  return {spoiled, found};
}

}  // namespace

TEST_CASE("Random buildings can be saved, and have every kind of base, start, opening, band and joint") {
  std::set<Base::Form> bases;
  std::set<Start::Rule> starts;
  std::map<std::string, int> seen;
  for (int i = 0; i < 500; ++i) {
    const Job job = randomJob(kSeed, i);
    for (const Fault& fault : faultsOf(job)) FAIL_CHECK("building " << i << ": " << oneLine(fault));
    for (const Wall& wall : job.walls) {
      bases.insert(wall.base.form);
      starts.insert(wall.start.rule);
      seen["joint"] += !wall.expansionJoints.empty();
      seen["band"] += wall.bands.size() > 1;
      seen["step"] += !wall.base.steps.empty();
      seen["reach"] += wall.reachLeft > Length();
      seen["round"] += !wall.penetrations.empty() && wall.penetrations.front().shape == Penetration::Shape::Round;
      seen["openings"] += wall.openings.size() > 1;
    }
    for (const auto& wall : plan(job).walls) {
      for (const Piece& piece : wall->layout.pieces) {
        seen["kind " + std::to_string(static_cast<int>(piece.kind))]++;
        seen["tier"] += piece.tier > 0;
        seen["hole"] += piece.rings.size() > 1;
      }
    }
  }
  CHECK(bases.size() == 4);
  CHECK(starts.size() == 8);
  for (const char* what : {"joint", "band", "step", "reach", "round", "openings", "tier", "hole", "kind 0", "kind 1",
                           "kind 2", "kind 3", "kind 4", "kind 5", "kind 6"}) {
    INFO(what);
    CHECK(seen[what] >= 10);
  }
}

TEST_CASE("The checker notices a layout that is wrong by a nanometre") {
  const std::map<std::string, SpoilLayout> spoils{
      {"a cell higher", [](WallLayout& l) { return l.pieces.back().cells.back().topLeft += kOne, true; }},
      {"a cell narrower", [](WallLayout& l) { return l.pieces.front().cells.front().left += kOne, true; }},
      {"a cell lost",
       [](WallLayout& l) { return l.pieces.front().cells.size() > 1 && (l.pieces.front().cells.pop_back(), true); }},
      {"a piece lost", [](WallLayout& l) { return l.pieces.pop_back(), true; }},
      {"an outline's corner moved",
       [](WallLayout& l) { return l.pieces.front().rings.front().front().u += Length::millimetres(1), true; }},
      {"an outline turned",
       [](WallLayout& l) {
         Ring& ring = l.pieces.front().rings.front();
         return std::reverse(ring.begin(), ring.end()), true;
       }},
      {"a module line moved", [](WallLayout& l) { return l.runs.front().modules.back().startLine += kOne, true; }},
      {"metal moved", [](WallLayout& l) { return l.runs.front().modules.front().metalRight += kOne, true; }},
      {"another start", [](WallLayout& l) { return l.runs.front().offset += kOne, true; }},
      {"a net area", [](WallLayout& l) { return l.runs.front().net += Area::halfSquareNanometres(1), true; }},
      {"laps forgotten",
       [](WallLayout& l) { return l.runs.front().laps != Area() && (l.runs.front().laps = Area(), true); }},
      {"a blank too short",
       [](WallLayout& l) {
         return l.pieces.front().blankLength = l.pieces.front().top - l.pieces.front().bottom - kOne, true;
       }},
      {"a blank too long", [](WallLayout& l) { return l.pieces.front().blankLength += Length::inches(1), true; }},
      {"two marks changed over",
       [](WallLayout& l) { return l.pieces.size() > 1 && (std::swap(l.pieces[0].mark, l.pieces[1].mark), true); }},
      {"the other hand",
       [](WallLayout& l) {
         l.direction.hand = l.direction.hand == Hand::LeftToRight ? Hand::RightToLeft : Hand::LeftToRight;
         return true;
       }},
      {"a cut moved", [](WallLayout& l) { return !l.cuts.empty() && (l.cuts.front().left += kOne * 3, true); }},
      {"a kind", [](WallLayout& l) { return l.pieces.front().rip = !l.pieces.front().rip, true; }},
  };
  for (const auto& [name, spoil] : spoils) {
    INFO(name);
    const auto [spoiled, found] = spoiledAndFound(spoil);
    CHECK(spoiled >= 10);
    CHECK(found == spoiled);
  }
}

}  // namespace ribwright::fuzz
