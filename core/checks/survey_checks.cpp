// What was measured on site, against the plans and against what drilling asks for.
#include <algorithm>
#include <map>

#include "core/checks/screw_words.h"
#include "core/checks/wall_look.h"
#include "core/fastening/batch_reasons.h"
#include "core/fastening/measured_faces.h"
#include "core/job/by_id.h"

namespace ribwright {
namespace {

constexpr const char* kCommon = "common practice";

bool isMeasured(const WallSurvey& survey, const std::string& girt) {
  return std::any_of(survey.girts.begin(), survey.girts.end(),
                     [&](const GirtSurvey& one) { return one.girt == girt && !one.readings.empty(); });
}

void checkNames(const WallLook& look, std::vector<Finding>& findings) {
  for (const GirtSurvey& survey : look.wall.survey.girts) {
    if (survey.girt == eaveSurveyId || byId(look.wall.girts, survey.girt)) continue;
    findings.push_back(look.finding(Grade::Look, "survey-girt-unknown", survey.girt, {{"girt", survey.girt}}, ""));
  }
}

// From where to where batches wait for readings of each girt.
void checkReach(const WallLook& look, std::vector<Finding>& findings) {
  std::map<std::string, std::pair<Length, Length>> waiting;
  for (const DrillBatch& batch : look.batches) {
    for (const HoldReason& reason : batch.reasons) {
      if (reason.why != HoldReason::Why::NotMeasured) continue;
      const auto [at, fresh] = waiting.try_emplace(reason.name, reason.from, reason.to);
      if (fresh) continue;
      at->second = {std::min(at->second.first, reason.from), std::max(at->second.second, reason.to)};
    }
  }
  std::vector<std::string> missing;
  for (const auto& [girt, reach] : waiting) {
    if (!isMeasured(look.wall.survey, girt)) {
      missing.push_back(girt);
      continue;
    }
    findings.push_back(look.finding(Grade::Look, "survey-out-of-reach", girt,
                                    {{"girt", girt}, {"from", reach.first}, {"to", reach.second}}, kCommon));
  }
  if (missing.empty()) return;
  findings.push_back(look.finding(Grade::Note, "survey-missing", "", {{"girts", listed(missing)}}, kCommon));
}

// How a girt that stands this far above (positive) its typed height is brought back.
std::string remedyOf(const Girt& girt, Length shift) {
  const Length by = shift < Length() ? -shift : shift;
  const bool clip = girt.clipSlot && by <= *girt.clipSlot && by <= mostGirtMove;
  return std::string("survey.").append(clip ? "move" : "ask").append(shift < Length() ? ".up" : ".down");
}

void checkHeights(const WallLook& look, std::vector<Finding>& findings) {
  for (const GirtSurvey& survey : look.wall.survey.girts) {
    const Girt* girt = byId(look.wall.girts, survey.girt);
    if (!girt) continue;
    Length worst, at;
    for (const GirtReading& reading : survey.readings) {
      const Length shift = chalkLineAt(look.wall, look.layout, reading.u) + reading.height - girt->height;
      const Length now = shift < Length() ? -shift : shift, before = worst < Length() ? -worst : worst;
      if (now <= before) continue;
      worst = shift;
      at = reading.u;
    }
    const Length off = worst < Length() ? -worst : worst;
    if (off <= mostGirtMove) continue;
    const char* side = worst < Length() ? "survey.low" : "survey.high";
    findings.push_back(look.finding(Grade::Look, "girt-off-plan", girt->id,
                                    {{"girt", girt->id},
                                     {"off", off},
                                     {"u", at},
                                     {"side", phrase(side)},
                                     {"do", phrase(remedyOf(*girt, worst), {{"limit", mostGirtMove}})}},
                                    kCommon));
  }
}

void checkChalk(const WallLook& look, std::vector<Finding>& findings) {
  for (const DrillBatch& batch : look.batches) {
    for (const HoldReason& reason : batch.reasons) {
      if (reason.why != HoldReason::Why::Chalk) continue;
      const bool low = reason.by < Length();
      findings.push_back(look.finding(
          Grade::Stop, "chalk-off-sheets", "",
          {{"by", low ? -reason.by : reason.by}, {"side", phrase(low ? "survey.below" : "survey.above")}}, kCommon));
      return;
    }
  }
}

}  // namespace

void checkSurvey(const WallLook& look, std::vector<Finding>& findings) {
  checkNames(look, findings);
  checkReach(look, findings);
  checkHeights(look, findings);
  checkChalk(look, findings);
}

}  // namespace ribwright
