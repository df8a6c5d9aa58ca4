#include "core/takeoff/delta_order.h"

#include <algorithm>
#include <tuple>

#include "core/takeoff/served_needs.h"

namespace ribwright {
namespace {

using Supply = std::map<SheetKind, SheetSupply>;

// One sheet that was ordered, as long as there may be a need for it.
struct Sheet {
  const SheetKind* kind;
  bool toCome;
};

// Sheets of one class: of each length the received ones first, of each no more than there are needs.
std::vector<Sheet> sheetsOf(const SheetClass& sheet, const Supply& supply, std::size_t needs) {
  std::vector<Sheet> sheets;
  for (const auto& [kind, count] : supply) {
    if (kind.sheet != sheet) continue;
    const auto many = static_cast<std::int64_t>(needs);
    const auto put = [&](std::int64_t of, bool toCome) {
      sheets.insert(sheets.end(), static_cast<std::size_t>(std::min(of, many)), Sheet{&kind, toCome});
    };
    put(count.received, false);
    put(count.toCome, true);
  }
  return sheets;
}

class Delta {
 public:
  Delta(const std::vector<SheetNeed>& needs, const std::vector<PlacedOrder>& orders) : supply_(supplyOf(orders)) {
    for (const SheetNeed& need : needs) {
      const auto before = supply_.find(need.order);
      const bool bought = before != supply_.end() && before->second.placed > 0;
      if (!need.marks.empty() || !bought) classes_[need.order.sheet].push_back(&need);
    }
  }

  DeltaOrder all() {
    for (auto& [sheet, needs] : classes_) serve(sheet, needs);
    for (const auto& [kind, lot] : toOrder_) delta_.toOrder.push_back(lot);
    for (const auto& [key, served] : served_) delta_.served.push_back(served);
    for (const auto& [kind, count] : supply_) leave(kind, count);
    return std::move(delta_);
  }

 private:
  struct Used {
    std::int64_t received = 0, toCome = 0;
  };

  void serve(const SheetClass& sheet, std::vector<const SheetNeed*>& needs) {
    // What hangs came out of what is there, and a spare waits longest.
    std::stable_sort(needs.begin(), needs.end(), [](const SheetNeed* a, const SheetNeed* b) {
      return std::tuple(!a->hung, a->marks.empty()) < std::tuple(!b->hung, b->marks.empty());
    });
    const auto hung = std::find_if(needs.begin(), needs.end(), [](const SheetNeed* need) { return !need->hung; });
    const std::vector<const SheetNeed*> hang(needs.begin(), hung);
    std::vector<const SheetNeed*> open(hung, needs.end());
    std::vector<Sheet> sheets = sheetsOf(sheet, supply_, needs.size());
    const auto toCome =
        std::stable_partition(sheets.begin(), sheets.end(), [](const Sheet& one) { return !one.toCome; });
    std::vector<Sheet> left(toCome, sheets.end());
    sheets.erase(toCome, sheets.end());
    // A sheet that hangs is cut: it came out of what was received, whatever longer piece would like it now. Where too
    // few are noted as received it came out of the rest.
    std::vector<const SheetNeed*> unserved = takeFor(hang, sheets);
    left.insert(left.begin(), sheets.begin(), sheets.end());
    for (const SheetNeed* need : takeFor(unserved, left)) order(*need);
    for (const SheetNeed* need : takeFor(open, left)) order(*need);
  }

  // Takes what serves them out of `sheets`; gives those that nothing serves.
  std::vector<const SheetNeed*> takeFor(const std::vector<const SheetNeed*>& needs, std::vector<Sheet>& sheets) {
    std::vector<Length> wanted, there;
    for (const SheetNeed* need : needs) wanted.push_back(need->least);
    for (const Sheet& one : sheets) there.push_back(one.kind->length);
    const auto served = servedNeeds(wanted, there);
    std::vector<const SheetNeed*> unserved;
    std::vector<bool> gone(sheets.size());
    for (std::size_t i = 0; i < needs.size(); ++i) {
      if (!served[i]) {
        unserved.push_back(needs[i]);
        continue;
      }
      take(*needs[i], sheets[*served[i]]);
      gone[*served[i]] = true;
    }
    std::vector<Sheet> left;
    for (std::size_t i = 0; i < sheets.size(); ++i) {
      if (!gone[i]) left.push_back(sheets[i]);
    }
    sheets = std::move(left);
    return unserved;
  }

  void take(const SheetNeed& need, const Sheet& sheet) {
    (sheet.toCome ? used_[*sheet.kind].toCome : used_[*sheet.kind].received) += 1;
    ServedNeeds& served = served_[{*sheet.kind, -need.least, sheet.toCome}];
    served.sheet = *sheet.kind;
    served.need = need.least;
    served.toCome = sheet.toCome;
    served.marks.push_back(need.marks);
    if (need.hung) served.hung.push_back(need.marks);
  }

  void order(const SheetNeed& need) {
    const auto [at, isNew] = toOrder_.try_emplace(need.order);
    if (isNew) at->second = lotOf(need.order, 0);
    at->second.quantity += 1;
    if (!need.marks.empty()) at->second.marks.push_back(need.marks);
  }

  void leave(const SheetKind& kind, const SheetSupply& count) {
    const Used used = used_[kind];
    if (count.toCome > 0) delta_.toCome.push_back(lotOf(kind, count.toCome));
    const UnneededSheets left{kind, count.received - used.received, count.toCome - used.toCome};
    if (left.onSite > 0 || left.toCome > 0) delta_.leftOver.push_back(left);
  }

  Supply supply_;
  std::map<SheetClass, std::vector<const SheetNeed*>> classes_;
  std::map<SheetKind, Used> used_;
  std::map<SheetKind, SheetLot> toOrder_;
  std::map<std::tuple<SheetKind, Length, bool>, ServedNeeds> served_;
  DeltaOrder delta_;
};

}  // namespace

DeltaOrder deltaOrder(const std::vector<SheetNeed>& needs, const std::vector<PlacedOrder>& orders) {
  return Delta(needs, orders).all();
}

}  // namespace ribwright
