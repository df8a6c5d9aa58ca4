#include "core/drawing/elevation.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <map>
#include <set>

#include "core/drawing/shown_length.h"
#include "tests/core/drawing/drawn_jobs.h"
#include "tests/core/drawing/page_reading.h"

using namespace ribwright;

namespace {

const Page& onlyPage(const std::vector<Page>& pages) {
  REQUIRE(pages.size() == 1);
  return pages.front();
}

bool saysScale(const Page& page) { return timesSaid(page, "no scale") == 0; }

// Marks as they stand in the picture, in bold and belonging to their piece.
std::map<std::string, int> marksOf(const std::vector<Page>& pages) {
  std::map<std::string, int> marks;
  for (const Page& page : pages) {
    for (const Text& text : textsOf(page)) {
      if (text.part < 0 || !text.bold) continue;
      const Part& part = page.drawing.parts[static_cast<std::size_t>(text.part)];
      if (part.kind == Part::Kind::Piece && part.id == text.words) ++marks[text.words];
    }
  }
  return marks;
}

}  // namespace

// The trade's rules: blanks of sheet 1: 158-1/2, 6: 218-1/2, 7: 226, 8: 222, 14: 150 in.
TEST_CASE("the frozen gable shows its 14 sheets with their blanks, its width and its heights") {
  const DrawnJob drawn = planned("frozen gable", frozenGable());
  const Page page = onlyPage(elevationPages(drawn.job, drawn.plan, "A", PaperSize::Letter));
  CHECK(marksOf({page}).size() == 14);
  for (const char* length : {"13' 2-1/2\"", "18' 2-1/2\"", "18' 10\"", "18' 6\"", "12' 6\""}) {
    INFO(length);
    CHECK(timesSaid(page, length) == 2);  // in the picture and in the table
  }
  CHECK(timesSaid(page, "40' 0\"") == 1);
  CHECK(timesSaid(page, "top 12' 0\"") == 2);
  CHECK(timesSaid(page, "ridge 18' 8\"") == 1);
  CHECK(timesSaid(page, "hang left to right") == 1);
  CHECK(timesSaid(page, "start") == 1);
}

// Lip 1-1/2 in, cover 36 in, flush: sheet k + 1 begins at 36 k in from the corner, over the leg of sheet k.
TEST_CASE("a lap shows the edge of the upper sheet, and the leg under it is hidden") {
  const DrawnJob drawn = planned("frozen gable", frozenGable());
  const Page page = onlyPage(elevationPages(drawn.job, drawn.plan, "A", PaperSize::Letter));
  const double left = faceOf(page).left, inch = 25.4 / saidScale(page);
  std::set<long> uprights;  // 1/8 in from the corner
  for (const Stroke& stroke : strokesOf(page)) {
    if (stroke.part < 0 || page.drawing.parts[static_cast<std::size_t>(stroke.part)].kind != Part::Kind::Piece)
      continue;
    if (stroke.points.size() == 2 && std::abs(stroke.points[0].x - stroke.points[1].x) < 1e-9) {
      uprights.insert(std::lround((stroke.points[0].x - left) / inch * 8));
    }
  }
  std::set<long> wanted{40 * 12 * 8};
  for (long sheet = 0; sheet < 14; ++sheet) wanted.insert(sheet * 36 * 8);
  CHECK(uprights == wanted);
}

TEST_CASE("a wall is drawn at the scale that its title block says") {
  for (const DrawnJob& drawn : {planned("gable", frozenGable()), planned("metric", metricGable())}) {
    for (const PaperSize paper : {PaperSize::Letter, PaperSize::Tabloid, PaperSize::A4, PaperSize::A3}) {
      const Page page = elevationPages(drawn.job, drawn.plan, paper).front();
      const double width = drawn.plan.walls.front()->layout.face.width.inMillimetres();
      CHECK(faceOf(page).width() * saidScale(page) == Approx(width).epsilon(1e-9));
    }
  }
}

