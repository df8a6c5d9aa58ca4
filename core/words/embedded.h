// Files that ship inside the program, by their path below resources/ ("words.en.json", "profiles/rib-36-1.25-at-12.json").
#pragma once

#include <string_view>
#include <vector>

namespace ribwright {

struct EmbeddedFile {
  std::string_view name, text;
};

// All of them, sorted by name.
const std::vector<EmbeddedFile>& embeddedFiles();

}  // namespace ribwright
