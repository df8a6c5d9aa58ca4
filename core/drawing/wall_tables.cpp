#include "core/drawing/wall_tables.h"

#include "core/drawing/column_marks.h"
#include "core/drawing/opening_kind.h"
#include "core/drawing/opening_labels.h"
#include "core/drawing/shown_length.h"
#include "core/job/by_id.h"

namespace ribwright {

namespace {

const char* kindId(PieceKind kind) {
  switch (kind) {
    case PieceKind::Full:
      return "paper.kind.full";
    case PieceKind::Rip:
      return "paper.kind.rip";
    case PieceKind::Rake:
      return "paper.kind.rake";
    case PieceKind::Notched:
      return "paper.kind.notched";
    case PieceKind::Above:
      return "paper.kind.above";
    case PieceKind::Below:
      return "paper.kind.below";
    case PieceKind::Mixed:
      break;
  }
  return "paper.kind.mixed";
}

// A mixed piece names what it is made of: "rip, notched".
std::string kindWords(const WallView& view, const Piece& piece) {
  std::string words;
  const auto add = [&](bool is, const char* id) {
    if (!is) return;
    if (!words.empty()) words += ", ";
    words += view.say(id);
  };
  if (piece.kind != PieceKind::Mixed) {
    words = view.say(kindId(piece.kind));
  } else {
    add(piece.rip, "paper.kind.rip");
    add(piece.rake, "paper.kind.rake");
    add(piece.notched, "paper.kind.notched");
    add(piece.above, "paper.kind.above");
    add(piece.below, "paper.kind.below");
  }
  const SheetRun& run = view.layout->runs[static_cast<std::size_t>(piece.run)];
  add(run.modules[static_cast<std::size_t>(piece.module)].translucent, "paper.kind.translucent");
  return words;
}

std::string shown(const WallView& view, const std::optional<Length>& length) {
  return length ? dimensionText(*length, view.style) : view.say("paper.unknown");
}

// "3' 4\" right of 2": from the centre of the column that is nearest to the jamb.
std::string fromColumn(const WallView& view, const std::optional<Length>& u) {
  const Length width = view.layout->face.width;
  const auto column = u ? nearestColumn(*view.wall, width, *u) : std::nullopt;
  if (!column) return view.say("paper.unknown");
  const Length off = *u - column->u;
  const char* id = off == Length() ? "paper.column.at" : off > Length() ? "paper.column.right" : "paper.column.left";
  return view.say(id,
                  {{"distance", dimensionText(absolute(off), view.style)}, {"column", std::int64_t{column->number}}});
}

void addOpening(PaperTable& table, const WallView& view, const Opening& opening) {
  const CutRegion* cut = byId(view.layout->cuts, opening.id);
  const std::string size = sizeWords(view, opening.id), kind = view.say(openingKindId(opening.kind));
  const CutRegion nowhere;
  const CutRegion& place = cut ? *cut : nowhere;
  const std::string sill = place.reachesFloor ? view.say("paper.floor") : shown(view, place.steelBottom);
  table.rows.push_back({opening.id, kind, size, shown(view, place.steelLeft), fromColumn(view, place.steelLeft), sill,
                        shown(view, place.steelTop)});
}

// A pipe is found by its centre.
void addPenetration(PaperTable& table, const WallView& view, const Penetration& hole) {
  const CutRegion* cut = byId(view.layout->cuts, hole.id);
  const auto centre = [](const std::optional<Length>& a, const std::optional<Length>& b) {
    return a && b ? std::optional(half(*a + *b)) : std::nullopt;
  };
  const auto u = cut ? centre(cut->steelLeft, cut->steelRight) : std::nullopt;
  const std::string z = view.say("paper.centre", {{"height", dimensionText(hole.centre, view.style)}});
  table.rows.push_back({hole.id, view.say("paper.opening.penetration"), sizeWords(view, hole.id), shown(view, u),
                        fromColumn(view, u), z, ""});
}

void dropColumn(PaperTable& table, std::ptrdiff_t column) {
  table.headings.erase(table.headings.begin() + column);
  table.figures.erase(table.figures.begin() + column);
  for (auto& row : table.rows) row.erase(row.begin() + column);
}

std::vector<std::string> headings(const WallView& view, std::initializer_list<const char*> ids) {
  std::vector<std::string> all;
  for (const char* id : ids) all.push_back(view.say(id));
  return all;
}

}  // namespace

PaperTable markTable(const WallView& view, const std::vector<std::string>& codes) {
  PaperTable table{view.say("paper.marks"),
                   headings(view, {"paper.mark", "paper.kind", "paper.width", "paper.blank", "paper.code"}),
                   {},
                   {false, false, true, true, false}};
  for (std::size_t i = 0; i < view.layout->pieces.size(); ++i) {
    const Piece& piece = view.layout->pieces[i];
    table.rows.push_back({piece.mark, kindWords(view, piece), dimensionText(piece.right - piece.left, view.style),
                          cutText(piece.blankLength, view.style), i < codes.size() ? codes[i] : std::string()});
  }
  return table;
}

PaperTable openingTable(const WallView& view) {
  PaperTable table{view.say("paper.openings"),
                   headings(view, {"paper.opening", "paper.kind", "paper.size", "paper.left", "paper.from-column",
                                   "paper.sill-height", "paper.head-height"}),
                   {},
                   {false, false, true, true, true, true, true}};
  for (const Opening& opening : view.wall->openings) addOpening(table, view, opening);
  for (const Penetration& hole : view.wall->penetrations) addPenetration(table, view, hole);
  if (columnPlaces(*view.wall, view.layout->face.width).empty()) dropColumn(table, 4);
  return table;
}

}  // namespace ribwright
