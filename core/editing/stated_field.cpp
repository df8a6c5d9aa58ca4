#include "core/editing/stated_field.h"

#include <algorithm>

#include "core/job/job_file_joined.h"
#include "core/job/job_file_text.h"
#include "core/units/typed_text.h"

namespace ribwright {
namespace {

constexpr std::size_t mostNamed = 8;

char small(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

std::string listed(const std::vector<std::string>& words) {
  std::string all;
  for (std::size_t i = 0; i < words.size() && i < mostNamed; ++i) all += joined(i > 0 ? ", " : "", words[i]);
  if (words.size() > mostNamed) all += " ...";
  return all;
}

}  // namespace

bool sameWord(std::string_view a, std::string_view b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](char x, char y) { return small(x) == small(y); });
}

std::string takeLength(Length& length, std::string_view text, const CellReading& reading) {
  const Outcome<Length> read = parseLength(text, reading.style);
  if (!read) return read.faults().front().message;
  length = read.value();
  return {};
}

std::string takeChoice(int& index, std::string_view text, const std::vector<std::string>& words) {
  const auto found =
      std::find_if(words.begin(), words.end(), [&](const std::string& word) { return sameWord(word, text); });
  if (found == words.end()) return joined(inQuotes(text), " is none of: ", listed(words));
  index = static_cast<int>(found - words.begin());
  return {};
}

std::string takeName(std::string& name, std::string_view text, const std::vector<std::string>& ids,
                     std::string_view what) {
  if (text != name && !text.empty() && std::find(ids.begin(), ids.end(), text) == ids.end())
    return joined("the job has no ", what, " ", inQuotes(text), ids.empty() ? "" : "; it has ", listed(ids));
  name = text;
  return {};
}

}  // namespace ribwright
