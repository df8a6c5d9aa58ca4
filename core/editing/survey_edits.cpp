#include "core/editing/survey_edits.h"

#include <algorithm>

namespace ribwright {
namespace {

template <class Reading>
void put(std::vector<Reading>& readings, const Reading& reading) {
  const auto at = std::lower_bound(readings.begin(), readings.end(), reading.u,
                                   [](const Reading& one, Length u) { return one.u < u; });
  if (at != readings.end() && at->u == reading.u) {
    *at = reading;
  } else {
    readings.insert(at, reading);
  }
}

template <class Reading>
void strike(std::vector<Reading>& readings, Length u) {
  std::erase_if(readings, [u](const Reading& reading) { return reading.u == u; });
}

template <class Edit>
Job edited(const Job& job, std::size_t wall, const Edit& edit) {
  Job next = job;
  edit(next.walls.at(wall).survey);
  return next;
}

}  // namespace

Job setReading(const Job& job, std::size_t wall, const std::string& girt, const GirtReading& reading) {
  return edited(job, wall, [&](WallSurvey& survey) {
    auto at =
        std::find_if(survey.girts.begin(), survey.girts.end(), [&](const GirtSurvey& one) { return one.girt == girt; });
    if (at == survey.girts.end()) at = survey.girts.insert(at, GirtSurvey{girt, {}});
    put(at->readings, reading);
  });
}

Job clearReading(const Job& job, std::size_t wall, const std::string& girt, Length u) {
  return edited(job, wall, [&](WallSurvey& survey) {
    for (GirtSurvey& one : survey.girts) {
      if (one.girt == girt) strike(one.readings, u);
    }
    std::erase_if(survey.girts, [&](const GirtSurvey& one) { return one.girt == girt && one.readings.empty(); });
  });
}

Job setSlab(const Job& job, std::size_t wall, const SlabReading& reading) {
  return edited(job, wall, [&](WallSurvey& survey) { put(survey.slab, reading); });
}

Job clearSlab(const Job& job, std::size_t wall, Length u) {
  return edited(job, wall, [&](WallSurvey& survey) { strike(survey.slab, u); });
}

Job setProps(const Job& job, std::size_t wall, bool inPlace) {
  return edited(job, wall, [&](WallSurvey& survey) { survey.propsInPlace = inPlace; });
}

Job setChalkLine(const Job& job, std::size_t wall, const std::optional<Length>& z) {
  return edited(job, wall, [&](WallSurvey& survey) { survey.chalkLine = z; });
}

Outcome<Job> setDiagonal(const Job& job, std::size_t wall, Diagonal which, const std::optional<Length>& length) {
  if (length && *length <= Length()) return Fault{"diagonal", "a diagonal is longer than nothing"};
  return edited(job, wall, [&](WallSurvey& survey) {
    (which == Diagonal::Rising ? survey.diagonalRising : survey.diagonalFalling) = length;
  });
}

}  // namespace ribwright
