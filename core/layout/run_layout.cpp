#include "core/layout/run_layout.h"

#include <algorithm>
#include <set>

#include "core/layout/end_laps.h"
#include "core/layout/legs.h"
#include "core/layout/pieces.h"
#include "core/layout/run_cells.h"
#include "core/layout/sheet_run.h"

namespace ribwright {

namespace {

class RunWork {
 public:
  RunWork(const RunTask& task, Length offset) : task_(task) {
    rules_.length = task.frame.length();
    rules_.cover = task.profile->cover;
    rules_.over = task.profile->over;
    rules_.under = task.profile->under;
    rules_.reachStart = task.reachStart;
    rules_.reachEnd = task.reachEnd;
    rules_.offset = offset;
    face_.bottom = task.frame.toHanging(task.face->bottom);
    face_.top = task.frame.toHanging(task.face->top);
    face_.floor = task.floor;
    face_.ceiling = task.ceiling;
    face_.lapRise = task.wall->endLaps.lap;
    blank_.increment = task.profile->lengths.increment;
    blank_.allowance = task.wall->rakeCut == RakeCut::InPlace ? task.job->settings.rakeAllowance : Length();
    takeCuts();
  }

  RunResult work() {
    cover();
    if (takeHungSheets()) cover();
    while (passOverBetweenHung()) cover();
    if (divide()) cover();
    return result();
  }

 private:
  void takeCuts() {
    for (std::size_t i = 0; i < task_.cuts->size(); ++i) {
      const CutRegion& cut = (*task_.cuts)[i];
      const Length a = task_.frame.toHanging(cut.left), b = task_.frame.toHanging(cut.right);
      face_.cuts.push_back({static_cast<int>(i), std::min(a, b), std::max(a, b), task_.frame.toHanging(cut.lower),
                            task_.frame.toHanging(cut.upper), cut.reachesFloor});
    }
    std::stable_sort(face_.cuts.begin(), face_.cuts.end(),
                     [](const RunCut& a, const RunCut& b) { return a.from < b.from; });
    for (const RunCut& cut : face_.cuts) {
      const CutRegion& region = (*task_.cuts)[static_cast<std::size_t>(cut.cut)];
      if (!region.round) straight_.push_back({cut.cut, cut.from, cut.to, region.bottom, region.top, cut.reachesFloor});
    }
  }

  void cover() {
    face_.modules = modulesOf(rules_);
    face_.from = Length();
    face_.to = rules_.length;
    for (const RunModule& module : face_.modules) {
      face_.from = std::min(face_.from, module.from);
      face_.to = std::max(face_.to, module.to);
    }
    face_.strips = legStrips(face_.modules, straight_);
    face_.notHung.clear();
    countLaps();
    cells_ = runCells(face_);
    leaveOutNeedless();
    reachOnlyWhereHung();
  }

  // A piece that adds no uncovered face is not hung; what it lapped may then be needed itself.
  void leaveOutNeedless() {
    for (auto slabs = needlessPiece(cells_.sheets, face_.modules); !slabs.empty();
         slabs = needlessPiece(cells_.sheets, face_.modules)) {
      face_.notHung.insert(slabs.begin(), slabs.end());
      cells_ = runCells(face_);
    }
  }

  // The face grows around a corner only as far as sheets that are hung reach.
  void reachOnlyWhereHung() {
    Length from, to = rules_.length;
    for (const SheetCells& sheet : cells_.sheets) {
      const RunModule& module = face_.modules[static_cast<std::size_t>(sheet.module)];
      from = std::min(from, module.from);
      to = std::max(to, module.to);
    }
    if (from == face_.from && to == face_.to) return;
    face_.from = from;
    face_.to = to;
    // Columns are counted anew: what was left out is found again.
    face_.notHung.clear();
    cells_ = runCells(face_);
    leaveOutNeedless();
  }

  // Measured leading edges belong to sheets by hanging number; modules lost in an opening have none. Between two sheets
  // of consecutive numbers that hang nothing comes.
  bool takeHungSheets() {
    int number = task_.firstNumber, lastHung = -1;
    std::vector<bool> holds(face_.modules.size(), false);
    for (const SheetCells& sheet : cells_.sheets) holds[static_cast<std::size_t>(sheet.module)] = true;
    std::set<int> lost;
    for (std::size_t k = 0; k < holds.size(); ++k) {
      if (!holds[k]) {
        lost.insert(static_cast<int>(k));
        continue;
      }
      const auto edge = hungEdge(number);
      if (edge) rules_.leadingEdges[static_cast<int>(k)] = *edge;
      if (edge && lastHung == number - 1) between_.insert(lost.begin(), lost.end());
      if (edge) lastHung = number;
      lost.clear();
      ++number;
    }
    return !rules_.leadingEdges.empty();
  }

  // True when a sheet would come between two that hang and follow each other.
  bool passOverBetweenHung() {
    bool found = false;
    for (const SheetCells& sheet : cells_.sheets) {
      const int place = face_.modules[static_cast<std::size_t>(sheet.module)].place;
      if (between_.contains(place)) found = rules_.passedOver.insert(place).second || found;
    }
    return found;
  }

  // t of the measured leading edge of the sheet of this number.
  std::optional<Length> hungEdge(int number) const {
    const std::string mark = task_.wall->letter + std::to_string(number);
    for (const HungSheet& hung : task_.job->facts.hung) {
      if (hung.mark == mark) return task_.frame.toHanging(hung.leadingEdge);
    }
    return std::nullopt;
  }

  Length longestPiece() const { return longestOrder(task_.profile->lengths) - blank_.allowance; }

