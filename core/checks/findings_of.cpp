#include "core/checks/findings_of.h"

#include <algorithm>

#include "core/checks/job_checks.h"
#include "core/checks/wall_look.h"
#include "core/job/by_id.h"
#include "core/layout/hang_direction.h"

namespace ribwright {

WallLook::WallLook(const Job& ofJob, const Wall& ofWall, const WallLayout& ofLayout, const WallHoles& ofHoles,
                   const std::vector<DrillBatch>& ofBatches)
    : job(ofJob), wall(ofWall), layout(ofLayout), holes(ofHoles), batches(ofBatches) {
  for (const SheetRun& run : layout.runs) {
    RunLook one;
    one.run = &run;
    one.profile = byId(job.profiles, wall.bands[static_cast<std::size_t>(run.band)].profile);
    one.section = sectionOf(*one.profile);
    one.frame = {run.left, run.right, layout.direction.hand};
    one.lowest = run.band == 0;
    runs.push_back(std::move(one));
  }
}

Finding WallLook::finding(Grade grade, std::string id, std::string mark, WordValues values, std::string source) const {
  return {grade, std::move(id), wall.letter, std::move(mark), std::move(values), std::move(source)};
}

std::vector<Finding> findingsOf(const Job& job, const Wall& wall, const WallLayout& layout, const WallHoles& holes,
                                const std::vector<DrillBatch>& batches) {
  static constexpr std::pair<const char*, WallCheck> checks[] = {
      {"statements", checkStatements},
      {"hung sheets", checkHungSheets},
      {"openings", checkOpeningPlaces},
      {"jambs", checkJambs},
      {"run ends", checkRunEnds},
      {"pieces", checkPieces},
      {"supports", checkSupports},
      {"lower ends", checkLowerEnds},
      {"hole pattern", checkScrewPattern},
      {"flats under screws", checkScrewFlats},
      {"edges near screws", checkScrewEdges},
      {"screw faces", checkScrewFaces},
      {"screws apart", checkScrewsApart},
      {"faces stated", checkFacesStated},
      {"screw spacing", checkScrewSpacing},
      {"survey", checkSurvey},
      {"girt sag", checkGirtSag},
      {"slab edge", checkSlabEdge},
      {"diagonals", checkDiagonals},
      {"drill batches", checkBatches},
      {"straight lines", checkStraightness},
      {"lap holes", checkLapHoles},
  };
  const WallLook look(job, wall, layout, holes, batches);
  std::vector<Finding> findings;
  for (const auto& [name, check] : checks) {
    try {
      check(look, findings);
    } catch (const std::exception& error) {
      std::string id = std::string("check.").append(name);
      std::replace(id.begin(), id.end(), ' ', '-');
      findings.push_back(look.finding(Grade::Stop, "check-failed", name,
                                      {{"check", Phrase{id}}, {"error", std::string(error.what())}}, ""));
    }
  }
  return findings;
}

std::vector<FoundStop> stopsThatHold(const std::vector<Finding>& findings) {
  std::vector<FoundStop> stops;
  for (const Finding& finding : findings) {
    if (finding.grade == Grade::Stop && finding.id != chalkFinding) stops.push_back({finding.id, finding.mark});
  }
  return stops;
}

Finding notLaidOut(const Wall& wall, const Fault& fault) {
  return {Grade::Stop, "wall-not-laid-out", wall.letter, "", {{"fault", oneLine(fault)}}, ""};
}

namespace {

void checkCorners(const Job& job, std::vector<Finding>& findings) {
  const std::size_t corners = job.building.outline.size();
  const auto wallAt = [&](std::size_t edge) {
    const std::string letter(1, static_cast<char>('A' + static_cast<int>(edge)));
    return std::find_if(job.walls.begin(), job.walls.end(), [&](const Wall& wall) { return wall.letter == letter; });
  };
  for (std::size_t edge = 0; edge < corners && corners >= 3 && corners <= 26; ++edge) {
    const auto wall = wallAt(edge), next = wallAt((edge + 1) % corners);
    if (wall == job.walls.end()) {
      const std::string letter(1, static_cast<char>('A' + static_cast<int>(edge)));
      findings.push_back({Grade::Look, "wall-not-stated", letter, "", {}, ""});
    }
    if (wall == job.walls.end() || next == job.walls.end()) continue;
    if (wall->reachRight > Length() && next->reachLeft > Length()) {
      findings.push_back({Grade::Stop,
                          "corner-reached-twice",
                          wall->letter,
                          next->letter,
                          {{"other", next->letter}},
                          "common practice"});
    }
  }
}

}  // namespace

std::vector<Finding> findingsOfJob(const Job& job) {
  std::vector<Finding> findings;
  checkCorners(job, findings);
  for (const SightPoint& sight : job.site.sightPoints) {
    if (!insideOutline(job.building.outline, sight.at)) continue;
    findings.push_back({Grade::Look, "sight-point-inside", "", sight.name, {{"name", sight.name}}, "common practice"});
  }
  for (const HungSheet& hung : job.facts.hung) {
    if (isSheetMark(job, hung.mark)) continue;
    findings.push_back({Grade::Stop, "hung-sheet-unknown", "", hung.mark, {{"mark", hung.mark}}, ""});
  }
  checkOpeningIds(job, findings);
  checkPatternNumbers(job, findings);
  if (job.walls.empty()) findings.push_back({Grade::Look, "no-walls", "", "", {}, ""});
  return findings;
}

}  // namespace ribwright
