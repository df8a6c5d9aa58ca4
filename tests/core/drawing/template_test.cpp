// Drill templates read back from the page: ordinates, spaces, offsets, and which way round the sheet lies.
#include <algorithm>
#include <catch2/catch.hpp>

#include "core/drawing/drill_pages.h"
#include "core/drawing/offset_line.h"
#include "core/drawing/shown_length.h"
#include "tests/core/drawing/drawn_jobs.h"
#include "tests/core/drawing/page_reading.h"
#include "tests/core/drawing/surveyed_job.h"

using namespace ribwright;

namespace {

Job front(Hang hang) {
  Job job = screwedFront();
  job.walls[0].hang = hang;
  return surveyed(withMember(job));
}

const LengthStyle feet{UnitSystem::FeetInches, '.'};

// The first page of a batch's template.
Page templateOf(const Job& job, const Plan& made, const DrillBatch& batch, Lying lying) {
  for (const Page& page : drillPages(job, made, PaperSize::A3, Words::of("en"), lying)) {
    if (page.title.find("drill template " + batch.id + ",") != std::string::npos) return page;
  }
  FAIL("no template of " << batch.id);
  return {};
}

const DrillBatch& fullBatch(const Plan& made) {
  const auto& batches = made.walls[0]->batches;
  const auto most = std::max_element(batches.begin(), batches.end(), [](const DrillBatch& a, const DrillBatch& b) {
    return std::pair(a.isCleared(), a.rows.size()) < std::pair(b.isCleared(), b.rows.size());
  });
  REQUIRE(most->isCleared());
  REQUIRE(most->rows.size() >= 4);
  return *most;
}

const Text& textSaying(const std::vector<Text>& texts, const std::string& words) {
  const auto found = std::find_if(texts.begin(), texts.end(), [&](const Text& text) { return text.words == words; });
  if (found == texts.end()) FAIL("nothing says " << words);
  return *found;
}

// Upper and lower side of the sheet on the page: the longest level lines of the picture.
struct SheetOnPage {
  double top = 1e9, bottom = -1e9, left = 0;
  double thickest = 0, thickestY = 0;
};

SheetOnPage sheetOf(const Page& page) {
  SheetOnPage sheet;
  for (const Stroke& stroke : strokesOf(page)) {
    if (stroke.closed || stroke.points.size() != 2) continue;
    const PaperPoint &a = stroke.points[0], &b = stroke.points[1];
    const bool level = a.y == b.y && std::abs(b.x - a.x) > 200 && stroke.dash == Dash::Solid;
    if (!level || stroke.width.size < 0.69 || a.x < 20) continue;  // not the frame's
    if (stroke.width.size > sheet.thickest) sheet.thickest = stroke.width.size, sheet.thickestY = a.y;
    sheet.top = std::min(sheet.top, a.y);
    sheet.bottom = std::max(sheet.bottom, a.y);
    sheet.left = a.x;
  }
  return sheet;
}

}  // namespace

TEST_CASE("every row of a template stands with its ordinate from the bottom end, and spaces add up as printed") {
  const Job job = front(Hang::LeftToRight);
  const Plan made = plan(job);
  const DrillBatch& batch = fullBatch(made);
  const std::vector<Text> texts = textsOf(templateOf(job, made, batch, Lying::FaceUp));
  Length before;
  double x = 0;
  for (const BatchRow& row : batch.rows) {
    const Text& ordinate = textSaying(texts, dimensionText(row.s, feet));
    CHECK(row.s == asTapeReads(row.s, feet));
    CHECK(ordinate.at.x > x);  // in their order from the bottom end, which lies at the left
    x = ordinate.at.x;
    textSaying(texts, dimensionText(row.s - before, feet));
    before = row.s;
  }
}

TEST_CASE("every offset of a row is printed from the starting edge") {
  const Job job = front(Hang::RightToLeft);
  const Plan made = plan(job);
  const DrillBatch& batch = fullBatch(made);
  const std::vector<Text> texts = textsOf(templateOf(job, made, batch, Lying::FaceUp));
  for (const BatchRow& row : batch.rows) {
    for (const Length offset : row.offsets) textSaying(texts, cutText(offset, feet));
  }
}