  // z extent of a module, openings left aside.
  std::pair<Length, Length> extent(const RunModule& module) const {
    Length low = face_.bottom.lowest(module.from, module.to), high = face_.top.highest(module.from, module.to);
    if (face_.floor) low = std::max(low, *face_.floor);
    if (face_.ceiling) high = std::min(high, *face_.ceiling);
    return {low, high};
  }

  // True when some sheet has to lap end over end.
  bool divide() {
    const EndLaps& laps = task_.wall->endLaps;
    if (laps.where == EndLaps::Where::None || cells_.sheets.empty()) return false;
    const auto rows = lapRows(*task_.wall, task_.job->members, task_.frame.left, task_.frame.right);
    if (laps.where == EndLaps::Where::AtGirts) {
      for (const Length row : rows) face_.lapEnds.push_back(row - laps.endBelowRow);
      return !face_.lapEnds.empty();
    }
    Length low, high;
    for (const SheetCells& sheet : cells_.sheets) {
      const RunModule& module = face_.modules[static_cast<std::size_t>(sheet.module)];
      for (const Piece& piece : piecesOf(sheet, module, task_.frame, blank_)) {
        if (piece.blankLength <= task_.profile->lengths.longest) continue;
        tooLong_.insert(sheet.module);
        const auto [bottom, top] = extent(module);
        low = tooLong_.size() == 1 ? bottom : std::min(low, bottom);
        high = tooLong_.size() == 1 ? top : std::max(high, top);
      }
    }
    if (tooLong_.empty()) return false;
    face_.lapEnds = lapEndsWhereNeeded(laps, rows, low, high, longestPiece());
    return !face_.lapEnds.empty();
  }

  void countLaps() {
    face_.laps.assign(face_.modules.size(), 0);
    if (face_.lapEnds.empty()) return;
    const EndLaps& laps = task_.wall->endLaps;
    for (std::size_t k = 0; k < face_.modules.size(); ++k) {
      const auto [bottom, top] = extent(face_.modules[k]);
      if (laps.where == EndLaps::Where::AtGirts) {
        // Every girt named divides the sheets that reach well past it.
        const Length lowTop = lowestTop(face_.modules[k]);
        while (static_cast<std::size_t>(face_.laps[k]) < face_.lapEnds.size() &&
               face_.lapEnds[static_cast<std::size_t>(face_.laps[k])] + laps.lap < lowTop) {
          ++face_.laps[k];
        }
      } else if (tooLong_.contains(static_cast<int>(k))) {
        face_.laps[k] = lapsNeeded(laps, face_.lapEnds, bottom, top, longestPiece());
      }
    }
  }

  Length lowestTop(const RunModule& module) const {
    const Length low = face_.top.lowest(module.from, module.to);
    return face_.ceiling ? std::min(low, *face_.ceiling) : low;
  }

  RunResult result() const {
    RunResult result;
    SheetRun& run = result.run;
    const HangingFrame& frame = task_.frame;
    run.band = task_.band;
    run.left = frame.left;
    run.right = frame.right;
    run.offset = rules_.offset;
    const Length one = frame.toFace(face_.from), other = frame.toFace(face_.to);
    run.faceLeft = std::min(one, other);
    run.faceRight = std::max(one, other);
    run.bottom = task_.face->bottom;
    run.top = task_.face->top;
    run.floor = task_.floor;
    run.ceiling = task_.ceiling;
    run.lapEnds = face_.lapEnds;
    run.face = cells_.face;
    run.cut = cells_.cut;
    run.net = cells_.net;
    run.laps = cells_.laps;
    run.pieces = cells_.pieces;
    run.uncovered = cells_.uncovered;
    result.pieces.reserve(cells_.sheets.size() + 2 * task_.cuts->size());
    run.modules.reserve(face_.modules.size());
    auto sheet = cells_.sheets.begin();
    for (std::size_t k = 0; k < face_.modules.size(); ++k) {
      const bool holds = sheet != cells_.sheets.end() && sheet->module == static_cast<int>(k);
      if (!holds && !face_.modules[k].hung) continue;  // a sheet that hangs keeps its place and its number
      run.modules.push_back(moduleOf(k, run.modules.size()));
      for (; sheet != cells_.sheets.end() && sheet->module == static_cast<int>(k); ++sheet) {
        for (Piece& piece : piecesOf(*sheet, face_.modules[k], frame, blank_)) {
          piece.module = static_cast<int>(run.modules.size()) - 1;
          result.pieces.push_back(std::move(piece));
        }
      }
    }
    return result;
  }

  Module moduleOf(std::size_t k, std::size_t place) const {
    const RunModule& from = face_.modules[k];
    const HangingFrame& frame = task_.frame;
    Module module;
    module.number = task_.firstNumber + static_cast<int>(place);
    module.startLine = frame.toFace(from.line);
    module.leadLine = frame.toFace(from.lead);
    const Length one = frame.toFace(from.from), other = frame.toFace(from.to);
    module.metalLeft = std::min(one, other);
    module.metalRight = std::max(one, other);
    module.hung = from.hung;
    module.tiered = face_.laps[k] > 0;
    module.startRipped = from.from != from.wholeFrom;
    module.leadRipped = from.to != from.wholeTo;
    const auto& translucent = task_.wall->bands[static_cast<std::size_t>(task_.band)].translucent;
    module.translucent =
        std::find(translucent.begin(), translucent.end(), static_cast<int>(place) + 1) != translucent.end();
    return module;
  }

  const RunTask& task_;
  RunRules rules_;
  RunFace face_;
  BlankRules blank_;
  std::vector<StraightCut> straight_;
  std::set<int> tooLong_;
  std::set<int> between_;  // modules lost in an opening between two sheets that hang and follow each other
  RunCells cells_;
};

}  // namespace

RunResult layOutRun(const RunTask& task, Length offset) { return RunWork(task, offset).work(); }

}  // namespace ribwright
