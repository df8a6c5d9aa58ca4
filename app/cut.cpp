// The command that plans how any list of lengths is cut.
#include <algorithm>
#include <charconv>
#include <cstdio>
#include <numeric>

#include "app/commands.h"
#include "core/cutting/cutting_list_text.h"
#include "core/cutting/proof_words.h"
#include "core/cutting/stock_cutter.h"
#include "core/job/file_reading.h"
#include "core/job/job_file_text.h"
#include "core/output/cutting_tables.h"
#include "core/units/typed_text.h"

namespace ribwright {
namespace {

constexpr std::size_t mostBytes = 16'000'000;
constexpr std::int64_t moneyParts = 10'000;  // costs on the command line have at most four decimals

struct CutTask {
  CuttingList list;
  std::vector<std::string> marks;  // parallel to the demands, or empty
  CutFigures figures;
  std::function<std::string(std::int64_t)> lengthText, costText;
};

Fault at(const std::string& place, const Fault& fault) {
  return {fault.place.empty() ? place : place + ": " + fault.place, fault.message};
}

std::vector<Fault> allAt(const std::string& place, std::vector<Fault> faults) {
  for (Fault& fault : faults) fault = at(place, fault);
  return faults;
}

// 12 or 12.5, in parts of 1/10000.
std::optional<std::int64_t> moneyFrom(std::string_view text) {
  const auto point = std::min(text.find('.'), text.size());
  std::string digits(text.substr(0, point));
  const std::string decimals(text.substr(std::min(point + 1, text.size())));
  if (digits.empty() || decimals.size() > 4 || (point < text.size() && decimals.empty())) return std::nullopt;
  digits += decimals + std::string(4 - decimals.size(), '0');
  const bool plain = std::all_of(digits.begin(), digits.end(), [](char c) { return c >= '0' && c <= '9'; });
  std::int64_t money = 0;
  const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), money);
  if (!plain || error != std::errc() || end != digits.data() + digits.size()) return std::nullopt;
  return money;
}

std::string moneyText(std::int64_t money) {
  std::string text = std::to_string(money / moneyParts);
  std::string decimals = std::to_string(moneyParts + money % moneyParts).substr(1);
  while (!decimals.empty() && decimals.back() == '0') decimals.pop_back();
  return decimals.empty() ? text : text.append(".").append(decimals);
}

// LENGTH[:COST]
Outcome<Stock> stockFrom(const std::string& text, UnitSystem units) {
  const auto colon = text.find(':');
  const auto length = parseLength(std::string_view(text).substr(0, colon), {units, '.'});
  if (!length) return at("--stock", length.faults().front());
  Stock stock{length.value().nanometres()};
  if (colon == std::string::npos) return stock;
  stock.cost = moneyFrom(std::string_view(text).substr(colon + 1));
  if (!stock.cost) return Fault{"--stock", inQuotes(text.substr(colon + 1)) + " is no cost; write it like 12 or 12.50"};
  return stock;
}

Outcome<std::int64_t> lengthFrom(const std::string& option, const std::string& text, UnitSystem units) {
  if (text.empty()) return std::int64_t(0);
  const auto length = parseLength(text, {units, '.'});
  if (!length) return at(option, length.faults().front());
  return length.value().nanometres();
}

std::vector<Fault> takeOptions(CuttingList& list, const Request& request, UnitSystem units) {
  std::vector<Fault> faults;
  for (const std::string& text : request.cut.stocks) {
    const auto stock = stockFrom(text, units);
    if (stock)
      list.stocks.push_back(stock.value());
    else
      faults.push_back(stock.faults().front());
  }
  const auto kerf = lengthFrom("--kerf", request.cut.kerf, units);
  const auto trim = lengthFrom("--end-trim", request.cut.endTrim, units);
  if (kerf) list.kerf = kerf.value();
  if (trim) list.endTrim = trim.value();
  if (!kerf) faults.push_back(kerf.faults().front());
  if (!trim) faults.push_back(trim.faults().front());
  if (request.cut.stocks.empty())
    faults.push_back({"--stock", "is wanted with a table of lengths; write --stock and the length they are cut from"});
  const auto costly =
      std::count_if(list.stocks.begin(), list.stocks.end(), [](const Stock& s) { return s.cost.has_value(); });
  if (costly > 0 && costly < static_cast<std::ptrdiff_t>(list.stocks.size()))
    faults.push_back({"--stock", "has a cost for some lengths and none for others; state one for each or for none"});
  return faults;
}

