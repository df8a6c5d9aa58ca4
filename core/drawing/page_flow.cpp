#include "core/drawing/page_flow.h"

#include <algorithm>

#include "core/drawing/text_extent.h"

namespace ribwright {

namespace {
constexpr double flowGap = 6;
constexpr double overFields = 2;  // clear paper over lines to be filled in
}  // namespace

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

PageBlock inColumns(const std::vector<std::string>& lines, const Box& work, double indent) {
  double width = 0;
  for (const std::string& line : lines) width = std::max(width, widthOf(line, siteText, false) + flowGap);
  const auto across = std::max<std::size_t>(1, static_cast<std::size_t>((work.width() - indent) / width));
  const std::size_t down = (lines.size() + across - 1) / across;
  const auto draw = [lines, indent, width, down](Sketch& sketch, const Box& room) {
    for (std::size_t i = 0; i < lines.size(); ++i) {
      const double x = room.left + indent + width * static_cast<double>(i / down);
      const double y = room.top + ascentOf(siteText) + siteLine * static_cast<double>(i % down);
      sketch.text({{x, y}, siteText, TextAnchor::Start, 0, false, lines[i], -1});
    }
  };
  return {siteLine * static_cast<double>(down), draw};
}

PageBlock toFillIn(const std::vector<std::string>& words) {
  const auto draw = [words](Sketch& sketch, const Box& room) {
    const double part = room.width() / static_cast<double>(words.size());
    for (std::size_t i = 0; i < words.size(); ++i) {
      const double x = room.left + part * static_cast<double>(i), y = room.top + overFields + ascentOf(siteText);
      sketch.text({{x, y}, siteText, TextAnchor::Start, 0, false, words[i], -1});
      sketch.line({x + widthOf(words[i], siteText, false) + 2, y + 0.8}, {x + part - 4, y + 0.8}, thinLine);
    }
  };
  return {siteLine + overFields + 2, draw};
}

PageBlock clearPaper(double height) { return {height, {}}; }

void addBlocks(std::vector<PageBlock>& to, std::vector<PageBlock> more) {
  for (PageBlock& block : more) to.push_back(std::move(block));
}

}  // namespace ribwright
