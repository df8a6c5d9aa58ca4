#include "core/drawing/page_frame.h"

#include <algorithm>
#include <array>

#include "core/drawing/scale_bar.h"
#include "core/drawing/text_extent.h"

namespace ribwright {

namespace {

constexpr double margin = 10;       // printers leave some 6 mm
constexpr double titleHeight = 23;  // of the title block
constexpr double inset = 2.5;       // from a line to words
constexpr double pageCell = 36;
constexpr std::array<const char*, 6> cautions = {"paper.caution.govern",  "paper.caution.cover",
                                                 "paper.caution.wind",    "paper.caution.anchor",
                                                 "paper.caution.cutting", "paper.caution.drilling"};

LengthStyle styleOf(const Job& job) { return {job.units, job.decimalSign}; }

double lineStep() { return lineOf(smallText) + textRoom; }

std::vector<std::string> cautionLines(const PageFrame& frame) {
  const LengthStyle style = styleOf(*frame.job);
  std::string all =
      frame.words->say(style.units == UnitSystem::Millimetres ? "paper.figures.mm" : "paper.figures.ft-in", {}, style);
  for (const char* id : cautions) all.append(" ").append(frame.words->say(id, {}, style));
  return wrapped(all, smallText, false, frameBox(frame.paper).width() - 2 * inset);
}

double cautionHeight(const PageFrame& frame) {
  return lineStep() * static_cast<double>(cautionLines(frame).size()) + 2 * (inset - 1);
}

struct CellLine {
  std::string words;
  double height = smallText;
  bool bold = false;
};

// Width of the cell that holds the scale bar, with room for the figures at its ends.
double scaleCell(UnitSystem units) { return scaleBarOnPaper(units).inMillimetres() + 12; }

// Lines of words from the top of a cell down; a line that is too long is closed with an ellipsis.
void drawLines(Sketch& sketch, const Box& cell, const std::vector<CellLine>& lines) {
  double y = cell.top + inset - 0.5;
  for (const CellLine& line : lines) {
    y += ascentOf(line.height);
    const std::string shown = shortened(line.words, line.height, line.bold, cell.width() - 2 * inset);
    if (!shown.empty()) sketch.text({{cell.left + inset, y}, line.height, TextAnchor::Start, 0, line.bold, shown, -1});
    y += descentOf(line.height) + 0.8;
  }
}

// A name in bold over two lines at most; what is left after those is closed with an ellipsis.
std::vector<CellLine> inTwoLines(const std::string& name, const Box& cell) {
  constexpr double height = 3.5;
  const std::vector<std::string> lines = wrapped(name, height, true, cell.width() - 2 * inset);
  std::vector<CellLine> shown;
  for (const std::string& line : lines) {
    if (shown.size() < 2) {
      shown.push_back({line, height, true});
    } else {
      shown.back().words.append(" ").append(line);
    }
  }
  return shown;
}

// "number 12 · revision B · 2026-03-01", of what is stated.
std::string jobParticulars(const PageFrame& frame) {
  const Job& job = *frame.job;
  std::string words;
  const auto add = [&](const char* id, const std::string& value) {
    if (value.empty()) return;
    if (!words.empty()) words += " · ";
    words += frame.words->say(id, {{"value", value}}, styleOf(job));
  };
  add("paper.job.number", job.number);
  add("paper.job.revision", job.revision);
  add("paper.job.date", job.date);
  return words;
}

void drawScaleCell(Sketch& sketch, const PageFrame& frame, const PageTitle& title, const Box& cell) {
  const LengthStyle style = styleOf(*frame.job);
  if (!title.scale)
    return drawLines(sketch, cell, {{frame.words->say("paper.scale.none", {}, style), smallText, false}});
  const std::string scale = scaleWords(*title.scale, style.units);
  drawLines(sketch, cell, {{frame.words->say("paper.scale", {{"scale", scale}}, style), markText, true}});
  drawScaleBar(sketch, *frame.words, style, *title.scale, {cell.left + inset + 2, cell.bottom - 5.5});
}

}  // namespace

Box frameBox(PaperSize paper) {
  const PaperExtent extent = extentOf(paper);
  return {margin, margin, extent.width - margin, extent.height - margin};
}

Box workArea(const PageFrame& frame) {
  Box work = frameBox(frame.paper);
  work.bottom -= titleHeight + cautionHeight(frame);
  return work.grown(-2);
}

void drawFrame(Sketch& sketch, const PageFrame& frame, const PageTitle& title) {
  const Job& job = *frame.job;
  const LengthStyle style = styleOf(job);
  const Box outer = frameBox(frame.paper);
  const double titleTop = outer.bottom - titleHeight, cautionTop = titleTop - cautionHeight(frame);
  sketch.rectangle(outer, outlineLine);
  sketch.line({outer.left, titleTop}, {outer.right, titleTop}, openingLine);
  sketch.line({outer.left, cautionTop}, {outer.right, cautionTop}, thinLine);
  double y = cautionTop + inset - 1 + ascentOf(smallText);
  for (const std::string& line : cautionLines(frame)) {
    sketch.text({{outer.left + inset, y}, smallText, TextAnchor::Start, 0, false, line, -1});
    y += lineStep();
  }

  const double pageLeft = outer.right - pageCell, scaleLeft = pageLeft - scaleCell(style.units);
  const double wallLeft = outer.left + (scaleLeft - outer.left) * 0.52;
  for (const double x : {wallLeft, scaleLeft, pageLeft}) sketch.line({x, titleTop}, {x, outer.bottom}, thinLine);
  const Box jobCell{outer.left, titleTop, wallLeft, outer.bottom},
      wallCell{wallLeft, titleTop, scaleLeft, outer.bottom};
  std::vector<CellLine> jobLines = inTwoLines(job.name, jobCell), wallLines = inTwoLines(title.wall, wallCell);
  jobLines.push_back({jobParticulars(frame)});
  wallLines.push_back({title.subject});
  drawLines(sketch, jobCell, jobLines);
  drawLines(sketch, wallCell, wallLines);
  drawScaleCell(sketch, frame, title, {scaleLeft, titleTop, pageLeft, outer.bottom});
  const std::string page = frame.words->say("paper.page", {{"page", title.page}, {"pages", title.pages}}, style);
  drawLines(sketch, {pageLeft, titleTop, outer.right, outer.bottom},
            {{page, 3, true}, {frame.words->say("paper.maker", {}, style)}});
}

}  // namespace ribwright
