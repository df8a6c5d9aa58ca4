// JSON text as a tree, and back: strict about what a careless or hostile file may hold.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/units/outcome.h"

namespace ribwright {

// What a file may hold at most; more is refused while it is being read, before it is stored.
inline constexpr std::size_t mostBytes = std::size_t{64} << 20;
inline constexpr std::size_t mostLevels = 32;
inline constexpr std::size_t mostItems = 10'000;      // in one list
inline constexpr std::size_t mostKeys = 200;          // in one object
inline constexpr std::size_t mostValues = 1'000'000;  // in one file
inline constexpr std::size_t mostFaults = 10'000;     // told about one file; the rest is counted

struct JsonNode {
  enum class Is { Null, Flag, Number, Text, List, Object };
  Is is = Is::Null;
  bool flag = false;
  std::string text;               // of Text; of Number as it stands in the file
  std::vector<JsonNode> items;    // of List and Object
  std::vector<std::string> keys;  // of Object, parallel to items

  static JsonNode ofFlag(bool flag);
  static JsonNode ofNumber(std::string digits);
  static JsonNode ofText(std::string_view text);
  static JsonNode list();
  static JsonNode object();
  // Adds a member at the end and returns the object.
  JsonNode& with(std::string_view key, JsonNode value);
  const JsonNode* find(std::string_view key) const;
};

struct JsonTree {
  JsonNode root;
  std::vector<Fault> doubled;  // keys that stand twice in one object (the first mostFaults); the first was kept
};

// `name` begins every fault's place: "job.json: walls[1].letter". Faults: no JSON (with line and column), too big, too
// deep, too long a list, a number out of range.
Outcome<JsonTree> readJson(std::string_view text, std::string_view name);

// Two blanks a level; what is short and simple stands on one line of at most 120 characters. Ends with a new line.
std::string jsonText(const JsonNode& root);

}  // namespace ribwright
