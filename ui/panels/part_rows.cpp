#include "ui/panels/part_rows.h"

#include <QCoreApplication>

#include "core/drawing/opening_kind.h"
#include "core/drawing/shown_length.h"
#include "core/job/by_id.h"

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

const CutRegion* cutOf(const Session& session, const std::string& id) {
  return byId(session.chosenPlan().layout.cuts, id);
}

// From the left corner to the steel; "?" where it could not be placed.
QString placeText(const Session& session, const std::string& id) {
  const CutRegion* cut = cutOf(session, id);
  return cut && cut->steelLeft ? text(dimensionText(*cut->steelLeft, session.style())) : QStringLiteral("?");
}

PartRows::Row openingRow(const Session& session, const Opening& opening) {
  const LengthStyle style = session.style();
  const CutRegion* cut = cutOf(session, opening.id);
  const QString sill = cut && cut->reachesFloor ? text(session.words().say("paper.floor", {}, style))
                                                : text(dimensionText(opening.sill, style));
  return {{Part::Kind::Opening, session.chosenWall().letter, opening.id},
          {text(opening.id), text(session.words().say(openingKindId(opening.kind), {}, style)),
           text(dimensionText(opening.width, style)), text(dimensionText(opening.height, style)),
           placeText(session, opening.id), sill, text(dimensionText(opening.sill + opening.height, style))}};
}

PartRows::Row penetrationRow(const Session& session, const Penetration& hole) {
  const LengthStyle style = session.style();
  const QString kind =
      hole.shape == Penetration::Shape::Round ? Texts::tr("round hole") : Texts::tr("rectangular hole");
  return {{Part::Kind::Penetration, session.chosenWall().letter, hole.id},
          {text(hole.id), kind, text(dimensionText(hole.width, style)), text(dimensionText(hole.height, style)),
           placeText(session, hole.id), text(dimensionText(hole.centre - half(hole.height), style)),
           text(dimensionText(hole.centre + half(hole.height), style))}};
}

}  // namespace

PartRows sheetRows(const Session& session) {
  PartRows all;
  all.columns = {{Texts::tr("Mark")},
                 {Texts::tr("Kind")},
                 {Texts::tr("Width"), true},
                 {Texts::tr("Blank"), true},
                 {Texts::tr("Order code"), true}};
  if (!session.isOpen() || session.wall() < 0) return all;
  const auto& codes = session.plan().order.codes;
  const auto wall = static_cast<std::size_t>(session.wall());
  const auto& pieces = session.chosenPlan().layout.pieces;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    const Piece& piece = pieces[i];
    const bool coded = wall < codes.size() && i < codes[wall].size();
    all.rows.push_back(
        {{Part::Kind::Piece, session.chosenWall().letter, piece.mark},
         {text(piece.mark), kindText(piece), text(dimensionText(piece.right - piece.left, session.style())),
          text(cutText(piece.blankLength, session.style())), coded ? text(codes[wall][i]) : QString()}});
  }
  return all;
}

PartRows openingRows(const Session& session) {
  PartRows all;
  all.columns = {{Texts::tr("Id")},
                 {Texts::tr("Kind")},
                 {Texts::tr("Width"), true},
                 {Texts::tr("Height"), true},
                 {Texts::tr("From left corner"), true},
                 {Texts::tr("Sill"), true},
                 {Texts::tr("Head"), true}};
  if (!session.isOpen() || session.wall() < 0) return all;
  for (const Opening& opening : session.chosenWall().openings) all.rows.push_back(openingRow(session, opening));
  for (const Penetration& hole : session.chosenWall().penetrations) all.rows.push_back(penetrationRow(session, hole));
  return all;
}

}  // namespace ribwright
