#include "core/words/words.h"

#include <mutex>
#include <nlohmann/json.hpp>
#include <stdexcept>

#include "core/words/embedded.h"

namespace ribwright {

namespace {

constexpr std::string_view fileStart = "words.", fileEnd = ".json";

bool holdsWords(const EmbeddedFile& file) { return file.name.starts_with(fileStart); }

std::string languageOf(const EmbeddedFile& file) {
  return std::string(file.name.substr(fileStart.size(), file.name.size() - fileStart.size() - fileEnd.size()));
}

}  // namespace

bool operator==(const Phrase& a, const Phrase& b) { return a.id == b.id && a.values == b.values; }

std::vector<std::string> Words::languages() {
  std::vector<std::string> all;
  for (const EmbeddedFile& file : embeddedFiles()) {
    if (holdsWords(file)) all.push_back(languageOf(file));
  }
  return all;
}

Words Words::read(const EmbeddedFile& file) {
  Words words;
  // Held by name: a range-for does not keep what items() looks into.
  const nlohmann::json texts = nlohmann::json::parse(file.text);
  for (const auto& [id, text] : texts.items()) words.texts_[id] = text;
  return words;
}

const Words& Words::of(std::string_view language) {
  static std::mutex mutex;
  static std::map<std::string, Words, std::less<>> known;  // each read when it is first asked for
  const std::lock_guard lock(mutex);
  const auto found = known.find(language);
  if (found != known.end()) return found->second;
  for (const EmbeddedFile& file : embeddedFiles()) {
    if (holdsWords(file) && languageOf(file) == language) return known.emplace(language, read(file)).first->second;
  }
  throw std::runtime_error("no words of language " + std::string(language));
}

std::string Words::valueText(const WordValue& value, const LengthStyle& style) const {
  if (const Length* length = std::get_if<Length>(&value)) return fineText(*length, style);
  if (const std::int64_t* count = std::get_if<std::int64_t>(&value)) return std::to_string(*count);
  if (const std::string* name = std::get_if<std::string>(&value)) return *name;
  return say(std::get<Phrase>(value), style);
}

std::string Words::say(const Phrase& phrase, const LengthStyle& style) const {
  if (!phrase.id.empty()) return say(phrase.id, phrase.values, style);
  std::string list;
  for (const auto& [name, item] : phrase.values) list.append(list.empty() ? "" : ", ").append(valueText(item, style));
  return list;
}

std::string Words::say(std::string_view id, const WordValues& values, const LengthStyle& style) const {
  const auto found = texts_.find(id);
  if (found == texts_.end()) return std::string(id);
  const std::string& text = found->second;
  std::string said;
  for (std::size_t at = 0; at < text.size(); ++at) {
    const std::size_t end = text[at] == '{' ? text.find('}', at) : std::string::npos;
    if (end == std::string::npos) {
      said += text[at];
      continue;
    }
    const std::string name = text.substr(at + 1, end - at - 1);
    std::string shown = "{" + name + "}";
    for (const auto& [key, value] : values) {
      if (key == name) shown = valueText(value, style);
    }
    said += shown;
    at = end;
  }
  return said;
}

bool Words::knows(std::string_view id) const { return texts_.contains(id); }

std::vector<std::string> Words::ids() const {
  std::vector<std::string> all;
  for (const auto& [id, text] : texts_) all.push_back(id);
  return all;
}

}  // namespace ribwright
