// What was measured on site, against the plans and against what drilling asks for.
#include <algorithm>
#include <map>

#include "core/checks/common_practice.h"
#include "core/checks/screw_words.h"
#include "core/checks/wall_look.h"
#include "core/fastening/batch_reasons.h"
#include "core/fastening/measured_faces.h"
#include "core/job/by_id.h"

namespace ribwright {
namespace {

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
  const bool clip = mayMove(girt, absolute(shift));
  return std::string("survey.").append(clip ? "move" : "ask").append(shift < Length() ? ".up" : ".down");
}

void checkHeights(const WallLook& look, std::vector<Finding>& findings) {
  for (const GirtSurvey& survey : look.wall.survey.girts) {
    const Girt* girt = byId(look.wall.girts, survey.girt);
    if (!girt) continue;
    Length worst, at;
    for (const GirtReading& reading : survey.readings) {
      const Length shift = shiftOf(look.wall, look.layout, reading, girt->height);
      if (absolute(shift) <= absolute(worst)) continue;
      worst = shift;
      at = reading.u;
    }
    if (absolute(worst) <= mostGirtMove) continue;
    const char* side = worst < Length() ? "survey.low" : "survey.high";
    findings.push_back(look.finding(Grade::Look, "girt-off-plan", girt->id,
                                    {{"girt", girt->id},
                                     {"off", absolute(worst)},
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
      findings.push_back(look.finding(
          Grade::Stop, std::string(chalkFinding), "",
          {{"by", absolute(reason.by)}, {"side", phrase(reason.by < Length() ? "survey.low" : "survey.high")}},
          kCommon));
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
