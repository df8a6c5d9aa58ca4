#include "core/takeoff/trim_cuts.h"

#include <algorithm>
#include <map>
#include <set>

#include "core/job/by_id.h"
#include "core/job/sheet_weight.h"
#include "core/takeoff/trim_splices.h"

namespace ribwright {
namespace {

constexpr int coatingGramsPerSquareMetre = 275;

struct PartRef {
  int piece = 0, part = 0;
};
// Parts by length, the longest first, each length in setting order.
using Parts = std::map<Length, std::vector<PartRef>, std::greater<>>;

Length length(std::int64_t nanometres) { return Length::nanometres(nanometres); }

CuttingList listOf(const Trim& trim, const Settings& settings, const Parts& parts) {
  CuttingList list;
  list.kerf = settings.kerf.nanometres();
  list.endTrim = trim.endTrim.nanometres();
  const std::set<Length, std::greater<>> stocked(trim.stocked.begin(), trim.stocked.end());
  for (const Length stock : stocked) list.stocks.push_back({stock.nanometres(), std::nullopt, std::nullopt});
  for (const auto& [part, refs] : parts)
    list.demands.push_back({part.nanometres(), static_cast<std::int64_t>(refs.size())});
  return list;
}

// Sticks of a plan, filled with the parts in their order.
class StickWork {
 public:
  StickWork(const CuttingList& list, const Settings& settings, Parts parts)
      : list_(list), settings_(settings), parts_(std::move(parts)), taken_(list.demands.size()) {}

  std::vector<TrimStick> sticksOf(std::vector<CutPattern> patterns) {
    std::sort(patterns.begin(), patterns.end(), [](const CutPattern& a, const CutPattern& b) {
      return a.stock != b.stock ? a.stock < b.stock : a.counts > b.counts;  // stocks stand the longest first
    });
    for (const CutPattern& pattern : patterns) {
      for (std::int64_t i = 0; i < pattern.times; ++i) addStick(pattern);
    }
    return std::move(sticks_);
  }

 private:
  void addStick(const CutPattern& pattern) {
    TrimStick stick;
    stick.number = static_cast<int>(sticks_.size()) + 1;
    stick.stock = length(list_.stocks[static_cast<std::size_t>(pattern.stock)].length);
    stick.ends = length(list_.endTrim);
    Length at = half(stick.ends);
    for (std::size_t line = 0; line < pattern.counts.size(); ++line) {
      for (std::int64_t i = 0; i < pattern.counts[line]; ++i) at = addCut(stick, line, at);
    }
    takeRest(stick, stick.stock - (stick.ends - half(stick.ends)) - (at - settings_.kerf));
    sticks_.push_back(std::move(stick));
  }

  // One more cut frees a drop.
  void takeRest(TrimStick& stick, Length left) const {
    const Length drop = left - settings_.kerf;
    if (drop < settings_.leastDrop || drop <= Length()) {
      stick.waste = left;
    } else {
      stick.kerfs += settings_.kerf;
      stick.drop = drop;
    }
  }

  // Gives where the next one would begin.
  Length addCut(TrimStick& stick, std::size_t line, Length at) {
    const auto& refs = std::next(parts_.begin(), static_cast<std::ptrdiff_t>(line))->second;
    const PartRef ref = refs.at(taken_[line]++);
    const Length cut = length(list_.demands[line].length);
    if (!stick.cuts.empty()) stick.kerfs += settings_.kerf;
    stick.cuts.push_back({ref.piece, ref.part, at, cut});
    return at + cut + settings_.kerf;
  }

  const CuttingList& list_;
  const Settings& settings_;
  Parts parts_;
  std::vector<std::size_t> taken_;
  std::vector<TrimStick> sticks_;
};

// More than the cutter takes: a stick for each part, the shortest that holds it.
void takeEachAlone(TrimBatch& batch, const Settings& settings, const Parts& parts) {
  const CuttingList& list = batch.list;
  std::vector<CutPattern> patterns;
  for (std::size_t line = 0; line < list.demands.size(); ++line) {
    CutPattern pattern;
    pattern.times = list.demands[line].count;
    pattern.counts.assign(list.demands.size(), 0);
    pattern.counts[line] = 1;
    for (std::size_t stock = 0; stock < list.stocks.size(); ++stock) {
      if (list.stocks[stock].length - list.endTrim >= list.demands[line].length)
        pattern.stock = static_cast<int>(stock);
    }
    patterns.push_back(std::move(pattern));
  }
  batch.sticks = StickWork(list, settings, parts).sticksOf(std::move(patterns));
}

// Nothing is cut: each part comes as it is ordered.
void makeToLength(TrimBatch& batch, const Parts& parts) {
  batch.madeToLength = true;
  for (const auto& [part, refs] : parts) {
    for (const PartRef& ref : refs) {
      TrimStick stick;
      stick.number = static_cast<int>(batch.sticks.size()) + 1;
      stick.stock = part;
      stick.cuts = {{ref.piece, ref.part, Length(), part}};
      batch.sticks.push_back(std::move(stick));
    }
  }
}

void cut(TrimBatch& batch, const Trim& trim, const Settings& settings, const Parts& parts,
         const CuttingOptions& options) {
  if (longestPart(trim) == Length()) return makeToLength(batch, parts);
  batch.list = listOf(trim, settings, parts);
  auto plan = cutStock(batch.list, options);
  if (!plan) {
    batch.faults = plan.faults();
    return takeEachAlone(batch, settings, parts);
  }
  batch.plan = std::move(plan).value();
  batch.sticks = StickWork(batch.list, settings, parts).sticksOf(batch.plan.patterns);
}

Parts partsOf(const TrimTakeoff& takeoff, const std::string& trim, const std::string& colour) {
  Parts parts;
  for (std::size_t i = 0; i < takeoff.pieces.size(); ++i) {
    const TrimPiece& piece = takeoff.pieces[i];
    if (piece.trim != trim || piece.colour != colour) continue;
    for (std::size_t part = 0; part < piece.parts.size(); ++part)
      parts[piece.parts[part].length].push_back({static_cast<int>(i), static_cast<int>(part)});
  }
  return parts;
}

}  // namespace

Length TrimBatch::total(Length TrimStick::*what) const {
  Length sum;
  for (const TrimStick& stick : sticks) sum += stick.*what;
  return sum;
}

Length TrimBatch::cut() const {
  Length sum;
  for (const TrimStick& stick : sticks) {
    for (const TrimCut& one : stick.cuts) sum += one.length;
  }
  return sum;
}

Length TrimBatch::atLeast() const {
  if (madeToLength || !faults.empty()) return cut();
  // With one stock length sticks are counted, with several their length.
  return list.stocks.size() == 1 ? length(list.stocks[0].length) * plan.bound : length(plan.bound);
}

std::vector<TrimBatch> trimBatches(const Job& job, const TrimTakeoff& takeoff, const CuttingOptions& options) {
  std::vector<TrimBatch> batches;
  for (const Trim& trim : job.trims) {
    std::set<std::string> colours;
    for (const TrimPiece& piece : takeoff.pieces) {
      if (piece.trim == trim.id) colours.insert(piece.colour);
    }
    for (const std::string& colour : colours) {
      TrimBatch batch;
      batch.trim = trim.id;
      batch.colour = colour;
      cut(batch, trim, job.settings, partsOf(takeoff, trim.id, colour), options);
      batches.push_back(std::move(batch));
    }
  }
  return batches;
}

double trimKilograms(const Trim& trim, Length length) {
  return sheetKilograms(trim.girth.inMillimetres(), length, trim.thickness, coatingGramsPerSquareMetre);
}

}  // namespace ribwright