TEST_CASE(
    "the scale bar is 3 in long on paper in feet-inches jobs and 100 mm in metric ones, and says what it stands for") {
  const auto barOf = [](const Page& page) {
    for (const Stroke& stroke : strokesOf(page)) {
      if (!stroke.closed || stroke.points.size() != 4) continue;
      const double width = stroke.points[1].x - stroke.points[0].x + stroke.width.size;
      const double height = stroke.points[2].y - stroke.points[1].y + stroke.width.size;
      if (height == Approx(1.8)) return width;
    }
    return 0.0;
  };
  const DrawnJob gable = planned("gable", frozenGable());
  const Page feet = elevationPages(gable.job, gable.plan, PaperSize::Letter).front();
  CHECK(barOf(feet) == Approx(76.2));
  const Length stands = Length::inches(3) * static_cast<std::int64_t>(saidScale(feet));
  CHECK(timesSaid(feet, dimensionText(stands, {UnitSystem::FeetInches, '.'})) >= 1);
  const DrawnJob hall = planned("metric", metricGable());
  const Page metres = elevationPages(hall.job, hall.plan, PaperSize::A3).front();
  CHECK(barOf(metres) == Approx(100));
  CHECK(timesSaid(metres, std::to_string(100 * static_cast<int>(saidScale(metres)))) == 1);
}

TEST_CASE("every piece is named in the pictures exactly once, on whatever page") {
  for (const DrawnJob& drawn : drawnJobs()) {
    for (const PaperSize paper : {PaperSize::Letter, PaperSize::A3}) {
      INFO(drawn.name << " " << nameOf(paper));
      const auto marks = marksOf(elevationPages(drawn.job, drawn.plan, paper));
      std::size_t pieces = 0;
      for (const auto& wall : drawn.plan.walls) {
        for (const Piece& piece : wall->layout.pieces) {
          const auto found = marks.find(piece.mark);
          CHECK((found != marks.end() && found->second == 1));
          ++pieces;
        }
      }
      CHECK(marks.size() == pieces);
    }
  }
}

TEST_CASE("the table lists every piece with its blank length and order code") {
  const DrawnJob drawn = planned("busy front", busyFront());
  const auto pages = elevationPages(drawn.job, drawn.plan, PaperSize::Letter);
  const Page& table = pages.back();
  const auto& pieces = drawn.plan.walls.front()->layout.pieces;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    INFO(pieces[i].mark);
    // One line: mark, blank and code at the same height, from left to right.
    const auto texts = textsOf(table);
    const auto mark =
        std::find_if(texts.begin(), texts.end(), [&](const Text& t) { return t.words == pieces[i].mark; });
    REQUIRE(mark != texts.end());
    std::vector<std::string> line;
    for (auto text = mark; text != texts.end() && text->at.y == mark->at.y && text < mark + 5; ++text)
      line.push_back(text->words);
    REQUIRE(line.size() == 5);
    CHECK(line[3] == cutText(pieces[i].blankLength, {UnitSystem::FeetInches, '.'}));
    CHECK(line[4] == drawn.plan.order.codes[0][i]);
  }
}

TEST_CASE("an opening shows id and size, its distances in the chain, its sill and head in the table") {
  const DrawnJob drawn = planned("busy front", busyFront());
  const auto pages = elevationPages(drawn.job, drawn.plan, PaperSize::A3);
  const Page& page = onlyPage(pages);
  CHECK(timesSaid(page, "W2") == 2);
  CHECK(timesSaid(page, "6' 0\" × 4' 0\"") == 2);
  CHECK(timesSaid(page, "sill 3' 0\"") == 1);
  CHECK(timesSaid(page, "40' 1\"") == 1);  // from the left corner
  CHECK(timesSaid(page, "P2") == 2);
  CHECK(timesSaid(page, "52' 6\"") == 1);  // to the pipe's centre
  CHECK(timesSaid(page, "centre 8' 0\"") == 1);
  // The chain: 4' 0" to D1, D1, to W1 at 10' 5", W1, to D2 at 22', D2 ...
  for (const char* space : {"3' 4\"", "3' 1\"", "7' 7\"", "6' 1\"", "11\"", "8' 6\""})
    CHECK(timesSaid(page, space) >= 1);
}

