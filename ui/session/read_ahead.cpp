#include "ui/session/read_ahead.h"

#include "core/words/words.h"

namespace ribwright {

ReadJob readAndPlan(const QString& path, const Plan& previous) {
  JobOnDisk file;
  Outcome<Job> job = file.read(path);
  std::shared_ptr<const Plan> planned;
  if (job) planned = std::make_shared<const Plan>(plan(job.value(), previous));
  return {std::move(file), std::move(job), std::move(planned)};
}

std::future<ReadJob> readAhead(const QString& path, const std::string& language) {
  return std::async(std::launch::async, [path, language] {
    ReadJob read = readAndPlan(path);
    Words::of(language);
    return read;
  });
}

}  // namespace ribwright
