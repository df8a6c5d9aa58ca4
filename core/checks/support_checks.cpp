// Steel behind the sheets: girts within the sheet's span, behind band limits and end laps.
#include <algorithm>

#include "core/checks/screw_words.h"
#include "core/checks/wall_look.h"
#include "core/job/by_id.h"
#include "core/layout/girt_row.h"

namespace ribwright {

namespace {

std::vector<Length> rowsOf(const WallLook& look) {
  std::vector<Length> rows;
  for (const Girt& girt : look.wall.girts) rows.push_back(girtFace(girt, look.job.members).row);
  std::sort(rows.begin(), rows.end());
  return rows;
}

void checkSpans(const WallLook& look, const std::vector<Length>& rows, const RunLook& one,
                std::vector<Finding>& findings) {
  if (!one.profile->longestSpan) return;
  const Length limit = *one.profile->longestSpan;
  const SheetRun& run = *one.run;
  const Length low =
      std::max(run.bottom.lowest(run.left, run.right), run.floor.value_or(run.bottom.lowest(run.left, run.right)));
  const Length high =
      std::min(run.top.highest(run.left, run.right), run.ceiling.value_or(run.top.highest(run.left, run.right)));
  Length below = low;
  int count = 0;
  const auto span = [&](Length above) {
    ++count;
    if (above - below > limit) {
      findings.push_back(look.finding(Grade::Look, "span-too-long", "",
                                      {{"from", below}, {"to", above}, {"limit", limit}},
                                      "the sheet's longest span as stated"));
      findings.back().part = "span " + std::to_string(count);
    }
    below = above;
  };
  for (const Length row : rows) {
    if (row > low && row < high) span(row);
  }
  span(high);
}

void checkBandLimits(const WallLook& look, const std::vector<Length>& rows, std::vector<Finding>& findings) {
  for (std::size_t i = 1; i < look.wall.bands.size(); ++i) {
    const Band& band = look.wall.bands[i];
    if (!band.from) continue;
    const Length reach = Length::inches(6);  // sheet ends this near to a row can be screwed to it; common practice
    const bool held = std::any_of(rows.begin(), rows.end(),
                                  [&](Length row) { return row > *band.from - reach && row < *band.from + reach; });
    if (held) continue;
    findings.push_back(look.finding(Grade::Look, "sheet-end-unsupported", "band " + std::to_string(i + 1),
                                    {{"z", *band.from}}, "common practice"));
  }
}

void checkEndLaps(const WallLook& look, std::vector<Finding>& findings) {
  if (look.wall.endLaps.where != EndLaps::Where::AtGirts) return;
  for (const std::string& id : look.wall.endLaps.girts) {
    const Girt* girt = byId(look.wall.girts, id);
    const bool whole = girt && !girt->from && !girt->to;
    if (!whole) findings.push_back(look.finding(Grade::Stop, "end-lap-off-girt", id, {{"girt", id}}, "UFGS 07413"));
  }
}

}  // namespace

void checkSupports(const WallLook& look, std::vector<Finding>& findings) {
  if (!look.layout.sheeted) return;
  if (look.wall.girts.empty()) findings.push_back(look.finding(Grade::Look, "no-girts", "", {}, ""));
  const auto rows = rowsOf(look);
  for (const RunLook& one : look.runs) {
    if (!rows.empty()) checkSpans(look, rows, one, findings);
  }
  if (!rows.empty()) checkBandLimits(look, rows, findings);
  checkEndLaps(look, findings);
}

void checkLowerEnds(const WallLook& look, std::vector<Finding>& findings) {
  if (!look.layout.sheeted) return;
  const Base& base = look.wall.base;
  const WallFace& face = look.layout.face;
  const Length lowest = face.bottom.lowest(Length(), face.width);
  if (base.grade && lowest - *base.grade < look.job.settings.gradeClearance) {
    findings.push_back(look.finding(Grade::Look, "sheet-end-near-grade", "",
                                    {{"gap", lowest - *base.grade}, {"limit", look.job.settings.gradeClearance}},
                                    "common practice"));
  }
  if (base.form == Base::Form::Overhang && base.drop <= Length()) {
    findings.push_back(look.finding(Grade::Look, "slab-edge-open", "",
                                    {{"place", std::string()},
                                     {"why", phrase("slab.no-drop", {{"drop", base.drop}})},
                                     {"do", phrase("slab.overhang")}},
                                    "common practice"));
  }
}

}  // namespace ribwright
