#include "core/fastening/survey_results.h"

namespace ribwright {

SurveyResults surveyResults(const Job& job, const Wall& wall, const WallLayout& layout, const WallSupports& supports) {
  SurveyResults results;
  results.sags = girtSags(job, wall, layout, supports);
  results.chalk = chalkSnaps(job, wall, layout);
  if (results.chalk) results.shortSheets = shortOfLine(job, wall, layout, *results.chalk);
  results.square = squareness(wall, layout.face);
  return results;
}

}  // namespace ribwright
