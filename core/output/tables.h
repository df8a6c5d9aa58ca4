// The tables that leave the program for spreadsheets, suppliers and the site. The unit stands in the header: _in, _ft,
// _sqft and _lb, or _mm, _m, _m2 and _kg. Columns are a contract: new ones are added at the right.
#pragma once

#include <string>

#include "core/checks/finding.h"
#include "core/output/csv.h"
#include "core/plan/plan.h"
#include "core/units/length_text.h"
#include "core/words/words.h"

namespace ribwright {

// What to order, one line a profile, thickness, colour and length. `length` carries a unit mark so that no spreadsheet
// makes a date of it; area = cover x length x quantity; marks in hanging order, a space between them.
Table sheetOrderTable(const Plan& plan, UnitSystem units);

// Every piece, wall by wall in hanging order. left, right: the metal's extent in u; bottom, edges: z; low and high are
// of the top edge.
Table pieceTable(const Plan& plan, UnitSystem units);

// Every corner of every piece: ring 0 outer, 1 ... inner; corners from 1, clockwise as the sheet lies face up. The
// outer ring begins at the bottom of the starting edge, an inner one at its lowest corner nearest that edge. x from the
// piece's starting metal edge, y from its lowest end.
Table cutTable(const Plan& plan, UnitSystem units);

// Every hole in every sheet that it goes through, wall by wall, by piece in hanging order, then from its lowest end up,
// then across. x from the sheet's module line toward its leading edge, edge_x from the piece's starting metal edge, s
// from its lowest end, chalk from the wall's chalk line (the sheets' bottom where none was snapped; of two heights at a
// step the lower). count 1 for the sheet that owns the screw, 0 for its twins, so that the counts add up to the screws.
// status: of the piece's drill batch; a piece in none is held. basis surveyed: the row's steel was measured and the
// batch is cleared; then s, z and chalk are as on its template, else as planned. drilled: in the stack, in place, or
// not at all in a sheet that lies under another one. zone: field, or corner of the wall.
Table holeTable(const Plan& plan, UnitSystem units);

// Where the leading edge of every sheet stands, run by run in hanging order: u, and running from the corner or joint
// that its run starts at, which is the same at base and top girt. plumb_check: yes where the sheet is held against a
// plumb line; hung: yes where it hangs and its place is a fact. band: 1 is the lowest.
Table moduleMarkTable(const Plan& plan, UnitSystem units);

// The plan's findings in their order. Lengths within the words are in `style`.
Table findingTable(const Plan& plan, const LengthStyle& style, const Words& words = Words::of("en"));

// "stop", "look", "note": as in the table's column.
std::string gradeWord(Grade grade);

// The three sentences of a finding.
struct FindingText {
  std::string where, why, remedy;
};
FindingText findingText(const Finding& finding, const LengthStyle& style, const Words& words = Words::of("en"));

}  // namespace ribwright
