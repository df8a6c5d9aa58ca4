// The board of random buildings: whatever is seen of a wall is what a click there finds, and no two names can meet.
#include <algorithm>
#include <catch2/catch.hpp>

#include "core/drawing/board_pick.h"
#include "core/drawing/board_picture.h"
#include "tests/fuzz/random_building.h"
#include "tests/fuzz/random_screws.h"

using namespace ribwright;
using namespace ribwright::fuzz;

namespace {

constexpr int pickedBuildings = 120;
constexpr double linesLeftOut = -1;  // a reach with which no girt or column is found
constexpr double fromAfar = 0;       // a zoom at which no screw is seen

PaperPoint onBoard(Length u, Length z) { return {u.inMillimetres(), -z.inMillimetres()}; }

Length between(Length low, Length high, Dice& dice) { return low + scaled(high - low, dice.small(1, 99), 100); }

// Strictly within the cut, asked of the layout in exact lengths.
bool isOpen(const CutRegion& cut, Length u, Length z) {
  if (u <= cut.left || u >= cut.right || z >= cut.upper.heightAt(u, Beside::Left)) return false;
  return cut.reachesFloor || z > cut.lower.heightAt(u, Beside::Left);
}

// A sheet hung later in its run, or the upper one of two that lap end over end, has metal there.
bool isCovered(const WallLayout& layout, const Piece& piece, Length u, Length z) {
  const auto& modules = layout.runs[static_cast<std::size_t>(piece.run)].modules;
  for (std::size_t i = static_cast<std::size_t>(piece.module) + 1; i < modules.size(); ++i) {
    if (u >= modules[i].metalLeft && u <= modules[i].metalRight) return true;
  }
  return std::any_of(layout.pieces.begin(), layout.pieces.end(), [&](const Piece& other) {
    return other.run == piece.run && other.module == piece.module && other.tier > piece.tier && z >= other.bottom;
  });
}

std::string partText(const std::optional<Part>& part) {
  return part ? std::to_string(static_cast<int>(part->kind)).append(" ").append(part->id) : "nothing";
}

// A point of a cell, somewhere within.
std::pair<Length, Length> pointIn(const Cell& cell, Dice& dice) {
  const Length u = between(cell.left, cell.right, dice);
  const auto along = [&](Length left, Length right) {
    return left + scaled(right - left, (u - cell.left).nanometres(), (cell.right - cell.left).nanometres());
  };
  return {u, between(along(cell.bottomLeft, cell.bottomRight), along(cell.topLeft, cell.topRight), dice)};
}

int checkPieces(const BoardPicture& picture, const WallLayout& layout, Dice& dice) {
  int asked = 0;
  for (const Piece& piece : layout.pieces) {
    for (const Cell& cell : piece.cells) {
      const auto [u, z] = pointIn(cell, dice);
      if (u <= Length() || u >= layout.face.width || isCovered(layout, piece, u, z)) continue;
      const auto found = partAt(picture, onBoard(u, z), linesLeftOut, fromAfar);
      INFO(piece.mark << " at " << u.inMillimetres() << ", " << z.inMillimetres() << ": " << partText(found));
      CHECK((found && *found == Part{Part::Kind::Piece, layout.letter, piece.mark}));
      ++asked;
    }
  }
  return asked;
}

int checkOpenings(const BoardPicture& picture, const WallLayout& layout, Dice& dice) {
  int asked = 0;
  for (const CutRegion& cut : layout.cuts) {
    const Length u = between(cut.left, cut.right, dice);
    if (u <= Length() || u >= layout.face.width) continue;
    const Length floor = layout.face.bottom.heightAt(u, Beside::Left), roof = layout.face.top.heightAt(u, Beside::Left);
    const Length low = cut.reachesFloor ? floor : std::max(floor, cut.lower.heightAt(u, Beside::Left));
    const Length high = std::min(roof, cut.upper.heightAt(u, Beside::Left));
    if (low >= high) continue;
    const Length z = between(low, high, dice);
    const auto found = partAt(picture, onBoard(u, z), linesLeftOut, fromAfar);
    INFO(cut.id << " at " << u.inMillimetres() << ", " << z.inMillimetres() << ": " << partText(found));
    const bool penetrated = std::any_of(layout.cuts.begin(), layout.cuts.end(), [&](const CutRegion& other) {
      return other.penetration && isOpen(other, u, z);
    });
    const auto kind = penetrated ? Part::Kind::Penetration : Part::Kind::Opening;
    REQUIRE(found);
    CHECK(found->kind == kind);
    CHECK(std::any_of(layout.cuts.begin(), layout.cuts.end(),
                      [&](const CutRegion& other) { return other.id == found->id && isOpen(other, u, z); }));
    ++asked;
  }
  return asked;
}

// A hundred of a wall's screws at most, evenly.
int checkScrews(const BoardPicture& picture, const WallLayout& layout, const std::vector<Hole>& holes) {
  constexpr double near = 50;
  int asked = 0;
  for (std::size_t i = 0; i < holes.size(); i += holes.size() / 100 + 1) {
    const auto found = partAt(picture, onBoard(holes[i].u, holes[i].z), 5 / near, near);
    INFO("screw " << i << ": " << partText(found));
    REQUIRE((found && found->kind == Part::Kind::Screw && found->wall == layout.letter));
    const Hole& hole = holes.at(static_cast<std::size_t>(std::stoi(found->id)));
    CHECK((hole.u == holes[i].u && hole.z == holes[i].z));
    ++asked;
  }
  return asked;
}

// Rooms for the names of sheets and openings, from left to right.
std::vector<const BoardLabel*> namesWithin(const BoardPicture& picture) {
  std::vector<const BoardLabel*> names;
  for (const BoardLabel& label : picture.labels.all()) {
    if (label.stand == BoardLabel::Stand::Within) names.push_back(&label);
  }
  return names;
}

int checkRooms(const BoardPicture& picture) {
  const auto names = namesWithin(picture);
  for (std::size_t i = 0; i < names.size(); ++i) {
    const Box room = names[i]->room.grown(-1e-3);
    for (std::size_t j = i + 1; j < names.size() && names[j]->room.left < room.right; ++j) {
      INFO(names[i]->forms.front().lines.front().front().words << " and "
                                                               << names[j]->forms.front().lines.front().front().words);
      CHECK_FALSE(overlap(room, names[j]->room.grown(-1e-3)));
    }
  }
  return static_cast<int>(names.size());
}

}  // namespace

