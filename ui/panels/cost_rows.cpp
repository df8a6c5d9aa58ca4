#include "ui/panels/cost_rows.h"

#include <QCoreApplication>

#include "core/job/length_style.h"
#include "core/output/figures.h"
#include "ui/session/window_text.h"

namespace ribwright {

namespace {

struct CostRowsTexts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::CostRows)
};

QString lengthText(const Job& job, Length length) {
  return length == Length() ? QString() : text(fineText(length, styleOf(job)));
}

QString perText(Price::Per per) {
  switch (per) {
    case Price::Per::Each:
      return CostRowsTexts::tr("each");
    case Price::Per::Foot:
      return CostRowsTexts::tr("a foot");
    case Price::Per::Metre:
      return CostRowsTexts::tr("a metre");
    case Price::Per::SquareFoot:
      return CostRowsTexts::tr("a square foot");
    case Price::Per::SquareMetre:
      return CostRowsTexts::tr("a square metre");
    case Price::Per::Pound:
      return CostRowsTexts::tr("a pound");
    case Price::Per::Kilogram:
      return CostRowsTexts::tr("a kilogram");
  }
  return {};
}

QString whatText(Price::What what) {
  switch (what) {
    case Price::What::Sheet:
      return CostRowsTexts::tr("sheets");
    case Price::What::Trim:
      return CostRowsTexts::tr("trim");
    case Price::What::Cut:
      return CostRowsTexts::tr("cuts");
    case Price::What::Charge:
      return CostRowsTexts::tr("charge");
  }
  return {};
}

QString priceText(const Job& job, const CostLine& line) {
  if (!line.price) return CostRowsTexts::tr("no price");
  const QString money = moneyOf(job, Money::cents(line.price->cents));
  return line.length == Length() ? money : money + QLatin1Char(' ') + perText(line.price->per);
}

QString amountText(const Job& job, const CostLine& line) {
  if (line.amount) return moneyOf(job, *line.amount);
  return line.price ? CostRowsTexts::tr("cannot be reckoned") : QStringLiteral("?");
}

QString moreMoney(const Job& job, const std::optional<Money>& money) {
  return money ? text(shownDifference(*money, job.decimalSign, job.prices.currency)) : QStringLiteral("?");
}

QString moreText(std::int64_t more) {
  return (more > 0   ? QStringLiteral("+")
          : more < 0 ? QStringLiteral("−")
                     : QString()) +
         QString::number(more < 0 ? -more : more);
}

QString moreWeight(const Job& job, std::int64_t grams) {
  const QString figure = text(weightText(std::abs(static_cast<double>(grams)) / 1000, job.units));
  return (grams < 0 ? QStringLiteral("−") : grams > 0 ? QStringLiteral("+") : QString()) + figure;
}

QString weightUnit(const Job& job) {
  return job.units == UnitSystem::FeetInches ? CostRowsTexts::tr("lb") : CostRowsTexts::tr("kg");
}

QString marksText(const std::vector<std::string>& marks) {
  QStringList all;
  for (const std::string& mark : marks) {
    if (!mark.empty()) all << text(mark);
  }
  return all.join(QLatin1Char(' '));
}

PartRows::Row rowOf(QStringList cells) { return {std::nullopt, std::move(cells)}; }

}  // namespace

QString moneyOf(const Job& job, Money money) { return text(shownMoney(money, job.decimalSign, job.prices.currency)); }

QString areaWords(const Job& job, Area area) {
  const QString figure = text(areaText(area, job.units));
  return (job.units == UnitSystem::FeetInches ? CostRowsTexts::tr("%1 sq ft") : CostRowsTexts::tr("%1 m²")).arg(figure);
}

QString weightWords(const Job& job, double kilograms) {
  const QString figure = text(weightText(kilograms, job.units));
  return (job.units == UnitSystem::FeetInches ? CostRowsTexts::tr("%1 lb") : CostRowsTexts::tr("%1 kg")).arg(figure);
}

QString kindText(CostKind kind) {
  switch (kind) {
    case CostKind::Full:
      return CostRowsTexts::tr("full sheets");
    case CostKind::Rip:
      return CostRowsTexts::tr("ripped");
    case CostKind::Rake:
      return CostRowsTexts::tr("under a rake");
    case CostKind::Notched:
      return CostRowsTexts::tr("notched");
    case CostKind::Above:
      return CostRowsTexts::tr("above openings");
    case CostKind::Below:
      return CostRowsTexts::tr("below openings");
    case CostKind::Mixed:
      return CostRowsTexts::tr("several cuts");
    case CostKind::Spare:
      return CostRowsTexts::tr("spares");
    case CostKind::Trim:
      return CostRowsTexts::tr("trim");
    case CostKind::Cut:
      return CostRowsTexts::tr("cuts");
    case CostKind::Charge:
      return CostRowsTexts::tr("charges");
  }
  return {};
}

QString thingText(const BoughtThing& thing) {
  if (thing.what == Price::What::Cut) return CostRowsTexts::tr("cuts that part a sheet or a stick");
  const QString item = text(thing.item);
  if (thing.colour == translucentColour) return item + QLatin1Char(' ') + CostRowsTexts::tr("translucent");
  return thing.colour.empty() ? item : item + QLatin1Char(' ') + text(thing.colour);
}

