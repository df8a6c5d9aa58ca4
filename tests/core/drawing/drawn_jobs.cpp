#include "tests/core/drawing/drawn_jobs.h"

#include <algorithm>

#include "core/job/job_file.h"
#include "core/job/pattern_file.h"

namespace ribwright {

namespace {

Job jobOf(const std::string& name, const Profile& profile) {
  Job job;
  job.name = name;
  job.number = "27";
  job.revision = "2";
  job.date = "2026-03-01";
  job.profiles = {profile};
  return job;
}

Wall wallOf(const Job& job, const std::string& letter, Length width, std::vector<FacePoint> top) {
  Wall wall;
  wall.letter = letter;
  wall.width = width;
  wall.top = std::move(top);
  wall.hang = Hang::LeftToRight;
  Band band;
  band.profile = job.profiles.front().id;
  wall.bands = {band};
  return wall;
}

std::vector<FacePoint> level(Length width, Length z) { return {{Length(), z}, {width, z}}; }

Opening opening(const std::string& id, Opening::Kind kind, Length left, Length width, Length height, Length sill) {
  Opening made;
  made.id = id;
  made.kind = kind;
  made.place.distance = left;
  made.width = width;
  made.height = height;
  made.sill = sill;
  return made;
}

Penetration pipe(const std::string& id, Length u, Length z, Length diameter) {
  Penetration made;
  made.id = id;
  made.place.distance = u;
  made.centre = z;
  made.width = made.height = diameter;
  return made;
}

}  // namespace

Profile ribbedSheet() {
  Profile profile;
  profile.id = "rib-36";
  profile.name = "36 in cover";
  profile.cover = Length::inches(36);
  profile.over = Length::inches(1, 32);
  profile.under = Length::inches(0, 48);
  profile.section = {{Length() - profile.over, Length()}, {Length::inches(36, 48), Length()}};
  profile.thickness = Length::nanometres(476'250);
  profile.lengths = {Length::feet(2), Length::feet(40), Length::inches(0, 32)};
  return profile;
}

Profile trapezoidSheet() {
  Profile profile;
  profile.id = "trapezoid-1000";
  profile.name = "1000 mm cover";
  profile.cover = Length::millimetres(1000);
  profile.over = Length::millimetres(40);
  profile.under = Length::millimetres(25);
  profile.section = {{Length::millimetres(-40), Length()}, {Length::millimetres(1025), Length()}};
  profile.thickness = Length::nanometres(600'000);
  profile.lengths = {Length::millimetres(500), Length::millimetres(12000), Length::millimetres(10)};
  return profile;
}

Job frozenGable() {
  Job job = jobOf("Frozen gable", ribbedSheet());
  const Length ridge = Length::feet(18, 8);
  Wall wall = wallOf(job, "A", Length::feet(40),
                     {{Length(), Length::feet(12)}, {Length::feet(20), ridge}, {Length::feet(40), Length::feet(12)}});
  wall.name = "gable end";
  wall.eaveHoldDown = wall.rakeHoldDown = Length();
  job.walls = {wall};
  return job;
}

Job busyFront() {
  Job job = jobOf("Ridgefield joinery, front of the shop", ribbedSheet());
  const Length width = Length::feet(60);
  Wall wall = wallOf(job, "A", width, level(width, Length::feet(12)));
  wall.name = "front";
  using Kind = Opening::Kind;
  wall.openings = {
      opening("D1", Kind::WalkDoor, Length::feet(4), Length::feet(3, 4), Length::feet(7), Length()),
      opening("D2", Kind::OverheadDoor, Length::feet(22), Length::feet(12), Length::feet(10), Length()),
      opening("W1", Kind::Window, Length::feet(10, 5), Length::feet(4), Length::feet(3), Length::feet(4)),
      opening("W2", Kind::Window, Length::feet(40, 1), Length::feet(6), Length::feet(4), Length::feet(3)),
      opening("W3", Kind::Window, Length::feet(47), Length::feet(1, 6), Length::feet(1, 6), Length::feet(6)),
      opening("L1", Kind::Louvre, Length::feet(57), Length::feet(3), Length::feet(2), Length::feet(9))};
  wall.penetrations = {pipe("P1", Length::feet(18), Length::feet(3), Length::inches(6)),
                       pipe("P2", Length::feet(52, 6), Length::feet(8), Length::inches(10))};
  job.walls = {wall};
  return job;
}

Job metricGable() {
  Job job = jobOf("Halle Nord", trapezoidSheet());
  job.units = UnitSystem::Millimetres;
  job.decimalSign = ',';
  const auto mm = [](std::int64_t count) { return Length::millimetres(count); };
  Wall wall = wallOf(job, "B", mm(18'300), {{mm(0), mm(4200)}, {mm(7000), mm(7350)}, {mm(18'300), mm(5200)}});
  wall.name = "Giebel";
  wall.hang = Hang::RightToLeft;
  wall.openings = {opening("T1", Opening::Kind::SlidingDoor, mm(6100), mm(5000), mm(4500), Length()),
                   opening("F1", Opening::Kind::Window, mm(13'050), mm(1200), mm(1000), mm(1100))};
  job.walls = {wall};
  return job;
}

Job longWall() {
  Job job = jobOf("Distribution hall", ribbedSheet());
  const Length width = Length::feet(1002);
  Wall wall = wallOf(job, "C", width, level(width, Length::feet(30)));
  for (int i = 0; i < 20; ++i) {
    wall.openings.push_back(opening("D" + std::to_string(i + 1), Opening::Kind::OverheadDoor,
                                    Length::feet(20 + 50 * i, 5), Length::feet(9), Length::feet(10), Length()));
  }
  job.walls = {wall};
  return job;
}

Job narrowWall() {
  Job job = jobOf("Return beside the dock", ribbedSheet());
  job.walls = {wallOf(job, "E", Length::feet(3), level(Length::feet(3), Length::feet(9, 6)))};
  job.walls.front().hang = Hang::RightToLeft;
  return job;
}

Job steppedWall() {
  Job job = jobOf("Hillside store", ribbedSheet());
  const Length width = Length::feet(48);
  Wall wall = wallOf(job, "D", width, level(width, Length::feet(14)));
  wall.base.steps = {
      {Length(), Length()}, {Length::feet(16), Length::feet(1, 4)}, {Length::feet(32), Length::feet(2, 8)}};
  wall.openings = {
      opening("D1", Opening::Kind::WalkDoor, Length::feet(6), Length::feet(3), Length::feet(7), Length::inches(-4))};
  job.walls = {wall};
  return job;
}

Job hangarDoor() {
  Job job = jobOf("Hangar", ribbedSheet());
  const Length width = Length::feet(80);
  Wall wall = wallOf(job, "A", width,
                     {{Length(), Length::feet(18)}, {Length::feet(40), Length::feet(26)}, {width, Length::feet(18)}});
  wall.openings = {
      opening("D1", Opening::Kind::SlidingDoor, Length::feet(10), Length::feet(60), Length::feet(16), Length())};
  job.walls = {wall};
  return job;
}

Job tallBandedWall() {
  Job job = jobOf("Mill tower", ribbedSheet());
  const Length width = Length::feet(90);
  Wall wall = wallOf(job, "F", width, level(width, Length::feet(60)));
  Band upper = wall.bands.front();
  upper.from = Length::feet(10);
  upper.gap = Length::inches(0, 16);
  upper.colour = "grey";
  wall.bands.push_back(upper);
  wall.expansionJoints = {Length::feet(30), Length::feet(60)};
  for (int i = 1; i < 12; ++i) {
    Girt girt;
    girt.id = "g" + std::to_string(i);
    girt.height = Length::feet(5 * i);
    wall.girts.push_back(girt);
  }
  job.walls = {wall};
  return job;
}

Job unsheetedWalls() {
  Job job = jobOf("Open shed", ribbedSheet());
  Wall others = wallOf(job, "A", Length::feet(30), level(Length::feet(30), Length::feet(10)));
  others.cladding = Cladding::ByOthers;
  Wall open = wallOf(job, "B", Length::feet(24), level(Length::feet(24), Length::feet(10)));
  open.cladding = Cladding::Open;
  job.walls = {others, open, wallOf(job, "C", Length::feet(24), {})};
  return job;
}

Job withScrews(Job job, const std::string& profile, std::optional<Length> step) {
  const auto& profiles = shippedProfiles();
  const auto& patterns = shippedPatterns();
  job.profiles = {*std::find_if(profiles.begin(), profiles.end(), [&](const Profile& p) { return p.id == profile; })};
  const PatternExample example = *std::find_if(patterns.begin(), patterns.end(),
                                               [&](const PatternExample& p) { return p.pattern.profile == profile; });
  job.patterns = {example.pattern};
  job.screws = example.screws;
  for (Wall& wall : job.walls) {
    wall.pattern = example.pattern.id;
    for (Band& band : wall.bands) band.profile = profile;
    for (Length z = step.value_or(Length()); step && z < Length::feet(40); z += *step) {
      Girt girt;
      girt.id = "g" + std::to_string(wall.girts.size() + 1);
      girt.height = z;
      wall.girts.push_back(girt);
    }
  }
  return job;
}

Job screwedFront() { return withScrews(busyFront(), "rib-36-1.25-at-12", Length::feet(3)); }

Job crowdedGirts() {
  Job job = withScrews(narrowWall(), "rib-36-1.25-at-12", Length::inches(3));
  job.name = "Grain store";
  return job;
}

DrawnJob planned(const std::string& name, const Job& job) { return {name, job, plan(job)}; }

std::vector<DrawnJob> drawnJobs() {
  return {
      planned("frozen gable", frozenGable()),
      planned("busy front", busyFront()),
      planned("metric gable", metricGable()),
      planned("long wall", longWall()),
      planned("narrow wall", narrowWall()),
      planned("stepped wall", steppedWall()),
      planned("hangar door", hangarDoor()),
      planned("tall banded wall", tallBandedWall()),
      planned("unsheeted walls", unsheetedWalls()),
      planned("screwed front", screwedFront()),
      planned("screwed gable", withScrews(frozenGable(), "rib-36-1.25-at-12", Length::feet(4))),
      planned("screwed metric gable", withScrews(metricGable(), "trapezoid-1035-35-at-207", Length::millimetres(1200))),
      planned("screwed long wall", withScrews(longWall(), "rib-36-1.25-at-12", Length::feet(6))),
      planned("screwed tower", withScrews(tallBandedWall(), "rib-36-1.25-at-12", std::nullopt)),
      planned("screwed steps", withScrews(steppedWall(), "rib-24-1-at-12", Length::feet(5))),
      planned("crowded girts", crowdedGirts())};
}

}  // namespace ribwright
