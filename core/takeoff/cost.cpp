#include "core/takeoff/cost.h"

#include <set>

#include "core/job/by_id.h"
#include "core/job/section.h"
#include "core/job/sheet_weight.h"
#include "core/takeoff/cost_shares.h"

namespace ribwright {
namespace {

// The part of a sum that `part` of `whole` is.
Money partOf(Money money, Int128 part, Int128 whole) {
  return part == 0 ? Money() : apportioned(money, {part, whole - part}).front();
}

void price(CostLine& line, const Prices& prices) {
  const Price* found = priceOf(prices, line.thing);
  if (!found) return;
  line.price = *found;
  line.amount = amountOf(line.measure, *found);
}

CostLine lineOf(const OrderLine& sheets) {
  CostLine line;
  const std::string colour = sheets.translucent ? std::string(translucentColour) : sheets.colour;
  line.thing = {Price::What::Sheet, sheets.profile, colour, sheets.thickness};
  line.length = sheets.length;
  line.quantity = sheets.quantity();
  line.spares = sheets.spares;
  line.measure = {line.quantity, sheets.length * line.quantity, sheets.coverArea, std::nullopt};
  if (!sheets.translucent) line.measure.grams = gramsOf(sheets.kilograms);
  return line;
}

CostLine lineOf(const SheetLot& lot) {
  CostLine line;
  const std::string colour = lot.translucent ? std::string(translucentColour) : lot.colour;
  line.thing = {Price::What::Sheet, lot.profile, colour, lot.thickness};
  line.length = lot.length;
  line.quantity = line.measure.pieces = lot.quantity;
  return line;
}

// False: all of them together are longer than a length may be.
bool measure(CostLine& line, const SheetLot& lot, const Profile* profile) {
  if (lot.quantity > 0 && lot.length.nanometres() > INT64_MAX / lot.quantity) return false;
  line.measure.length = lot.length * lot.quantity;
  if (!profile) return true;
  line.measure.area = profile->cover * line.measure.length;
  if (lot.translucent) return true;
  const double width = sectionOf(*profile).developedWidth;
  line.measure.grams =
      gramsOf(lot.quantity * sheetKilograms(width, lot.length, lot.thickness, profile->coatingGramsPerSquareMetre));
  return true;
}

class CostWork {
 public:
  CostWork(const Job& job, const std::vector<const WallLayout*>& layouts, const SheetOrder& order, const CutTrim& trim)
      : job_(job), layouts_(layouts), order_(order), trim_(trim) {}

  JobCost work() {
    addSheets();
    for (const TrimBatch& batch : trim_.batches) addTrim(batch);
    addCuts();
    addCharges();
    return std::move(cost_);
  }

 private:
  void addSheets() {
    const OrderAccount account = orderAccount(order_, layouts_);
    const std::vector<CostShares> shares = sheetShares(order_, layouts_);
    for (std::size_t i = 0; i < order_.lines.size(); ++i) {
      CostLine line = lineOf(order_.lines[i]);
      price(line, job_.prices);
      if (line.amount) {
        const SteelAccount& steel = account.lines[i];
        line.forSpares = partOf(*line.amount, line.spares, line.quantity);
        line.forWaste = partOf(*line.amount, steel.waste.halfSquareNanometres(), steel.bought.halfSquareNanometres());
        divide(*line.amount - line.forSpares, shares[i], CostKind::Mixed, cost_.cells);
        divide(line.forSpares, byWall(shares[i], CostKind::Spare), CostKind::Spare, cost_.cells);
      }
      add(std::move(line));
    }
  }

  void addTrim(const TrimBatch& batch) {
    std::map<Length, std::vector<const TrimStick*>, std::greater<>> lengths;
    for (const TrimStick& stick : batch.sticks) lengths[stick.stock].push_back(&stick);
    const Trim* trim = byId(job_.trims, batch.trim);
    for (const auto& [length, sticks] : lengths) {
      if (trim) addSticks(batch, *trim, length, sticks);
    }
  }

