// Batches that no survey clears, and screw lines that would not be straight.
#include <algorithm>
#include <map>

#include "core/checks/batch_words.h"
#include "core/checks/screw_words.h"
#include "core/checks/wall_look.h"
#include "core/layout/wall_face.h"

namespace ribwright {
namespace {

// Remedies of one reason, cheapest first: "... Or: ... Or: ...".
WordValue remediesOf(const DrillBatch& batch, std::size_t reason) {
  std::optional<Phrase> all;
  for (const Remedy& remedy : batch.remedies) {
    if (static_cast<std::size_t>(remedy.reason) != reason) continue;
    Phrase one = whatToDo(batch, remedy);
    all = all ? Phrase{"remedy.or", {{"one", *all}, {"other", std::move(one)}}} : std::move(one);
  }
  return all ? WordValue(*all) : WordValue(std::string());
}

// A screw of a girt's row, where it will be drilled.
struct Driven {
  Length u, z;
};

// By girt row and bay, from the left.
using Lines = std::map<std::pair<std::int32_t, std::size_t>, std::vector<Driven>>;

Lines linesOf(const WallLook& look) {
  const std::vector<Length> columns = columnsOf(look.wall.columns);
  Lines lines;
  for (const DrillBatch& batch : look.batches) {
    if (!batch.isCleared()) continue;
    for (const BatchRow& row : batch.rows) {
      if (row.key.kind != HoleKind::Girt) continue;
      for (const std::int32_t index : row.holes) {
        const Hole& hole = look.holes.holes[static_cast<std::size_t>(index)];
        const std::int32_t upper = hole.pieces[static_cast<std::size_t>(hole.upper)];
        if (!std::binary_search(batch.pieces.begin(), batch.pieces.end(), upper)) continue;
        const auto bay = std::upper_bound(columns.begin(), columns.end(), hole.u) - columns.begin();
        lines[{hole.row, static_cast<std::size_t>(bay)}].push_back(
            {hole.u, look.layout.pieces[static_cast<std::size_t>(upper)].bottom + row.s});
      }
    }
  }
  for (auto& [at, line] : lines)
    std::sort(line.begin(), line.end(), [](const Driven& a, const Driven& b) { return a.u < b.u; });
  return lines;
}

Length above(const std::vector<Driven>& line, const Driven& one) {
  const Driven &first = line.front(), &last = line.back();
  return one.z - HeightLine({{first.u, first.z}, {last.u, last.z}}).heightAt(one.u, Beside::Right);
}

}  // namespace

void checkBatches(const WallLook& look, std::vector<Finding>& findings) {
  for (const DrillBatch& batch : look.batches) {
    for (std::size_t i = 0; i < batch.reasons.size(); ++i) {
      const HoldReason& reason = batch.reasons[i];
      const bool row = reason.why == HoldReason::Why::RowDoesNotHold || reason.why == HoldReason::Why::RowNearHole;
      if (!row) continue;
      const std::string& mark = look.layout.pieces[static_cast<std::size_t>(batch.pieces.front())].mark;
      findings.push_back(look.finding(Grade::Look, "batch-row-held", mark,
                                      {{"batch", batch.id},
                                       {"sheets", sheetsOf(batch, look.layout)},
                                       {"why", whyHeld(batch, reason)},
                                       {"do", remediesOf(batch, i)}},
                                      "AISI S100-16 (1.5 d); common practice (drift)"));
      findings.back().part = "row " + std::to_string(reason.row + 1);
    }
  }
}

// UFGS 07413: screw lines straight within 1/2 in; here per girt and bay, from the line through the bay's end holes.
void checkStraightness(const WallLook& look, std::vector<Finding>& findings) {
  for (const auto& [at, line] : linesOf(look)) {
    if (line.front().u == line.back().u) continue;
    const auto worst = std::max_element(line.begin(), line.end(), [&](const Driven& a, const Driven& b) {
      return absolute(above(line, a)) < absolute(above(line, b));
    });
    const Length off = above(line, *worst);
    if (absolute(off) <= look.job.settings.straightness) continue;
    const std::string& girt = look.holes.supports.rows[static_cast<std::size_t>(at.first)].id;
    findings.push_back(look.finding(Grade::Look, "screw-line-crooked", girt,
                                    {{"girt", girt},
                                     {"off", absolute(off)},
                                     {"u", worst->u},
                                     {"side", phrase(off < Length() ? "survey.low" : "survey.high")},
                                     {"do", phrase(off < Length() ? "survey.straighten.up" : "survey.straighten.down")},
                                     {"limit", look.job.settings.straightness}},
                                    "UFGS 07413"));
    findings.back().part = "bay " + std::to_string(at.second);
  }
}

}  // namespace ribwright
