// Single pieces: too long to be made, too heavy to be carried, too frail to be lifted.
#include <algorithm>

#include "core/checks/wall_look.h"
#include "core/job/sheet_weight.h"

namespace ribwright {

namespace {

bool hasMetal(const Piece& piece, Length u, Length z) {
  return std::any_of(piece.cells.begin(), piece.cells.end(), [&](const Cell& cell) {
    return cell.left <= u && u < cell.right && std::min(cell.bottomLeft, cell.bottomRight) <= z &&
           z < std::max(cell.topLeft, cell.topRight);
  });
}

// How long the narrow legs beside openings are that this piece is left with.
Length frailLeg(const WallLook& look, const Piece& piece) {
  Length longest;
  for (const CutRegion& cut : look.layout.cuts) {
    if (cut.right <= piece.left || cut.left >= piece.right) continue;
    const Length low = cut.reachesFloor ? piece.bottom : std::max(cut.bottom, piece.bottom);
    const Length high = std::min(cut.top, piece.top);
    const auto leg = [&](Length from, Length to) {
      const bool narrow = to > from && to - from < look.job.settings.fragileLegWidth;
      if (narrow && high > low && hasMetal(piece, from, low + half(high - low)))
        longest = std::max(longest, high - low);
    };
    leg(piece.left, cut.left);
    leg(cut.right, piece.right);
  }
  return longest;
}

}  // namespace

void checkPieces(const WallLook& look, std::vector<Finding>& findings) {
  const Settings& settings = look.job.settings;
  for (const Piece& piece : look.layout.pieces) {
    const RunLook& one = look.runOf(piece);
    const SheetLengths& lengths = one.profile->lengths;
    if (piece.blankLength > lengths.longest) {
      findings.push_back(look.finding(Grade::Stop, "piece-too-long", piece.mark,
                                      {{"length", piece.blankLength}, {"longest", lengths.longest}},
                                      "the sheet's lengths made"));
    }
    if (piece.blankLength < lengths.shortest) {
      findings.push_back(look.finding(Grade::Note, "piece-short", piece.mark,
                                      {{"length", piece.blankLength}, {"shortest", lengths.shortest}},
                                      "the sheet's lengths made"));
    }
    const Band& band = look.wall.bands[static_cast<std::size_t>(one.run->band)];
    const double weight =
        sheetKilograms(one.section.developedWidth, piece.blankLength, band.thickness.value_or(one.profile->thickness),
                       one.profile->coatingGramsPerSquareMetre);
    if (weight > settings.heaviestPieceKilograms) {
      findings.push_back(look.finding(
          Grade::Look, "piece-heavy", piece.mark,
          {{"weight", std::int64_t(weight + 0.5)}, {"limit", std::int64_t(settings.heaviestPieceKilograms)}},
          "common practice"));
    }
    const Length frail = piece.notched ? frailLeg(look, piece) : Length();
    if (frail > settings.fragileLegLength) {
      findings.push_back(look.finding(Grade::Look, "piece-fragile", piece.mark,
                                      {{"length", frail}, {"width", settings.fragileLegWidth}}, "common practice"));
    }
  }
}

}  // namespace ribwright
