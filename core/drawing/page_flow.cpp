#include "core/drawing/page_flow.h"

#include "core/drawing/text_extent.h"

namespace ribwright {

std::vector<Sketch> flowed(const std::vector<PageBlock>& blocks, const PageBlock& top, const Box& work) {
  std::vector<Sketch> pages;
  double y = 0;
  const auto put = [&](const PageBlock& block) {
    if (block.draw) block.draw(pages.back(), {work.left, y, work.right, y + block.height});
    y += block.height;
  };
  for (std::size_t i = 0; i < blocks.size(); ++i) {
    double need = 0;
    for (std::size_t k = i; k < blocks.size(); ++k) {
      need += blocks[k].height;
      if (!blocks[k].keepsNext) break;
    }
    const bool follows = i > 0 && blocks[i - 1].keepsNext && y + blocks[i].height <= work.bottom;
    if (pages.empty() || (!follows && y + need > work.bottom)) {
      pages.emplace_back();
      y = work.top;
      put(top);
    }
    put(blocks[i]);
  }
  return pages;
}

std::vector<PageBlock> paragraph(const std::string& words, const Box& work, double indent, bool bold) {
  std::vector<PageBlock> blocks;
  for (const std::string& line : wrapped(words, siteText, bold, work.width() - indent)) {
    const auto draw = [line, indent, bold, width = work.width() - indent](Sketch& sketch, const Box& room) {
      sketch.text({{room.left + indent, room.top + ascentOf(siteText)},
                   siteText,
                   TextAnchor::Start,
                   0,
                   bold,
                   shortened(line, siteText, bold, width),
                   -1});
    };
    if (!line.empty()) blocks.push_back({siteLine, draw});
  }
  return blocks;
}

PageBlock together(const std::vector<PageBlock>& blocks) {
  PageBlock whole;
  for (const PageBlock& block : blocks) whole.height += block.height;
  whole.draw = [blocks](Sketch& sketch, const Box& room) {
    double y = room.top;
    for (const PageBlock& block : blocks) {
      if (block.draw) block.draw(sketch, {room.left, y, room.right, y + block.height});
      y += block.height;
    }
  };
  return whole;
}

PageBlock clearPaper(double height) { return {height, {}}; }

void addBlocks(std::vector<PageBlock>& to, std::vector<PageBlock> more) {
  for (PageBlock& block : more) to.push_back(std::move(block));
}

}  // namespace ribwright
