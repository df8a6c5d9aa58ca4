// What a survey of a wall asks for: which edges of the steel, and at which stations along the wall.
//
// Lengths: stations are u, from the wall's left corner; planned heights are z, from the top of concrete.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/fastening/supports.h"
#include "core/job/job.h"
#include "core/layout/wall_layout.h"

namespace ribwright {

// An edge that is measured from one of its ends to the other.
struct SurveyLine {
  enum class Of : std::uint8_t { Eave, Girt, Slab };
  Of of = Of::Girt;
  std::string id;          // as GirtSurvey::girt names it; empty: the slab edge, or a girt that has no id
  std::int32_t girt = -1;  // index into Wall::girts
  Length from, to;         // u
  bool reaches(Length u) const { return u >= from && u <= to; }
  bool operator==(const SurveyLine&) const = default;
};

// As one sees them, from the top down: the eave purlin where the wall has one, girts, the slab edge where sheets go by
// it (not with the base form on-wall).
std::vector<SurveyLine> surveyLines(const Wall& wall, const WallLayout& layout, const WallSupports& supports);

struct SurveyStation {
  // Why one measures here; of several the first.
  enum class At : std::uint8_t { Column, GirtEnd, Midspan, Measured };
  Length u;
  At at = At::Measured;
  std::int32_t column = 0;  // its number, or of the one left of the midspan; 0: none
  bool operator==(const SurveyStation&) const = default;
};

// From left to right, each place once: ends of the lines (nothing is known beyond them), columns, the middle between
// two of these that are neighbours where no column is left out (girts sag most there), and wherever something was
// measured.
std::vector<SurveyStation> surveyStations(const Wall& wall, const WallLayout& layout,
                                          const std::vector<SurveyLine>& lines);

// z of the line's typed edge by the plans; of the slab edge the concrete's.
Length plannedHeight(const Wall& wall, const WallLayout& layout, const SurveyLine& line, Length u);

// What was measured of a line at u: of the slab edge its z as `height`. Nothing: not measured there.
std::optional<GirtReading> readingAt(const Wall& wall, const SurveyLine& line, Length u);
// All of it, from left to right.
std::vector<GirtReading> readingsOf(const Wall& wall, const SurveyLine& line);

// How far the measured edge stands above (positive) the planned one. A girt's height is taken from the chalk line.
Length deviationOf(const Wall& wall, const WallLayout& layout, const SurveyLine& line, const GirtReading& reading);

}  // namespace ribwright
