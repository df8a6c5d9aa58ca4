// Files of example patterns: what is read, what is refused and in which words, and those that ship.
#include "core/job/pattern_file.h"

#include <catch2/catch.hpp>

#include "core/job/job_file.h"
#include "core/words/embedded.h"

using namespace ribwright;

namespace {

const std::string kScrews =
    R"("screws": [{"id": "12-14x1.25", "diameter": "0.216\"", "washer": "1/2\"", "length": "1-1/4\""},
                  {"id": "14-14x0.875", "diameter": "1/4\"", "length": "7/8\""}])";

std::string fileOf(const std::string& pattern, const std::string& screws = kScrews) {
  return "{\"pattern\": {" + pattern + "}, " + screws + "}";
}

std::vector<std::string> linesAboutPattern(const std::string& text) {
  std::vector<std::string> lines;
  const auto read = readPattern(text, "p.json");
  if (read) return lines;
  for (const Fault& fault : read.faults()) lines.push_back(oneLine(fault));
  return lines;
}

}  // namespace

TEST_CASE("a pattern file holds one pattern and the screws that it names") {
  const auto read = readPattern(
      fileOf(
          R"("id": "beside the ribs", "profile": "rib-36", "rows": [{"support": "base", "offsets": ["2\"", "254 mm"], "screw": "12-14x1.25"}], "stitch_spacing": "18\"", "stitch_screw": "14-14x0.875")"),
      "p.json");
  REQUIRE(read.ok());
  const ScrewPattern& pattern = read.value().pattern;
  CHECK(pattern.id == "beside the ribs");
  CHECK(pattern.profile == "rib-36");
  CHECK(pattern.example);
  REQUIRE(pattern.rows.size() == 1);
  CHECK(pattern.rows[0].support == SupportKind::Base);
  CHECK(pattern.rows[0].offsets == std::vector<Length>{Length::inches(2), Length::inches(10)});
  CHECK(pattern.stitchSpacing == Length::inches(18));
  REQUIRE(read.value().screws.size() == 2);
  CHECK(read.value().screws[1].diameter == Length::inches(0, 16));
}

TEST_CASE("every fault of a pattern file is told, each with its place") {
  struct Faulty {
    std::string what, text;
    std::vector<std::string> lines;
  };
  const std::vector<Faulty> files = {
      {"nothing in it",
       "{}",
       {"p.json: pattern: is missing: the hole pattern", "p.json: screws: is missing: screws that the pattern names"}},
      {"no JSON at all",
       "{\"pattern\": ",
       {"p.json: line 1, column 13: the text ends too early; is a bracket or a quote missing?"}},
      {"screws that are not there",
       fileOf(R"("id": "q", "rows": [{"screw": "12-14x1.25"}, {"screw": "12-24x1.25"}], "stitch_screw": "14-14x0.87")"),
       {R"(p.json: pattern.stitch_screw: "14-14x0.87" is none of this file's screws; the nearest is "14-14x0.875")",
        R"(p.json: pattern.rows[1].screw: "12-24x1.25" is none of this file's screws; the nearest is "12-14x1.25")"}},
      {"no screw, and the same twice",
       fileOf(R"("id": "q", "rows": [{"screw": "12"}])", R"("screws": [])"),
       {"p.json: screws: needs at least 1 items and has 0"}},
      {"one id for two screws",
       fileOf(
           R"("id": "q")",
           R"("screws": [{"id": "s", "diameter": "5 mm", "length": "1\""}, {"id": "s", "diameter": "6 mm", "length": "1\""}])"),
       {R"(p.json: screws[1].id: "s" is taken already by screws[0]; each needs its own)"}},
      {"unknown keys, bare numbers, wrong words",
       fileOf(
           R"("id": "q", "row": [], "rows": [{"support": "bottom", "offsets": [2, "-1\""]}], "stitch_spacing": "0\"")"),
       {"p.json: pattern.rows[0].support: \"bottom\" is none of these: \"base\", \"girt\", \"eave\", \"rake\", "
        "\"jamb\", \"head\", \"sill\", \"end lap\"",
        "p.json: pattern.rows[0].offsets[0]: 2 is a bare number; write a length as text with its unit, as \"7' 6\\\"\" "
        "or \"2286 mm\"",
        R"(p.json: pattern.rows[0].offsets[1]: "-1"" is out of range; it may be from 0 to 10 km)",
        R"(p.json: pattern.stitch_spacing: "0"" is out of range; it may be more than 0, at most 10 km)",
        R"(p.json: pattern.row: is no key of this file; the nearest is "rows")"}},
      {"a key twice",
       fileOf(R"("id": "q", "id": "r")"),
       {"p.json: pattern.id: stands twice in one object; keep one of the two"}},
  };
  for (const Faulty& file : files) {
    INFO(file.what);
    const auto lines = linesAboutPattern(file.text);
    CHECK(lines == file.lines);
  }
}

TEST_CASE("every file of resources/patterns ships, for each shipped profile one, as an example that nobody confirmed") {
  std::size_t files = 0;
  for (const EmbeddedFile& file : embeddedFiles()) {
    if (!file.name.starts_with("patterns/")) continue;
    ++files;
    const auto read = readPattern(file.text, file.name);
    REQUIRE(read.ok());
    INFO(file.name);
    CHECK("patterns/" + read.value().pattern.id + ".json" == file.name);
    CHECK(file.text.find("\"example\": true") != std::string_view::npos);
  }
  CHECK(files == shippedPatterns().size());
  for (const Profile& profile : shippedProfiles()) {
    INFO(profile.id);
    std::size_t patterns = 0;
    for (const PatternExample& example : shippedPatterns()) patterns += example.pattern.profile == profile.id ? 1 : 0;
    CHECK(patterns >= 1);
  }
  for (const PatternExample& example : shippedPatterns()) {
    INFO(example.pattern.id);
    CHECK(example.pattern.example);
    CHECK_FALSE(example.pattern.confirmation);
  }
}
