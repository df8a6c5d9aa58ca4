#include "ui/panels/order_rows.h"

#include <QCoreApplication>
#include <map>

#include "core/output/figures.h"
#include "ui/session/window_text.h"

namespace ribwright {
namespace {

struct OrderRowsTexts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::OrderRows)
};

QString lengthWords(const Session& session, Length length) { return text(fineText(length, session.style())); }

QString weightWords(const Session& session, const OrderLine& line, double kilograms) {
  return line.translucent ? QString() : text(weightText(kilograms, session.job().units));
}

bool isFeet(const Session& session) { return session.job().units == UnitSystem::FeetInches; }

}  // namespace

QString classText(const Session& session, const SheetClass& sheet) {
  const QString colour = sheet.translucent ? OrderRowsTexts::tr("translucent") : text(sheet.colour);
  const QString thick = text(smallLength(sheet.thickness, session.job().units));
  const QString words = text(sheet.profile) + QStringLiteral(", ") + thick +
                        (isFeet(session) ? QStringLiteral(" in") : QStringLiteral(" mm"));
  return colour.isEmpty() ? words : words + QStringLiteral(", ") + colour;
}

QString areaWords(const Session& session, const Area& area) {
  return text(areaText(area, session.job().units)) +
         (isFeet(session) ? OrderRowsTexts::tr(" sq ft") : OrderRowsTexts::tr(" m²"));
}

RowTexts orderRows(const Session& session, const OrderAccount& account) {
  const bool feet = isFeet(session);
  RowTexts all;
  all.columns = {{OrderRowsTexts::tr("Line"), true},
                 {OrderRowsTexts::tr("Length"), true},
                 {OrderRowsTexts::tr("Quantity"), true},
                 {OrderRowsTexts::tr("Spare"), true},
                 {feet ? OrderRowsTexts::tr("Area, sq ft") : OrderRowsTexts::tr("Area, m²"), true},
                 {feet ? OrderRowsTexts::tr("Weight, lb") : OrderRowsTexts::tr("Weight, kg"), true},
                 {feet ? OrderRowsTexts::tr("Waste, sq ft") : OrderRowsTexts::tr("Waste, m²"), true},
                 {OrderRowsTexts::tr("Sheets to be hung")},
                 {OrderRowsTexts::tr("Sheet")}};
  for (const OrderLine& line : session.plan().order.lines) {
    const SteelAccount& steel = account.lines[static_cast<std::size_t>(line.line - 1)];
    all.rows.push_back({QString::number(line.line), lengthWords(session, line.length), QString::number(line.quantity()),
                        line.spares > 0 ? QString::number(line.spares) : QString(),
                        text(areaText(line.coverArea, session.job().units)), weightWords(session, line, line.kilograms),
                        text(areaText(steel.waste, session.job().units)), text(spaced(line.marks)),
                        classText(session, line.sheet())});
  }
  return all;
}

RowTexts bundleRows(const Session& session, const std::vector<Bundle>& bundles) {
  const SheetOrder& order = session.plan().order;
  RowTexts all;
  all.columns = {{OrderRowsTexts::tr("Bundle")},
                 {OrderRowsTexts::tr("Set down from"), true},
                 {OrderRowsTexts::tr("to"), true},
                 {OrderRowsTexts::tr("Sheets"), true},
                 {OrderRowsTexts::tr("Longest"), true},
                 {isFeet(session) ? OrderRowsTexts::tr("Weight, lb") : OrderRowsTexts::tr("Weight, kg"), true},
                 {OrderRowsTexts::tr("From the top")},
                 {OrderRowsTexts::tr("Sheet")}};
  for (const Bundle& bundle : bundles) {
    std::vector<std::string> marks;
    for (const BundledSheet& one : bundle.sheets) {
      const OrderLine& line = order.lines[static_cast<std::size_t>(one.line)];
      marks.push_back(one.sheet < 0 ? OrderRowsTexts::tr("spare").toStdString()
                                    : line.marks[static_cast<std::size_t>(one.sheet - line.firstSheet)]);
    }
    const OrderLine& line = order.lines[static_cast<std::size_t>(bundle.sheets.front().line)];
    const bool spare = bundle.wall.empty();
    all.rows.push_back({text(bundle.name), spare ? QString() : lengthWords(session, bundle.setDownFrom),
                        spare ? QString() : lengthWords(session, bundle.setDownTo),
                        QString::number(bundle.sheets.size()), lengthWords(session, bundle.longest),
                        weightWords(session, line, bundle.kilograms), text(spaced(marks)),
                        classText(session, bundle.sheet)});
  }
  return all;
}

std::vector<Part> partsOf(const Session& session, const std::vector<int>& sheets) {
  const Plan& plan = session.plan();
  std::map<int, std::vector<Part>> walls;
  for (const int sheet : sheets) {
    for (const int blank : plan.order.sheets[static_cast<std::size_t>(sheet)].blanks) {
      for (const BlankPart& part : plan.order.blanks[static_cast<std::size_t>(blank)].parts) {
        const WallLayout& layout = plan.walls[static_cast<std::size_t>(part.piece.wall)]->layout;
        const Piece& piece = layout.pieces[static_cast<std::size_t>(part.piece.piece)];
        walls[part.piece.wall].push_back({Part::Kind::Piece, layout.letter, piece.mark});
      }
    }
  }
  if (walls.empty()) return {};
  const auto chosen = walls.find(session.wall());
  return chosen != walls.end() ? chosen->second : walls.begin()->second;
}

}  // namespace ribwright
