// Reading a page back, item by item, without the code that placed them.
#pragma once

#include <string>
#include <vector>

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

}  // namespace ribwright
