// Faulty job files and the lines that the reader must say about them.
#pragma once

#include <catch2/catch.hpp>
#include <string>
#include <vector>

#include "core/job/job_file.h"

namespace ribwright {

struct FaultyFile {
  std::string what, text;
  std::vector<std::string> lines;  // without "job.json: " in front
};

// A job with these members; one wall, or one profile, with these members.
inline std::string jobOf(const std::string& members) {
  return R"({"ribwright": 1, "units": "feet and inches", )" + members + "}";
}
inline std::string wallOf(const std::string& members) {
  return jobOf(R"("walls": [{"letter": "A", "bands": [{}], )" + members + "}]");
}
inline std::string profileOf(const std::string& members) {
  return jobOf(R"("profiles": [{"id": "p", )" + members + "}]");
}

inline std::vector<std::string> linesAbout(const std::string& text) {
  std::vector<std::string> lines;
  const auto job = readJob(text, "job.json");
  if (job) return lines;
  for (const Fault& fault : job.faults()) lines.push_back(oneLine(fault));
  return lines;
}

inline void refusesEach(const std::vector<FaultyFile>& files) {
  for (const FaultyFile& file : files) {
    INFO(file.what);
    std::vector<std::string> expected;
    for (const std::string& line : file.lines) expected.push_back("job.json: " + line);
    CHECK(linesAbout(file.text) == expected);
  }
}

}  // namespace ribwright