  void addSticks(const TrimBatch& batch, const Trim& trim, Length length, const std::vector<const TrimStick*>& sticks) {
    CostLine line;
    line.thing = {Price::What::Trim, trim.id, batch.colour, trim.thickness};
    line.length = length;
    line.quantity = static_cast<std::int64_t>(sticks.size());
    const Length all = length * line.quantity;
    line.measure = {line.quantity, all, trim.girth * all, gramsOf(trimKilograms(trim, all))};
    price(line, job_.prices);
    if (line.amount) {
      CostShares shares;
      Length waste;
      for (const TrimStick* stick : sticks) {
        waste += stick->kerfs + stick->ends + stick->waste;
        for (const TrimCut& cut : stick->cuts) {
          const TrimPiece& piece = trim_.takeoff.pieces[static_cast<std::size_t>(cut.piece)];
          shares[{piece.place.wall, CostKind::Trim}] += cut.length.nanometres();
        }
      }
      line.forWaste = partOf(*line.amount, waste.nanometres(), all.nanometres());
      divide(*line.amount, shares, CostKind::Trim, cost_.cells);
    }
    add(std::move(line));
  }

  void addCuts() {
    const CutShares cuts = cutShares(order_, layouts_, trim_);
    if (cuts.cuts == 0) return;
    CostLine line;
    line.thing.what = Price::What::Cut;
    line.quantity = line.measure.pieces = cuts.cuts;
    price(line, job_.prices);
    if (line.amount) divide(*line.amount, cuts.shares, CostKind::Cut, cost_.cells);
    add(std::move(line));
  }

  void addCharges() {
    CostShares all;
    for (const auto& [wall, money] : cost_.walls()) all[{wall, CostKind::Charge}] = money.cents();
    for (const Price& charge : job_.prices.items) {
      if (charge.what != Price::What::Charge) continue;
      CostLine line;
      line.thing = {Price::What::Charge, charge.item, "", {}};
      line.quantity = line.measure.pieces = 1;
      line.price = charge;
      line.amount = Money::cents(charge.cents);
      divide(*line.amount, all, CostKind::Charge, cost_.cells);
      add(std::move(line));
    }
  }

  void add(CostLine line) {
    if (line.amount) cost_.total += *line.amount;
    cost_.spares += line.forSpares;
    cost_.waste += line.forWaste;
    cost_.lines.push_back(std::move(line));
  }

  const Job& job_;
  const std::vector<const WallLayout*>& layouts_;
  const SheetOrder& order_;
  const CutTrim& trim_;
  JobCost cost_;
};

}  // namespace

CutTrim cutTrim(const Job& job, const std::vector<const WallLayout*>& layouts, const CuttingOptions& options) {
  CutTrim trim;
  trim.takeoff = trimTakeoff(job, layouts);
  trim.batches = trimBatches(job, trim.takeoff, options);
  return trim;
}

std::map<std::string, Money> JobCost::walls() const {
  std::map<std::string, Money> walls;
  for (const auto& [cell, money] : cells) walls[cell.first] += money;
  return walls;
}

std::map<CostKind, Money> JobCost::kinds() const {
  std::map<CostKind, Money> kinds;
  for (const auto& [cell, money] : cells) kinds[cell.second] += money;
  return kinds;
}

std::vector<std::size_t> JobCost::unpriced() const {
  std::vector<std::size_t> found;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    if (!lines[i].amount) found.push_back(i);
  }
  return found;
}

JobCost costOf(const Job& job, const std::vector<const WallLayout*>& layouts, const SheetOrder& order,
               const CutTrim& trim) {
  return CostWork(job, layouts, order, trim).work();
}

JobCost costOf(const Job& job, const std::vector<SheetLot>& lots) {
  JobCost cost;
  for (const SheetLot& lot : lots) {
    CostLine line = lineOf(lot);
    if (measure(line, lot, byId(job.profiles, lot.profile))) {
      price(line, job.prices);
    } else if (const Price* found = priceOf(job.prices, line.thing)) {
      line.price = *found;
    }
    if (line.amount) cost.total += *line.amount;
    cost.lines.push_back(std::move(line));
  }
  return cost;
}

std::optional<Money> sheetsCost(const Prices& prices, const SheetOrder& order) {
  if (prices.items.empty()) return std::nullopt;
  Money sum;
  for (const OrderLine& sheets : order.lines) {
    CostLine line = lineOf(sheets);
    price(line, prices);
    if (!line.amount) return std::nullopt;
    sum += *line.amount;
  }
  return sum;
}

std::vector<BoughtThing> boughtThings(const JobCost& cost) {
  std::set<BoughtThing> seen;
  std::vector<BoughtThing> things;
  for (const CostLine& line : cost.lines) {
    if (line.thing.what != Price::What::Charge && seen.insert(line.thing).second) things.push_back(line.thing);
  }
  return things;
}

}  // namespace ribwright
