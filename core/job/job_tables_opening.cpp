// Tables of openings and penetrations.
#include "core/job/job_tables.h"
#include "core/job/stated_words.h"

namespace ribwright {
void describe(Fields<Anchor>& anchor) {
  anchor.member("from", &Anchor::from, "what the distance is measured from", ChoiceWords(anchorFromWords));
  anchor.member("column", &Anchor::column, "with column: 1, 2 ... from the left", WholeRange{0, 100'000});
  anchor.member("distance", &Anchor::distance, "to the right; from the right corner to the left", anyLength);
  anchor.member("to", &Anchor::to, "what the distance is measured to", ChoiceWords(anchorToWords));
  if (anchor.read().from == Anchor::From::Column && anchor.read().column < 1 && anchor.sound("column")) {
    anchor.wrong("column", "is missing; the distance is from a column: say which, 1, 2 ... from the left");
  }
}

void describe(Fields<Clearances>& clearances) {
  clearances.member("jamb", &Clearances::jamb, "sheet edge from the jamb's steel", notNegative);
  clearances.member("head", &Clearances::head, "sheet end from the head's steel", notNegative);
  clearances.member("sill", &Clearances::sill, "sheet end from the sill's steel", notNegative);
}

void describe(Fields<FrameSteel>& frame) {
  frame.member("face", &FrameSteel::face, "width of the flange that bears on the sheet, where no member is stated",
               positive);
  frame.member("bend", &FrameSteel::bend, "lost at the heel, where no member is stated", notNegative);
  frame.member("member", &FrameSteel::member, "id of its cross-section", lineText);
}

void describe(Fields<Opening>& opening) {
  opening.required("id", &Opening::id, "its mark on the plans", idText);
  opening.member("kind", &Opening::kind, "what is put into it", ChoiceWords(openingKindWords));
  opening.member("place", &Opening::place, "where it stands along the wall");
  opening.required("width", &Opening::width, "steel to steel of its frame", positive);
  opening.required("height", &Opening::height, "steel to steel of its frame", positive);
  opening.member("sill", &Opening::sill, "height of the sill's steel; 0 or below: it reaches the floor", anyLength);
  opening.member("clearances", &Opening::clearances, "those that differ from the settings");
  opening.member("frame", &Opening::frame, "steel of its frame that takes screws");
  opening.member("jamb_trim", &Opening::jambTrim, "width of the jamb trim seen from outside; 0: not stated",
                 notNegative);
}

void describe(Fields<Penetration>& penetration) {
  penetration.required("id", &Penetration::id, "its mark on the plans", idText);
  penetration.member("shape", &Penetration::shape, "shape of the hole", ChoiceWords(penetrationShapeWords));
  penetration.member("place", &Penetration::place, "where its centre stands along the wall");
  penetration.member("centre", &Penetration::centre, "height of its centre", anyLength);
  penetration.required("width", &Penetration::width, "of a round one: its diameter", positive);
  penetration.required("height", &Penetration::height, "of a round one: its diameter", positive);
  penetration.member("clearance", &Penetration::clearance, "all round", notNegative);
  const Penetration& read = penetration.read();
  if (read.shape == Penetration::Shape::Round && read.width != read.height && penetration.sound("width", "height")) {
    penetration.wrong("height", "differs from width; both are the diameter of a round one");
  }
}

}  // namespace ribwright
