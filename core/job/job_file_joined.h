// Texts and whole numbers put together, for places and messages.
#pragma once

#include <concepts>
#include <string>
#include <string_view>

namespace ribwright {

template <class... Part>
std::string joined(const Part&... parts) {
  std::string text;
  const auto append = [&text](const auto& part) {
    if constexpr (std::integral<std::remove_cvref_t<decltype(part)>>) {
      text += std::to_string(part);
    } else {
      text += std::string_view(part);
    }
  };
  (append(parts), ...);
  return text;
}

// "girts[3]", "girts[3].id"
inline std::string itemPath(std::string_view list, std::size_t index, std::string_view key = {}) {
  return joined(list, "[", index, key.empty() ? "]" : "].", key);
}

}  // namespace ribwright
