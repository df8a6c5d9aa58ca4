#include "core/editing/new_items.h"

#include <algorithm>
#include <map>
#include <string>

#include "core/editing/field_path.h"
#include "core/editing/field_setter.h"
#include "core/editing/new_item_ways.h"
#include "core/editing/new_order_items.h"
#include "core/editing/next_ids.h"
#include "core/job/by_id.h"
#include "core/job/job_file.h"
#include "core/job/length_style.h"
#include "core/job/pattern_numbers.h"
#include "core/layout/wall_face.h"

namespace ribwright {
namespace {

using namespace new_items;

Faults addSight(Job& job, const Indices&, std::size_t at) {
  SightPoint first;
  first.at.y = -size(job, Length::feet(100), 30'000);  // in front of wall A
  insertLike(job.site.sightPoints, at, first);
  return {};
}

// In the middle of the edge that it parts in two: the outline stays what it is.
Faults addCorner(Job& job, const Indices&, std::size_t at) {
  std::vector<PlanPoint>& outline = job.building.outline;
  if (outline.size() < 3) {
    const Length length = size(job, Length::feet(60), 18'000), width = size(job, Length::feet(40), 12'000);
    outline = {{Length(), Length()}, {length, Length()}, {length, width}, {Length(), width}};
    return {};
  }
  const PlanPoint before = outline[at == 0 ? outline.size() - 1 : at - 1], after = outline[at % outline.size()];
  const PlanPoint middle{before.x + half(after.x - before.x), before.y + half(after.y - before.y)};
  outline.insert(outline.begin() + static_cast<std::ptrdiff_t>(at), middle);
  return {};
}

// A shipped one that the job has not, else one like its neighbour.
Faults addProfile(Job& job, const Indices&, std::size_t at) {
  for (const Profile& shipped : shippedProfiles()) {
    if (byId(job.profiles, shipped.id)) continue;
    job.profiles.insert(job.profiles.begin() + static_cast<std::ptrdiff_t>(at), shipped);
    return {};
  }
  insertLike(job.profiles, at, shippedProfiles().front());
  nameAnew(job.profiles, at, &Profile::id);
  return {};
}

// Between two points, or on the one at the end.
Faults addSectionPoint(Job& job, const Indices& path, std::size_t at) {
  std::vector<SectionPoint>& section = job.profiles.at(path.at(0)).section;
  insertLike(section, at, {});
  if (at > 0 && at + 1 < section.size()) section[at].x = placeBetween(section, at, &SectionPoint::x, Length());
  return {};
}

Faults addMember(Job& job, const Indices&, std::size_t at) {
  Member first;
  first.id = job.units == UnitSystem::FeetInches ? "Z8x2.5x0.075" : "Z200x65x1.9";
  first.depth = size(job, Length::inches(8), 200);
  first.flange = size(job, Length::inches(2, 32), 65);
  first.thickness = Length::nanometres(1'900'000);
  insertLike(job.members, at, first);
  nameAnew(job.members, at, &Member::id);
  return {};
}

Faults addScrew(Job& job, const Indices&, std::size_t at) {
  Screw first;
  first.id = job.units == UnitSystem::FeetInches ? "1/4x1.25" : "6x32";
  first.diameter = size(job, Length::inches(0, 16), 6);
  first.length = size(job, Length::inches(1, 16), 32);
  insertLike(job.screws, at, first);
  nameAnew(job.screws, at, &Screw::id);
  return {};
}

// Nobody has held a copy against the plans.
Faults addPattern(Job& job, const Indices&, std::size_t at) {
  ScrewPattern first;
  first.id = "pattern";
  insertLike(job.patterns, at, first);
  nameAnew(job.patterns, at, &ScrewPattern::id);
  job.patterns[at].confirmation.reset();
  return {};
}

// For the first kind of support that the pattern does not speak of yet.
Faults addRow(Job& job, const Indices& path, std::size_t at) {
  std::vector<PatternRow>& rows = job.patterns.at(path.at(0)).rows;
  const std::vector<PatternRow> others = rows;
  PatternRow& row = insertLike(rows, at, {});
  for (const Zone zone : {Zone::Field, Zone::Corner}) {
    for (int kind = 0; kind <= static_cast<int>(SupportKind::EndLap); ++kind) {
      const auto is = [&](const PatternRow& one) { return one.zone == zone && static_cast<int>(one.support) == kind; };
      if (std::any_of(others.begin(), others.end(), is)) continue;
      row.zone = zone;
      row.support = static_cast<SupportKind>(kind);
      return {};
    }
  }
  return {};
}

std::string freeLetter(const Job& job) {
  for (char letter = 'A'; letter <= 'Z'; ++letter) {
    if (!byLetter(job.walls, std::string(1, letter))) return std::string(1, letter);
  }
  for (char first = 'A'; first <= 'Z'; ++first) {
    for (char second = 'A'; second <= 'Z'; ++second) {
      const std::string letters{first, second};
      if (!byLetter(job.walls, letters)) return letters;
    }
  }
  return {};
}

// On the outline's edge of its letter, else free with a width of its own. What hangs on other walls is not copied.
Faults addWall(Job& job, const Indices&, std::size_t at) {
  Wall wall;
  wall.letter = freeLetter(job);
  wall.bands.resize(1);
  if (!planLine(job, wall)) wall.width = size(job, Length::feet(40), 12'000);
  job.walls.insert(job.walls.begin() + static_cast<std::ptrdiff_t>(at), wall);
  return {};
}

Faults addTopPoint(Job& job, const Indices& path, std::size_t at) {
  std::vector<FacePoint>& top = job.walls.at(path.at(0)).top;
  insertLike(top, at, {Length(), size(job, Length::feet(12), 3600)});
  top[at].u = placeBetween(top, at, &FacePoint::u, stride(job));
  return {};
}

Faults addStep(Job& job, const Indices& path, std::size_t at) {
  std::vector<FacePoint>& steps = job.walls.at(path.at(0)).base.steps;
  insertLike(steps, at, {});
  steps[at].u = placeBetween(steps, at, &FacePoint::u, stride(job));
  return {};
}

Faults addBand(Job& job, const Indices& path, std::size_t at) {
  std::vector<Band>& bands = job.walls.at(path.at(0)).bands;
  const bool isFirst = bands.empty();
  Band& band = insertLike(bands, at, {});
  const Length above = at > 0 ? bands[at - 1].from.value_or(Length()) : Length();
  if (!isFirst) band.from = above + size(job, Length::feet(4), 1200);
  return {};
}

Faults addGirt(Job& job, const Indices& path, std::size_t at) {
  const std::string id = nextGirtId(job, path.at(0));
  std::vector<Girt>& girts = job.walls.at(path.at(0)).girts;
  insertLike(girts, at, {});
  girts[at].id = id;
  girts[at].height = placeBetween(girts, at, &Girt::height, size(job, Length::feet(5), 1500));
  if (girts.size() == 1) girts[at].height = size(job, Length::feet(7, 6), 2250);
  return {};
}

Faults addOpening(Job& job, const Indices& path, std::size_t at) {
  Opening first;
  first.width = size(job, Length::feet(4), 1200);
  first.height = size(job, Length::feet(4), 1200);
  first.sill = size(job, Length::feet(3), 900);
  const bool isFirst = job.walls.at(path.at(0)).openings.empty();
  Opening& opening = insertLike(job.walls.at(path.at(0)).openings, at, first);
  if (!isFirst) opening.place.distance += opening.width + size(job, Length::feet(2), 600);  // beside its neighbour
  opening.id.clear();
  opening.id = nextOpeningId(job, opening.kind);
  return {};
}

Faults addPenetration(Job& job, const Indices& path, std::size_t at) {
  Penetration first;
  first.width = first.height = size(job, Length::inches(6), 150);
  first.centre = size(job, Length::feet(4), 1200);
  const bool isFirst = job.walls.at(path.at(0)).penetrations.empty();
  Penetration& penetration = insertLike(job.walls.at(path.at(0)).penetrations, at, first);
  if (!isFirst) penetration.place.distance += penetration.width + size(job, Length::feet(1), 300);
  penetration.id.clear();
  penetration.id = nextPenetrationId(job);
  return {};
}

Faults addGirtSurvey(Job& job, const Indices& path, std::size_t at) {
  Wall& wall = job.walls.at(path.at(0));
  std::vector<GirtSurvey>& surveyed = wall.survey.girts;
  std::vector<std::string> ids;
  for (const Girt& girt : wall.girts) ids.push_back(girt.id);
  ids.emplace_back("eave");
  for (const std::string& id : ids) {
    const auto is = [&](const GirtSurvey& one) { return one.girt == id; };
    if (std::any_of(surveyed.begin(), surveyed.end(), is)) continue;
    surveyed.insert(surveyed.begin() + static_cast<std::ptrdiff_t>(at), GirtSurvey{id, {}});
    return {};
  }
  return {
      {joined(itemPath("walls", path.at(0)), ".survey.girts"), "has every girt of the wall, and its eave, already"}};
}

Faults addReading(Job& job, const Indices& path, std::size_t at) {
  std::vector<GirtReading>& readings = job.walls.at(path.at(0)).survey.girts.at(path.at(1)).readings;
  insertLike(readings, at, {});
  readings[at].u = placeBetween(readings, at, &GirtReading::u, stride(job));
  return {};
}

Faults addSlab(Job& job, const Indices& path, std::size_t at) {
  std::vector<SlabReading>& slab = job.walls.at(path.at(0)).survey.slab;
  insertLike(slab, at, {});
  slab[at].u = placeBetween(slab, at, &SlabReading::u, stride(job));
  return {};
}

Faults addHung(Job& job, const Indices&, std::size_t at) {
  insertLike(job.facts.hung, at, HungSheet{"A1", Length(), {}, {}});
  nameAnew(job.facts.hung, at, &HungSheet::mark);
  return {};
}

Faults addOrder(Job& job, const Indices&, std::size_t at) {
  PlacedOrder order;
  order.id = freeName(job.facts.orders, "1", &PlacedOrder::id);
  for (int number = 1; order.id.find(' ') != std::string::npos; ++number)
    order.id = freeName(job.facts.orders, std::to_string(number), &PlacedOrder::id);
  job.facts.orders.insert(job.facts.orders.begin() + static_cast<std::ptrdiff_t>(at), order);
  return {};
}

Faults addLot(Job& job, std::vector<SheetLot> PlacedOrder::*lots, const Indices& path, std::size_t at) {
  SheetLot first;
  const Profile& profile = job.profiles.empty() ? shippedProfiles().front() : job.profiles.front();
  first.profile = profile.id;
  first.thickness = profile.thickness;
  first.length = size(job, Length::feet(12), 3600);
  first.quantity = 1;
  insertLike(job.facts.orders.at(path.at(0)).*lots, at, first);
  return {};
}
Faults addPlaced(Job& job, const Indices& path, std::size_t at) { return addLot(job, &PlacedOrder::placed, path, at); }
Faults addReceived(Job& job, const Indices& path, std::size_t at) {
  return addLot(job, &PlacedOrder::received, path, at);
}
Faults addShortfall(Job& job, const Indices& path, std::size_t at) {
  return addLot(job, &PlacedOrder::shortfall, path, at);
}

Faults addSilenced(Job& job, const Indices&, std::size_t at) {
  SilencedFinding first;
  first.key = "finding";
  insertLike(job.silenced, at, first);
  nameAnew(job.silenced, at, &SilencedFinding::key);
  return {};
}

using Add = Faults (*)(Job&, const Indices&, std::size_t);
const std::map<std::string, Add, std::less<>>& additions() {
  static const std::map<std::string, Add, std::less<>> all{
      {"building.outline", addCorner},
      {"facts.hung", addHung},
      {"facts.orders", addOrder},
      {"facts.orders.placed", addPlaced},
      {"facts.orders.received", addReceived},
      {"facts.orders.shortfall", addShortfall},
      {"members", addMember},
      {"patterns", addPattern},
      {"patterns.rows", addRow},
      {"prices.items", addPrice},
      {"profiles", addProfile},
      {"profiles.section", addSectionPoint},
      {"screws", addScrew},
      {"silenced", addSilenced},
      {"site.sight_points", addSight},
      {"trim_rules", addTrimRule},
      {"trims", addTrim},
      {"trims.section", addTrimPoint},
      {"walls", addWall},
      {"walls.bands", addBand},
      {"walls.base.steps", addStep},
      {"walls.girts", addGirt},
      {"walls.openings", addOpening},
      {"walls.penetrations", addPenetration},
      {"walls.survey.girts", addGirtSurvey},
      {"walls.survey.girts.readings", addReading},
      {"walls.survey.slab", addSlab},
      {"walls.top", addTopPoint},
  };
  return all;
}

}  // namespace

std::vector<Fault> addItem(Job& job, std::string_view list, std::size_t at) {
  const auto known = additions().find(withoutIndices(list));
  if (known != additions().end()) return known->second(job, indicesOf(list), at);
  FieldSetter setter = FieldSetter::changing(list, {ListChange::Does::Adds, at, 0}, styleOf(job));
  formObject(setter, job, Job{});
  return setter.faults();
}

void fillStated(Job& job, std::string_view path) {
  const Indices indices = indicesOf(path);
  const std::string bare = withoutIndices(path);
  if (bare == "walls.line") {
    Wall& wall = job.walls.at(indices.at(0));
    wall.line->to.x = wall.width.value_or(size(job, Length::feet(40), 12'000));
    wall.width.reset();  // the line gives it
  }
  if (bare == "patterns.confirmation") {
    ScrewPattern& pattern = job.patterns.at(indices.at(0));
    pattern.confirmation->numbers = numbersOf(pattern, job.screws);
  }
  if (bare == "walls.bands.start") {
    const Wall& wall = job.walls.at(indices.at(0));
    job.walls.at(indices.at(0)).bands.at(indices.at(1)).start = wall.start;
  }
}

}  // namespace ribwright
