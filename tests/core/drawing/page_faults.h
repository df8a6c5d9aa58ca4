// What must not be on any page, whatever the building: found from the items alone, without the code that placed them.
// Each gives the words it found at fault; empty is good.
#pragma once

#include <algorithm>
#include <string>
#include <vector>

#include "core/drawing/box.h"
#include "core/drawing/text_extent.h"
#include "tests/core/drawing/page_reading.h"

namespace ribwright {

// Pairs of texts nearer than 0.3 mm to one another.
inline std::vector<std::string> textsTooNear(const Page& page) {
  std::vector<std::string> found;
  const std::vector<Text> texts = textsOf(page);
  for (std::size_t i = 0; i < texts.size(); ++i) {
    for (std::size_t j = 0; j < i; ++j) {
      if (overlap(boxOf(texts[i]).grown(0.299), boxOf(texts[j])))
        found.push_back(texts[i].words + " | " + texts[j].words);
    }
  }
  return found;
}

// Texts that a line runs through.
inline std::vector<std::string> textsStruckThrough(const Page& page) {
  std::vector<std::string> found;
  const std::vector<Stroke> strokes = strokesOf(page);
  for (const Text& text : textsOf(page)) {
    const Box box = boxOf(text);
    for (const Stroke& stroke : strokes) {
      const std::size_t count = stroke.points.size();
      for (std::size_t i = 1; i < count + (stroke.closed ? 1 : 0); ++i) {
        const PaperPoint &a = stroke.points[i - 1], &b = stroke.points[i % count];
        if (crosses(box.grown(stroke.width.size / 2), a, b)) found.push_back(text.words);
      }
    }
  }
  return found;
}

inline Box boxAround(const std::vector<PaperPoint>& points) {
  Box box{1e9, 1e9, -1e9, -1e9};
  for (const PaperPoint& point : points) box = united(box, {point.x, point.y, point.x, point.y});
  return box;
}

inline bool holdsPoint(const std::vector<PaperPoint>& ring, const PaperPoint& point) {
  bool inside = false;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const PaperPoint &a = ring[i], &b = ring[(i + 1) % ring.size()];
    const bool passes = (a.y > point.y) != (b.y > point.y);
    if (passes && point.x < a.x + (b.x - a.x) * (point.y - a.y) / (b.y - a.y)) inside = !inside;
  }
  return inside;
}

// Texts on a black area: its edge runs through the text's box, or it holds the box whole.
inline std::vector<std::string> textsOnBlack(const Page& page) {
  std::vector<std::string> found;
  const std::vector<Text> texts = textsOf(page);
  for (const Fill& fill : fillsOf(page)) {
    if (fill.ink != Ink::Black) continue;
    for (const std::vector<PaperPoint>& ring : fill.rings) {
      const Box around = boxAround(ring);
      for (const Text& text : texts) {
        if (!overlap(around, boxOf(text))) continue;
        bool touches = holdsPoint(ring, boxOf(text).middle());
        for (std::size_t i = 0; i < ring.size(); ++i) {
          touches = touches || crosses(boxOf(text), ring[i], ring[(i + 1) % ring.size()]);
        }
        if (touches) found.push_back(text.words);
      }
    }
  }
  return found;
}

// Items that reach beyond 10 mm from the paper's edge.
inline std::vector<std::string> beyondFrame(const Page& page) {
  std::vector<std::string> found;
  const PaperExtent extent = extentOf(page.paper);
  const Box frame = Box{0, 0, extent.width, extent.height}.grown(-10);
  for (const Text& text : textsOf(page)) {
    if (!inside(boxOf(text), frame)) found.push_back(text.words);
  }
  const auto check = [&](const char* what, const std::vector<PaperPoint>& points) {
    for (const PaperPoint& point : points) {
      if (!inside({point.x, point.y, point.x, point.y}, frame)) found.push_back(what);
    }
  };
  for (const Stroke& stroke : strokesOf(page)) check("stroke", stroke.points);
  for (const Fill& fill : fillsOf(page)) {
    for (const auto& ring : fill.rings) check("area", ring);
  }
  return found;
}

// The rules of paper and screen: no text under 2.5 mm, no line under 0.35 mm.
inline std::vector<std::string> tooSmall(const Page& page) {
  std::vector<std::string> found;
  for (const Text& text : textsOf(page)) {
    if (text.height < 2.5) found.push_back(text.words);
  }
  for (const Stroke& stroke : strokesOf(page)) {
    const bool onPaper = stroke.width.in == StrokeWidth::In::MillimetresOnPaper;
    if (!onPaper || stroke.width.size < 0.35) found.push_back("stroke");
  }
  return found;
}

inline std::vector<std::string> pageFaults(const Page& page) {
  std::vector<std::string> all;
  const auto add = [&](const std::string& what, const std::vector<std::string>& found) {
    for (const std::string& words : found) all.push_back(page.title + ": " + what + ": " + words);
  };
  add("too near", textsTooNear(page));
  add("struck through", textsStruckThrough(page));
  add("on black", textsOnBlack(page));
  add("beyond the frame", beyondFrame(page));
  add("too small", tooSmall(page));
  return all;
}

}  // namespace ribwright
