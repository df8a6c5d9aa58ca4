#include "core/job/job_file_tree.h"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <optional>
#include <utility>

#include "core/job/job_file_joined.h"
#include "core/job/job_file_text.h"

namespace ribwright {

JsonNode JsonNode::ofFlag(bool flag) {
  JsonNode node;
  node.is = Is::Flag;
  node.flag = flag;
  return node;
}
JsonNode JsonNode::ofNumber(std::string digits) {
  JsonNode node;
  node.is = Is::Number;
  node.text = std::move(digits);
  return node;
}
JsonNode JsonNode::ofText(std::string_view text) {
  JsonNode node;
  node.is = Is::Text;
  node.text = text;
  return node;
}
JsonNode JsonNode::list() {
  JsonNode node;
  node.is = Is::List;
  return node;
}
JsonNode JsonNode::object() {
  JsonNode node;
  node.is = Is::Object;
  return node;
}
JsonNode& JsonNode::with(std::string_view key, JsonNode value) {
  keys.emplace_back(key);
  items.push_back(std::move(value));
  return *this;
}
const JsonNode* JsonNode::find(std::string_view key) const {
  const auto found = std::find(keys.begin(), keys.end(), key);
  return found == keys.end() ? nullptr : &items[static_cast<std::size_t>(found - keys.begin())];
}

namespace {

using Json = nlohmann::json;

// "line 3, column 5" of a byte; columns count characters.
std::string lineAndColumn(std::string_view text, std::size_t byte) {
  const std::string_view before = text.substr(0, std::min(byte, text.size()));
  const auto lines = std::count(before.begin(), before.end(), '\n');
  const auto lineStart = before.rfind('\n') + 1;  // npos + 1 is 0
  return joined("line ", lines + 1, ", column ", characterCount(before.substr(lineStart)) + 1);
}

// Builds the tree while the text is being parsed, so that a limit stops the parse before its memory is spent.
class TreeBuilder : public nlohmann::json_sax<Json> {
 public:
  TreeBuilder(std::string_view text, std::string_view name) : text_(text), name_(name) {}

  bool null() override { return put(JsonNode{}); }
  bool boolean(bool flag) override { return put(JsonNode::ofFlag(flag)); }
  bool number_integer(number_integer_t whole) override { return put(JsonNode::ofNumber(std::to_string(whole))); }
  bool number_unsigned(number_unsigned_t whole) override { return put(JsonNode::ofNumber(std::to_string(whole))); }
  bool number_float(number_float_t, const string_t& digits) override { return put(JsonNode::ofNumber(digits)); }
  bool string(string_t& text) override { return put(JsonNode::ofText(text)); }
  bool binary(binary_t&) override { return false; }  // not in JSON text
  bool start_object(std::size_t) override { return open(JsonNode::object()); }
  bool start_array(std::size_t) override { return open(JsonNode::list()); }
  bool end_object() override { return close(); }
  bool end_array() override { return close(); }

  bool key(string_t& key) override {
    Open& object = open_.back();
    object.key = key;
    object.doubled = object.node.find(key) != nullptr;
    if (object.doubled && tree_.doubled.size() < mostFaults)
      tree_.doubled.push_back({place(), "stands twice in one object; keep one of the two"});
    if (object.node.keys.size() < mostKeys) return true;
    return refuse(parentPlace(), joined("has more than ", mostKeys, " keys; no table of a job has so many"));
  }

  bool parse_error(std::size_t byte, const std::string& token, const Json::exception& error) override {
    if (error.id == 406)
      return refuse(placeOf(byte), "the number " + token.substr(0, 40) + " is out of range; write a smaller one");
    if (byte > text_.size()) return refuse(placeOf(byte), "the text ends too early; is a bracket or a quote missing?");
    return refuse(placeOf(byte - std::min<std::size_t>(byte, 1)),
                  "this is no JSON; look at this place and just before it for a comma, a quote or a bracket");
  }

  Outcome<JsonTree> tree() && {
    if (refusal_) return *refusal_;
    return std::move(tree_);
  }

 private:
  struct Open {
    JsonNode node;
    std::string key;
    bool doubled = false;  // the key stood before: the value is read and let go
  };

  bool put(JsonNode node) {
    if (++values_ > mostValues) {
      return refuse(std::string(name_), joined("has more than ", mostValues, " values; a job has not so many"));
    }
    if (open_.empty()) {
      tree_.root = std::move(node);
      return true;
    }
    Open& parent = open_.back();
    if (parent.node.is == JsonNode::Is::Object) {
      if (!parent.doubled) parent.node.with(parent.key, std::move(node));
      return true;
    }
    if (parent.node.items.size() == mostItems) {
      return refuse(parentPlace(), joined("has more than ", mostItems, " items; divide the job"));
    }
    parent.node.items.push_back(std::move(node));
    return true;
  }

