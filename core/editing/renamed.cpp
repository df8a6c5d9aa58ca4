#include "core/editing/renamed.h"

#include <algorithm>

#include "core/fastening/measured_faces.h"
#include "core/job/by_id.h"
#include "core/job/job_file_joined.h"

namespace ribwright {
namespace {

constexpr std::string_view slabEdge = "slab";

void rename(std::string& name, const NewNames& names) {
  const auto found = std::find_if(names.begin(), names.end(), [&](const auto& each) { return each.first == name; });
  if (found != names.end()) name = found->second;
}

std::vector<std::string> splitAt(const std::string& text, char at) {
  std::vector<std::string> parts(1);
  for (const char c : text) {
    if (c == at)
      parts.emplace_back();
    else
      parts.back() += c;
  }
  return parts;
}

std::string putTogether(const std::vector<std::string>& parts, char at) {
  std::string text;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    if (i > 0) text += at;
    text += parts[i];
  }
  return text;
}

// Keys are id|wall|mark|part; two openings that overlap are one mark, with a plus between.
void renameSilenced(Job& job, const std::string& letter, const NewNames& names) {
  for (SilencedFinding& silenced : job.silenced) {
    std::vector<std::string> parts = splitAt(silenced.key, '|');
    if (parts.size() < 3 || parts[1] != letter) continue;
    std::vector<std::string> marks = splitAt(parts[2], '+');
    for (std::string& mark : marks) rename(mark, names);
    parts[2] = putTogether(marks, '+');
    silenced.key = putTogether(parts, '|');
  }
}

// A name that is also that of something else on the wall says nothing about which of the two was silenced.
template <class... List>
NewNames withoutSharedBy(NewNames names, const List&... others) {
  std::erase_if(names, [&](const auto& each) { return ((byId(others, each.first) != nullptr) || ...); });
  return names;
}

}  // namespace

void renameOpenings(Job& job, std::size_t wall, const NewNames& names) {
  Wall& on = job.walls[wall];
  rename(on.start.opening, names);
  for (Band& band : on.bands) {
    if (band.start) rename(band.start->opening, names);
  }
  renameSilenced(job, on.letter, withoutSharedBy(names, on.girts, on.penetrations));
}

void renamePenetrations(Job& job, std::size_t wall, const NewNames& names) {
  const Wall& on = job.walls[wall];
  renameSilenced(job, on.letter, withoutSharedBy(names, on.girts, on.openings));
}

void renameGirts(Job& job, std::size_t wall, const NewNames& names) {
  Wall& on = job.walls[wall];
  for (GirtSurvey& survey : on.survey.girts) rename(survey.girt, names);
  for (std::string& girt : on.endLaps.girts) rename(girt, names);
  renameSilenced(job, on.letter, withoutSharedBy(names, on.openings, on.penetrations));
}

std::string troubleWithGirtName(const Wall& before, const std::string& id, const NewNames& names) {
  if (id == eaveSurveyId || id == slabEdge)
    return joined("\"", id, "\" is what the survey calls another edge; name the girt otherwise");
  const bool named = std::any_of(before.survey.girts.begin(), before.survey.girts.end(),
                                 [&](const GirtSurvey& survey) { return survey.girt == id; });
  const bool freed = std::any_of(names.begin(), names.end(), [&](const auto& each) { return each.first == id; });
  if (!named || freed || byId(before.girts, id)) return {};
  return joined("the survey holds readings of a girt \"", id,
                "\" that is gone; strike them out first, or name the girt otherwise");
}

}  // namespace ribwright
