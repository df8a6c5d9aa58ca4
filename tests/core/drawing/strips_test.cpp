// Full-scale strips read back from the page: laid together at their match lines, every hole lies where it is offset.
#include <algorithm>
#include <catch2/catch.hpp>
#include <map>

#include "core/drawing/drill_pages.h"
#include "tests/core/drawing/drawn_jobs.h"
#include "tests/core/drawing/page_reading.h"
#include "tests/core/drawing/surveyed_job.h"

using namespace ribwright;

namespace {

constexpr double stripHeight = 16;

bool isUpright(const Stroke& stroke) { return stroke.points.size() == 2 && stroke.points[0].x == stroke.points[1].x; }
double low(const Stroke& stroke) { return std::min(stroke.points[0].y, stroke.points[1].y); }
double high(const Stroke& stroke) { return std::max(stroke.points[0].y, stroke.points[1].y); }

// One tile as it stands on its page.
struct TileOnPage {
  double top = 0, left = 0, right = 0;   // of its cut lines
  std::vector<double> matches, crosses;  // x
};

// Upper cut lines are level, with another of the same ends 16 mm below.
std::vector<TileOnPage> tilesOn(const Page& page) {
  const std::vector<Stroke> strokes = strokesOf(page);
  std::vector<TileOnPage> tiles;
  for (const Stroke& a : strokes) {
    if (a.points.size() != 2 || a.points[0].y != a.points[1].y) continue;
    const bool cut = std::any_of(strokes.begin(), strokes.end(), [&](const Stroke& b) {
      return b.points.size() == 2 && std::abs(b.points[0].y - a.points[0].y - stripHeight) < 1e-9 &&
             b.points[1].y == b.points[0].y && b.points[0].x == a.points[0].x && b.points[1].x == a.points[1].x;
    });
    if (cut) tiles.push_back({a.points[0].y, a.points[0].x, a.points[1].x, {}, {}});
  }
  std::sort(tiles.begin(), tiles.end(), [](const TileOnPage& a, const TileOnPage& b) { return a.top < b.top; });
  for (TileOnPage& tile : tiles) {
    for (const Stroke& stroke : strokes) {
      if (!isUpright(stroke) || low(stroke) < tile.top - 3 || high(stroke) > tile.top + stripHeight + 3) continue;
      const double x = stroke.points[0].x;
      if (stroke.dash == Dash::Chain) tile.matches.push_back(x);
      if (stroke.dash == Dash::Solid && std::abs(high(stroke) - low(stroke) - 10) < 1e-9) tile.crosses.push_back(x);
    }
    std::sort(tile.matches.begin(), tile.matches.end());
  }
  return tiles;
}

// The strips of a job, tiles laid together: places of the crosses from the strip's left end, each once, and its width.
struct LaidStrip {
  double width = 0;
  std::vector<double> holes;
};

void addOnce(std::vector<double>& places, double place) {
  const bool known =
      std::any_of(places.begin(), places.end(), [&](double other) { return std::abs(other - place) < 1e-6; });
  if (!known) places.push_back(place);
}

std::vector<LaidStrip> laidTogether(const std::vector<Page>& pages) {
  std::vector<LaidStrip> strips;
  double joint = 0;  // of the next tile's left match line, from the strip's left end
  bool open = false;
  for (const Page& page : pages) {
    if (page.title.find("full-scale strips") == std::string::npos) continue;
    for (const TileOnPage& tile : tilesOn(page)) {
      if (!open) strips.emplace_back();
      // What stands at x = 0 on the page's measure of this tile.
      const double zero = open ? tile.matches.front() - joint : tile.left;
      for (const double x : tile.crosses) addOnce(strips.back().holes, x - zero);
      const bool goesOn = tile.matches.size() > (open ? 1U : 0U);
      strips.back().width = tile.right - zero;
      if (goesOn) joint = tile.matches.back() - zero;
      open = goesOn;
    }
  }
  CHECK_FALSE(open);
  for (LaidStrip& strip : strips) std::sort(strip.holes.begin(), strip.holes.end());
  return strips;
}

// What must be there, from the batches: width and places from the left end as one at the bottom end sees them.
std::vector<LaidStrip> wanted(const Plan& made, Lying lying) {
  std::vector<LaidStrip> strips;
  for (const auto& wall : made.walls) {
    const bool left = (wall->layout.direction.hand == Hand::LeftToRight) == (lying == Lying::FaceUp);
    for (const DrillBatch& batch : wall->batches) {
      if (!batch.isCleared()) continue;
      Length width;
      for (const std::int32_t index : batch.pieces) {
        const Piece& piece = wall->layout.pieces[static_cast<std::size_t>(index)];
        width = std::max(width, piece.right - piece.left);
      }
      for (const BatchRow& row : batch.rows) {
        LaidStrip strip{width.inMillimetres(), {}};
        for (const Length offset : row.offsets)
          strip.holes.push_back(left ? offset.inMillimetres() : (width - offset).inMillimetres());
        std::sort(strip.holes.begin(), strip.holes.end());
        strips.push_back(strip);
      }
    }
  }
  return strips;
}

bool same(const LaidStrip& a, const LaidStrip& b) {
  if (std::abs(a.width - b.width) > 1e-6 || a.holes.size() != b.holes.size()) return false;
  for (std::size_t i = 0; i < a.holes.size(); ++i) {
    if (std::abs(a.holes[i] - b.holes[i]) > 1e-6) return false;
  }
  return true;
}

}  // namespace