TEST_CASE("hung from right to left, the flag stands at the right corner and the arrow says so") {
  const DrawnJob drawn = planned("metric", metricGable());
  const Page page = elevationPages(drawn.job, drawn.plan, PaperSize::A3).front();
  CHECK(timesSaid(page, "hang right to left") == 1);
  const Box face = faceOf(page);
  for (const Text& text : textsOf(page)) {
    if (text.words == "start") CHECK(text.at.x > face.right);
  }
  CHECK(timesSaid(page, "start") == 1);
}

TEST_CASE("a long wall goes on at match lines that name each other's pages") {
  const DrawnJob drawn = planned("long wall", longWall());
  const auto pages = elevationPages(drawn.job, drawn.plan, PaperSize::A3);
  std::vector<Page> pictures;
  std::copy_if(pages.begin(), pages.end(), std::back_inserter(pictures), saysScale);
  REQUIRE(pictures.size() > 2);
  double drawnWidth = 0;
  for (std::size_t i = 0; i < pictures.size(); ++i) {
    drawnWidth += faceOf(pictures[i]).width() * saidScale(pictures[i]);
    const auto match = [&](std::size_t line, std::size_t page) {
      return timesSaid(pictures[i],
                       "match line " + std::to_string(line) + ": continued on page " + std::to_string(page));
    };
    CHECK(match(i, i) == (i > 0 ? 1 : 0));
    CHECK(match(i + 1, i + 2) == (i + 1 < pictures.size() ? 1 : 0));
    CHECK(timesSaid(pictures[i], "start") == (i == 0 ? 1 : 0));
  }
  CHECK(drawnWidth == Approx(Length::feet(1002).inMillimetres()));
}

TEST_CASE("steps of the concrete say their heights") {
  const DrawnJob drawn = planned("stepped", steppedWall());
  const Page page = elevationPages(drawn.job, drawn.plan, PaperSize::A3).front();
  for (const char* height : {"concrete 0\"", "concrete 1' 4\"", "concrete 2' 8\""}) CHECK(timesSaid(page, height) == 1);
}

TEST_CASE("walls without sheets say why, and one that could not be laid out too") {
  const DrawnJob drawn = planned("unsheeted", unsheetedWalls());
  const auto pages = elevationPages(drawn.job, drawn.plan, PaperSize::A4);
  REQUIRE(pages.size() == 3);
  CHECK(timesSaid(pages[0], "clad by others: no sheets") == 1);
  CHECK(timesSaid(pages[1], "open: no sheets") == 1);
  CHECK(timesSaid(pages[2], "This wall could not be laid out. The findings say what is missing.") == 1);
  CHECK(timesSaid(pages[0], "start") == 0);
}

TEST_CASE("a letter that no wall has gives no page, and each wall's pages are those of the set") {
  const DrawnJob drawn = planned("unsheeted", unsheetedWalls());
  CHECK(elevationPages(drawn.job, drawn.plan, "Z", PaperSize::A4).empty());
  const auto all = elevationPages(drawn.job, drawn.plan, PaperSize::A4);
  CHECK(elevationPages(drawn.job, drawn.plan, "B", PaperSize::A4) == std::vector<Page>{all[1]});
}

TEST_CASE("a job without walls gives no page") {
  const Job job;
  CHECK(elevationPages(job, plan(job), PaperSize::A4).empty());
}

// A band of 6-in strips cannot be named at any usual scale on a wall of 300 ft by 100 ft: the table names them.
TEST_CASE("a wall whose sheets are too narrow to be named is still drawn, and the page says where the marks are") {
  Job job = frozenGable();
  Profile strip = ribbedSheet();
  strip.cover = Length::inches(6);
  strip.over = strip.under = Length::inches(0, 16);
  strip.section = {{Length() - strip.over, Length()}, {Length::inches(6, 16), Length()}};
  strip.lengths.longest = Length::feet(200);
  job.profiles = {strip};
  Wall& wall = job.walls.front();
  wall.width = Length::feet(300);
  wall.top = {{Length(), Length::feet(100)}, {Length::feet(300), Length::feet(100)}};
  const auto pages = elevationPages(job, plan(job), PaperSize::Letter);
  REQUIRE(pages.size() > 1);
  bool noted = false;
  for (const Text& text : textsOf(pages.front())) {
    noted = noted || text.words.ends_with(" labels found no room in the drawing; the tables hold them.");
  }
  CHECK(noted);
}
