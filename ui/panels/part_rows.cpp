#include "ui/panels/part_rows.h"

#include <QCoreApplication>
#include <algorithm>
#include <set>

#include "core/drawing/shown_length.h"
#include "ui/session/window_text.h"

namespace ribwright {

namespace {

struct PartRowsTexts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::PartRows)
};

QString kindText(const Piece& piece) {
  QStringList words;
  if (piece.rip) words << PartRowsTexts::tr("rip");
  if (piece.rake) words << PartRowsTexts::tr("rake");
  if (piece.notched) words << PartRowsTexts::tr("notched");
  if (piece.above) words << PartRowsTexts::tr("above an opening");
  if (piece.below) words << PartRowsTexts::tr("below an opening");
  return words.isEmpty() ? PartRowsTexts::tr("full") : words.join(QStringLiteral(", "));
}

// Girts behind a piece: those whose row lies within its height and that reach under its metal.
QString girtsBehind(const Session& session, const Piece& piece) {
  QStringList girts;
  for (const SupportRow& row : session.chosenPlan().holes.supports.rows) {
    if (row.kind != SupportKind::Girt) continue;
    const bool behind = std::any_of(row.stretches.begin(), row.stretches.end(), [&](const Stretch& one) {
      return one.from < piece.right && one.to > piece.left && one.row > piece.bottom && one.row < piece.top;
    });
    if (behind && !girts.contains(text(row.id))) girts << text(row.id);
  }
  return girts.join(QStringLiteral(", "));
}

}  // namespace

PartRows sheetRows(const Session& session) {
  PartRows all;
  all.columns = {{PartRowsTexts::tr("Mark")},
                 {PartRowsTexts::tr("Kind")},
                 {PartRowsTexts::tr("Width"), true},
                 {PartRowsTexts::tr("Blank"), true},
                 {PartRowsTexts::tr("Order code"), true},
                 {PartRowsTexts::tr("Girts behind")},
                 {PartRowsTexts::tr("By the last edit")}};
  if (!session.isOpen() || session.wall() < 0) return all;
  all.style = session.style();
  const auto& codes = session.plan().order.codes;
  const auto wall = static_cast<std::size_t>(session.wall());
  const auto& pieces = session.chosenPlan().layout.pieces;
  std::set<std::string> changed;
  for (const auto& [letter, mark] : session.orderChanges().changedSheets) {
    if (letter == session.chosenWall().letter) changed.insert(mark);
  }
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    const Piece& piece = pieces[i];
    const bool coded = wall < codes.size() && i < codes[wall].size();
    all.rows.push_back(
        {Part{Part::Kind::Piece, session.chosenWall().letter, piece.mark},
         {text(piece.mark), kindText(piece), text(dimensionText(piece.right - piece.left, session.style())),
          text(cutText(piece.blankLength, session.style())), coded ? text(codes[wall][i]) : QString(),
          girtsBehind(session, piece),
          changed.contains(piece.mark) ? QStringLiteral("● ") + PartRowsTexts::tr("changed") : QString()}});
  }
  return all;
}

}  // namespace ribwright
