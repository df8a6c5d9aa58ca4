#include "core/takeoff/sheet_order.h"

#include <algorithm>
#include <map>
#include <stdexcept>

#include "core/cutting/share_blanks.h"
#include "core/job/by_id.h"
#include "core/job/section.h"
#include "core/job/sheet_weight.h"
#include "core/takeoff/order_codes.h"
#include "core/takeoff/sold_lengths.h"

namespace ribwright {
namespace {

const Profile& profileOf(const Job& job, const std::string& id) {
  const Profile* profile = byId(job.profiles, id);
  if (!profile) throw std::invalid_argument("sheet order: no profile " + id);
  return *profile;
}

std::vector<std::vector<int>> blanksOfPieces(const Layouts& layouts, const std::vector<Blank>& blanks) {
  std::vector<std::vector<int>> blankOf;
  for (const WallLayout* layout : layouts) blankOf.emplace_back(layout->pieces.size(), -1);
  for (std::size_t i = 0; i < blanks.size(); ++i) {
    if (blanks[i].parts.empty()) throw std::invalid_argument("sheet order: a blank without a piece");
    for (const BlankPart& part : blanks[i].parts) {
      int& blank = blankOf.at(static_cast<std::size_t>(part.piece.wall)).at(static_cast<std::size_t>(part.piece.piece));
      if (blank >= 0) throw std::invalid_argument("sheet order: a piece in two blanks");
      blank = static_cast<int>(i);
    }
  }
  for (const auto& wall : blankOf) {
    if (std::count(wall.begin(), wall.end(), -1) > 0) throw std::invalid_argument("sheet order: a piece in no blank");
  }
  return blankOf;
}

class OrderWork {
 public:
  OrderWork(const Job& job, const Layouts& layouts, std::vector<Blank> blanks)
      : job_(job), layouts_(layouts), cut_(cutSheets(job, layouts)) {
    order_.blankOf = blanksOfPieces(layouts, blanks);
    order_.blanks = std::move(blanks);
    order_.places.resize(order_.blanks.size());
  }

  SheetOrder work() {
    const auto& blanks = order_.blanks;
    for (std::size_t from = 0, to = 0; from < blanks.size(); from = to) {
      while (to < blanks.size() && blanks[to].sheet == blanks[from].sheet) ++to;
      if (to < blanks.size() && blanks[to].sheet < blanks[from].sheet)
        throw std::invalid_argument("sheet order: blanks of one class are not together");
      addClass(static_cast<int>(from), static_cast<int>(to));
    }
    order_.codes = orderCodes(order_, layouts_);
    return std::move(order_);
  }

 private:
  void addClass(int from, int to) {
    const SheetClass& sheet = order_.blanks[static_cast<std::size_t>(from)].sheet;
    const Profile& profile = profileOf(job_, sheet.profile);
    SoldClass sold = soldOf(job_.settings, profile, order_.blanks, from, to, cut_);
    std::stable_sort(sold.sheets.begin(), sold.sheets.end(), [](const SoldSheet& a, const SoldSheet& b) {
      return a.length != b.length ? a.length > b.length : a.first < b.first;
    });
    const std::size_t firstLine = order_.lines.size();
    for (const SoldSheet& one : sold.sheets) {
      if (order_.lines.size() == firstLine || order_.lines.back().length != one.length)
        beginLine(sheet, profile, one.length);
      addSheet(one);
    }
    for (std::size_t line = firstLine; line < order_.lines.size(); ++line) finish(order_.lines[line], profile);
    if (sold.cut) order_.shelfCuts.push_back(std::move(*sold.cut));
  }

  void beginLine(const SheetClass& sheet, const Profile& profile, Length length) {
    OrderLine line;
    line.line = static_cast<int>(order_.lines.size()) + 1;
    line.profile = sheet.profile;
    line.colour = sheet.colour;
    line.translucent = sheet.translucent;
    line.thickness = sheet.thickness;
    line.length = length;
    line.firstSheet = static_cast<int>(order_.sheets.size());
    line.metalWidth = profile.metalWidth();
    order_.lines.push_back(std::move(line));
  }

  void addSheet(const SoldSheet& sold) {
    OrderLine& line = order_.lines.back();
    const Length kerf = job_.settings.kerf;
    OrderedSheet sheet{line.line - 1, sold.first, sold.blanks, sold.used, {}};
    const Length rest = sold.length - sold.used - kerf;
    if (rest > Length() && rest >= job_.settings.leastDrop) sheet.drop = rest;
    Length from;
    for (const int blank : sold.blanks) {
      order_.places[static_cast<std::size_t>(blank)] = {line.line - 1, static_cast<int>(order_.sheets.size()), from};
      from += order_.blanks[static_cast<std::size_t>(blank)].length + kerf;
    }
    line.marks.push_back(marksOf(sold.blanks));
    order_.sheets.push_back(std::move(sheet));
  }

  std::string marksOf(const std::vector<int>& blanks) const {
    std::string marks;
    for (const int blank : blanks) {
      for (const BlankPart& part : order_.blanks[static_cast<std::size_t>(blank)].parts) {
        if (!marks.empty()) marks += '+';
        marks += layouts_[static_cast<std::size_t>(part.piece.wall)]
                     ->pieces[static_cast<std::size_t>(part.piece.piece)]
                     .mark;
      }
    }
    return marks;
  }

  void finish(OrderLine& line, const Profile& profile) {
    line.spares = sparesOf(job_.settings.spares, line.hung());
    line.coverArea = profile.cover * line.length * line.quantity();
    if (line.translucent) return;
    const auto [width, isNew] = developedWidths_.try_emplace(line.profile);
    if (isNew) width->second = sectionOf(profile).developedWidth;
    line.kilograms = line.quantity() *
                     sheetKilograms(width->second, line.length, line.thickness, profile.coatingGramsPerSquareMetre);
  }

  const Job& job_;
  const Layouts& layouts_;
  std::vector<CutSheet> cut_;
  std::map<std::string, double> developedWidths_;
  SheetOrder order_;
};

}  // namespace

SheetOrder sheetOrder(const Job& job, const Layouts& layouts) {
  return sheetOrder(job, layouts, shareBlanks(job, layouts));
}

SheetOrder sheetOrder(const Job& job, const Layouts& layouts, std::vector<Blank> blanks) {
  return OrderWork(job, layouts, std::move(blanks)).work();
}

}  // namespace ribwright
