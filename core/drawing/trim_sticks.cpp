#include "core/drawing/trim_sticks.h"

#include <algorithm>

#include "core/drawing/hatch.h"
#include "core/drawing/shown_length.h"
#include "core/drawing/text_extent.h"

namespace ribwright {
namespace {

constexpr double labelWide = 24, barTall = 7, hatchApart = 2;

struct Bar {
  Box box;       // of the whole stick
  double scale;  // mm on paper for a mm of trim

  double at(Length along) const { return box.left + along.inMillimetres() * scale; }
};

void inside(Sketch& sketch, const Box& box, const std::string& words) {
  if (widthOf(words, smallText, false) + 1.2 > box.width()) return;
  sketch.text(textAround(box.middle(), smallText, false, 0, words));
}

void hatch(Sketch& sketch, const Box& box) {
  const std::vector<PaperPoint> ring = {
      {box.left, box.top}, {box.right, box.top}, {box.right, box.bottom}, {box.left, box.bottom}};
  for (const auto& [a, b] : hatchLines({ring}, hatchApart)) sketch.line(a, b, thinLine);
}

std::string keptText(const TrimStick& stick, const TrimWords& words) { return dimensionText(stick.drop, words.style); }

void drawBar(Sketch& sketch, const TrimStick& stick, const Bar& bar, const TrimWords& words) {
  const auto part = [&](Length from, Length to) { return Box{bar.at(from), bar.box.top, bar.at(to), bar.box.bottom}; };
  for (std::size_t i = 0; i < stick.cuts.size(); ++i) {
    const TrimCut& cut = stick.cuts[i];
    inside(sketch, part(cut.at, cut.at + cut.length), cutLetter(i));
    const double end = bar.at(cut.at + cut.length);
    if (end < bar.box.right - 0.1) sketch.line({end, bar.box.top}, {end, bar.box.bottom}, outlineLine);
  }
  const Box rest = part(stick.restAt(), stick.restAt() + stick.drop + stick.waste);
  if (stick.drop > Length()) {
    inside(sketch, rest, words.say("trim.stick.keep", {{"length", keptText(stick, words)}}));
  } else if (stick.waste > Length()) {
    hatch(sketch, rest);
  }
  sketch.rectangle(bar.box, openingLine);
}

std::vector<std::string> cutWords(const TrimTakeoff& takeoff, const TrimStick& stick, const TrimWords& words) {
  std::vector<std::string> said;
  for (std::size_t i = 0; i < stick.cuts.size(); ++i) {
    const TrimCut& cut = stick.cuts[i];
    const TrimPiece& piece = takeoff.pieces[static_cast<std::size_t>(cut.piece)];
    said.push_back(words.say("trim.stick.cut", {{"letter", cutLetter(i)},
                                                {"piece", partText(piece, cut.part, words)},
                                                {"length", cutText(cut.length, words.style)},
                                                {"end", cutText(cut.at + cut.length, words.style)}}));
  }
  if (stick.drop > Length()) said.push_back(words.say("trim.stick.keep", {{"length", keptText(stick, words)}}));
  return said;
}

}  // namespace

std::string cutLetter(std::size_t index) {
  std::string letters(1, static_cast<char>('a' + static_cast<int>(index % 26)));
  return index < 26 ? letters : cutLetter(index / 26 - 1) + letters;
}

std::string partText(const TrimPiece& piece, int part, const TrimWords& words) {
  const std::string name = words.words->say(trimPieceName(piece), words.style);
  if (piece.parts.size() == 1) return name;
  return words.say(
      "trim.part",
      {{"piece", name}, {"part", std::int64_t(part + 1)}, {"parts", static_cast<std::int64_t>(piece.parts.size())}});
}

std::string partLengths(const TrimPiece& piece, const LengthStyle& style) {
  std::string all;
  if (piece.parts.size() < 2) return all;
  for (auto begin = piece.parts.begin(); begin != piece.parts.end();) {
    const auto end =
        std::find_if(begin, piece.parts.end(), [&](const TrimPart& part) { return part.length != begin->length; });
    if (!all.empty()) all += " + ";
    if (end - begin > 1) all += std::to_string(end - begin) + " × ";
    all += cutText(begin->length, style);
    begin = end;
  }
  return all;
}

PageBlock stickPicture(const TrimTakeoff& takeoff, const TrimStick& stick, Length longest, const TrimWords& words,
                       const Box& work) {
  const PageBlock cuts = inColumns(cutWords(takeoff, stick, words), work, labelWide);
  const auto draw = [stick, longest, words, cuts](Sketch& sketch, const Box& room) {
    const double scale = (room.width() - labelWide - 1) / longest.inMillimetres();
    const double left = room.left + labelWide;
    const Bar bar{{left, room.top, left + stick.stock.inMillimetres() * scale, room.top + barTall}, scale};
    const double baseline = room.top + barTall / 2 + siteText / 2;
    const std::string number = std::to_string(stick.number);
    sketch.text({{room.left, baseline}, siteText, TextAnchor::Start, 0, true, number, -1});
    const std::string stock = dimensionText(stick.stock, words.style);
    sketch.text({{left - 2, baseline}, smallText, TextAnchor::End, 0, false, stock, -1});
    drawBar(sketch, stick, bar, words);
    cuts.draw(sketch, {room.left, room.top + barTall + 1, room.right, room.top + barTall + 1 + cuts.height});
  };
  return {barTall + 1 + cuts.height + 2, draw};
}

}  // namespace ribwright
