#include "core/drawing/text_extent.h"

#include <algorithm>
#include <cmath>

#include "core/drawing/letter_widths.h"

namespace ribwright {

namespace {

constexpr char32_t openSquare = 0x25A1;

// Place of a letter in the width tables; -1 when the font has it not.
int placeOf(char32_t letter) {
  const auto after = std::upper_bound(letterRuns.begin(), letterRuns.end(), letter,
                                      [](char32_t value, const LetterRun& run) { return value < run.first; });
  if (after == letterRuns.begin()) return -1;
  const LetterRun& run = *(after - 1);
  return letter <= run.last ? run.at + static_cast<int>(letter - run.first) : -1;
}

char32_t drawnLetter(char32_t letter) {
  if (letter == '\t' || letter == '\n' || letter == '\r') return ' ';
  return placeOf(letter) < 0 ? openSquare : letter;
}

// How many bytes a letter that begins with this byte has, 0 when none begins so.
int bytesOf(unsigned char first) {
  if (first < 0x80) return 1;
  if (first >= 0xC2 && first < 0xE0) return 2;
  if (first >= 0xE0 && first < 0xF0) return 3;
  return first >= 0xF0 && first < 0xF5 ? 4 : 0;
}

// The letter at `at`, which moves on past it; a broken byte is one letter that no font has.
char32_t nextLetter(std::string_view words, std::size_t& at) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(words[i]); };
  const int count = bytesOf(byte(at));
  if (count == 1) return byte(at++);
  const auto bytes = static_cast<std::size_t>(count);
  if (count == 0 || at + bytes > words.size()) return ++at, char32_t{0};
  char32_t letter = byte(at) & (0x7Fu >> count);
  for (std::size_t i = 1; i < bytes; ++i) {
    if ((byte(at + i) & 0xC0) != 0x80) return ++at, char32_t{0};
    letter = (letter << 6) | (byte(at + i) & 0x3Fu);
  }
  at += bytes;
  return letter;
}

void append(std::string& words, char32_t letter) {
  const auto put = [&](char32_t byte) { words += static_cast<char>(static_cast<unsigned char>(byte)); };
  if (letter < 0x80) return put(letter);
  if (letter < 0x800) {
    put(0xC0 | letter >> 6);
  } else {
    put(0xE0 | letter >> 12);  // the font has no letter beyond the basic plane
    put(0x80 | ((letter >> 6) & 0x3F));
  }
  put(0x80 | (letter & 0x3F));
}

double inHeights(int units, double height) { return height * units / unitsOfCapital; }

}  // namespace

std::vector<char32_t> lettersOf(std::string_view words) {
  std::vector<char32_t> letters;
  for (std::size_t at = 0; at < words.size();) letters.push_back(drawnLetter(nextLetter(words, at)));
  return letters;
}

std::string drawnWords(std::string_view words) {
  std::string drawn;
  for (const char32_t letter : lettersOf(words)) append(drawn, letter);
  return drawn;
}

int advanceOf(char32_t letter, bool bold) {
  const auto place = static_cast<std::size_t>(placeOf(drawnLetter(letter)));
  return bold ? boldWidths[place] : regularWidths[place];
}

double emOf(double height) { return inHeights(unitsOfEm, height); }

double widthOf(std::string_view words, double height, bool bold) {
  int units = 0;
  for (const char32_t letter : lettersOf(words)) units += advanceOf(letter, bold);
  return inHeights(units, height);
}

double widthOf(const Text& text) { return widthOf(text.words, text.height, text.bold); }

double ascentOf(double height) { return inHeights(unitsOfAscent, height); }

double descentOf(double height) { return inHeights(unitsOfDescent, height); }

Box boxOf(const Text& text) {
  const double width = widthOf(text);
  const double left = text.anchor == TextAnchor::Start ? 0 : text.anchor == TextAnchor::Middle ? -width / 2 : -width;
  const Box level{left, -ascentOf(text.height), left + width, descentOf(text.height)};
  // Quarter turns are the rule: their sine and cosine are exact, so that boxes of turned text keep clean edges.
  const double quarters = text.turn / 90;
  const bool quarter = quarters == std::floor(quarters);
  const int fourth = quarter ? ((static_cast<int>(quarters) % 4) + 4) % 4 : 0;
  const double angle = text.turn * 3.14159265358979323846 / 180;
  const double sine = quarter ? (fourth == 1 ? 1 : fourth == 3 ? -1 : 0) : std::sin(angle);
  const double cosine = quarter ? (fourth == 0 ? 1 : fourth == 2 ? -1 : 0) : std::cos(angle);
  Box box{1e9, 1e9, -1e9, -1e9};
  for (const PaperPoint corner : {PaperPoint{level.left, level.top}, PaperPoint{level.right, level.top},
                                  PaperPoint{level.left, level.bottom}, PaperPoint{level.right, level.bottom}}) {
    const double x = text.at.x + corner.x * cosine + corner.y * sine;
    const double y = text.at.y - corner.x * sine + corner.y * cosine;
    box = united(box, {x, y, x, y});
  }
  return box;
}

Text textAround(const PaperPoint& middle, double height, bool bold, double turn, std::string words) {
  Text text{{0, 0}, height, TextAnchor::Middle, turn, bold, std::move(words), -1};
  const PaperPoint now = boxOf(text).middle();
  text.at = {middle.x - now.x, middle.y - now.y};
  return text;
}

std::vector<std::string> wrapped(std::string_view words, double height, bool bold, double width) {
  std::vector<std::string> lines;
  std::string line;
  for (std::size_t at = 0; at <= words.size();) {
    const std::size_t end = std::min(words.find(' ', at), words.size());
    const std::string word(words.substr(at, end - at));
    std::string longer = line;
    if (!line.empty()) longer += ' ';
    longer += word;
    if (!line.empty() && widthOf(longer, height, bold) > width) {
      lines.push_back(line);
      line = word;
    } else {
      line = longer;
    }
    at = end + 1;
  }
  if (!line.empty()) lines.push_back(line);
  return lines;
}

std::string shortened(std::string_view words, double height, bool bold, double width) {
  std::vector<char32_t> letters = lettersOf(words);
  int units = 0;
  for (const char32_t letter : letters) units += advanceOf(letter, bold);
  const bool fits = inHeights(units, height) <= width;
  if (!fits) units += advanceOf(0x2026, bold);
  while (!fits && !letters.empty() && inHeights(units, height) > width) {
    units -= advanceOf(letters.back(), bold);
    letters.pop_back();
  }
  std::string kept;
  for (const char32_t letter : letters) append(kept, letter);
  return fits ? kept : kept + "…";
}

}  // namespace ribwright
