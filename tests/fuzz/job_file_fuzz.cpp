// Any job that may stand in a file reads back as it was written, byte for byte; any damaged file is read or refused in
// words, and what is read is written to a fixed point.
#include <catch2/catch.hpp>
#include <map>
#include <set>
#include <string>
#include <vector>

#include "core/job/job_file.h"
#include "core/job/job_file_tree.h"
#include "tests/fuzz/random_building.h"
#include "tests/fuzz/random_job.h"

namespace ribwright::fuzz {
namespace {

constexpr std::uint64_t kFileSeed = 20'251'124;

std::string linesOf(const std::vector<Fault>& faults) {
  std::string lines;
  for (const Fault& fault : faults) lines += oneLine(fault) + "\n";
  return lines;
}

// Marks "wall.girts" for every key that stands in a written job, walking it beside the schema.
class KeysSeen {
 public:
  explicit KeysSeen(const JsonNode& schema) : types_(*schema.find("$defs")) {
    for (std::size_t i = 0; i < types_.items.size(); ++i) {
      const JsonNode* properties = types_.items[i].find("properties");
      if (!properties) continue;
      for (const std::string& key : properties->keys) never_.insert(types_.keys[i] + "." + key);
    }
  }

  void object(const JsonNode& node, const std::string& type) {
    const JsonNode& properties = *types_.find(type)->find("properties");
    for (std::size_t i = 0; i < node.keys.size(); ++i) {
      never_.erase(type + "." + node.keys[i]);
      const JsonNode* property = properties.find(node.keys[i]);
      REQUIRE(property);
      value(node.items[i], *property);
    }
  }
  const std::set<std::string>& never() const { return never_; }

 private:
  void value(const JsonNode& node, const JsonNode& schema) {
    if (node.is == JsonNode::Is::List) {
      for (const JsonNode& item : node.items) value(item, *schema.find("items"));
    } else if (node.is == JsonNode::Is::Object) {
      object(node, schema.find("$ref")->text.substr(std::string("#/$defs/").size()));
    }
  }

