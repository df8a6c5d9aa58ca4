#include "core/drawing/board_forms.h"

#include <algorithm>

#include "core/drawing/text_extent.h"

namespace ribwright {

BoardForm boardForm(std::vector<std::vector<BoardWords>> lines, bool upward) {
  BoardForm form{std::move(lines), upward};
  double along = 0;
  for (const auto& line : form.lines) {
    double width = 0;
    for (const BoardWords& words : line) width += widthOf(words.words, 1, words.bold);
    along = std::max(along, width);
  }
  along += 2 * besideWords;
  const double across = lineOf(1) + boardLine * static_cast<double>(form.lines.size() - 1) + 2 * overWords;
  form.width = upward ? across : along;
  form.height = upward ? along : across;
  return form;
}

std::vector<BoardForm> markForms(const std::string& mark, const std::string& more) {
  const BoardWords bold{mark, true};
  return {boardForm({{bold}, {{more}}}), boardForm({{bold, {"  " + more}}}, true), boardForm({{bold}}),
          boardForm({{bold}}, true)};
}

std::vector<BoardForm> lineForms(const std::vector<std::string>& ways) {
  std::vector<BoardForm> forms;
  for (const std::string& words : ways) forms.push_back(boardForm({{{words}}}));
  return forms;
}

int formAt(const BoardLabel& label, double zoom, double capital) {
  using Stand = BoardLabel::Stand;
  const double across = label.room.width() * zoom / capital, down = label.room.height() * zoom / capital;
  const bool beside = label.stand == Stand::Before || label.stand == Stand::After;
  for (std::size_t i = 0; i < label.forms.size(); ++i) {
    const BoardForm& form = label.forms[i];
    const bool wide = form.width + (beside ? std::abs(label.off.x) : 0) <= across;
    const bool tall = label.stand == Stand::Under || label.stand == Stand::Over || form.height <= down;
    if (wide && tall) return static_cast<int>(i);
  }
  return -1;
}

}  // namespace ribwright
