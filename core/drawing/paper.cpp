#include "core/drawing/paper.h"

#include <array>

namespace ribwright {

namespace {

struct Sheet {
  PaperSize paper;
  std::string_view name;
  PaperExtent extent;
};

constexpr std::array<Sheet, 4> sheets = {{{PaperSize::Letter, "letter", {279.4, 215.9}},
                                          {PaperSize::Tabloid, "tabloid", {431.8, 279.4}},
                                          {PaperSize::A4, "a4", {297, 210}},
                                          {PaperSize::A3, "a3", {420, 297}}}};

const Sheet& sheetOf(PaperSize paper) {
  for (const Sheet& sheet : sheets) {
    if (sheet.paper == paper) return sheet;
  }
  return sheets.front();
}

}  // namespace

PaperExtent extentOf(PaperSize paper) { return sheetOf(paper).extent; }

std::string_view nameOf(PaperSize paper) { return sheetOf(paper).name; }

PaperSize customaryPaper(UnitSystem units) {
  return units == UnitSystem::Millimetres ? PaperSize::A4 : PaperSize::Letter;
}

std::optional<PaperSize> paperNamed(std::string_view name) {
  for (const Sheet& sheet : sheets) {
    if (sheet.name == name) return sheet.paper;
  }
  return std::nullopt;
}

}  // namespace ribwright
