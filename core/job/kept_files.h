// Where kept work lies (kept_work.h), and which of it is the newest that still reads.
//
// Hidden files beside the job's, ".shop.json.kept-0123456789abcdef-2": the window's id and a place from 1 to 3 that its
// keepings take by turns. Each is written whole or not at all, so a newest one that is torn leaves two others.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/job/file_writing.h"
#include "core/job/job.h"
#include "core/job/kept_work.h"

namespace ribwright {

inline constexpr int keptPlaces = 3;

// Of one window's keepings of one job.
struct KeptPlace {
  std::string folder;
  std::string stem;    // name of the job's file, or another word for it
  std::string window;  // as in KeptWork
  bool operator==(const KeptPlace&) const = default;

  std::string path(int place) const;  // 1 to keptPlaces
  std::string lockPath() const;       // beside them, held as long as the window has the job open
};
// What folder entry is kept work, by its name alone; the lock and temporaries are none.
std::optional<KeptPlace> keptPlaceOf(const std::string& folder, std::string_view entry);

// Into the place whose turn it is; rests of the last time go first. Faults: as writeWhole, or too large to be read again; what was kept before stands.
std::vector<Fault> writeKept(const KeptPlace& place, const KeptWork& kept, Storage& storage);

struct FoundWork {
  KeptWork kept;
  Job job;
};
// The one with the highest number whose job reads; what does not read, or is another window's by its own word, is
// passed over.
std::optional<FoundWork> newestKept(const KeptPlace& place);

// Temporaries of it that a kill or a failing disk left over.
void removeKeptRests(const KeptPlace& place);
// All that the window kept there, and temporaries of it. False: something is left.
bool removeKept(const KeptPlace& place);

}  // namespace ribwright
