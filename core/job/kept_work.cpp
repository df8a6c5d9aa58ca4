#include "core/job/kept_work.h"

#include <algorithm>
#include <array>
#include <charconv>

#include "core/job/digest.h"
#include "core/job/job_file_joined.h"
#include "core/job/job_file_text.h"
#include "core/job/job_file_tree.h"

namespace ribwright {
namespace {

constexpr std::size_t longestPath = 4096, longestHost = 255;  // bytes
constexpr std::string_view format = "1";

bool isHex(std::string_view text, std::size_t digits) {
  return text.size() == digits && text.find_first_not_of("0123456789abcdef") == std::string_view::npos;
}

bool isLine(std::string_view text, std::size_t most) {
  return text.size() <= most && text.find('\0') == std::string_view::npos;
}

// "2026-03-02T16:05:09Z", by its form.
bool isMoment(std::string_view text) {
  constexpr std::string_view form = "0000-00-00T00:00:00Z";
  return std::equal(text.begin(), text.end(), form.begin(), form.end(),
                    [](char c, char like) { return like == '0' ? c >= '0' && c <= '9' : c == like; });
}

constexpr std::array<std::string_view, 10> allKeys{"ribwright_kept", "file",   "file_digest", "kept",       "host",
                                                   "process",        "window", "number",      "job_digest", "job"};

// Takes members out of the one object, and lists what is wrong with them.
class KeptReader {
 public:
  KeptReader(const JsonTree& tree, std::string_view name) : root_(tree.root), name_(name), faults_(tree.doubled) {
    for (const std::string& key : root_.keys) {
      if (std::find(allKeys.begin(), allKeys.end(), key) == allKeys.end())
        wrong(key, "is no key of kept work; leave it out");
    }
  }

  template <class Holds>
  std::string textOf(std::string_view key, std::string_view wanted, const Holds& holds) {
    return take(key, JsonNode::Is::Text, wanted, holds);
  }

  std::uint64_t numberOf(std::string_view key) {
    std::uint64_t number = 0;
    take(key, JsonNode::Is::Number, "a whole number", [&number](const std::string& digits) {
      const char* end = digits.data() + digits.size();
      const auto [stop, error] = std::from_chars(digits.data(), end, number);
      return error == std::errc() && stop == end;
    });
    return number;
  }

  const std::vector<Fault>& faults() const { return faults_; }

  void wrong(std::string_view key, std::string_view message) {
    faults_.push_back({joined(name_, ": ", key), std::string(message)});
  }

 private:
  template <class Holds>
  std::string take(std::string_view key, JsonNode::Is is, std::string_view wanted, const Holds& holds) {
    const JsonNode* node = root_.find(key);
    if (node && node->is == is && holds(node->text)) return node->text;
    wrong(key, joined(node ? "is not what it should be" : "is missing", "; it is ", wanted));
    return {};
  }

  const JsonNode& root_;
  std::string_view name_;
  std::vector<Fault> faults_;
};

KeptWork take(KeptReader& reader) {
  KeptWork kept;
  kept.file =
      reader.textOf("file", "a path or nothing", [](const std::string& text) { return isLine(text, longestPath); });
  kept.fileDigest =
      reader.textOf("file_digest", "64 hexadecimal digits, or nothing without a file",
                    [&](const std::string& text) { return kept.file.empty() ? text.empty() : isHex(text, 64); });
  kept.when = reader.textOf("kept", "a moment as 2026-03-02T16:05:09Z", isMoment);
  kept.host =
      reader.textOf("host", "a computer's name", [](const std::string& text) { return isLine(text, longestHost); });
  kept.process = reader.numberOf("process");
  kept.window = reader.textOf("window", "16 hexadecimal digits", isWindowId);
  kept.number = reader.numberOf("number");
  const std::string digest =
      reader.textOf("job_digest", "16 hexadecimal digits", [](const std::string& text) { return isHex(text, 16); });
  kept.job = reader.textOf("job", "the text that was kept, whole",
                           [&](const std::string& text) { return fnv1a64(text) == digest; });
  return kept;
}

}  // namespace

bool isWindowId(std::string_view text) { return isHex(text, 16); }

std::string keptText(const KeptWork& kept) {
  JsonNode root = JsonNode::object();
  root.with("ribwright_kept", JsonNode::ofNumber(std::string(format)))
      .with("file", JsonNode::ofText(kept.file))
      .with("file_digest", JsonNode::ofText(kept.fileDigest))
      .with("kept", JsonNode::ofText(kept.when))
      .with("host", JsonNode::ofText(kept.host))
      .with("process", JsonNode::ofNumber(std::to_string(kept.process)))
      .with("window", JsonNode::ofText(kept.window))
      .with("number", JsonNode::ofNumber(std::to_string(kept.number)))
      .with("job_digest", JsonNode::ofText(fnv1a64(kept.job)))
      .with("job", JsonNode::ofText(kept.job));
  return jsonText(root);
}

Outcome<KeptWork> readKept(std::string_view text, std::string_view name) {
  const auto tree = readJson(text, name);
  if (!tree) return tree.faults();
  const JsonNode* version = tree.value().root.find("ribwright_kept");
  if (!version || version->is != JsonNode::Is::Number || version->text != format) {
    return Fault{std::string(name), "is no kept work that this program can read"};
  }
  KeptReader reader(tree.value(), name);
  KeptWork kept = take(reader);
  if (!reader.faults().empty()) return reader.faults();
  return kept;
}

}  // namespace ribwright