  bool open(JsonNode node) {
    if (open_.size() == mostLevels) {
      return refuse(place(), joined("lies deeper than ", mostLevels, " levels; a job has not so many"));
    }
    open_.push_back({std::move(node), {}, false});
    return true;
  }

  bool close() {
    JsonNode done = std::move(open_.back().node);
    open_.pop_back();
    return put(std::move(done));
  }

  // "job.json: walls[1].girts[3].height" of what is being read, or of the list or object around it.
  std::string place() const { return placeTo(open_.size()); }
  std::string parentPlace() const { return placeTo(open_.size() - 1); }
  std::string placeTo(std::size_t levels) const {
    std::string path;
    for (std::size_t i = 0; i < levels; ++i) {
      const Open& level = open_[i];
      if (level.node.is == JsonNode::Is::List) {
        path += itemPath("", level.node.items.size());
      } else {
        path += joined(path.empty() ? "" : ".", pathKey(level.key));
      }
    }
    return path.empty() ? std::string(name_) : std::string(name_) + ": " + path;
  }
  std::string placeOf(std::size_t byte) const { return std::string(name_) + ": " + lineAndColumn(text_, byte); }

  bool refuse(std::string place, std::string message) {
    refusal_ = Fault{std::move(place), std::move(message)};
    return false;
  }

  std::string_view text_, name_;
  std::vector<Open> open_;
  JsonTree tree_;
  std::size_t values_ = 0;
  std::optional<Fault> refusal_;
};

constexpr std::size_t longestLine = 120;

std::string scalarText(const JsonNode& node) {
  switch (node.is) {
    case JsonNode::Is::Flag:
      return node.flag ? "true" : "false";
    case JsonNode::Is::Number:
      return node.text;
    case JsonNode::Is::Text:
      return Json(node.text).dump(-1, ' ', false, Json::error_handler_t::replace);
    default:
      return "null";
  }
}

bool isScalar(const JsonNode& node) { return node.is != JsonNode::Is::List && node.is != JsonNode::Is::Object; }

std::string keyWritten(const JsonNode& object, std::size_t i) {
  return scalarText(JsonNode::ofText(object.keys[i])) + ": ";
}

// All on one line; empty when that is longer than `room`, or hard to read: objects in a list, or lists and objects
// deeper than one level.
std::string lineWritten(const JsonNode& node, std::size_t room, int levels) {
  if (isScalar(node)) return scalarText(node);
  const bool object = node.is == JsonNode::Is::Object;
  std::string line = object ? "{" : "[";
  for (std::size_t i = 0; i < node.items.size(); ++i) {
    const JsonNode& item = node.items[i];
    if (!isScalar(item) && (levels == 0 || !object)) return {};
    if (i > 0) line += ", ";
    if (object) line += keyWritten(node, i);
    const std::string text = lineWritten(item, room, levels - 1);
    line += text;
    if (text.empty() || line.size() + 1 > room) return {};
  }
  return line += object ? '}' : ']';
}

void append(std::string& text, const JsonNode& node, std::size_t indent, std::size_t used) {
  if (isScalar(node)) {
    text += scalarText(node);
    return;
  }
  const std::string line = lineWritten(node, longestLine - std::min(used, longestLine), 1);
  if (!line.empty()) {
    text += line;
    return;
  }
  const bool object = node.is == JsonNode::Is::Object;
  text += object ? "{" : "[";
  for (std::size_t i = 0; i < node.items.size(); ++i) {
    text += i > 0 ? ",\n" : "\n";
    text.append(indent + 2, ' ');
    const std::string key = object ? keyWritten(node, i) : std::string();
    text += key;
    append(text, node.items[i], indent + 2, indent + 2 + key.size());
  }
  text += "\n" + std::string(indent, ' ') + (object ? "}" : "]");
}

}  // namespace

Outcome<JsonTree> readJson(std::string_view text, std::string_view name) {
  if (text.size() > mostBytes) return Fault{std::string(name), "is larger than 64 MiB; no job is so large"};
  TreeBuilder builder(text, name);
  Json::sax_parse(text.begin(), text.end(), &builder);
  return std::move(builder).tree();
}

std::string jsonText(const JsonNode& root) {
  std::string text;
  append(text, root, 0, 0);
  return text + "\n";
}

}  // namespace ribwright
