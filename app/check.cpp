#include "app/commands.h"
#include "core/output/paper_age.h"
#include "core/output/tables.h"

namespace ribwright {
namespace {

// grade id wall mark: where: why -> do [source]
std::string findingLine(const Finding& finding, const Words& words, const LengthStyle& style) {
  const FindingText text = findingText(finding, style, words);
  std::string line = gradeWord(finding.grade) + " " + finding.id;
  if (!finding.wall.empty()) line += " " + finding.wall;
  if (!finding.mark.empty()) line += " " + finding.mark;
  line += ": " + text.where + ": " + text.why + " -> " + text.remedy;
  if (!finding.source.empty()) line += " [" + finding.source + "]";
  return line + "\n";
}

// Whether the page is current, where one was asked for; one that is older is the first finding.
Outcome<std::string> pageLine(const Request& request, const Words& words, PlannedJob& planned) {
  if (request.fingerprint.empty()) return std::string();
  const auto age = paperAge(planned.job, request.fingerprint);
  if (!age) return age.faults();
  if (age.value().older) planned.plan.findings.insert(planned.plan.findings.begin(), *age.value().older);
  return ageText(age.value(), words) + "\n";
}

}  // namespace

int printFindings(const Request& request) {
  auto planned = readAndPlan(request);
  if (!planned) return refuse(planned.faults());
  const Words& words = wordsOf(request);
  const auto page = pageLine(request, words, planned.value());
  if (!page) return refuse(page.faults());
  std::string text = page.value();
  const Plan& plan = planned.value().plan;
  for (const Finding& finding : plan.findings) text += findingLine(finding, words, planned.value().style);
  return print(text + gradeCounts(plan) + "\n", plan);
}

}  // namespace ribwright
