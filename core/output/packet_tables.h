// The files of a packet that are tables.
#pragma once

#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/plan/plan.h"
#include "core/units/length_text.h"
#include "core/words/words.h"

namespace ribwright {

// One file, whole in memory until all of them are there.
struct PacketFile {
  std::string name;  // "pieces.csv"
  std::string what;  // a few words for the list of contents
  int pages = 0;     // 0: it has none
  std::string bytes;
  bool operator==(const PacketFile&) const = default;
};

// sheet-order.csv, sharing.csv, bundles.csv, delta-order.csv, pieces.csv, holes.csv, cuts.csv, module-marks.csv,
// trim-order.csv, trim-cuts.csv, openings.csv, survey.csv and findings.csv. How trim is cut is worked out here, which may
// take a second.
std::vector<PacketFile> packetTables(const Job& job, const Plan& plan, const LengthStyle& style,
                                     const Words& words = Words::of("en"));

// contents.csv, which lists `files` and not itself.
PacketFile packetContents(const Job& job, const std::vector<PacketFile>& files, const Words& words = Words::of("en"));

}  // namespace ribwright