  const JsonNode& types_;
  std::set<std::string> never_;
};

}  // namespace

TEST_CASE("2000 jobs with every field filled read back as they were written, and write the same bytes again") {
  for (int index = 0; index < 2000; ++index) {
    INFO("seed " << kFileSeed << ", job " << index);
    const Job job = filledJob(kFileSeed, index);
    const std::string text = writeJob(job);
    const auto read = readJob(text, "job.json");
    if (!read) FAIL(linesOf(read.faults()));
    REQUIRE(read.value() == job);
    REQUIRE(writeJob(read.value()) == text);
  }
}

TEST_CASE("the jobs of this test leave no key of the schema out") {
  const auto schema = readJson(jobSchema(), "schema");
  REQUIRE(schema);
  KeysSeen keys(schema.value().root);
  REQUIRE(keys.never().size() > 200);
  for (int index = 0; index < 2000; ++index) {
    const auto tree = readJson(writeJob(filledJob(kFileSeed, index)), "job.json");
    REQUIRE(tree);
    keys.object(tree.value().root, "job");
  }
  for (const std::string& key : keys.never()) UNSCOPED_INFO(key << " was never written");
  CHECK(keys.never().empty());
}

TEST_CASE("1000 buildings, and what edits make of them, are saved and read") {
  for (int index = 0; index < 1000; ++index) {
    INFO("seed " << kSeed << ", building " << index);
    Dice dice(kFileSeed, index);
    Job job = randomJob(kSeed, index);
    for (int edit = 0; edit < 4 && !job.walls.empty(); ++edit) {
      const auto read = readJob(writeJob(job), "job.json");
      if (!read) FAIL(linesOf(read.faults()));
      REQUIRE(read.value() == job);
      job = edited(job, dice);
    }
  }
}

namespace {

// The smallest pieces of JSON text: texts, numbers and words, single signs; blanks are left out.
std::vector<std::string> tokensOf(const std::string& text) {
  std::vector<std::string> tokens;
  for (std::size_t at = 0; at < text.size();) {
    std::size_t end = at + 1;
    const std::string_view signs = "{}[],: \n";
    if (text[at] == '"') {
      while (text[end] != '"') end += text[end] == '\\' ? 2 : 1;
      ++end;
    } else if (signs.find(text[at]) == std::string_view::npos) {
      while (signs.find(text[end]) == std::string_view::npos) ++end;
    }
    if (text[at] != ' ' && text[at] != '\n') tokens.push_back(text.substr(at, end - at));
    at = end;
  }
  return tokens;
}

const std::vector<std::string> kStrange{
    "null",  "true",        "-1",        "0",       "1e9999",      "9223372036854775808",
    "1.5",   "\"\"",        "\"0\"",     "\"-1'\"", "\"10000 m\"", "\"10001 m\"",
    "{}",    "[]",          "[[[[[[]",   "\"A\"",   "\"0:12\"",    "\"89.5 deg\"",
    "\"7\"", "\"\\ud800\"", "\"g\\n1\"", "360",     "\"1/0'\"",    "\"1 nm\"",
    ",",     "\"gable\"",   "1e2",       "-0",      "\"\xff\"",    "\"typed\""};

std::string withTokensChanged(const std::string& text, Dice& dice) {
  std::vector<std::string> tokens = tokensOf(text);
  for (int changes = dice.small(1, 3); changes > 0; --changes) {
    const auto at = static_cast<std::size_t>(dice.between(0, static_cast<std::int64_t>(tokens.size()) - 1));
    const auto place = tokens.begin() + static_cast<std::ptrdiff_t>(at);
    switch (dice.between(0, 3)) {
      case 0:
        *place = dice.of(kStrange);
        break;
      case 1:
        *place = std::string(dice.of(tokens));
        break;
      case 2:
        tokens.erase(place);
        break;
      default:
        tokens.insert(place, std::string(dice.of(tokens)));
    }
    if (tokens.empty()) break;
  }
  std::string changed;
  for (const std::string& token : tokens) changed += token + " ";
  return changed;
}

std::string withBytesChanged(std::string text, Dice& dice) {
  for (int changes = dice.small(1, 4); changes > 0; --changes) {
    text[static_cast<std::size_t>(dice.between(0, static_cast<std::int64_t>(text.size()) - 1))] =
        static_cast<char>(dice.between(0, 255));
  }
  return text;
}

// A line, which is often a whole member, stands once more or is gone.
std::string withLineChanged(const std::string& text, Dice& dice) {
  const auto from =
      text.rfind('\n', static_cast<std::size_t>(dice.between(0, static_cast<std::int64_t>(text.size()) - 2)));
  if (from == std::string::npos) return text;
  const auto to = text.find('\n', from + 1);
  const std::string line = text.substr(from, to - from);
  return dice.oneIn(2) ? text.substr(0, to) + line + text.substr(to) : text.substr(0, from) + text.substr(to);
}

std::string damaged(const std::string& text, Dice& dice) {
  switch (dice.between(0, 5)) {
    case 0:
      return text.substr(0, static_cast<std::size_t>(dice.between(0, static_cast<std::int64_t>(text.size()) - 1)));
    case 1:
      return withBytesChanged(text, dice);
    case 2:
      return withLineChanged(text, dice);
    default:
      return withTokensChanged(text, dice);
  }
}

void refusedInWords(const std::vector<Fault>& faults) {
  REQUIRE_FALSE(faults.empty());
  for (const Fault& fault : faults) {
    INFO(fault.place << " / " << fault.message);
    REQUIRE((fault.place == "job.json" || fault.place.starts_with("job.json: ")));
    REQUIRE_FALSE(fault.message.empty());
    REQUIRE(oneLine(fault).find('\n') == std::string::npos);
    // What it quotes of the file is sound text: it can be shown and filed.
    const auto filed = readJson(jsonText(JsonNode::ofText(fault.place + fault.message)), "words");
    REQUIRE(filed);
    REQUIRE(filed.value().root.text == fault.place + fault.message);
  }
}

}  // namespace

TEST_CASE("12000 damaged files are refused in words, or read and written to a fixed point") {
  int accepted = 0, refused = 0;
  for (int index = 0; index < 12'000; ++index) {
    INFO("seed " << kFileSeed << ", damage " << index);
    Dice dice(kFileSeed + 1, index);
    const std::string text = damaged(writeJob(filledJob(kFileSeed, index % 400)), dice);
    const auto read = readJob(text, "job.json");
    if (!read) {
      ++refused;
      refusedInWords(read.faults());
      continue;
    }
    ++accepted;
    const std::string written = writeJob(read.value());
    const auto again = readJob(written, "job.json");
    if (!again) FAIL(linesOf(again.faults()));
    REQUIRE(again.value() == read.value());
    REQUIRE(writeJob(again.value()) == written);
  }
  // Both roads were gone often enough to mean something.
  CHECK(accepted > 500);
  CHECK(refused > 5000);
}

}  // namespace ribwright::fuzz
