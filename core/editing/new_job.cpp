#include "core/editing/new_job.h"

#include <algorithm>
#include <numeric>

#include "core/editing/new_job_file.h"
#include "core/editing/new_job_girts.h"
#include "core/editing/new_job_reading.h"
#include "core/editing/trim_edits.h"
#include "core/job/by_id.h"
#include "core/job/job_file.h"
#include "core/job/pattern_file.h"
#include "core/layout/wall_face.h"

namespace ribwright {

namespace {

// None that is sheeted is higher; more is a slip of the pen.
constexpr Length highestRoof = Length::millimetres(150'000);

class NewJobWork {
 public:
  NewJobWork(const NewJob& stated, const Words& words) : stated_(stated), words_(words) {
    read_ = readTexts(stated, faults_);
  }

  Outcome<Job> made() {
    takeNames();
    takeSheets();
    takeGirtMember();
    if (!faults_.empty()) return faults_;
    takeSite();
    takeRoof();
    if (!faults_.empty()) return faults_;
    for (const char letter : building() ? std::string_view("ABCD") : std::string_view("A")) addWall(letter);
    if (!faults_.empty()) return faults_;
    if (auto trimmed = takeShippedTrim(job_)) job_ = std::move(trimmed).value();
    for (Fault& fault : faultsOf(job_)) faults_.push_back(std::move(fault));
    if (!faults_.empty()) return faults_;
    return job_;
  }

 private:
  bool building() const { return stated_.shape == NewJob::Shape::Rectangle; }
  bool isEnd(char letter) const {
    const bool isAC = letter == 'A' || letter == 'C';
    return building() && isAC == (stated_.ends == Roof::Ends::AC);
  }
  void wrong(std::string_view key, std::string message) { faults_.push_back(faultAt(key, std::move(message))); }
  std::string say(const std::string& id) const { return words_.say(id, {}, read_.style); }
  std::string text(Length length) const { return fineText(length, read_.style); }

  void takeNames() {
    job_.name = stated_.name;
    job_.number = stated_.number;
    job_.units = stated_.units;
    job_.decimalSign = read_.style.decimalSign;
  }

  void takeSheets() {
    if (!stated_.profile.empty()) {
      if (const Profile* profile = byId(shippedProfiles(), stated_.profile)) {
        job_.profiles = {*profile};
      } else {
        wrong("profile", "\"" + stated_.profile + "\" is no shipped profile; choose one of the list");
      }
    }
    if (stated_.pattern.empty()) return;
    const auto& all = shippedPatterns();
    const auto found = std::find_if(all.begin(), all.end(), [this](const PatternExample& example) {
      return example.pattern.id == stated_.pattern && example.pattern.profile == stated_.profile;
    });
    if (found == all.end())
      return wrong("pattern",
                   "\"" + stated_.pattern + "\" is no shipped pattern of this profile; choose one of the list");
    job_.patterns = {found->pattern};
    job_.screws = found->screws;
  }

  void takeGirtMember() {
    if (stated_.member.empty()) return;
    for (const UnitSystem units : {UnitSystem::FeetInches, UnitSystem::Millimetres}) {
      const std::vector<Member> members = ordinaryMembers(units);
      if (const Member* member = byId(members, stated_.member)) return job_.members.push_back(*member);
    }
    wrong("member", "\"" + stated_.member + "\" is no cross-section of the list; choose one of the list");
  }

  // Wall A looks south: y = 0 from x = 0 to the length.
  void takeSite() {
    const Length along = half(read_.length), across = half(read_.width), away = read_.seenAt;
    const Length right = read_.length + away, beyond = read_.width + away;
    const PlanPoint at[] = {{}, {along, -away}, {right, across}, {along, beyond}, {-away, across}};
    if (stated_.seenFrom != NewJob::Side::Nowhere)
      job_.site.sightPoints = {{say("new.sight"), at[static_cast<int>(stated_.seenFrom)]}};
    if (stated_.wind != NewJob::Wind::NotStated)
      job_.site.windFrom = Angle::degrees(45 * (static_cast<int>(stated_.wind) - 1));
  }

  Roof::Kind roofKind() const { return stated_.roof == Roof::Kind::None ? Roof::Kind::Level : stated_.roof; }

  void takeRoof() {
    const Length none;
    if (building())
      job_.building.outline = {{none, none}, {read_.length, none}, {read_.length, read_.width}, {none, read_.width}};
    Roof roof;
    roof.kind = roofKind();
    roof.ends = stated_.ends;
    roof.eave = read_.eave;
    if (read_.rise) takeRise(roof);
    const bool low = read_.rise && risesTo(roof) <= read_.eave;
    if (low) return wrong("slope", "the roof must rise; write a slope as 4:12, or a height above the eave");
    if (read_.eave > highestRoof) return wrong("eave", "is more than 150 m; write a lower eave");
    if (read_.rise && risesTo(roof) > highestRoof)
      return wrong("slope", "the roof rises to more than 150 m; write less");
    (building() ? job_.building.roof : freeRoof_) = roof;
  }

  void takeRise(Roof& roof) const {
    if (const Slope* slope = std::get_if<Slope>(&*read_.rise)) {
      roof.slope = *slope;
    } else {
      (roof.kind == Roof::Kind::Gable ? roof.ridgeHeight : roof.farEave) = std::get<Length>(*read_.rise);
    }
  }

  Length span() const { return building() && stated_.ends == Roof::Ends::BD ? read_.width : read_.length; }
  Length risesTo(const Roof& roof) const {
    if (roof.ridgeHeight || roof.farEave) return roof.ridgeHeight ? *roof.ridgeHeight : *roof.farEave;
    return roof.eave + riseOver(*roof.slope, roof.kind == Roof::Kind::Gable ? half(span()) : span());
  }

  // A free wall states its own top.
  std::vector<FacePoint> freeTop() const {
    const Length right = read_.length;
    if (freeRoof_.kind == Roof::Kind::Level) return {{Length(), read_.eave}, {right, read_.eave}};
    const Length high = risesTo(freeRoof_);
    if (freeRoof_.kind == Roof::Kind::SingleSlope) return {{Length(), read_.eave}, {right, high}};
    return {{Length(), read_.eave}, {half(right), high}, {right, read_.eave}};
  }

  void addWall(char letter) {
    Wall wall;
    wall.letter = std::string(1, letter);
    if (building()) wall.name = say(std::string("new.wall.") + (isEnd(letter) ? "end." : "side.") + letter);
    if (!building()) {
      wall.line = PlanLine{{}, {read_.length, Length()}};
      wall.top = freeTop();
    }
    takeBase(wall);
    wall.bands = {Band{}};
    wall.bands.front().profile = stated_.profile;
    wall.bands.front().colour = stated_.colour;
    wall.pattern = stated_.pattern;
    wall.girtSetting = stated_.girtSetting;
    const auto face = wallFace(job_, wall);
    if (!face) return wrong("slope", face.faults().front().message);
    takeColumns(wall, face.value().width);
    if (face.value().bottom.highest(Length(), face.value().width) >=
        face.value().top.lowest(Length(), face.value().width))
      return wrong("base_height", "the sheets' lower end stands at or above their upper end; write a lower height");
    takeGirts(wall, face.value());
    job_.walls.push_back(std::move(wall));
  }

  void takeBase(Wall& wall) const {
    wall.base.form = stated_.base;
    switch (stated_.base) {
      case Base::Form::Overhang:
        wall.base.drop = read_.baseHeight;
        break;
      case Base::Form::Notch:
        wall.base.depth = read_.baseHeight;
        break;
      case Base::Form::BaseTrim:
      case Base::Form::OnWall:
        wall.base.shelf = read_.baseHeight;
        break;
    }
  }

  // Bays that do not fill the wall stand in its middle, as columns set in from the corners do.
  void takeColumns(Wall& wall, Length width) {
    const bool end = isEnd(wall.letter[0]);
    const std::vector<Length>& bays = end ? read_.endBays : read_.sideBays;
    Length sum;
    for (const Length bay : bays) {
      sum += bay;
      if (sum > width) break;
    }
    if (sum > width) {
      const std::string why = "the bays come to more than the wall, which is " + text(width) + "; write shorter ones";
      return wrongOnce(end ? "end_bays" : "side_bays", why);
    }
    wall.columns.bays = bays;
    if (!bays.empty()) wall.columns.offset = half(width - sum);
  }

  void takeGirts(Wall& wall, const WallFace& face) {
    const bool end = isEnd(wall.letter[0]);
    const GirtHeights heights =
        end ? endGirtHeights(read_, face) : GirtHeights{read_.sideGirts, sideGirtsThatFit(read_, face)};
    for (const Length height : heights.stated) {
      const bool low = height <= face.bottom.highest(Length(), face.width);
      if (low)
        return wrongOnce(girtKey(end),
                         text(height) + " is not above the sheets' lower end; write heights from the top of concrete");
    }
    const Length top = end ? face.steel.highest(Length(), face.width) : highestSide();
    if (!heights.stated.empty() && heights.stated.back() >= top)
      return wrongOnce(girtKey(end), text(heights.stated.back()) + " is not under the roof, which rises to " +
                                         text(top) + " here; write lower heights");
    for (const Length height : heights.there) {
      Girt girt;
      girt.id = "g" + std::to_string(wall.girts.size() + 1);
      girt.height = height;
      girt.typedBy = stated_.typedBy;
      girt.member = stated_.member;
      wall.girts.push_back(std::move(girt));
    }
  }

  std::string_view girtKey(bool end) const { return end && read_.endGirtsStated ? "end_girts" : "side_girts"; }

  // Of the steel line over the side walls.
  Length highestSide() const {
    if (!building()) return read_.rise ? risesTo(freeRoof_) : read_.eave;
    const bool single = roofKind() == Roof::Kind::SingleSlope;
    return single ? std::max(read_.eave, risesTo(job_.building.roof)) : read_.eave;
  }

  void wrongOnce(std::string_view key, std::string message) {
    Fault fault = faultAt(key, std::move(message));
    if (std::find(faults_.begin(), faults_.end(), fault) == faults_.end()) faults_.push_back(std::move(fault));
  }

  const NewJob& stated_;
  const Words& words_;
  NewJobRead read_;
  std::vector<Fault> faults_;
  Job job_;
  Roof freeRoof_;
};

}  // namespace

Outcome<Job> jobOf(const NewJob& stated, const Words& words) { return NewJobWork(stated, words).made(); }

std::int64_t sheetsAbout(const Job& job) {
  std::int64_t sheets = 0;
  for (const Wall& wall : job.walls) {
    const auto face = wallFace(job, wall);
    const Profile* profile = wall.bands.empty() ? nullptr : byId(job.profiles, wall.bands.front().profile);
    if (!face || !profile) continue;
    const Length high = face.value().top.highest(Length(), face.value().width);
    const std::int64_t tiers = 1 + std::max<std::int64_t>(0, wholeTimes(high, profile->lengths.longest));
    sheets += (1 + wholeTimes(face.value().width, profile->cover)) * tiers;
  }
  return sheets;
}

}  // namespace ribwright
