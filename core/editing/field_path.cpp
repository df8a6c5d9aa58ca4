#include "core/editing/field_path.h"

#include <charconv>

namespace ribwright {

std::optional<std::size_t> lastIndex(std::string_view path) {
  const auto open = path.find_last_of('[');
  if (open == std::string_view::npos) return std::nullopt;
  std::size_t index = 0;
  const auto [end, error] = std::from_chars(path.data() + open + 1, path.data() + path.size(), index);
  if (error != std::errc() || end == path.data() + path.size() || *end != ']') return std::nullopt;
  return index;
}

std::vector<std::size_t> indicesOf(std::string_view path) {
  std::vector<std::size_t> indices;
  for (auto close = path.find(']'); close != std::string_view::npos; close = path.find(']', close + 1)) {
    if (const auto index = lastIndex(path.substr(0, close + 1))) indices.push_back(*index);
  }
  return indices;
}

std::string withoutIndices(std::string_view path) {
  std::string bare;
  bool inside = false;
  for (const char c : path) {
    if (c == '[') inside = true;
    if (!inside) bare += c;
    if (c == ']') inside = false;
  }
  return bare;
}

}  // namespace ribwright