TEST_CASE("every row of a cleared batch has its strip, true to size on every paper, both hands, both faces") {
  std::size_t looked = 0;
  for (const Hang hang : {Hang::LeftToRight, Hang::RightToLeft}) {
    Job job = screwedFront();
    job.walls[0].hang = hang;
    job = surveyed(withMember(job));
    const Plan made = plan(job);
    for (const Lying lying : {Lying::FaceUp, Lying::FaceDown}) {
      for (const PaperSize paper : {PaperSize::Letter, PaperSize::Tabloid, PaperSize::A4, PaperSize::A3}) {
        INFO(nameOf(paper));
        const auto strips = laidTogether(drillPages(job, made, paper, Words::of("en"), lying));
        for (const LaidStrip& row : wanted(made, lying)) {
          CHECK(std::any_of(strips.begin(), strips.end(), [&](const LaidStrip& strip) { return same(strip, row); }));
          ++looked;
        }
        const auto rows = wanted(made, lying);
        for (const LaidStrip& strip : strips)
          CHECK(std::any_of(rows.begin(), rows.end(), [&](const LaidStrip& row) { return same(strip, row); }));
      }
    }
  }
  CHECK(looked > 100);
}

TEST_CASE("every page of strips has a ruler of 6 in over one of 100 mm") {
  const Job job = surveyed(withMember(screwedFront()));
  const Plan made = plan(job);
  for (const PaperSize paper : {PaperSize::Letter, PaperSize::A4}) {
    int pages = 0;
    for (const Page& page : drillPages(job, made, paper)) {
      if (page.title.find("full-scale strips") == std::string::npos) continue;
      ++pages;
      // Ticks that share a line's end: from y up and from y down.
      std::map<double, std::vector<double>> up, down;
      for (const Stroke& stroke : strokesOf(page)) {
        const double height = isUpright(stroke) ? high(stroke) - low(stroke) : 0;
        if (std::abs(height - 2) > 1e-9 && std::abs(height - 4) > 1e-9) continue;
        up[high(stroke)].push_back(stroke.points[0].x);
        down[low(stroke)].push_back(stroke.points[0].x);
      }
      const auto spans = [](const std::map<double, std::vector<double>>& ticks, std::size_t count, double length) {
        return std::any_of(ticks.begin(), ticks.end(), [&](const auto& at) {
          const auto [least, most] = std::minmax_element(at.second.begin(), at.second.end());
          return at.second.size() == count && std::abs(*most - *least - length) < 1e-9;
        });
      };
      CHECK(spans(up, 25, 6 * 25.4));
      CHECK(spans(down, 11, 100));
    }
    CHECK(pages > 0);
  }
}

// Two strips of a wall have tiles that look alike: a match line's mark stands twice, on the two tiles that it joins.
TEST_CASE("no mark of a match line joins tiles of different strips") {
  const Job job = surveyed(withMember(screwedFront()));
  const Plan made = plan(job);
  std::map<std::string, int> marks;
  for (const Page& page : drillPages(job, made, PaperSize::Letter)) {
    if (page.title.find("full-scale strips") == std::string::npos) continue;
    for (const Text& text : textsOf(page)) {
      const auto letter = text.words.find_first_not_of("0123456789");
      if (letter > 0 && letter + 1 == text.words.size() && text.words[letter] >= 'A' && text.words[letter] <= 'Z')
        ++marks[text.words];
    }
  }
  CHECK(marks.size() > 6);
  for (const auto& [mark, count] : marks) {
    INFO(mark);
    CHECK(count == 2);
  }
}
