// The stock cutter: on lists with known optima, on made-up trim lists, and against GLPK, which is given the same list
// as an arc-flow model in the same run. Prints times, shares proved and ratios; judges nothing.
//
//   cutting_bench [SECONDS]    SECONDS: what GLPK may take for each list; 0 leaves it out
#include <glpk.h>

#include <algorithm>
#include <charconv>
#include <chrono>
#include <cstdio>
#include <fstream>
#include <map>
#include <memory>
#include <set>
#include <sstream>
#include <tuple>

#include "core/cutting/cutting_list_text.h"
#include "core/cutting/stock_cutter.h"
#include "core/output/csv_reading.h"
#include "tests/fuzz/random_cutting.h"

using namespace ribwright;

namespace {

const std::string kFolder = RIBWRIGHT_ROOT "/tests/outside/cutting/";

std::string textOf(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

template <class Work>
double milliseconds(const Work& work) {
  const auto start = std::chrono::steady_clock::now();
  work();
  return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
}

double quantile(std::vector<double> values, double part) {
  if (values.empty()) return 0;
  std::sort(values.begin(), values.end());
  return values[static_cast<std::size_t>(part * static_cast<double>(values.size() - 1))];
}

// Arc flow (Valerio de Carvalho, "Exact solution of bin-packing problems using column generation and
// branch-and-bound", Annals of Operations Research 86, 1999): nodes are the lengths used up of a stock, reached by
// pieces in falling order; an arc is a piece. Only what can be reached is there, and with one stock each node is moved
// as far towards the end as what can follow it allows, so that many become one (Brandao and Pedroso, "Bin packing and
// related problems: general arc-flow formulation with graph compression", Computers and Operations Research 69, 2016).
class ArcFlow {
 public:
  explicit ArcFlow(const CuttingList& list) : list_(list) {
    std::map<std::int64_t, std::int64_t, std::greater<>> counts;
    for (const CutDemand& demand : list.demands)
      if (demand.count > 0) counts[demand.length + list.kerf] += demand.count;
    for (const auto& [size, count] : counts) {
      sizes_.push_back(size);
      counts_.push_back(count);
    }
    for (const Stock& stock : list.stocks) {
      ends_.push_back(stock.length - list.endTrim + list.kerf);
      longest_ = std::max(longest_, ends_.back());
    }
    walk(0, 0, 0);
  }

  std::size_t arcs() const { return arcs_.size(); }

  // The least cost, or nothing when the time was not enough.
  std::optional<double> solve(double seconds) {
    std::unique_ptr<glp_prob, decltype(&glp_delete_prob)> problem(glp_create_prob(), &glp_delete_prob);
    fill(problem.get());
    glp_term_out(GLP_OFF);
    glp_iocp how;
    glp_init_iocp(&how);
    how.presolve = GLP_ON;
    how.tm_lim = static_cast<int>(seconds * 1000);
    how.gmi_cuts = GLP_OFF;
    const int code = glp_intopt(problem.get(), &how);
    if (code != 0 || glp_mip_status(problem.get()) != GLP_OPT) return std::nullopt;
    return glp_mip_obj_val(problem.get());
  }

 private:
  struct Arc {
    std::int64_t from, to;
    std::size_t size;
    auto operator<=>(const Arc&) const = default;
  };
  using State = std::tuple<std::int64_t, std::size_t, std::int64_t>;

  // From `used`, with pieces of this size on, `taken` of which are in it: where its node is.
  std::int64_t walk(std::int64_t used, std::size_t size, std::int64_t taken) {
    if (size == sizes_.size()) return longest_;
    const State state{used, size, taken};
    if (const auto known = placeOf_.find(state); known != placeOf_.end()) return known->second;
    std::int64_t place = walk(used, size + 1, 0), after = -1;
    if (taken < counts_[size] && used + sizes_[size] <= longest_) {
      after = walk(used + sizes_[size], size, taken + 1);
      place = std::min(place, after - sizes_[size]);
    }
    const bool movable = ends_.size() == 1;
    if (!movable || used == 0) place = used;
    if (after >= 0) {
      arcs_.insert({place, movable ? after : used + sizes_[size], size});
      nodes_.insert(movable ? after : used + sizes_[size]);
    }
    nodes_.insert(place);
    placeOf_[state] = place;
    return place;
  }

  void entry(int row, int column, double value) {
    rows_.push_back(row);
    columns_.push_back(column);
    values_.push_back(value);
  }

  // Rows: a node each, what flows in flows out; then a size each. Columns: arcs, from each node to the next, and
  // stocks.
  void fill(glp_prob* problem) {
    std::map<std::int64_t, int> rowOf;
    for (const std::int64_t node : nodes_)
      if (node > 0) rowOf.emplace(node, static_cast<int>(rowOf.size()) + 1);
    const int nodes = static_cast<int>(rowOf.size());
    glp_add_rows(problem, nodes + static_cast<int>(sizes_.size()));
    for (int row = 1; row <= nodes; ++row) glp_set_row_bnds(problem, row, GLP_LO, 0, 0);
    for (std::size_t i = 0; i < sizes_.size(); ++i)
      glp_set_row_bnds(problem, nodes + 1 + static_cast<int>(i), GLP_LO, static_cast<double>(counts_[i]), 0);
    const auto column = [&](double cost, double most) {
      const int index = glp_add_cols(problem, 1);
      glp_set_col_kind(problem, index, GLP_IV);
      glp_set_col_bnds(problem, index, GLP_DB, 0, most);
      glp_set_obj_coef(problem, index, cost);
      return index;
    };
    double pieces = 0;
    for (const std::int64_t count : counts_) pieces += static_cast<double>(count);
    std::map<std::int64_t, int>
        out;  // a stock opens the path, and closes it at its end: flow at 0 less flow at the ends
    const int start = glp_add_rows(problem, 1);
    glp_set_row_bnds(problem, start, GLP_LO, 0, 0);
    for (const Arc& arc : arcs_) {
      const int index = column(0, static_cast<double>(counts_[arc.size]));
      entry(arc.from == 0 ? start : rowOf[arc.from], index, -1);
      entry(rowOf[arc.to], index, 1);
      entry(nodes + 1 + static_cast<int>(arc.size), index, 1);
    }
    closeAt(rowOf, column, start, pieces);
    rows_.insert(rows_.begin(), 0);
    columns_.insert(columns_.begin(), 0);
    values_.insert(values_.begin(), 0);
    glp_load_matrix(problem, static_cast<int>(rows_.size()) - 1, rows_.data(), columns_.data(), values_.data());
  }

  // Waste runs from node to node up to the ends; the stock that ends there feeds the start.
  template <class Column>
  void closeAt(std::map<std::int64_t, int>& rowOf, const Column& column, int start, double pieces) {
    for (auto node = rowOf.begin(); node != rowOf.end() && std::next(node) != rowOf.end(); ++node) {
      const int index = column(0, pieces);
      entry(node->second, index, -1);
      entry(std::next(node)->second, index, 1);
    }
    for (std::size_t k = 0; k < ends_.size(); ++k) {
      auto last = rowOf.upper_bound(ends_[k]);
      if (last == rowOf.begin()) continue;
      const double most = list_.stocks[k].supply ? static_cast<double>(*list_.stocks[k].supply) : pieces;
      const int index = column(static_cast<double>(costOf(list_, k)), most);
      entry(std::prev(last)->second, index, -1);
      entry(start, index, 1);
    }
  }

  const CuttingList& list_;
  std::vector<std::int64_t> sizes_, counts_, ends_;
  std::int64_t longest_ = 0;
  std::map<State, std::int64_t> placeOf_;
  std::set<std::int64_t> nodes_;
  std::set<Arc> arcs_;
  std::vector<int> rows_, columns_;
  std::vector<double> values_;
};

struct Known {
  std::string name;
  CuttingList list;
  std::int64_t optimum = 0, pieces = 0;
};

std::vector<Known> knownLists() {
  std::vector<Known> known;
  const auto table = readCsv(textOf(kFolder + "optimum.csv"));
  if (!table) return known;
  for (const auto& row : table.value().table.rows) {
    const std::string name = row[0] + "/" + row[1];
    auto list = readCuttingList(textOf(kFolder + name + ".txt"));
    if (!list) continue;
    Known one{name, std::move(list).value()};
    std::from_chars(row[2].data(), row[2].data() + row[2].size(), one.optimum);
    for (const CutDemand& demand : one.list.demands) one.pieces += demand.count;
    known.push_back(std::move(one));
  }
  return known;
}

// The best of three.
double cutterTime(const CuttingList& list) {
  double best = 1e300;
  for (int i = 0; i < 3; ++i) best = std::min(best, milliseconds([&] { (void)cutStock(list); }));
  return best;
}

void showKnown(const std::vector<Known>& known) {
  int proved = 0, slow = 0;
  std::printf("%-38s %8s %7s %9s\n", "list", "optimum", "proved", "ms");
  for (const Known& one : known) {
    const auto plan = cutStock(one.list);
    const double ms = cutterTime(one.list);
    const bool right = plan && plan.value().proved() && plan.value().total == one.optimum;
    proved += right;
    slow += one.list.demands.size() <= 60 && one.pieces <= 400 && ms > 200;
    std::printf("%-38s %8lld %7s %9.3f\n", one.name.c_str(), static_cast<long long>(one.optimum), right ? "yes" : "NO",
                ms);
  }
  std::printf("%d of %zu proved; of trade size (up to 60 lengths, 400 pieces) and more than 200 ms: %d\n\n", proved,
              known.size(), slow);
}

void showRandom(const char* what, int lists, int fewestStocks, int mostStocks) {
  std::vector<double> times;
  int proved = 0;
  std::vector<double> gaps;
  for (int i = 0; i < lists; ++i) {
    fuzz::Dice dice(20'260'709, i);
    const CuttingList list = fuzz::trimCuttingList(dice, dice.small(fewestStocks, mostStocks));
    Outcome<CuttingPlan> plan = CuttingPlan{};
    times.push_back(milliseconds([&] { plan = cutStock(list); }));
    if (!plan) continue;
    proved += plan.value().proved();
    if (!plan.value().proved())
      gaps.push_back(100.0 * static_cast<double>(plan.value().total - plan.value().bound) /
                     static_cast<double>(plan.value().total));
  }
  std::printf("%s: %d of %d proved; median %.2f ms, 99th percentile %.1f ms, worst %.1f ms", what, proved, lists,
              quantile(times, 0.5), quantile(times, 0.99), quantile(times, 1));
  if (!gaps.empty()) std::printf("; widest gap of the others %.3f %%", quantile(gaps, 1));
  std::printf("\n");
  std::fflush(stdout);
}

void showAgainstGlpk(const std::vector<Known>& known, double seconds) {
  std::vector<double> ratios;
  std::printf("\n%-38s %8s %11s %9s %9s\n", "against GLPK, where it needs 50 ms", "arcs", "GLPK ms", "ms", "ratio");
  for (const Known& one : known) {
    std::optional<double> found;
    std::size_t arcs = 0;
    const double theirs = milliseconds([&] {
      ArcFlow model(one.list);
      arcs = model.arcs();
      found = model.solve(seconds);
    });
    if (found && static_cast<std::int64_t>(*found + 0.5) != one.optimum)
      std::printf("%s: GLPK finds %.3f\n", one.name.c_str(), *found);
    if (theirs < 50) continue;
    const double ours = cutterTime(one.list);
    ratios.push_back(theirs / ours);
    std::printf("%-38s %8zu %s%10.1f %9.3f %9.1f%s\n", one.name.c_str(), arcs, found ? " " : ">", theirs, ours,
                theirs / ours, theirs / ours < 25 ? "  slower than 25 times as fast" : "");
    std::fflush(stdout);
  }
  std::printf("%zu lists; median ratio %.1f, least %.1f\n", ratios.size(), quantile(ratios, 0.5), quantile(ratios, 0));
}

}  // namespace

int main(int argc, char** argv) {
  double seconds = 60;
  if (argc > 1) std::from_chars(argv[1], argv[1] + std::char_traits<char>::length(argv[1]), seconds);
  const std::vector<Known> known = knownLists();
  showKnown(known);
  showRandom("1,000 trim lists, one stock", 1'000, 1, 1);
  showRandom("400 trim lists, two to four stocks", 400, 2, 4);
  if (seconds > 0) showAgainstGlpk(known, seconds);
}
