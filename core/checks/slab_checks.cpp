// The slab edge as it was measured, against where sheets end.
#include "core/checks/common_practice.h"
#include "core/checks/screw_words.h"
#include "core/checks/wall_look.h"
#include "core/fastening/chalk_snaps.h"

namespace ribwright {
namespace {

Finding openPlace(const WallLook& look, const ChalkSnaps& snaps, std::size_t index) {
  const OpenEdge& open = snaps.open[index];
  const ChalkRun& run = snaps.runs[static_cast<std::size_t>(open.run)];
  const Length mark = tapeMark(look.job.units);
  const WordValues remedy = {{"line", run.line}, {"lower", open.end - run.line}};
  Finding finding = look.finding(
      Grade::Look, "slab-edge-open", "",
      {{"place", phrase("slab.place", {{"from", roundTo(open.from, mark)}, {"to", roundTo(open.to, mark)}})},
       {"why", phrase("slab.open", {{"end", open.end}, {"by", open.by}, {"at", roundTo(open.at, mark)}})},
       {"do", phrase(run.onLedge ? "slab.ledge" : "slab.snap", remedy)}},
      kCommon);
  finding.part = "place " + std::to_string(index + 1);
  return finding;
}

void addShortSheets(const WallLook& look, const ChalkSnaps& snaps, std::vector<Finding>& findings) {
  std::vector<std::string> marks;
  Length by;
  for (const ShortSheet& sheet : shortOfLine(look.job, look.wall, look.layout, snaps)) {
    marks.push_back(look.layout.pieces[static_cast<std::size_t>(sheet.piece)].mark);
    by = std::max(by, sheet.by);
  }
  if (marks.empty()) return;
  findings.push_back(
      look.finding(Grade::Note, "sheets-short-of-slab", "", {{"sheets", listed(marks)}, {"by", by}}, kCommon));
}

}  // namespace

// An overhang of nothing is open everywhere by the plans alone (checkLowerEnds).
void checkSlabEdge(const WallLook& look, std::vector<Finding>& findings) {
  const Base& base = look.wall.base;
  if (base.form == Base::Form::Overhang && base.drop <= Length()) return;
  const auto snaps = chalkSnaps(look.job, look.wall, look.layout);
  if (!snaps || snaps->open.empty()) return;
  for (std::size_t i = 0; i < snaps->open.size(); ++i) findings.push_back(openPlace(look, *snaps, i));
  addShortSheets(look, *snaps, findings);
}

}  // namespace ribwright
