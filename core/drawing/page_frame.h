// What stands on every page round its drawing: frame, title block with scale and scale bar, cautions. Unit: mm, y down.
#pragma once

#include <optional>
#include <string>

#include "core/drawing/drawing_scale.h"
#include "core/drawing/sketch.h"
#include "core/job/job.h"
#include "core/words/words.h"

namespace ribwright {

struct PageTitle {
  std::string wall;     // "Wall A, front"
  std::string subject;  // "elevation from outside"
  int page = 1, pages = 1;
  std::optional<DrawingScale> scale;  // absent on pages of tables
  std::string fingerprint;            // the wall's
};

struct PageFrame {
  PaperSize paper = PaperSize::Letter;
  const Job* job = nullptr;
  const Words* words = nullptr;
  std::string fingerprint;                // the job's
  std::string figures = "paper.figures";  // id of what is said about the figures on it; ".ft-in" or ".mm" follows
};

// The rectangle that the frame leaves for the drawing; the same on every page of one job and paper that
// says the same of its figures.
Box workArea(const PageFrame& frame);

// The frame's line: nothing on a page lies beyond it.
Box frameBox(PaperSize paper);

void drawFrame(Sketch& sketch, const PageFrame& frame, const PageTitle& title);

}  // namespace ribwright
