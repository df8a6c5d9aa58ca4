#include "app/commands.h"

#include <algorithm>
#include <cstdio>

#include "core/job/job_file.h"
#include "core/output/tables.h"

namespace ribwright {

Outcome<PlannedJob> readAndPlan(const Request& request) {
  auto read = loadJob(request.job);
  if (!read) return read.faults();
  PlannedJob planned{std::move(read).value(), {}, {}};
  planned.plan = plan(planned.job);
  planned.style = {request.units.value_or(planned.job.units), planned.job.decimalSign};
  return planned;
}

const Words& wordsOf(const Request& request) { return Words::of(request.language.empty() ? "en" : request.language); }

std::string gradeCounts(const Plan& plan) {
  std::string text;
  for (const Grade grade : {Grade::Stop, Grade::Look, Grade::Note}) {
    const auto count = std::count_if(plan.findings.begin(), plan.findings.end(),
                                     [grade](const Finding& finding) { return finding.grade == grade; });
    text += (text.empty() ? "" : ", ") + gradeWord(grade) + " " + std::to_string(count);
  }
  return text;
}

int print(const std::string& text, const Plan& plan) { return print(text, plan.hasStop() ? exitStops : exitDone); }

int print(const std::string& text, int code) {
  const bool whole = std::fwrite(text.data(), 1, text.size(), stdout) == text.size() && std::fflush(stdout) == 0;
  if (whole) return code;
  return refuse({{"standard output", "takes no more; is the disk full, or the program after the pipe gone?"}});
}

int refuse(const std::vector<Fault>& faults) {
  std::string text;
  for (const Fault& fault : faults) text += oneLine(fault) + "\n";
  std::fwrite(text.data(), 1, text.size(), stderr);
  return exitRefused;
}

int printOrder(const Request& request) {
  const auto planned = readAndPlan(request);
  if (!planned) return refuse(planned.faults());
  const auto& [job, plan, style] = planned.value();
  return print(csvText(sheetOrderTable(plan, style.units), job.settings.byteOrderMark), plan);
}

}  // namespace ribwright
