#include "core/drawing/order_pages.h"

#include <charconv>

#include "core/drawing/shown_length.h"
#include "core/takeoff/order_account.h"

namespace ribwright {
namespace {

constexpr const char* orderFigures = "paper.order-figures";

// One decimal, as scales and tapes are read; '.' or ',' as the job writes it.
std::string rounded(double value, const Job& job) {
  char buffer[64];
  const auto end = std::to_chars(buffer, buffer + sizeof buffer, value, std::chars_format::fixed, 1).ptr;
  std::string words(buffer, end);
  const auto point = words.find('.');
  if (point != std::string::npos) words[point] = job.decimalSign;
  return words;
}

class OrderPaper {
 public:
  OrderPaper(const Job& job, const Plan& plan, const PageFrame& frame)
      : job_(job), order_(plan.order), frame_(frame), account_(orderAccount(order_, plan.layouts())) {}

  std::vector<PaperTable> tables() const {
    std::vector<PaperTable> all;
    for (std::size_t from = 0, to = 0; from < order_.lines.size(); from = to) {
      while (to < order_.lines.size() && order_.lines[to].sheet() == order_.lines[from].sheet()) ++to;
      all.push_back(linesOf(from, to));
    }
    if (!all.empty()) all.push_back(accountTable());
    return all;
  }

 private:
  bool feet() const { return job_.units == UnitSystem::FeetInches; }
  std::string say(const std::string& id) const { return frame_.words->say(id, {}, {}); }
  std::string unit(const char* id) const { return say(std::string(id).append(feet() ? ".ft-in" : ".mm")); }
  std::string length(Length length) const { return cutText(length, {job_.units, job_.decimalSign}); }
  std::string area(Area area) const { return rounded(feet() ? area.inSquareFeet() : area.inSquareMetres(), job_); }
  std::string weight(double kilograms, bool stated) const {
    return stated ? rounded(feet() ? kilograms / 0.45359237 : kilograms, job_) : std::string();
  }

  PaperTable linesOf(std::size_t from, std::size_t to) const {
    PaperTable table;
    table.title = classWords(order_.lines[from].sheet(), frame_);
    table.headings = {say("order-page.line"),   say("order-page.length"), say("order-page.quantity"),
                      say("order-page.spare"),  unit("order-page.area"),  unit("order-page.weight"),
                      unit("order-page.waste"), say("order-page.marks")};
    table.figures = {true, true, true, true, true, true, true, false};
    int quantity = 0, spares = 0;
    Area cover;
    double kilograms = 0;
    SteelAccount steel;
    for (std::size_t i = from; i < to; ++i) {
      const OrderLine& line = order_.lines[i];
      quantity += line.quantity();
      spares += line.spares;
      cover += line.coverArea;
      kilograms += line.kilograms;
      steel += account_.lines[i];
      addLine(table, line, account_.lines[i]);
    }
    const bool stated = !order_.lines[from].translucent;
    table.rows.push_back({say("order-page.all"), "", std::to_string(quantity), spares > 0 ? std::to_string(spares) : "",
                          area(cover), weight(kilograms, stated), area(steel.waste), ""});
    return table;
  }

  void addLine(PaperTable& table, const OrderLine& line, const SteelAccount& steel) const {
    const auto marks = brokenMarks(line.marks, 44);
    table.rows.push_back({std::to_string(line.line), length(line.length), std::to_string(line.quantity()),
                          line.spares > 0 ? std::to_string(line.spares) : "", area(line.coverArea),
                          weight(line.kilograms, !line.translucent), area(steel.waste), marks.front()});
    for (std::size_t i = 1; i < marks.size(); ++i) table.rows.push_back({"", "", "", "", "", "", "", marks[i]});
  }

  PaperTable accountTable() const {
    PaperTable table;
    table.title = unit("order-page.account");
    table.headings = {say("order-page.sheet"),  say("order-page.bought"), say("order-page.pieces"),
                      say("order-page.cuts"),   say("order-page.drops"),  say("order-page.spares"),
                      say("order-page.wasted"), say("order-page.percent")};
    table.figures = {false, true, true, true, true, true, true, true};
    for (const auto& [sheet, steel] : account_.classes) table.rows.push_back(row(classWords(sheet, frame_), steel));
    if (account_.classes.size() > 1) table.rows.push_back(row(say("order-page.all"), account_.total));
    return table;
  }

  std::vector<std::string> row(std::string title, const SteelAccount& steel) const {
    const double bought = steel.bought.inSquareMetres();
    return {std::move(title),   area(steel.bought),
            area(steel.pieces), area(steel.cutOuts),
            area(steel.drops),  area(steel.spares),
            area(steel.waste),  rounded(bought > 0 ? steel.waste.inSquareMetres() / bought * 100 : 0, job_)};
  }

  const Job& job_;
  const SheetOrder& order_;
  const PageFrame& frame_;
  const OrderAccount account_;
};

}  // namespace

std::vector<BarePage> orderPages(const Job& job, const Plan& plan, const PageFrame& frame) {
  return tablePages(OrderPaper(job, plan, frame).tables(), frame.words->say("order-page.subject", {}, {}), frame,
                    orderFigures);
}

}  // namespace ribwright
