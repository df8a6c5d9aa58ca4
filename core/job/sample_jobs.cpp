#include "core/job/sample_jobs.h"

#include <stdexcept>

#include "core/job/job_file.h"
#include "core/words/embedded.h"

namespace ribwright {

namespace {

constexpr std::string_view folder = "sample-jobs/";

}  // namespace

std::vector<std::string_view> sampleNames() {
  std::vector<std::string_view> names;
  for (const EmbeddedFile& file : embeddedFiles()) {
    if (file.name.starts_with(folder)) names.push_back(file.name.substr(folder.size()));
  }
  return names;
}

Job sampleJob(std::string_view name) {
  for (const EmbeddedFile& file : embeddedFiles()) {
    if (!file.name.starts_with(folder) || file.name.substr(folder.size()) != name) continue;
    auto job = readJob(file.text, name);
    if (!job) throw std::logic_error(oneLine(job.faults().front()));  // the program itself is broken
    return std::move(job).value();
  }
  throw std::logic_error(std::string(name) + " is no sample");
}

}  // namespace ribwright
