#include "core/job/kept_files.h"

#include <filesystem>
#include <system_error>

#include "core/job/file_reading.h"
#include "core/job/job_file.h"
#include "core/job/job_file_joined.h"
#include "core/job/job_file_tree.h"

namespace ribwright {
namespace {

namespace fs = std::filesystem;

constexpr std::string_view mark = ".kept-";
constexpr std::size_t idDigits = 16;

std::string inFolder(const std::string& folder, const std::string& name) { return (fs::path(folder) / name).string(); }

std::string beginning(const KeptPlace& place) { return joined(".", place.stem, mark, place.window, "-"); }

std::optional<FoundWork> readWork(const std::string& path) {
  std::error_code error;
  // A pipe or a device of that name would hold the reader for ever; links lead out of the folder.
  if (fs::symlink_status(path, error).type() != fs::file_type::regular) return {};
  const auto text = readWhole(path, mostBytes);
  if (!text) return {};
  auto kept = readKept(text.value(), path);
  if (!kept) return {};
  auto job = readJob(kept.value().job, path);
  if (!job) return {};
  return FoundWork{std::move(kept).value(), std::move(job).value()};
}

}  // namespace

std::string KeptPlace::path(int place) const { return inFolder(folder, beginning(*this) + std::to_string(place)); }

std::string KeptPlace::lockPath() const { return inFolder(folder, beginning(*this) + "lock"); }

std::optional<KeptPlace> keptPlaceOf(const std::string& folder, std::string_view entry) {
  const std::size_t at = entry.rfind(mark);
  if (at == std::string_view::npos || at < 2 || entry.front() != '.') return {};
  const std::string_view id = entry.substr(at + mark.size());
  if (id.size() != idDigits + 2 || id[idDigits] != '-' || !isWindowId(id.substr(0, idDigits))) return {};
  if (id.back() < '1' || id.back() > '0' + keptPlaces) return {};
  return KeptPlace{folder, std::string(entry.substr(1, at - 1)), std::string(id.substr(0, idDigits))};
}

std::vector<Fault> writeKept(const KeptPlace& place, const KeptWork& kept, Storage& storage) {
  const std::string path = place.path(1 + static_cast<int>(kept.number % keptPlaces));
  const std::string text = keptText(kept);
  if (text.size() > mostBytes) return {{path, "would be too large to be read again"}};
  removeKeptRests(place);
  return writeWhole(path, text, storage);
}

std::optional<FoundWork> newestKept(const KeptPlace& place) {
  std::optional<FoundWork> newest;
  for (int turn = 1; turn <= keptPlaces; ++turn) {
    auto found = readWork(place.path(turn));
    const bool its = found && found->kept.window == place.window;
    if (its && (!newest || found->kept.number > newest->kept.number)) newest = std::move(found);
  }
  return newest;
}

namespace {

template <class Wanted>
bool removeWhere(const std::string& folder, const Wanted& wanted) {
  std::error_code error;
  std::vector<fs::path> paths;
  for (fs::directory_iterator entry(folder, error), end; !error && entry != end; entry.increment(error)) {
    if (wanted(entry->path().filename().string())) paths.push_back(entry->path());
  }
  bool all = !error;
  for (const fs::path& path : paths) all = (fs::remove(path, error) || !error) && all;
  return all;
}

}  // namespace

void removeKeptRests(const KeptPlace& place) {
  const std::string temporary = joined(".", beginning(place));
  removeWhere(place.folder, [&](const std::string& name) {
    return name.starts_with(temporary) && name.find(".new-", temporary.size()) != std::string::npos;
  });
}

bool removeKept(const KeptPlace& place) {
  removeKeptRests(place);
  return removeWhere(place.folder, [&](const std::string& name) { return keptPlaceOf(place.folder, name) == place; });
}

}  // namespace ribwright