QString classText(const SheetClass& sheet) {
  return thingText({Price::What::Sheet, sheet.profile,
                    sheet.translucent ? std::string(translucentColour) : sheet.colour, sheet.thickness});
}

PartRows costRows(const Job& job, const JobCost& cost) {
  PartRows all;
  all.style = styleOf(job);
  all.columns = {{CostRowsTexts::tr("For")},          {CostRowsTexts::tr("What")},
                 {CostRowsTexts::tr("Length"), true}, {CostRowsTexts::tr("How many"), true},
                 {CostRowsTexts::tr("Spares"), true}, {CostRowsTexts::tr("Price"), true},
                 {CostRowsTexts::tr("Amount"), true}, {CostRowsTexts::tr("Of it waste"), true}};
  for (const CostLine& line : cost.lines) {
    const bool metal = line.length > Length();
    all.rows.push_back(
        rowOf({whatText(line.thing.what), thingText(line.thing), lengthText(job, line.length),
               QString::number(line.quantity), metal ? QString::number(line.spares) : QString(), priceText(job, line),
               amountText(job, line), metal && line.amount ? moneyOf(job, line.forWaste) : QString()}));
  }
  return all;
}

PartRows differenceRows(const Job& job, const OrderDifference& difference) {
  PartRows all;
  all.style = styleOf(job);
  all.columns = {{CostRowsTexts::tr("For")},
                 {CostRowsTexts::tr("What")},
                 {CostRowsTexts::tr("Length"), true},
                 {CostRowsTexts::tr("Before"), true},
                 {CostRowsTexts::tr("Now"), true},
                 {CostRowsTexts::tr("More"), true},
                 {CostRowsTexts::tr("Weight, %1").arg(weightUnit(job)), true},
                 {CostRowsTexts::tr("Cost"), true}};
  for (const LineChange& line : difference.lines) {
    all.rows.push_back(rowOf({whatText(line.thing.what), thingText(line.thing), lengthText(job, line.length),
                              QString::number(line.before), QString::number(line.after), moreText(line.more()),
                              moreWeight(job, line.gramsAfter - line.gramsBefore), moreMoney(job, line.costMore())}));
  }
  return all;
}

PartRows deltaRows(const Job& job, const DeltaOrder& delta) {
  PartRows all;
  all.style = styleOf(job);
  all.columns = {{CostRowsTexts::tr("What to do")},   {CostRowsTexts::tr("Sheets")},
                 {CostRowsTexts::tr("Length"), true}, {CostRowsTexts::tr("How many"), true},
                 {CostRowsTexts::tr("Cut to"), true}, {CostRowsTexts::tr("For")}};
  for (const SheetLot& lot : delta.toOrder) {
    all.rows.push_back(rowOf({CostRowsTexts::tr("order"),
                              classText(kindOf(lot).sheet),
                              lengthText(job, lot.length),
                              QString::number(lot.quantity),
                              {},
                              marksText(lot.marks)}));
  }
  for (const ServedNeeds& served : delta.served) {
    const QString cut = served.cutOff() == Length() ? QString() : lengthText(job, served.need);
    all.rows.push_back(
        rowOf({served.toCome ? CostRowsTexts::tr("use when it comes") : CostRowsTexts::tr("use from site"),
               classText(served.sheet.sheet), lengthText(job, served.sheet.length),
               QString::number(served.marks.size()), cut, marksText(served.marks)}));
  }
  for (const UnneededSheets& left : delta.leftOver) {
    for (const auto& [count, words] : {std::pair(left.onSite, CostRowsTexts::tr("left over on site")),
                                       std::pair(left.toCome, CostRowsTexts::tr("to come, not needed"))}) {
      if (count == 0) continue;
      all.rows.push_back(rowOf(
          {words, classText(left.sheet.sheet), lengthText(job, left.sheet.length), QString::number(count), {}, {}}));
    }
  }
  return all;
}

std::vector<PlacedRow> placedRows(const Job& job) {
  std::vector<PlacedRow> rows;
  for (const PlacedOrder& order : job.facts.orders) {
    for (const auto& [kind, count] : countsOf(order)) rows.push_back({order.id, order.date, kind, count});
  }
  return rows;
}

PartRows shownRows(const Job& job, const std::vector<PlacedRow>& rows) {
  PartRows all;
  all.style = styleOf(job);
  all.columns = {{CostRowsTexts::tr("Order")},         {CostRowsTexts::tr("Date")},
                 {CostRowsTexts::tr("Sheets")},        {CostRowsTexts::tr("Length"), true},
                 {CostRowsTexts::tr("Ordered"), true}, {CostRowsTexts::tr("Received"), true},
                 {CostRowsTexts::tr("Short"), true},   {CostRowsTexts::tr("To come"), true}};
  for (const PlacedRow& row : rows) {
    const auto number = [](std::int64_t count) { return QString::number(count); };
    all.rows.push_back(rowOf({text(row.order), text(row.date), classText(row.kind.sheet),
                              lengthText(job, row.kind.length), number(row.count.placed), number(row.count.received),
                              number(row.count.missing), number(row.count.toCome())}));
  }
  return all;
}

}  // namespace ribwright
