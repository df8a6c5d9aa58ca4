// Jobs that ship inside the program.
#include <catch2/catch.hpp>
#include <filesystem>

#include "core/job/job_file.h"
#include "core/job/sample_jobs.h"

using namespace ribwright;

TEST_CASE("every sample job ships, as its file has it") {
  std::size_t files = 0;
  for (const auto& entry : std::filesystem::directory_iterator(RIBWRIGHT_ROOT "/sample-jobs")) {
    if (entry.path().extension() != ".json") continue;
    ++files;
    CHECK(sampleJob(entry.path().filename().string()) == loadJob(entry.path().string()).value());
  }
  CHECK(files > 0);
  CHECK(sampleNames().size() == files);
  CHECK_THROWS_AS(sampleJob("none"), std::logic_error);
}
