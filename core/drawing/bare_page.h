// Pages before their frames, since those say how many pages there are.
#pragma once

#include <string>
#include <vector>

#include "core/drawing/page_frame.h"
#include "core/plan/plan.h"

namespace ribwright {

struct BarePage {
  static constexpr std::size_t wholeJob = static_cast<std::size_t>(-1);  // a page of all walls
  Sketch sketch;
  std::string subject;                    // "elevation seen from outside"
  std::optional<DrawingScale> scale;      // absent: what it shows is to no scale
  std::size_t wall = 0;                   // index into Job::walls, or wholeJob
  std::string figures = "paper.figures";  // id of what is said about its figures
};

// Sketches that say the same of themselves.
std::vector<BarePage> barePages(std::vector<Sketch> sketches, const std::string& subject, const std::string& figures,
                                std::optional<DrawingScale> scale = std::nullopt);

// Puts the frame round each and numbers them through. The frame's job and words are those that the pages were made of.
std::vector<Page> framed(const PageFrame& frame, std::vector<BarePage> pages);

}  // namespace ribwright