TEST_CASE("on the boards of 120 random buildings a click finds the sheet, opening or screw that is seen there") {
  int pieces = 0, openings = 0, screws = 0;
  for (int index = 0; index < pickedBuildings; ++index) {
    Dice dice(kSeed + 2, index);
    const Job job = withScrews(randomJob(kSeed, index), dice);
    const Plan made = plan(job);
    for (std::size_t wall = 0; wall < job.walls.size(); ++wall) {
      const BoardPicture picture = boardPicture(job, made, wall, Words::of("en"));
      const WallLayout& layout = made.walls[wall]->layout;
      INFO("seed " << kSeed << ", building " << index << ", wall " << layout.letter);
      pieces += checkPieces(picture, layout, dice);
      if (picture.face.width() > 0) openings += checkOpenings(picture, layout, dice);
      screws += checkScrews(picture, layout, made.walls[wall]->holes.holes);
    }
  }
  CHECK(pieces > 3000);
  CHECK(openings > 200);
  CHECK(screws > 3000);
}

TEST_CASE("on the boards of 120 random buildings the rooms for names of sheets and openings share nothing") {
  int names = 0;
  for (int index = 0; index < pickedBuildings; ++index) {
    const Job job = randomJob(kSeed, index);
    const Plan made = plan(job);
    for (std::size_t wall = 0; wall < job.walls.size(); ++wall) {
      INFO("seed " << kSeed << ", building " << index << ", wall " << job.walls[wall].letter);
      names += checkRooms(boardPicture(job, made, wall, Words::of("en")));
    }
  }
  CHECK(names > 3000);
}
