// Reading a page back, item by item, without the code that placed them.
#pragma once

#include <catch2/catch.hpp>
#include <string>
#include <vector>

#include "core/drawing/box.h"
#include "core/drawing/drawing.h"
#include "core/drawing/text_extent.h"

namespace ribwright {

inline std::vector<Text> textsOf(const Page& page) {
  std::vector<Text> texts;
  for (const Item& item : page.drawing.items) {
    if (const Text* text = std::get_if<Text>(&item)) texts.push_back(*text);
  }
  return texts;
}

inline std::vector<Stroke> strokesOf(const Page& page) {
  std::vector<Stroke> strokes;
  for (const Item& item : page.drawing.items) {
    if (const Stroke* stroke = std::get_if<Stroke>(&item)) strokes.push_back(*stroke);
  }
  return strokes;
}

inline std::vector<Fill> fillsOf(const Page& page) {
  std::vector<Fill> fills;
  for (const Item& item : page.drawing.items) {
    if (const Fill* fill = std::get_if<Fill>(&item)) fills.push_back(*fill);
  }
  return fills;
}

// How often a text stands on the page, word for word.
inline int timesSaid(const Page& page, const std::string& words) {
  int times = 0;
  for (const Text& text : textsOf(page)) times += text.words == words ? 1 : 0;
  return times;
}

// Extent of what belongs to the wall's outline.
inline Box faceOf(const Page& page) {
  Box box{1e9, 1e9, -1e9, -1e9};
  for (const Stroke& stroke : strokesOf(page)) {
    if (stroke.part < 0 || page.drawing.parts[static_cast<std::size_t>(stroke.part)].kind != Part::Kind::Face) continue;
    for (const PaperPoint& point : stroke.points) box = united(box, {point.x, point.y, point.x, point.y});
  }
  return box;
}

// The scale as the title block says it: what stands behind "1:".
inline double saidScale(const Page& page) {
  for (const Text& text : textsOf(page)) {
    const auto at = text.words.find("1:");
    if (text.words.starts_with("scale ") && at != std::string::npos) return std::stod(text.words.substr(at + 2));
  }
  FAIL("no scale on the page");
  return 0;
}

}  // namespace ribwright
