// How the survey's edges, stations and readings are called in the window.
#pragma once

#include <QString>

#include "core/fastening/survey_grid.h"
#include "ui/session/session.h"

namespace ribwright {

// "Girt g2", "Eave", "Slab edge".
QString lineText(const SurveyLine& line);
// "column 2", "mid 2-3", or its place from the left corner.
QString stationText(const SurveyStation& station, const LengthStyle& style);
// "+1/8"", "-1/8"", "0".
QString deviationText(Length deviation, const LengthStyle& style);
// Of the chosen wall: what the plans say of the edge at a station, and what was measured there, in sentences.
QString readingSentences(const Session& session, const SurveyLine& line, const SurveyStation& station);

}  // namespace ribwright