// Lying face up with its bottom end to the left, a sheet is the elevation turned clockwise by a quarter: what was at
// the left on the wall comes to lie uppermost. Turned over about its long side, upper and lower change places.
TEST_CASE("the starting edge lies where a sheet of either hand has it, face up and face down") {
  for (const Hang hang : {Hang::LeftToRight, Hang::RightToLeft}) {
    for (const Lying lying : {Lying::FaceUp, Lying::FaceDown}) {
      const Job job = front(hang);
      const Plan made = plan(job);
      const DrillBatch& batch = fullBatch(made);
      const Page page = templateOf(job, made, batch, lying);
      const std::vector<Text> texts = textsOf(page);
      const bool startsAtLeftOfWall = hang == Hang::LeftToRight;
      const bool uppermost = lying == Lying::FaceUp ? startsAtLeftOfWall : !startsAtLeftOfWall;
      INFO("hangs to the right " << startsAtLeftOfWall << ", face up " << (lying == Lying::FaceUp));
      const Text& loud = textSaying(texts, lying == Lying::FaceUp ? "FACE UP" : "FACE DOWN");
      CHECK(loud.height == 10);

      const SheetOnPage sheet = sheetOf(page);
      CHECK(sheet.thickestY == (uppermost ? sheet.top : sheet.bottom));
      // One at the bottom end who looks along the sheet has the page's upper side at his left.
      const bool saysLeft = std::any_of(texts.begin(), texts.end(), [](const Text& text) {
        return text.words.find("starting edge at your left") != std::string::npos;
      });
      CHECK(saysLeft == uppermost);
      const double first = textSaying(texts, cutText(batch.rows.front().offsets.front(), feet)).at.x;
      const double last = textSaying(texts, cutText(batch.rows.front().offsets.back(), feet)).at.x;
      CHECK((first < last) == uppermost);

      // Holes stand off the starting edge as they are offset from it.
      const Length width = [&] {
        Length most;
        for (const std::int32_t index : batch.pieces) {
          const Piece& piece = made.walls[0]->layout.pieces[static_cast<std::size_t>(index)];
          most = std::max(most, piece.right - piece.left);
        }
        return most;
      }();
      std::vector<double> wanted, found;
      for (const Length offset : batch.rows.front().offsets) {
        const double part = offset.inMillimetres() / width.inMillimetres() * (sheet.bottom - sheet.top);
        wanted.push_back(uppermost ? sheet.top + part : sheet.bottom - part);
      }
      const double x = textSaying(texts, dimensionText(batch.rows.front().s, feet)).at.x;
      for (const Fill& fill : fillsOf(page)) {
        for (const auto& ring : fill.rings) {
          Box box{1e9, 1e9, -1e9, -1e9};
          for (const PaperPoint& point : ring) box = united(box, {point.x, point.y, point.x, point.y});
          if (std::abs(box.middle().x - x) < 0.6 && box.top > sheet.top - 1 && box.bottom < sheet.bottom + 1)
            found.push_back(box.middle().y);
        }
      }
      REQUIRE(found.size() == wanted.size());
      for (std::size_t i = 0; i < wanted.size(); ++i) CHECK(found[i] == Approx(wanted[i]).margin(0.01));
    }
  }
}

TEST_CASE("the stack is listed from its top to its bottom, the longest lowest") {
  const Job job = front(Hang::LeftToRight);
  const Plan made = plan(job);
  const DrillBatch& batch = fullBatch(made);
  const std::vector<Text> texts = textsOf(templateOf(job, made, batch, Lying::FaceUp));
  std::size_t place = 0;
  Length above;
  for (auto piece = batch.stack.rbegin(); piece != batch.stack.rend(); ++piece) {
    const Piece& sheet = made.walls[0]->layout.pieces[static_cast<std::size_t>(*piece)];
    textSaying(texts, std::to_string(++place) + ". " + sheet.mark + ", " + cutText(sheet.blankLength, feet));
    CHECK(sheet.blankLength >= above);
    above = sheet.blankLength;
  }
}

TEST_CASE("a template says what is done before, while and after drilling, and has a line to sign") {
  const Job job = front(Hang::LeftToRight);
  const Plan made = plan(job);
  std::string all;
  for (const Text& text : textsOf(templateOf(job, made, fullBatch(made), Lying::FaceUp))) all += text.words + " ";
  for (const char* words : {"Clamp both ends", "drill square", "in the sheet, not in the girt",
                            "offer up the top sheet", "Take the swarf out", "Checked by", "Drilled by", "Date"}) {
    INFO(words);
    CHECK(all.find(words) != std::string::npos);
  }
}

// 60 holes an inch apart are more than have room along a page 254 mm wide.
TEST_CASE("offsets that have no room beside their holes are listed above them") {
  const Job job = front(Hang::LeftToRight);
  const Plan made = plan(job);
  DrillWall wall{&job, &job.walls[0], made.walls[0].get(), &Words::of("en"), feet, {12, 12, 266, 166}};
  StackedSheet sheet;
  sheet.width = Length::inches(62);
  OffsetSet set;
  for (int i = 1; i <= 60; ++i) set.offsets.push_back(Length::inches(i, 8));
  for (const bool left : {true, false}) {
    Sketch sketch;
    const PageBlock block = offsetLine(wall, sheet, set, "a: base", left);
    block.draw(sketch, {12, 12, 266, 12 + block.height});
    std::string all;
    Page page;
    page.drawing = sketch.drawing;
    for (const Text& text : textsOf(page)) all += text.words + " ";
    std::size_t place = 0;
    for (const Length offset : set.offsets) {
      place = all.find(cutText(offset, feet), place);
      CHECK(place != std::string::npos);
    }
  }
}

TEST_CASE("a template names the rows that nobody measured") {
  const Job job = front(Hang::LeftToRight);
  const Plan made = plan(job);
  std::string all;
  for (const Text& text : textsOf(templateOf(job, made, fullBatch(made), Lying::FaceUp))) all += text.words + " ";
  CHECK(all.find("By the plans, not measured: base.") != std::string::npos);
  Job slab = job;
  slab.walls[0].survey.slab = {{Length(), Length()}, {*job.walls[0].width, Length()}};
  const Plan measured = plan(slab);
  all.clear();
  for (const Text& text : textsOf(templateOf(slab, measured, fullBatch(measured), Lying::FaceUp)))
    all += text.words + " ";
  CHECK(all.find("not measured") == std::string::npos);
}
