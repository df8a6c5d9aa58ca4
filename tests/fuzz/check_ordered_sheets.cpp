#include <algorithm>
#include <set>
#include <stdexcept>

#include "core/job/section.h"
#include "core/job/sheet_weight.h"
#include "tests/fuzz/order_checker.h"

namespace ribwright::fuzz {
namespace {

std::string marksOf(const CheckedOrder& checked, const OrderedSheet& sheet) {
  std::string marks;
  for (const int blank : sheet.blanks) {
    for (const BlankPart& part : checked.blank(blank).parts)
      marks += (marks.empty() ? "" : "+") + checked.piece(part.piece).mark;
  }
  return marks;
}

void checkBlanksOf(const CheckedOrder& checked, int index, Complaints& complaints) {
  const OrderedSheet& sheet = checked.order.sheets[std::size_t(index)];
  const OrderLine& line = checked.lineOf(sheet);
  const Length kerf = checked.job.settings.kerf;
  Length end;
  std::vector<PieceRef> pieces;
  for (const int blank : sheet.blanks) {
    const BlankPlace& place = checked.order.places[std::size_t(blank)];
    complaints.check(place.sheet == index && place.line == sheet.line, "a blank stands elsewhere than its sheet says");
    complaints.check(place.from == end, "blanks are not end to end, a kerf apart");
    complaints.check(checked.blank(blank).sheet == line.sheet(), "a blank comes out of another class of sheet");
    end = place.from + checked.blank(blank).length + kerf;
    for (const BlankPart& part : checked.blank(blank).parts) pieces.push_back(part.piece);
  }
  complaints.check(sheet.used == end - kerf, "what is used of a sheet is not its blanks and kerfs");
  complaints.check(sheet.used <= line.length, "a sheet is too short for what comes out of it");
  complaints.check(sheet.first == *std::min_element(pieces.begin(), pieces.end()), "its first piece is not the first");
  const Length rest = line.length - end;
  const bool kept = rest > Length() && rest >= checked.job.settings.leastDrop;
  complaints.check(sheet.drop == (kept ? rest : Length()), "kept is not what is left beyond a kerf");
}

void checkFigures(const CheckedOrder& checked, const OrderLine& line, Complaints& complaints) {
  const Profile& profile = checked.profile(line.profile);
  complaints.check(line.metalWidth == profile.over + profile.cover + profile.under, "a line's metal width");
  complaints.check(line.coverArea == profile.cover * line.length * line.quantity(), "a line's cover area");
  const double one = line.translucent ? 0
                                      : sheetKilograms(sectionOf(profile).developedWidth, line.length, line.thickness,
                                                       profile.coatingGramsPerSquareMetre);
  const double apart = line.kilograms - one * line.quantity();
  complaints.check(apart > -1e-6 && apart < 1e-6, "a line's weight");
  int spares = 0;
  const Spares& rule = checked.job.settings.spares;
  while (spares < rule.fewest || spares * 100 < line.hung() * rule.percent) ++spares;
  complaints.check(line.spares == spares, "spares of a line of " + std::to_string(line.hung()));
}

bool before(const OrderLine& a, const OrderLine& b) {
  return a.sheet() != b.sheet() ? a.sheet() < b.sheet() : a.length > b.length;
}

}  // namespace

const Profile& CheckedOrder::profile(const std::string& id) const {
  for (const Profile& one : job.profiles) {
    if (one.id == id) return one;
  }
  throw std::invalid_argument("no profile");
}

void checkSheets(const CheckedOrder& checked, Complaints& complaints) {
  const SheetOrder& order = checked.order;
  std::set<int> blanks;
  std::size_t count = 0;
  for (std::size_t i = 0; i < order.lines.size(); ++i) {
    const OrderLine& line = order.lines[i];
    complaints.check(line.line == int(i) + 1, "lines are not counted 1, 2 ...");
    complaints.check(i == 0 || before(order.lines[i - 1], line), "lines do not stand in their order");
    complaints.check(line.firstSheet == int(count) && line.hung() > 0, "a line's sheets do not follow the line before");
    for (int j = 0; j < line.hung(); ++j) {
      const OrderedSheet& sheet = order.sheets.at(std::size_t(line.firstSheet + j));
      complaints.check(sheet.line == int(i), "a sheet of another line");
      complaints.check(line.marks[std::size_t(j)] == marksOf(checked, sheet), "marks are not those of the sheet");
      complaints.check(j == 0 || order.sheets[std::size_t(line.firstSheet + j - 1)].first < sheet.first,
                       "a line's sheets are not in hanging order");
      for (const int blank : sheet.blanks) complaints.check(blanks.insert(blank).second, "a blank is bought twice");
    }
    count += std::size_t(line.hung());
    checkFigures(checked, line, complaints);
  }
  complaints.check(count == order.sheets.size(), "sheets of no line");
  complaints.check(blanks.size() == order.blanks.size(), "a blank is not bought");
  for (std::size_t i = 0; i < order.sheets.size(); ++i) checkBlanksOf(checked, int(i), complaints);
  for (std::size_t blank = 0; blank < order.blanks.size(); ++blank) {
    for (const BlankPart& part : order.blanks[blank].parts) {
      const int of = order.blankOf[std::size_t(part.piece.wall)][std::size_t(part.piece.piece)];
      complaints.check(of == int(blank), "a piece comes from another blank");
    }
  }
}

}  // namespace ribwright::fuzz
