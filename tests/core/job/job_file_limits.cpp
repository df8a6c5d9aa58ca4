// What a hostile or broken file may hold at most (core/job/job_file_tree.h). Each limit is tried at its edge: the last
// that passes it, and one more.
#include <catch2/catch.hpp>

#include "core/job/job_file_tree.h"
#include "tests/core/job/job_file_faulty.h"

namespace ribwright {
namespace {

std::string repeated(const std::string& item, std::size_t times, const std::string& between = ", ") {
  std::string text;
  for (std::size_t i = 0; i < times; ++i) text += (i > 0 ? between : "") + item;
  return text;
}

std::vector<std::string> linesAboutTree(const std::string& text) {
  std::vector<std::string> lines;
  const auto tree = readJson(text, "job.json");
  if (tree) return lines;
  for (const Fault& fault : tree.faults()) lines.push_back(oneLine(fault));
  return lines;
}

using Lines = std::vector<std::string>;

}  // namespace

TEST_CASE("a list of 10 000 items is read, one of 10 001 is refused by its place") {
  const auto bays = [](std::size_t count) {
    return wallOf(R"("columns": {"bays": [)" + repeated(R"("20'")", count) + "]}");
  };
  const auto job = readJob(bays(10'000), "job.json");
  REQUIRE(job);
  CHECK(job.value().walls[0].columns.bays.size() == 10'000);
  CHECK(linesAbout(bays(10'001)) ==
        Lines{"job.json: walls[0].columns.bays: has more than 10000 items; divide the job"});
}

TEST_CASE("32 levels are read, 33 are refused") {
  CHECK(linesAboutTree(std::string(32, '[') + std::string(32, ']')).empty());
  std::string place = "job.json: ";
  for (int level = 0; level < 32; ++level) place += "[0]";
  CHECK(linesAboutTree(std::string(33, '[') + std::string(33, ']')) ==
        Lines{place + ": lies deeper than 32 levels; a job has not so many"});
  // Far beyond, the parse stops at the same place.
  CHECK(linesAboutTree(std::string(5'000'000, '[')) ==
        Lines{place + ": lies deeper than 32 levels; a job has not so many"});
}

TEST_CASE("an object has at most 200 keys") {
  std::string members;
  for (int key = 0; key < 200; ++key) members += (key > 0 ? ", \"k" : "\"k") + std::to_string(key) + "\": 0";
  CHECK(linesAboutTree("{\"site\": {" + members + "}}").empty());
  CHECK(linesAboutTree("{\"site\": {" + members + ", \"k200\": 0}}") ==
        Lines{"job.json: site: has more than 200 keys; no table of a job has so many"});
}

TEST_CASE("a file has at most a million values, however they are divided") {
  const std::string list = "[" + repeated("0", 9'999, ",") + "]";  // 10 000 values with itself
  CHECK(linesAboutTree("[" + repeated(list, 99, ",") + "]").empty());
  CHECK(linesAboutTree("[" + repeated(list, 101, ",") + "]") ==
        Lines{"job.json: has more than 1000000 values; a job has not so many"});
}

TEST_CASE("64 MiB are read, one byte more is refused") {
  std::string text = jobOf(R"("name": "Barn")");
  text.resize(mostBytes, ' ');
  CHECK(linesAbout(text).empty());
  CHECK(linesAbout(text + ' ') == Lines{"job.json: is larger than 64 MiB; no job is so large"});
}

TEST_CASE("of very many faults the first 10 000 are told and the rest is counted") {
  const std::string girts = repeated(R"({"id": "", "height": 1})", 6'000);
  const Lines lines = linesAbout(wallOf("\"girts\": [" + girts + "]"));
  REQUIRE(lines.size() == 10'001);
  CHECK(lines.front() == "job.json: walls[0].girts[0].id: is empty; it needs a name");
  CHECK(lines.back() == "job.json: has 2000 more faults; mend these first");
}

}  // namespace ribwright
