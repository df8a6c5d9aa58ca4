// Paths of fields: how one lies to another.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/job/job_file_joined.h"

namespace ribwright {

// `path` is `above` or lies inside it. Everything lies inside the empty path.
inline bool isWithin(std::string_view path, std::string_view above) {
  if (above.empty()) return true;
  if (!path.starts_with(above)) return false;
  return path.size() == above.size() || path[above.size()] == '.' || path[above.size()] == '[';
}

inline std::string memberPath(std::string_view object, std::string_view key) {
  return joined(object, object.empty() ? "" : ".", key);
}

// "walls[1].girts[3]" of "walls[1].girts[3].height"; "walls[1].girts" of "walls[1].girts[3]"; empty of "name".
inline std::string_view pathAbove(std::string_view path) {
  const auto at = path.find_last_of(".[");
  return at == std::string_view::npos ? std::string_view() : path.substr(0, at);
}

// "height" of "walls[1].girts[3].height"; empty for an item of a list.
inline std::string_view keyOf(std::string_view path) {
  if (path.ends_with(']')) return {};
  const auto at = path.find_last_of('.');
  return at == std::string_view::npos ? path : path.substr(at + 1);
}

// 3 of "walls[1].girts[3]" and of "walls[1].girts[3].height"; absent when there is none.
std::optional<std::size_t> lastIndex(std::string_view path);

// 1 and 3 of "walls[1].girts[3].height".
std::vector<std::size_t> indicesOf(std::string_view path);

// "walls.girts.height" of "walls[1].girts[3].height".
std::string withoutIndices(std::string_view path);

}  // namespace ribwright
