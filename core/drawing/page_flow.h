// What stands one below the other on site pages: blocks that are never divided, going on to the next page where one
// finds no room. Unit: mm, y down.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "core/drawing/sketch.h"

namespace ribwright {

inline constexpr double siteText = 3.5;              // height of what is read on the slab
inline constexpr double shoutedText = 10;            // FACE UP
inline constexpr double siteLine = siteText * 1.65;  // from one line of it to the next

struct PageBlock {
  double height = 0;
  std::function<void(Sketch&, const Box&)> draw;  // into a room of its height and the page's width
  bool keepsNext = false;                         // never the last one on its page
};

// Every page begins with `top`. A block that is taller than a page stands alone on one and reaches beyond it: make
// blocks that fit.
std::vector<Sketch> flowed(const std::vector<PageBlock>& blocks, const PageBlock& top, const Box& work);

// Words over as many lines as they need, each a block; `indent` from the left.
std::vector<PageBlock> paragraph(const std::string& words, const Box& work, double indent = 0, bool bold = false);
// Several pieces of it that stay on one page.
PageBlock together(const std::vector<PageBlock>& blocks);
// Short lines in columns, as many beside one another as there is room for, each column from its top down.
PageBlock inColumns(const std::vector<std::string>& lines, const Box& work, double indent = 0);
// Words side by side, each with a line to be filled in by hand.
PageBlock toFillIn(const std::vector<std::string>& words);
PageBlock clearPaper(double height);
void addBlocks(std::vector<PageBlock>& to, std::vector<PageBlock> more);

}  // namespace ribwright
