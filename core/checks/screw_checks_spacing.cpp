// Screws and rows of screws farther apart, and end laps shorter, than the set of limits allows that the plans go by.
#include <algorithm>
#include <map>

#include "core/checks/screw_words.h"
#include "core/fastening/spacing_limits.h"
#include "core/job/by_id.h"

namespace ribwright {
namespace {

const ScrewPattern* patternOf(const WallLook& look, std::size_t run) {
  if (run >= look.holes.patterns.size() || look.holes.patterns[run].otherProfile) return nullptr;
  return byId(look.job.patterns, look.holes.patterns[run].pattern);
}

// By how many times a space is wider than its limit.
bool isWorse(Length space, Length limit, Length than, Length itsLimit) {
  return Int128(space.nanometres()) * itsLimit.nanometres() > Int128(than.nanometres()) * limit.nanometres();
}

void checkSpaces(const WallLook& look, std::vector<Finding>& findings) {
  const WideSpace* worst = nullptr;
  for (const WideSpace& space : look.holes.wideSpaces) {
    if (!worst || isWorse(space.to - space.from, space.limit, worst->to - worst->from, worst->limit)) worst = &space;
  }
  if (!worst) return;
  const auto run = static_cast<std::size_t>(worst->run);
  const ScrewPattern* pattern = patternOf(look, run);
  const std::int64_t fewest = fewestPerCover(look.runs.at(run).profile->cover, worst->limit);
  findings.push_back(
      look.finding(Grade::Look, "screw-spacing", "",
                   {{"row", rowWords(look.holes.supports, worst->kind, worst->row)},
                    {"at", worst->at},
                    {"from", worst->from},
                    {"to", worst->to},
                    {"space", worst->to - worst->from},
                    {"limit", worst->limit},
                    {"count", std::int64_t(look.holes.wideSpaces.size())},
                    {"remedy", worst->kind == HoleKind::Stitch ? phrase("screws.closer-stitches")
                                                               : phrase("screws.fewest", {{"count", fewest}})}},
                   pattern ? spacingLimits(*pattern).source : ""));
}

// Heights of one row's screws on one sheet; rows of structural screws only.
struct RowSpan {
  Length low, high;
};
using RowsOfPiece = std::map<std::int32_t, RowSpan>;

std::vector<RowsOfPiece> rowsByPiece(const WallLook& look) {
  std::vector<RowsOfPiece> all(look.layout.pieces.size());
  for (const Hole& hole : look.holes.holes) {
    if (hole.kind == HoleKind::Jamb || hole.kind == HoleKind::Stitch) continue;
    for (int i = 0; i < hole.sheets; ++i) {
      const auto piece = static_cast<std::size_t>(hole.pieces[static_cast<std::size_t>(i)]);
      const auto [at, fresh] = all.at(piece).try_emplace(hole.row, RowSpan{hole.z, hole.z});
      if (fresh) continue;
      at->second.low = std::min(at->second.low, hole.z);
      at->second.high = std::max(at->second.high, hole.z);
    }
  }
  return all;
}

struct RowGap {
  const Piece* piece = nullptr;
  Length from, to, limit;
  std::string source;
};

struct RowGaps {
  RowGap worst;             // widest space between rows over the limit
  std::int64_t sheets = 0;  // how many have one
  RowGap bare;              // a sheet without a row between top and bottom
};

// From sheet end to sheet end: where a sheet has no row near its end, the space to it counts.
void lookAtPiece(const Piece& piece, const RowsOfPiece& rows, const SpacingLimits& limits, RowGaps& gaps) {
  const Length limit = *limits.betweenRows;
  std::vector<RowSpan> spans = {{piece.bottom, piece.bottom}};
  for (const auto& [row, span] : rows) spans.push_back(span);
  spans.push_back({piece.top, piece.top});
  std::sort(spans.begin(), spans.end(), [](const RowSpan& a, const RowSpan& b) { return a.low < b.low; });
  bool over = false;
  for (std::size_t i = 1; i < spans.size(); ++i) {
    const Length space = spans[i].high - spans[i - 1].low;
    if (space <= limit) continue;
    over = true;
    if (!gaps.worst.piece || space > gaps.worst.to - gaps.worst.from)
      gaps.worst = {&piece, spans[i - 1].low, spans[i].high, limit, limits.source};
  }
  gaps.sheets += over;
  if (rows.size() < 3 && !piece.above && !piece.below && !gaps.bare.piece)
    gaps.bare = {&piece, piece.bottom, piece.top, limit, limits.source};
}

void checkRows(const WallLook& look, std::vector<Finding>& findings) {
  RowGaps gaps;
  const auto rows = rowsByPiece(look);
  for (std::size_t i = 0; i < look.layout.pieces.size(); ++i) {
    const Piece& piece = look.layout.pieces[i];
    const ScrewPattern* pattern = patternOf(look, static_cast<std::size_t>(piece.run));
    if (!pattern || !pattern->spacingApproval.empty() || rows[i].empty()) continue;
    const SpacingLimits limits = spacingLimits(*pattern);
    if (limits.betweenRows) lookAtPiece(piece, rows[i], limits, gaps);
  }
  const bool wide = gaps.worst.piece != nullptr;
  const RowGap& gap = wide ? gaps.worst : gaps.bare;
  if (!gap.piece) return;
  findings.push_back(look.finding(Grade::Look, wide ? "rows-too-far-apart" : "no-row-between", "",
                                  {{"sheet", gap.piece->mark},
                                   {"from", gap.from},
                                   {"to", gap.to},
                                   {"space", gap.to - gap.from},
                                   {"limit", gap.limit},
                                   {"count", gaps.sheets},
                                   {"fewest", rowsBetween(gap.piece->top - gap.piece->bottom, gap.limit)}},
                                  gap.source));
}

// Such as a rip so narrow that no offset falls on it.
void checkSheetsHeld(const WallLook& look, std::vector<Finding>& findings) {
  std::vector<bool> held(look.layout.pieces.size(), false);
  for (const Hole& hole : look.holes.holes) {
    for (int i = 0; i < hole.sheets; ++i)
      held.at(static_cast<std::size_t>(hole.pieces[static_cast<std::size_t>(i)])) = true;
  }
  std::vector<std::string> marks;
  for (std::size_t i = 0; i < held.size(); ++i) {
    const Piece& piece = look.layout.pieces[i];
    if (!held[i] && patternOf(look, static_cast<std::size_t>(piece.run))) marks.push_back(piece.mark);
  }
  if (marks.empty()) return;
  findings.push_back(look.finding(
      Grade::Look, "sheet-without-screws", "",
      {{"sheets", phrase(marks.size() == 1 ? "screws.sheet" : "screws.sheets", {{"marks", listed(marks)}})},
       {"count", std::int64_t(marks.size())}},
      "common practice"));
}

void checkEndLapLength(const WallLook& look, std::vector<Finding>& findings) {
  for (std::size_t i = 0; i < look.runs.size(); ++i) {
    const SheetRun& run = *look.runs[i].run;
    const bool laps = std::any_of(run.modules.begin(), run.modules.end(), [](const Module& m) { return m.tiered; });
    const ScrewPattern* pattern = patternOf(look, i);
    if (!laps || !pattern) continue;
    const SpacingLimits limits = spacingLimits(*pattern);
    if (!limits.endLap || look.wall.endLaps.lap >= *limits.endLap) continue;
    findings.push_back(look.finding(Grade::Look, "end-lap-short", "",
                                    {{"lap", look.wall.endLaps.lap}, {"limit", *limits.endLap}}, limits.source));
    return;
  }
}

}  // namespace

void checkScrewSpacing(const WallLook& look, std::vector<Finding>& findings) {
  checkSpaces(look, findings);
  checkRows(look, findings);
  checkSheetsHeld(look, findings);
  checkEndLapLength(look, findings);
}

}  // namespace ribwright