// Told in the lengths that were written; what else is wrong with a list is told by the cutter.
std::vector<Fault> whatFitsNoStock(const CuttingList& list, const std::vector<CutLine>& lines, const Request& request,
                                   UnitSystem units) {
  const auto text = [units](std::int64_t number) { return exactText(Length::nanometres(number), units); };
  if (list.kerf < 0) return {{"--kerf", text(list.kerf).append(" is less than nothing; write the width of a cut")}};
  if (list.endTrim < 0)
    return {
        {"--end-trim", text(list.endTrim).append(" is less than nothing; write what is lost at both ends together")}};
  std::int64_t longest = 0;
  for (const Stock& stock : list.stocks) longest = std::max(longest, stock.length - list.endTrim);
  std::vector<Fault> faults;
  for (const CutLine& line : lines) {
    if (line.length.nanometres() <= longest) continue;
    const std::string named = line.mark.empty() ? std::string() : inQuotes(line.mark).append(": ");
    faults.push_back({request.job, named + text(line.length.nanometres()) + " is longer than any stock leaves (" +
                                       text(longest) + "); state a longer --stock, or splice it"});
  }
  return faults;
}

bool countsPieces(const CuttingList& list) { return list.stocks.size() == 1 && !list.stocks.front().cost; }

Outcome<CutTask> taskOfTable(const std::string& text, const Request& request) {
  const UnitSystem units = request.units.value_or(UnitSystem::FeetInches);
  CutTask task;
  std::vector<Fault> faults = takeOptions(task.list, request, units);
  const auto lines = readCutLines(text, units);
  if (!lines) faults = allAt(request.job, lines.faults());
  if (!faults.empty()) return faults;
  bool marked = false;
  for (const CutLine& line : lines.value()) {
    task.list.demands.push_back({line.length.nanometres(), line.quantity});
    task.marks.push_back(line.mark);
    marked = marked || !line.mark.empty();
  }
  if (!marked) task.marks.clear();
  const auto unfit = whatFitsNoStock(task.list, lines.value(), request, units);
  if (!unfit.empty()) return unfit;
  task.figures = lengthFigures(units);
  task.lengthText = [units](std::int64_t number) { return exactText(Length::nanometres(number), units); };
  if (countsPieces(task.list))
    task.costText = [](std::int64_t number) { return std::to_string(number); };
  else if (task.list.stocks.front().cost)
    task.costText = moneyText;
  else
    task.costText = [figures = task.figures](std::int64_t number) { return figures.figures(number).back(); };
  return task;
}

Outcome<CutTask> taskOfText(const std::string& text, const Request& request) {
  if (!request.cut.stocks.empty() || !request.cut.kerf.empty() || !request.cut.endTrim.empty() || request.units)
    return Fault{request.job,
                 "states its own stock in numbers without a unit; leave out --stock, --kerf, --end-trim and --units"};
  auto list = readCuttingList(text);
  if (!list) return allAt(request.job, list.faults());
  const auto digits = [](std::int64_t number) { return std::to_string(number); };
  return CutTask{std::move(list).value(), {}, bareFigures(), digits, digits};
}

std::string resultLine(const CutTask& task, const CuttingPlan& plan) {
  return "total " + task.costText(plan.total) +
         (plan.proved() ? std::string(", proved\n") : ", bound " + task.costText(plan.bound) + "\n");
}

std::string proofText(const CutTask& task, const CuttingPlan& plan, const Request& request) {
  std::string text;
  for (const Phrase& phrase : proofWords(task.list, plan, task.lengthText, task.costText))
    text += wordsOf(request).say(phrase, {}) + "\n";
  return text;
}

}  // namespace

int printCuttingPlan(const Request& request) {
  const auto text = readWhole(request.job, mostBytes);
  if (!text) return refuse(text.faults());
  const auto task =
      looksLikeCuttingList(text.value()) ? taskOfText(text.value(), request) : taskOfTable(text.value(), request);
  if (!task) return refuse(task.faults());
  CuttingOptions options;
  options.effort = request.cut.effort.value_or(options.effort);
  const auto plan = cutStock(task.value().list, options);
  if (!plan) return refuse(allAt(request.job, plan.faults()));
  const Table table = cuttingPlanTable(task.value().list, plan.value(), task.value().marks, task.value().figures);
  std::string out = csvText(table, false) + resultLine(task.value(), plan.value());
  if (request.cut.proof) out += proofText(task.value(), plan.value(), request);
  return print(out, exitDone);
}

}  // namespace ribwright
