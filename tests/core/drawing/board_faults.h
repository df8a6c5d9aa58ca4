// What must never be on a board: labels over one another at some zoom, ways of a label that grow longer.
#pragma once

#include <algorithm>
#include <string>
#include <vector>

#include "core/drawing/board_picture.h"

namespace ribwright {

inline std::size_t lettersOfForm(const BoardForm& form) {
  std::size_t letters = 0;
  for (const auto& line : form.lines) {
    for (const BoardWords& words : line)
      letters += static_cast<std::size_t>(
          std::count_if(words.words.begin(), words.words.end(), [](char c) { return c != ' '; }));
  }
  return letters;
}

// Where a label stands in pixels with the wall's origin at (0, 0), when all of the wall is in view.
inline Box labelBox(const BoardLabel& label, const BoardForm& form, double zoom, double capital) {
  using Stand = BoardLabel::Stand;
  const double width = form.width * capital, height = form.height * capital;
  const double x = label.at.x * zoom + label.off.x * capital, y = label.at.y * zoom + label.off.y * capital;
  const auto kept = [](double start, double size, double from, double to) {
    return size > to - from ? start : std::clamp(start, from, to - size);
  };
  const double across = kept(x - width / 2, width, label.room.left * zoom, label.room.right * zoom);
  const double down = kept(y - height / 2, height, label.room.top * zoom, label.room.bottom * zoom);
  const double left = label.stand == Stand::Before ? x - width : label.stand == Stand::After ? x : across;
  const double top = label.stand == Stand::Under ? y : label.stand == Stand::Over ? y - height : down;
  return {left, top, left + width, top + height};
}

inline std::string firstWords(const BoardLabel& label) { return label.forms.front().lines.front().front().words; }

inline std::vector<std::string> boardFaults(const BoardPicture& picture) {
  std::vector<std::string> faults;
  const auto& labels = picture.labels.all();
  for (const BoardLabel& label : labels) {
    if (label.forms.empty()) faults.push_back("a label says nothing");
    for (std::size_t i = 1; i < label.forms.size(); ++i) {
      if (lettersOfForm(label.forms[i]) > lettersOfForm(label.forms[i - 1]))
        faults.push_back(firstWords(label) + " grows longer");
    }
  }
  constexpr double hair = 1e-6;
  for (const double zoom : {0.005, 0.02, 0.07, 0.2, 0.6, 3.0}) {
    std::vector<std::pair<Box, const BoardLabel*>> boxes;
    for (const BoardLabel& label : labels) {
      const int form = formAt(label, zoom, 8);
      if (form >= 0)
        boxes.push_back({labelBox(label, label.forms[static_cast<std::size_t>(form)], zoom, 8).grown(-hair), &label});
    }
    std::sort(boxes.begin(), boxes.end(), [](const auto& a, const auto& b) { return a.first.left < b.first.left; });
    for (std::size_t i = 0; i < boxes.size(); ++i) {
      for (std::size_t j = i + 1; j < boxes.size() && boxes[j].first.left < boxes[i].first.right; ++j) {
        if (overlap(boxes[i].first, boxes[j].first))
          faults.push_back(firstWords(*boxes[i].second) + " over " + firstWords(*boxes[j].second) + " at zoom " +
                           std::to_string(zoom));
      }
    }
  }
  return faults;
}

}  // namespace ribwright
