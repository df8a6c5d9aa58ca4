#include "core/fastening/chosen_pattern.h"

#include <algorithm>

#include "core/job/by_id.h"

namespace ribwright {
namespace {

constexpr SupportKind patternKinds[kHoleKinds] = {SupportKind::Base, SupportKind::Eave,   SupportKind::Rake,
                                                  SupportKind::Girt, SupportKind::EndLap, SupportKind::Head,
                                                  SupportKind::Sill, SupportKind::Jamb,   SupportKind::Jamb};

std::int32_t screwOf(const Job& job, const std::string& id) {
  const Screw* screw = byId(job.screws, id);
  return screw ? static_cast<std::int32_t>(screw - job.screws.data()) : -1;
}

const PatternRow* rowOf(const ScrewPattern& pattern, SupportKind kind, Zone zone) {
  const auto row = std::find_if(pattern.rows.begin(), pattern.rows.end(),
                                [&](const PatternRow& r) { return r.support == kind && r.zone == zone; });
  return row == pattern.rows.end() ? nullptr : &*row;
}

ScrewLine lineOf(const Job& job, const PatternRow* row, HoleKind kind, Length cover) {
  ScrewLine line;
  if (!row) return line;
  line.screw = screwOf(job, row->screw);
  line.stated = line.screw >= 0;
  line.offsets = row->offsets;
  std::sort(line.offsets.begin(), line.offsets.end());
  line.offsets.erase(std::unique(line.offsets.begin(), line.offsets.end()), line.offsets.end());
  std::erase_if(line.offsets, [cover](Length x) { return x >= cover; });
  line.inPlace = row->drilledInPlace.value_or(isDrilledInPlace(kind));
  return line;
}

ScrewLine stitchLine(const Job& job, const ScrewPattern& pattern) {
  ScrewLine line;
  line.screw = screwOf(job, pattern.stitchScrew);
  line.stated = pattern.stitchSpacing && line.screw >= 0;
  line.inPlace = true;
  return line;
}

}  // namespace

ChosenPattern chosenPattern(const Job& job, const Wall& wall, const SheetRun& run, const Profile& profile) {
  ChosenPattern chosen;
  const std::string& ofBand = wall.bands[static_cast<std::size_t>(run.band)].pattern;
  const std::string& id = ofBand.empty() ? wall.pattern : ofBand;
  const ScrewPattern* pattern = byId(job.patterns, id);
  if (id.empty() || !pattern) return chosen;
  chosen.stated.pattern = id;
  chosen.stated.otherProfile = !pattern->profile.empty() && pattern->profile != profile.id;
  if (chosen.stated.otherProfile) return chosen;
  chosen.pattern = pattern;
  for (std::size_t k = 0; k < kHoleKinds; ++k) {
    const auto kind = static_cast<HoleKind>(k);
    if (kind == HoleKind::Stitch) {
      chosen.field[k] = chosen.corner[k] = stitchLine(job, *pattern);
      continue;
    }
    const PatternRow* field = rowOf(*pattern, patternKinds[k], Zone::Field);
    const PatternRow* corner = rowOf(*pattern, patternKinds[k], Zone::Corner);
    chosen.field[k] = lineOf(job, field, kind, profile.cover);
    chosen.corner[k] = lineOf(job, corner ? corner : field, kind, profile.cover);
  }
  return chosen;
}

bool isDrilledInPlace(HoleKind kind) {
  return kind != HoleKind::Base && kind != HoleKind::Eave && kind != HoleKind::Girt;
}

Length fromEdge(const Screw& screw) { return screw.diameter + (screw.diameter - half(screw.diameter)); }

Length apart(const Screw& a, const Screw& b) {
  return std::max(std::max(a.diameter, b.diameter) * 3, Length::inches(1));
}

}  // namespace ribwright
