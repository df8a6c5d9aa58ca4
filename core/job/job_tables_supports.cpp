// Tables of the steel that sheets are screwed to.
#include "core/job/job_tables.h"
#include "core/job/stated_words.h"

namespace ribwright {
namespace {

constexpr std::string_view memberShapes[] = {"zed", "cee", "angle", "hat", "wide flange"};

}  // namespace

void describe(Fields<Member>& member) {
  member.required("id", &Member::id, "its dimensions, as Z8x2.5x0.068", idText);
  member.member("shape", &Member::shape, "cross-section", ChoiceWords(memberShapes));
  member.required("depth", &Member::depth, "depth of the web, outside to outside", positive);
  member.required("flange", &Member::flange, "outside width of the outer flange", positive);
  member.member("lip", &Member::lip, "stiffening lip at the flange's free edge; 0: none", notNegative);
  member.required("thickness", &Member::thickness, "thickness of the steel",
                  LengthRange{Length(), Length::millimetres(100), true});
  member.member("bend_radius", &Member::bendRadius, "inside", notNegative);
}

void describe(Fields<Girt>& girt) {
  girt.required("id", &Girt::id, "its mark on the plans", idText);
  girt.required("height", &Girt::height, "above the top of concrete, of the edge or line that it is typed by",
                anyLength);
  girt.member("typed_by", &Girt::typedBy, "what the height is the height of", ChoiceWords(girtTypedByWords));
  girt.member("flange", &Girt::flange, "which way the outer flange turns from the web", ChoiceWords(girtFlangeWords));
  girt.member("member", &Girt::member, "id of its cross-section", lineText);
  girt.member("from", &Girt::from, "place along the wall; absent: from the left corner", anyLength);
  girt.member("to", &Girt::to, "place along the wall; absent: to the right corner", anyLength);
  girt.member("clip_slot", &Girt::clipSlot, "how far the clip lets it be raised or lowered", notNegative);
}

void describe(Fields<EdgeSupport>& support) {
  support.member("face", &EdgeSupport::face, "height of the leg that bears on the sheet", positive);
  support.member("bend", &EdgeSupport::bend, "lost at the heel", notNegative);
  support.member("row", &EdgeSupport::row, "hole row: at the base from the face's bottom, else from its top",
                 notNegative);
  support.member("member", &EdgeSupport::member, "id of its cross-section", lineText);
}

void describe(Fields<ColumnGrid>& columns) {
  columns.member("offset", &ColumnGrid::offset, "from the wall's left corner to column 1", anyLength);
  columns.member("bays", &ColumnGrid::bays, "column 1 to 2, 2 to 3 ...", positive);
  columns.member("member", &ColumnGrid::member, "id of their cross-section", lineText);
  columns.member("flange", &ColumnGrid::flange, "width of the outer flange; 0: not stated", notNegative);
}

}  // namespace ribwright
