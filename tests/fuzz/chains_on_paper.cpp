// Dimension chains read back from the paper alone, as a person with a ruler would: ticks, the figures between them, and
// the scale of the title block.
#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <map>

#include "core/drawing/elevation.h"
#include "core/job/job_file.h"
#include "tests/core/drawing/page_reading.h"
#include "tests/fuzz/random_building.h"
#include "tests/fuzz/random_screws.h"

using namespace ribwright;
using namespace ribwright::fuzz;

namespace {

struct ReadChain {
  double y = 0;
  std::vector<double> ticks;  // x, rising
};

// Slanting strokes of one length are ticks; those at one height are a chain.
std::vector<ReadChain> chainsOf(const Page& page) {
  std::map<long, std::vector<double>> rows;
  std::map<long, double> heights;
  for (const Stroke& stroke : strokesOf(page)) {
    if (stroke.points.size() != 2 || stroke.closed) continue;
    const PaperPoint &a = stroke.points[0], &b = stroke.points[1];
    const double across = std::abs(b.x - a.x), up = std::abs(b.y - a.y);
    if (across < 1 || across > 4 || std::abs(across - up) > 1e-6) continue;
    const double y = (a.y + b.y) / 2;
    const long row = std::lround(y * 100);
    rows[row].push_back((a.x + b.x) / 2);
    heights[row] = y;
  }
  std::vector<ReadChain> chains;
  for (auto& [row, ticks] : rows) {
    std::sort(ticks.begin(), ticks.end());
    ticks.erase(std::unique(ticks.begin(), ticks.end(), [](double a, double b) { return std::abs(a - b) < 1e-6; }),
                ticks.end());
    if (ticks.size() >= 2) chains.push_back({heights[row], ticks});
  }
  return chains;
}

// Ticks of the two corners' heights stand at one height too, but there is no level line between them.
bool hasLine(const Page& page, const ReadChain& chain) {
  for (const Stroke& stroke : strokesOf(page)) {
    if (stroke.points.size() != 2) continue;
    const PaperPoint &a = stroke.points[0], &b = stroke.points[1];
    if (std::abs(a.y - chain.y) > 1e-6 || std::abs(b.y - chain.y) > 1e-6) continue;
    if (std::min(a.x, b.x) <= chain.ticks.front() && std::max(a.x, b.x) >= chain.ticks.back()) return true;
  }
  return false;
}

// The figure that stands over a space; none where it is too narrow for it.
std::optional<Length> figureOver(const Page& page, const ReadChain& chain, std::size_t space,
                                 const LengthStyle& style) {
  for (const Text& text : textsOf(page)) {
    const Box box = boxOf(text);
    const double off = chain.y - box.bottom;
    if (text.turn != 0 || off < 0 || off > 2 || text.part >= 0) continue;
    if (box.left < chain.ticks[space] || box.right > chain.ticks[space + 1]) continue;
    const auto read = parseLength(text.words, style);
    if (read) return read.value();
  }
  return std::nullopt;
}

struct Read {
  int chains = 0, figures = 0, sums = 0;
};

void readChains(const Page& page, const LengthStyle& style, Read& all) {
  const double scale = saidScale(page);
  const Length mark = style.units == UnitSystem::Millimetres ? Length::millimetres(1) : Length::sixtyFourths(4);
  std::map<std::pair<long, long>, Length> sums;  // by the ends of a chain
  for (const ReadChain& chain : chainsOf(page)) {
    if (!hasLine(page, chain)) continue;
    ++all.chains;
    Length sum;
    bool whole = true;
    for (std::size_t space = 0; space + 1 < chain.ticks.size(); ++space) {
      const auto figure = figureOver(page, chain, space, style);
      whole = whole && figure.has_value();
      if (!figure) continue;
      ++all.figures;
      sum += *figure;
      const double measured = (chain.ticks[space + 1] - chain.ticks[space]) * scale;
      CHECK(figure->inMillimetres() == Approx(measured).margin(mark.inMillimetres() + 1e-3 * scale));
    }
    if (!whole) continue;
    const std::pair ends(std::lround(chain.ticks.front() * 100), std::lround(chain.ticks.back() * 100));
    const auto [known, added] = sums.emplace(ends, sum);
    all.sums += added ? 0 : 1;
    CHECK(known->second == sum);  // chains between the same ends say the same total, to the mark
  }
}

}  // namespace

TEST_CASE("on the pages of 200 random buildings each dimension is as long as it says, and chains add up as printed") {
  constexpr PaperSize papers[] = {PaperSize::Letter, PaperSize::A3, PaperSize::A4, PaperSize::Tabloid};
  Read all;
  for (int index = 0; index < 200; ++index) {
    INFO("seed " << kSeed << ", building " << index);
    Dice dice(kSeed + 1, index);
    const Job job = withScrews(randomJob(kSeed, index), dice);
    for (const Page& page : elevationPages(job, plan(job), papers[index % 4])) {
      const auto said = textsOf(page);
      const bool scaled = std::any_of(said.begin(), said.end(), [](const Text& text) {
        return text.words.starts_with("scale ") && text.words.find("1:") != std::string::npos;
      });
      if (scaled) readChains(page, {job.units, job.decimalSign}, all);
    }
  }
  CHECK(all.chains > 300);
  CHECK(all.figures > 1000);
  CHECK(all.sums > 50);
}
