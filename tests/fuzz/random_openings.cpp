// Openings of every kind and position: wider than sheets, inside one, touching, at a corner, cut by the rake, reaching
// floor or top, with an edge in a lap; penetrations round and rectangular.
#include <algorithm>
#include <string>

#include "tests/core/tape_lengths.h"
#include "tests/fuzz/random_building.h"
#include "tests/fuzz/stated_run.h"

namespace ribwright::fuzz {
namespace {

class Openings {
 public:
  Openings(const Job& job, Wall& wall, Dice& dice)
      : wall_(wall),
        dice_(dice),
        face_(statedFace(job, wall)),
        profile_(*profileOf(job, wall, 0)),
        settings_(job.settings) {
    width_ = Length::nanometres(face_.width);
    lowConcrete_ = highConcrete_ = Length::nanometres(face_.concrete.segments.front().z0);
    for (const Segment& segment : face_.concrete.segments) {
      lowConcrete_ = std::min(lowConcrete_, Length::nanometres(segment.z0));
      highConcrete_ = std::max(highConcrete_, Length::nanometres(segment.z0));
    }
  }

  void add(int number) {
    Opening opening;
    opening.id = numbered('W', number);
    opening.width = randomWidth();
    if (dice_.oneIn(4)) opening.clearances.jamb = dice_.length(Length(), in(2));
    if (dice_.oneIn(4)) opening.clearances.head = dice_.length(Length(), in(2));
    if (dice_.oneIn(4)) opening.clearances.sill = dice_.length(Length(), in(2));
    const Length jamb = randomJamb(opening);
    setHeights(opening, jamb);
    place(opening, jamb);
    wall_.openings.push_back(opening);
    lastRight_ = jamb + opening.width + 2 * opening.clearances.jamb.value_or(settings_.jambClearance);
  }

  void addPenetration(int number) {
    Penetration hole;
    hole.id = numbered('P', number);
    hole.shape = dice_.of({Penetration::Shape::Round, Penetration::Shape::Rectangular});
    // Even nanometres: a mirrored hole about the same centre is then the mirrored hole.
    hole.width = 2 * half(dice_.length(in(1), in(24)));
    hole.height = hole.shape == Penetration::Shape::Round ? hole.width : 2 * half(dice_.length(in(1), in(24)));
    if (dice_.oneIn(3)) hole.clearance = dice_.length(Length(), in(1));
    const Length u = dice_.oneIn(3) ? aLap() : dice_.length(Length(), width_);
    hole.centre = dice_.length(lowConcrete_, topAt(u) + in(12));
    const int from = dice_.small(0, 2);
    hole.place.distance = u;
    if (from == 1) hole.place = {Anchor::From::RightCorner, 0, width_ - u, Anchor::To::NearJamb};
    if (from == 2) hole.place = {Anchor::From::Column, 1, u - wall_.columns.offset, Anchor::To::NearJamb};
    wall_.penetrations.push_back(hole);
  }

 private:
  Length topAt(Length u) const { return Length::nanometres(face_.top.heightAt(u.nanometres(), Side::Right)); }

  Length randomWidth() {
    switch (dice_.between(0, 4)) {
      case 0:
        return dice_.length(in(1), in(5));
      case 1:
        return dice_.length(Length::feet(6), std::max(Length::feet(7), scaled(width_, 9, 10)));
      default:
        return dice_.length(Length::feet(1), Length::feet(6));
    }
  }

  // Somewhere in the lap of a run that starts flush at the left corner.
  Length aLap() {
    const std::int64_t sheets = std::max<std::int64_t>(1, wholeTimes(width_, profile_.cover));
    const Length line = profile_.over + profile_.cover * dice_.between(1, sheets);
    return line + dice_.length(-profile_.over, profile_.under);
  }

  Length randomJamb(const Opening& opening) {
    const Length clearance = opening.clearances.jamb.value_or(settings_.jambClearance);
    switch (dice_.between(0, 8)) {
      case 0:
        return dice_.length(-in(12), in(6));
      case 1:
        return width_ - opening.width + dice_.length(-in(6), in(12));
      case 2:
        return aLap() + clearance;
      case 3:
        return aLap() - clearance - opening.width;
      case 4:
        return lastRight_ + dice_.of({Length(), in(0, 4), in(1), in(1, 8), Length::inches(0, 1)});
      default:
        return dice_.length(Length(), std::max(in(1), width_ - opening.width));
    }
  }

  void setHeights(Opening& opening, Length jamb) {
    const Length top = topAt(jamb + half(opening.width));
    switch (dice_.between(0, 5)) {
      case 0:
      case 1:
        opening.sill = dice_.oneIn(3) ? lowConcrete_ - in(2) : lowConcrete_;
        opening.height = dice_.length(Length::feet(3), Length::feet(10));
        break;
      case 2:  // cut by the top
        opening.sill = std::max(highConcrete_ + in(1), top - dice_.length(in(6), Length::feet(4)));
        opening.height = dice_.length(in(3), Length::feet(8));
        break;
      case 3:  // beside the last one, often as high
        opening.sill = wall_.openings.empty() ? highConcrete_ + Length::feet(3) : wall_.openings.back().sill;
        opening.height = wall_.openings.empty() ? Length::feet(3) : wall_.openings.back().height;
        break;
      default:
        opening.sill = highConcrete_ + dice_.length(in(1), Length::feet(7));
        opening.height = dice_.length(in(3), Length::feet(6));
    }
    if (dice_.oneIn(15)) opening.height = Length::feet(60);
  }

  void place(Opening& opening, Length jamb) {
    const bool centre = dice_.oneIn(4);
    opening.place.to = centre ? Anchor::To::Centre : Anchor::To::NearJamb;
    const Length u = centre ? jamb + half(opening.width) : jamb;
    switch (dice_.between(0, 2)) {
      case 0:
        opening.place.distance = u;
        break;
      case 1:
        opening.place.from = Anchor::From::RightCorner;
        opening.place.distance = width_ - (centre ? u : jamb + opening.width);
        break;
      default: {
        const int column = dice_.small(1, static_cast<int>(wall_.columns.bays.size()));
        opening.place.from = Anchor::From::Column;
        opening.place.column = column;
        opening.place.distance = u - wall_.columns.offset;
        for (int i = 0; i + 1 < column; ++i) opening.place.distance -= wall_.columns.bays[static_cast<std::size_t>(i)];
      }
    }
  }

  Wall& wall_;
  Dice& dice_;
  StatedFace face_;
  const Profile& profile_;
  const Settings& settings_;
  Length width_, lowConcrete_, highConcrete_, lastRight_;
};

}  // namespace

void addOpenings(const Job& job, Wall& wall, Dice& dice) {
  Openings openings(job, wall, dice);
  const int many = dice.of({0, 0, 1, 1, 2, 3, 5});
  for (int i = 1; i <= many; ++i) openings.add(i);
  const int holes = dice.of({0, 0, 0, 1, 2, 3});
  for (int i = 1; i <= holes; ++i) openings.addPenetration(i);
}

}  // namespace ribwright::fuzz
