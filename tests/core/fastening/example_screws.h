// Screws, girts and a pattern for the walls of worked examples.
#pragma once

#include <algorithm>
#include <string>

#include "core/fastening/holes.h"
#include "core/layout/lay_out_wall.h"
#include "tests/core/layout/example_walls.h"

namespace ribwright::examples {

// 8 in deep, 2-1/2 in flanges, 7/8 in lips, 0.075 in thick, inside radius 3/16 in: 0.2625 in of each flange is bend.
inline Member zed() {
  return {"Z8",
          Member::Shape::Zed,
          Length::inches(8),
          Length::inches(2, 32),
          Length::inches(0, 56),
          Length::nanometres(1'905'000),
          Length::inches(0, 12)};
}

// No. 12, 0.216 in over the thread (Yu and LaBoube, table 8.6), washer 1/2 in; and a 1/4 in stitch screw.
inline Screw number12() {
  return {"12", Length::nanometres(5'486'400), Length::inches(0, 32), Length::inches(1, 16), Length()};
}
inline Screw quarterInch() {
  return {"14", Length::inches(0, 16), Length::inches(0, 36), Length::inches(0, 56), Length()};
}

inline Girt girt(std::string id, Length height, Girt::TypedBy by = Girt::TypedBy::Centre,
                 Girt::Flange flange = Girt::Flange::Down) {
  Girt made;
  made.id = std::move(id);
  made.height = height;
  made.typedBy = by;
  made.flange = flange;
  made.member = "Z8";
  return made;
}

// The same offsets on every support, no stitch screws.
// Leg 1-7/8 in: it reaches over the pan behind the rib, so that a screw beside the rib goes through both sheets.
inline void lengthenLeg(Profile& profile) {
  profile.under = Length::inches(1, 56);
  profile.section.back() = {profile.cover + Length::inches(1), Length()};
  profile.section.insert(profile.section.end() - 1, {profile.cover + Length::inches(0, 32), Length::inches(1, 16)});
  profile.section.erase(profile.section.end() - 2);
  profile.section.push_back({profile.cover + profile.under, Length()});
}

inline ScrewPattern everywhere(std::vector<Length> offsets) {
  ScrewPattern pattern;
  pattern.id = "p";
  for (const SupportKind kind : {SupportKind::Base, SupportKind::Girt, SupportKind::Eave, SupportKind::Rake,
                                 SupportKind::Jamb, SupportKind::Head, SupportKind::Sill, SupportKind::EndLap})
    pattern.rows.push_back({kind, Zone::Field, offsets, "12", {}});
  return pattern;
}

inline Job screwed(Job job, ScrewPattern pattern) {
  job.members = {zed()};
  job.screws = {number12(), quarterInch()};
  job.patterns = {std::move(pattern)};
  job.walls[0].pattern = "p";
  return job;
}

struct ScrewedWall {
  Job job;
  WallLayout layout;
  WallHoles holes;

  explicit ScrewedWall(Job made) : job(std::move(made)) {
    layout = layOutWall(job, job.walls[0]).value();
    holes = holesOf(job, job.walls[0], layout);
  }
  const Piece& owner(const Hole& hole) const { return layout.pieces[static_cast<std::size_t>(hole.pieces[0])]; }
  const Piece& twin(const Hole& hole) const { return layout.pieces[static_cast<std::size_t>(hole.pieces[1])]; }
  std::vector<Hole> of(HoleKind kind) const {
    std::vector<Hole> some;
    for (const Hole& hole : holes.holes) {
      if (hole.kind == kind) some.push_back(hole);
    }
    return some;
  }
  std::vector<Hole> of(HoleKind kind, const std::string& mark) const {
    std::vector<Hole> some = of(kind);
    std::erase_if(some, [&](const Hole& hole) { return owner(hole).mark != mark; });
    return some;
  }
  std::vector<Refusal> refused(Refusal::Why why) const {
    std::vector<Refusal> some;
    for (const Refusal& refusal : holes.refusals) {
      if (refusal.why == why) some.push_back(refusal);
    }
    return some;
  }
  const SupportRow& row(const std::string& id) const {
    return *std::find_if(holes.supports.rows.begin(), holes.supports.rows.end(),
                         [&](const SupportRow& r) { return r.id == id; });
  }
};

}  // namespace ribwright::examples
