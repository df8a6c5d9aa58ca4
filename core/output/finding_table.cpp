#include "core/output/tables.h"

namespace ribwright {

std::string gradeWord(Grade grade) {
  switch (grade) {
    case Grade::Stop:
      return "stop";
    case Grade::Look:
      return "look";
    case Grade::Note:
      return "note";
  }
  return "";
}

FindingText findingText(const Finding& finding, const LengthStyle& style) {
  const Words& words = Words::of("en");
  const std::string id = "finding." + finding.id;
  const WordValues values = finding.said();
  return {words.say(id + ".where", finding.said(), style), words.say(id + ".why", finding.said(), style),
          words.say(id + ".do", finding.said(), style)};
}

Table findingTable(const Plan& plan, const LengthStyle& style) {
  Table table;
  table.columns = {"grade", "id", "wall", "mark", "where", "why", "do", "source"};
  for (const Finding& finding : plan.findings) {
    const FindingText text = findingText(finding, style);
    table.rows.push_back({gradeWord(finding.grade), finding.id, finding.wall, finding.mark, text.where, text.why,
                          text.remedy, finding.source});
  }
  return table;
}

}  // namespace ribwright
