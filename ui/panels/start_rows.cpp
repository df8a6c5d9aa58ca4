#include "ui/panels/start_rows.h"

#include <QCoreApplication>
#include <QStringList>

#include "core/drawing/start_words.h"
#include "core/output/figures.h"
#include "ui/session/window_text.h"

namespace ribwright {

namespace {

struct StartRowsTexts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::StartPanel)
};

StartCell count(int number) { return {QString::number(number), double(number)}; }

// A whole sheet is better than any rip.
StartCell rip(const std::optional<Length>& width, const LengthStyle& style) {
  if (!width) return {StartRowsTexts::tr("whole"), 0};
  return {text(fineText(*width, style)), 1e9 - width->inMillimetres()};
}

StartCell area(Area steel, UnitSystem units) {
  const QString unit = units == UnitSystem::FeetInches ? StartRowsTexts::tr("sq ft") : StartRowsTexts::tr("m²");
  return {text(areaText(steel, units)) + QLatin1Char(' ') + unit, steel.inSquareMetres()};
}

void markBest(std::vector<StartRow>& rows, std::size_t column) {
  double least = rows.front().cells[column].sorted, most = least;
  for (const StartRow& row : rows) {
    least = std::min(least, row.cells[column].sorted);
    most = std::max(most, row.cells[column].sorted);
  }
  if (least == most) return;  // all alike: none stands out
  for (StartRow& row : rows) row.cells[column].best = row.cells[column].sorted == least;
}

}  // namespace

QStringList startColumns() {
  return {StartRowsTexts::tr("Rank"),           StartRowsTexts::tr("Start"),       StartRowsTexts::tr("First sheet"),
          StartRowsTexts::tr("Last sheet"),     StartRowsTexts::tr("Sheets"),      StartRowsTexts::tr("Lengths"),
          StartRowsTexts::tr("Seams at jambs"), StartRowsTexts::tr("Narrow rips"), StartRowsTexts::tr("To stop for"),
          StartRowsTexts::tr("To look at"),     StartRowsTexts::tr("Steel bought")};
}

std::vector<StartRow> startRows(const std::vector<ComparedStart>& starts, const Words& words,
                                const LengthStyle& style) {
  std::vector<StartRow> rows;
  for (const ComparedStart& one : starts) {
    const int rank = static_cast<int>(rows.size()) + 1;
    QString name = text(words.say(startPhrase(one.start, style), style));
    if (one.stands) name = QStringLiteral("▶ ") + name + QStringLiteral(", ") + StartRowsTexts::tr("stands");
    rows.push_back({one.start,
                    one.stands,
                    {count(rank),
                     {name, double(rank)},
                     rip(one.firstRip, style),
                     rip(one.lastRip, style),
                     count(one.sheets),
                     count(one.lengths),
                     count(one.seamsNearJambs),
                     count(one.narrowRips),
                     count(one.stops),
                     count(one.looks),
                     area(one.steel, style.units)}});
  }
  if (rows.empty()) return rows;
  for (std::size_t column = 2; column < rows.front().cells.size(); ++column) markBest(rows, column);
  return rows;
}

}  // namespace ribwright
