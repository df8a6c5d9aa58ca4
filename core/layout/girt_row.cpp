#include "core/layout/girt_row.h"

#include <algorithm>

#include "core/job/by_id.h"

namespace ribwright {

namespace {

// z of the flange's lower edge, from the edge or line that the girt is typed by.
Length flangeBottom(const Girt& girt, Length flange) {
  const bool up = girt.flange == Girt::Flange::Up;
  switch (girt.typedBy) {
    case Girt::TypedBy::WebLine:
      return up ? girt.height : girt.height - flange;
    case Girt::TypedBy::Bottom:
      return girt.height;
    case Girt::TypedBy::Top:
      return girt.height - flange;
    case Girt::TypedBy::Centre:
      return girt.height - half(flange);
  }
  return girt.height;
}

}  // namespace

GirtReach girtReach(const Girt& girt, Length wallWidth) {
  return {std::max(girt.from.value_or(Length()), Length()), std::min(girt.to.value_or(wallWidth), wallWidth)};
}

FlangeBends bendsOf(const Member& member) {
  const Length bend = member.bendRadius + member.thickness;
  const bool turned = member.shape == Member::Shape::Hat || member.lip > Length();
  return {member.shape == Member::Shape::WideFlange ? Length() : bend, turned ? bend : Length()};
}

ScrewFace girtFace(const Girt& girt, const std::vector<Member>& members) {
  const Member* member = byId(members, girt.member);
  if (!member) return {girt.height, girt.height, girt.height};
  const auto [heel, edge] = bendsOf(*member);
  const Length bottom = flangeBottom(girt, member->flange), top = bottom + member->flange;
  const bool up = girt.flange == Girt::Flange::Up;  // then the heel is at the bottom
  ScrewFace face;
  face.low = bottom + (up ? heel : edge);
  face.high = top - (up ? edge : heel);
  face.row = face.low + half(face.high - face.low);
  return face;
}

}  // namespace ribwright
