// Pages as SVG 1.1 (W3C Recommendation, 16 August 2011), true to size: one user unit is one millimetre. Text stays
// text, in the paper's font by name, with metric-compatible ones to fall back on, and held to its width on paper. The
// same pages give the same bytes everywhere.
#pragma once

#include <string>
#include <vector>

#include "core/drawing/drawing.h"

namespace ribwright {

std::string svgText(const Page& page);

// Several pages one below the other, 10 mm apart: SVG 1.1 knows no pages.
std::string svgText(const std::vector<Page>& pages);

}  // namespace ribwright
