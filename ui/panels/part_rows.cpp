#include "ui/panels/part_rows.h"

#include <QCoreApplication>
#include <algorithm>

#include "core/drawing/shown_length.h"

namespace ribwright {

namespace {

struct Texts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::PartRows)
};

QString text(const std::string& words) { return QString::fromStdString(words); }

QString kindText(const Piece& piece) {
  QStringList words;
  if (piece.rip) words << Texts::tr("rip");
  if (piece.rake) words << Texts::tr("rake");
  if (piece.notched) words << Texts::tr("notched");
  if (piece.above) words << Texts::tr("above an opening");
  if (piece.below) words << Texts::tr("below an opening");
  return words.isEmpty() ? Texts::tr("full") : words.join(QStringLiteral(", "));
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
  all.columns = {{Texts::tr("Mark")},
                 {Texts::tr("Kind")},
                 {Texts::tr("Width"), true},
                 {Texts::tr("Blank"), true},
                 {Texts::tr("Order code"), true},
                 {Texts::tr("Girts behind")}};
  if (!session.isOpen() || session.wall() < 0) return all;
  all.style = session.style();
  const auto& codes = session.plan().order.codes;
  const auto wall = static_cast<std::size_t>(session.wall());
  const auto& pieces = session.chosenPlan().layout.pieces;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    const Piece& piece = pieces[i];
    const bool coded = wall < codes.size() && i < codes[wall].size();
    all.rows.push_back(
        {Part{Part::Kind::Piece, session.chosenWall().letter, piece.mark},
         {text(piece.mark), kindText(piece), text(dimensionText(piece.right - piece.left, session.style())),
          text(cutText(piece.blankLength, session.style())), coded ? text(codes[wall][i]) : QString(),
          girtsBehind(session, piece)}});
  }
  return all;
}

}  // namespace ribwright
