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

FindingText findingText(const Finding& finding, const LengthStyle& style, const Words& words) {
  const std::string id = "finding." + finding.id;
  const WordValues values = finding.said();
  return {words.say(id + ".where", values, style), words.say(id + ".why", values, style),
          words.say(id + ".do", values, style)};
}

Table findingTable(const Plan& plan, const LengthStyle& style, const Words& words) {
  Table table;
  table.columns = {"grade", "id", "wall", "mark", "where", "why", "do", "source"};
  for (const Finding& finding : plan.findings) {
    const FindingText text = findingText(finding, style, words);
    table.rows.push_back({gradeWord(finding.grade), finding.id, finding.wall, finding.mark, text.where, text.why,
                          text.remedy, finding.source});
  }
  return table;
}

}  // namespace ribwright
