#include "core/drawing/page_frame.h"

#include <algorithm>
#include <array>

#include "core/drawing/scale_bar.h"
#include "core/drawing/text_extent.h"
#include "core/job/length_style.h"

namespace ribwright {

namespace {

constexpr double margin = 10;       // printers leave some 6 mm
constexpr double titleHeight = 23;  // of the title block
constexpr double inset = 2.5;       // from a line to words
constexpr double pageCell = 36;     // or as wide as the longest page number
constexpr double pageText = 3;
constexpr std::array<const char*, 6> cautions = {"paper.caution.govern",  "paper.caution.cover",
                                                 "paper.caution.wind",    "paper.caution.anchor",
                                                 "paper.caution.cutting", "paper.caution.drilling"};

double lineStep() { return lineOf(smallText) + textRoom; }

std::vector<std::string> cautionLines(const PageFrame& frame) {
  const LengthStyle style = styleOf(*frame.job);
  const bool metric = style.units == UnitSystem::Millimetres;
  std::string all = frame.words->say(frame.figures + (metric ? ".mm" : ".ft-in"), {}, style);
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

// Words over `most` lines; what is left after those is closed with an ellipsis.
std::vector<CellLine> linesOf(const CellLine& words, const Box& cell, std::size_t most) {
  std::vector<CellLine> shown;
  for (const std::string& line : wrapped(words.words, words.height, words.bold, cell.width() - 2 * inset)) {
    if (shown.size() < most) {
      shown.push_back({line, words.height, words.bold});
    } else {
      shown.back().words.append(" ").append(line);
    }
  }
  return shown;
}

// Never shortened: one that the cell is too narrow for is broken after its third group.
std::vector<CellLine> fingerprintLines(const std::string& fingerprint, const Box& cell) {
  if (fingerprint.empty()) return {};
  if (widthOf(fingerprint, smallText, false) <= cell.width() - 2 * inset) return {{fingerprint}};
  std::size_t dot = fingerprint.find('.');
  for (int group = 0; group < 3; ++group) dot = fingerprint.find('.', dot + 1);
  return {{fingerprint.substr(0, dot + 1)}, {fingerprint.substr(dot + 1)}};
}

// Name, particulars and fingerprint: four lines have room, of which the name has two where they are left.
void drawNameCell(Sketch& sketch, const Box& cell, const std::string& name, const std::string& particulars,
                  const std::string& fingerprint) {
  const std::vector<CellLine> last = fingerprintLines(fingerprint, cell);
  std::vector<CellLine> lines = linesOf({name, 3.5, true}, cell, 3 - std::max<std::size_t>(last.size(), 1));
  const std::vector<CellLine> more = linesOf({particulars}, cell, 4 - lines.size() - last.size());
  lines.insert(lines.end(), more.begin(), more.end());
  lines.insert(lines.end(), last.begin(), last.end());
  drawLines(sketch, cell, lines);
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

std::string pageWords(const PageFrame& frame, int page, int pages) {
  return frame.words->say("paper.page", {{"page", page}, {"pages", pages}}, styleOf(*frame.job));
}

// Wide enough for the number of the last page, since all digits are equally wide, and a hair for rounding: a number is
// never cut short.
double pageCellWidth(const PageFrame& frame, int pages) {
  return std::max(pageCell, widthOf(pageWords(frame, pages, pages), pageText, true) + 2 * inset + 0.01);
}

void drawScaleCell(Sketch& sketch, const PageFrame& frame, const PageTitle& title, const Box& cell) {
  const LengthStyle style = styleOf(*frame.job);
  if (!title.scale)
    return drawLines(sketch, cell, {{frame.words->say("paper.scale.none", {}, style), smallText, false}});
  const std::string scale = scaleWords(*title.scale, style.units, *frame.words);
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

  const double pageLeft = outer.right - pageCellWidth(frame, title.pages),
               scaleLeft = pageLeft - scaleCell(style.units);
  const double wallLeft = outer.left + (scaleLeft - outer.left) * 0.52;
  for (const double x : {wallLeft, scaleLeft, pageLeft}) sketch.line({x, titleTop}, {x, outer.bottom}, thinLine);
  drawNameCell(sketch, {outer.left, titleTop, wallLeft, outer.bottom}, job.name, jobParticulars(frame),
               frame.fingerprint);
  drawNameCell(sketch, {wallLeft, titleTop, scaleLeft, outer.bottom}, title.wall, title.subject, title.fingerprint);
  drawScaleCell(sketch, frame, title, {scaleLeft, titleTop, pageLeft, outer.bottom});
  drawLines(
      sketch, {pageLeft, titleTop, outer.right, outer.bottom},
      {{pageWords(frame, title.page, title.pages), pageText, true}, {frame.words->say("paper.maker", {}, style)}});
}

}  // namespace ribwright
