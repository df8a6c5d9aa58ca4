#include "tests/fuzz/random_building.h"

#include <string>

#include "tests/core/tape_lengths.h"

namespace ribwright::fuzz {
namespace {

Profile ribbed(const std::string& id, Length cover, Length over, Length under, Length increment, int ribs) {
  Profile profile;
  profile.id = profile.name = id;
  profile.cover = cover;
  profile.over = over;
  profile.under = under;
  profile.thickness = mm(1) - Length::nanometres(400'000);
  profile.lengths.increment = increment;
  profile.section.push_back({-over, Length()});
  const Length foot = mm(30), crown = mm(12), height = mm(30);
  for (int i = 0; i < ribs; ++i) {
    const Length x = scaled(cover, 2 * i + 1, 2 * ribs);
    profile.section.push_back({x - foot, Length()});
    profile.section.push_back({x - crown, height});
    profile.section.push_back({x + crown, height});
    profile.section.push_back({x + foot, Length()});
  }
  profile.section.push_back({cover + under, Length()});
  return profile;
}

void addProfiles(Job& job, Dice& dice) {
  job.profiles.push_back(ribbed("rib-36", in(36), in(1, 8), in(0, 12), in(0, 8), 3));
  job.profiles.push_back(ribbed("rib-300", mm(300), mm(25), mm(15), mm(10), 2));
  job.profiles.push_back(ribbed("rib-odd", Length::nanometres(1'000'000'002), Length::nanometres(38'100'001),
                                Length::nanometres(19'049'999), Length::nanometres(1), 5));
  const Length longest = dice.of({Length::feet(40), Length::feet(12), Length::feet(20)});
  for (Profile& profile : job.profiles) profile.lengths.longest = longest;
}

void addSite(Job& job, Dice& dice) {
  if (dice.oneIn(2)) job.site.trueNorth.microdegrees = dice.between(-180'000'000, 180'000'000);
  if (dice.oneIn(2)) job.site.windFrom = Angle{dice.between(0, 359'999'999)};
  // Far enough out to lie in no plan.
  const std::int64_t far = Length::feet(700).nanometres();
  for (int i = dice.small(0, 3) - 1; i >= 0; --i) {
    PlanPoint at{Length::nanometres(dice.between(-far, far)), Length::nanometres(dice.between(-far, far))};
    (dice.oneIn(2) ? at.x : at.y) = Length::nanometres(dice.of({-far, far}));
    job.site.sightPoints.push_back({numbered('s', i), at, dice.small(1, 100)});
  }
}

Length wallLength(Dice& dice) {
  if (dice.oneIn(20)) return dice.length(Length::feet(100), Length::feet(300));
  return dice.oneIn(4) ? dice.length(Length::feet(3), Length::feet(10))
                       : dice.length(Length::feet(10), Length::feet(60));
}

Roof gable(Length span, Dice& dice) {
  Roof roof;
  roof.kind = Roof::Kind::Gable;
  roof.eave = dice.length(Length::feet(8), Length::feet(18));
  if (dice.oneIn(2)) roof.ridgeAt = dice.length(scaled(span, 1, 6), scaled(span, 5, 6));
  if (dice.oneIn(2)) {
    roof.slope = dice.oneIn(4) ? Slope{Slope::As::Angle, {}, in(12), Angle{dice.between(1, 45'000'000)}}
                               : Slope::per12(dice.between(1, 12), dice.between(0, 63));
  } else {
    roof.ridgeHeight = roof.eave + dice.length(in(6), Length::feet(12));
  }
  if (roof.ridgeHeight && dice.oneIn(2)) {
    roof.farEave = dice.length(Length::feet(6), *roof.ridgeHeight);
  } else if (dice.oneIn(3)) {
    roof.farSlope = Slope::per12(dice.between(0, 1), dice.between(0, 63));
  }
  return roof;
}

Roof randomRoof(Length width, Length depth, Dice& dice) {
  const Roof::Ends ends = dice.of({Roof::Ends::AC, Roof::Ends::BD});
  const Length span = ends == Roof::Ends::AC ? width : depth;
  Roof roof;
  roof.eave = dice.length(Length::feet(8), Length::feet(18));
  const int kind = dice.small(0, 5);
  if (kind == 0) {
    roof.kind = Roof::Kind::Level;
  } else if (kind == 1) {
    roof.kind = Roof::Kind::SingleSlope;
    if (dice.oneIn(2)) roof.farEave = dice.length(Length::feet(8), Length::feet(22));
    if (!roof.farEave) roof.slope = Slope::per12(dice.between(0, 2), dice.between(0, 63));
  } else {
    roof = gable(span, dice);
  }
  roof.ends = ends;
  // No wall may end below a man's height, whatever a far slope makes of it.
  if (roof.kind == Roof::Kind::Gable && !roof.farEave && (roof.ridgeAt || roof.farSlope || !roof.slope)) {
    const Length at = roof.ridgeAt.value_or(half(span));
    const Length ridge = roof.ridgeHeight ? *roof.ridgeHeight : roof.eave + riseOver(*roof.slope, at);
    const Length far = roof.farSlope ? ridge - riseOver(*roof.farSlope, span - at)
                                     : ridge - scaled(ridge - roof.eave, (span - at).nanometres(), at.nanometres());
    if (far < Length::feet(6)) roof.farEave = roof.eave;
    if (far < Length::feet(6)) roof.farSlope.reset();
  }
  return roof;
}

// Steps, slopes, gables and level runs in any order.
std::vector<FacePoint> randomTop(Length width, Dice& dice) {
  const auto height = [&] { return dice.length(Length::feet(7), Length::feet(24)); };
  std::vector<FacePoint> top{{Length(), height()}};
  Length u;
  for (int parts = dice.of({1, 1, 2, 2, 3, 4}); parts > 0; --parts) {
    const Length to = parts == 1 ? width : u + scaled(width - u, dice.between(2, 8), 10);
    if (u > Length() && dice.oneIn(3)) top.push_back({u, height()});
    top.push_back({to, dice.oneIn(2) ? top.back().z : height()});
    u = to;
  }
  return top;
}

void addWall(Job& job, const std::string& letter, Dice& dice) {
  Wall wall;
  wall.letter = letter;
  wall.name = "side " + letter;
  job.walls.push_back(wall);
  (void)dice;
}

void addRectangle(Job& job, Dice& dice) {
  const Length width = wallLength(dice), depth = wallLength(dice);
  job.building.outline = {{{}, {}}, {width, {}}, {width, depth}, {{}, depth}};
  job.building.roof = randomRoof(width, depth, dice);
  for (const char* letter : {"A", "B", "C", "D"}) {
    if (dice.oneIn(3)) continue;  // not every wall is stated
    addWall(job, letter, dice);
    const Length along = letter[0] == 'A' || letter[0] == 'C' ? width : depth;
    if (dice.oneIn(6)) job.walls.back().top = randomTop(along, dice);
  }
}

void addPolygon(Job& job, Dice& dice) {
  const Length width = wallLength(dice) + Length::feet(8), depth = wallLength(dice) + Length::feet(8);
  const Length inX = dice.length(Length::feet(3), width - Length::feet(3)),
               inY = dice.length(Length::feet(3), depth - Length::feet(3));
  job.building.outline = {{{}, {}}, {width, {}}, {width, inY}, {inX, inY}, {inX, depth}, {{}, depth}};
  const std::vector<Length> lengths{width, inY, width - inX, depth - inY, inX, depth};
  for (std::size_t edge = 0; edge < lengths.size(); ++edge) {
    if (!dice.oneIn(3)) continue;
    addWall(job, std::string(1, static_cast<char>('A' + edge)), dice);
    job.walls.back().top = randomTop(lengths[edge], dice);
  }
}

void addFreeWall(Job& job, const std::string& letter, Dice& dice) {
  addWall(job, letter, dice);
  Wall& wall = job.walls.back();
  if (dice.oneIn(2)) {
    wall.width = wallLength(dice);
    wall.hang = dice.of({Hang::LeftToRight, Hang::RightToLeft});
    wall.top = randomTop(*wall.width, dice);
    return;
  }
  // 3 : 4 : 5, or along an axis: the width is whole.
  const Length part = Length::nanometres(wallLength(dice).nanometres() / 5);
  const auto [x, y] = dice.of({std::pair(3, 4), std::pair(-4, 3), std::pair(-3, -4), std::pair(4, -3), std::pair(5, 0),
                               std::pair(-5, 0), std::pair(0, 5), std::pair(0, -5)});
  const PlanPoint from{dice.length(Length(), Length::feet(40)), dice.length(Length(), Length::feet(40))};
  wall.line = PlanLine{from, {from.x + part * x, from.y + part * y}};
  wall.top = randomTop(part * 5, dice);
}

void addSettings(Job& job, Dice& dice) {
  Settings& settings = job.settings;
  if (dice.oneIn(3)) settings.jambClearance = dice.length(Length(), in(1));
  if (dice.oneIn(3)) settings.headClearance = dice.length(Length(), in(2));
  if (dice.oneIn(3)) settings.sillClearance = dice.length(Length(), in(1));
  if (dice.oneIn(3)) settings.rakeAllowance = dice.length(Length(), in(6));
  if (dice.oneIn(3)) job.units = UnitSystem::Millimetres;
}

}  // namespace

Job randomJob(std::uint64_t seed, int index) {
  Dice dice(seed, index);
  Job job;
  job.name = "Building " + std::to_string(index);
  addProfiles(job, dice);
  addSite(job, dice);
  addSettings(job, dice);
  const int kind = dice.small(0, 9);
  if (kind < 5) addRectangle(job, dice);
  if (kind == 5) addPolygon(job, dice);
  if (kind > 5 || dice.oneIn(8)) addFreeWall(job, "P", dice);
  if (job.walls.empty()) addFreeWall(job, "Q", dice);
  for (Wall& wall : job.walls) addParticulars(job, wall, dice);
  return job;
}

}  // namespace ribwright::fuzz
