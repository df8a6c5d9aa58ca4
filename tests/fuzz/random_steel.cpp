// Steel for screws: members, girts as plans type them, nested where they lap, columns, frames, edges of the wall.
#include <algorithm>

#include "tests/core/tape_lengths.h"
#include "tests/fuzz/random_building.h"
#include "tests/fuzz/random_screws.h"
#include "tests/fuzz/stated_wall.h"

namespace ribwright::fuzz {
namespace {

std::string anyMember(const Job& job, Dice& dice) { return dice.oneIn(6) ? "" : dice.of(job.members).id; }

void state(const Job& job, Girt& girt, Dice& dice) {
  using TypedBy = Girt::TypedBy;
  girt.member = anyMember(job, dice);
  girt.typedBy = dice.of({TypedBy::WebLine, TypedBy::Bottom, TypedBy::Top, TypedBy::Centre});
  girt.flange = dice.of({Girt::Flange::Up, Girt::Flange::Down});
}

// Two girts lap over a place, the second often as the first, or its flange against the first one's.
void lap(const Job& job, Girt& first, std::vector<Girt>& more, Length width, Dice& dice) {
  const Length u = scaled(width, dice.between(2, 8), 10), over = dice.length(in(1), in(30));
  Girt second = first;
  second.id += "b";
  second.from = u - over;
  first.to = u + over;
  if (dice.oneIn(3)) second.height += dice.length(-in(1), in(1));
  if (dice.oneIn(4)) state(job, second, dice);
  more.push_back(second);
  if (!dice.oneIn(5)) return;
  Girt third = second;
  third.id += "c";
  third.from = u - 3 * over;
  third.to = u + over + dice.length(in(1), in(40));
  third.height += dice.length(-in(1), in(1));
  more.push_back(third);
}

void addGirts(const Job& job, Wall& wall, Length width, Dice& dice) {
  std::vector<Girt> all;
  for (Girt girt : wall.girts) {
    state(job, girt, dice);
    std::vector<Girt> more;
    if (dice.oneIn(8)) girt.from = scaled(width, dice.between(-1, 3), 10);
    if (dice.oneIn(8)) girt.to = scaled(width, dice.between(6, 11), 10);
    if (dice.oneIn(4)) lap(job, girt, more, width, dice);
    const bool first = dice.oneIn(4);
    if (!first) all.push_back(girt);
    all.insert(all.end(), more.begin(), more.end());
    if (first) all.push_back(girt);
    if (!dice.oneIn(16)) continue;
    girt.id += "n";
    girt.height += dice.length(-in(3), in(3));
    all.push_back(girt);
  }
  wall.girts = all;
}

EdgeSupport edge(Dice& dice) {
  EdgeSupport support;
  if (dice.oneIn(2)) support.face = dice.length(in(1, 8), in(6));
  if (dice.oneIn(2)) support.bend = dice.length(Length(), in(0, 4));
  support.row = dice.oneIn(2) ? half(support.face) : dice.length(in(0, 8), support.face);
  return support;
}

void addFrames(const Job& job, Wall& wall, Dice& dice) {
  for (Opening& opening : wall.openings) {
    FrameSteel& frame = opening.frame;
    if (dice.oneIn(2)) frame.face = dice.length(in(1, 8), in(8));
    if (dice.oneIn(2)) frame.bend = dice.length(Length(), in(0, 4));
    if (dice.oneIn(3)) frame.member = dice.of(job.members).id;
  }
}

}  // namespace

void addMembers(Job& job, Dice& dice) {
  using Shape = Member::Shape;
  int number = 1;
  for (const Shape shape : {Shape::Zed, Shape::Zed, Shape::Cee, Shape::Hat, Shape::Angle, Shape::WideFlange}) {
    Member member;
    member.id = numbered('m', number++);
    member.shape = shape;
    member.depth = in(8);
    member.flange = dice.length(in(1, 8), in(4));
    if ((shape == Shape::Zed || shape == Shape::Cee) && !dice.oneIn(3)) member.lip = in(0, 12);
    member.thickness = Length::nanometres(dice.between(1'200'000, 3'000'000));
    if (dice.oneIn(2)) member.bendRadius = dice.length(Length(), in(0, 4));
    job.members.push_back(member);
  }
}

void addSteel(const Job& job, Wall& wall, Dice& dice) {
  const Length width = Length::nanometres(statedFace(job, wall).width);
  addGirts(job, wall, width, dice);
  addFrames(job, wall, dice);
  if (dice.oneIn(3)) wall.girtSetting = GirtSetting::Flush;
  if (!dice.oneIn(6)) wall.columns.flange = 2 * half(dice.length(in(4), in(12)));
  wall.baseAngle = edge(dice);
  wall.eavePurlin = edge(dice);
  wall.rakeAngle = edge(dice);
}

}  // namespace ribwright::fuzz
