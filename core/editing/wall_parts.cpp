#include "core/editing/wall_parts.h"

#include <charconv>
#include <string_view>

#include "core/job/by_id.h"
#include "core/layout/wall_face.h"

namespace ribwright {
namespace {

// 0: no number, or one too long to be one of a wall's.
std::size_t numberIn(std::string_view text) {
  std::size_t number = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  return error == std::errc() && end == text.data() + text.size() ? number : 0;
}

}  // namespace

const Girt* girtOf(const Wall& wall, const Part& part) {
  if (const Girt* girt = part.id.empty() ? nullptr : byId(wall.girts, part.id)) return girt;
  if (!part.id.starts_with('#')) return nullptr;
  const std::size_t number = numberIn(std::string_view(part.id).substr(1));
  return number >= 1 && number <= wall.girts.size() ? &wall.girts[number - 1] : nullptr;
}

std::optional<int> columnOf(const Wall& wall, const Part& part) {
  const std::size_t number = numberIn(part.id);
  if (number < 1 || number > columnsOf(wall.columns).size()) return std::nullopt;
  return static_cast<int>(number);
}

}  // namespace ribwright
