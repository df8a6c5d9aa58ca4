#include "core/output/svg.h"

#include <catch2/catch.hpp>

#include "core/drawing/text_extent.h"

using namespace ribwright;

namespace {

Page pageWith(std::vector<Item> items) {
  Page page;
  page.paper = PaperSize::A4;
  page.title = "Wall A";
  page.drawing.parts = {{Part::Kind::Piece, "A", "A7.1"}, {Part::Kind::Opening, "A", "door & gate"}};
  page.drawing.items = std::move(items);
  return page;
}

bool holds(const std::string& svg, const std::string& words) { return svg.find(words) != std::string::npos; }

}  // namespace

// SVG 1.1, 7.7: with a view box as wide as the page in millimetres, a user unit is a millimetre.
TEST_CASE("a page is as large as its paper, and one unit is one millimetre") {
  const std::string svg = svgText(pageWith({}));
  CHECK(svg.starts_with("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\""));
  CHECK(holds(svg, " width=\"297mm\" height=\"210mm\" viewBox=\"0 0 297 210\""));
  CHECK(svg.ends_with("</svg>\n"));
}

TEST_CASE("pages of one wall stand one below the other, 10 mm apart") {
  const std::string svg = svgText(std::vector<Page>{pageWith({}), pageWith({})});
  CHECK(holds(svg, "height=\"430mm\""));
  CHECK(holds(svg, "translate(0 220)"));
}

TEST_CASE("strokes keep width, dash and what they belong to") {
  const std::string svg = svgText(
      pageWith({Stroke{{{1, 2}, {3.5, 4.25}}, false, {0.35}, Dash::Dashed, 0},
                Stroke{{{0, 0}, {1, 0}, {1, 1}}, true, {2, StrokeWidth::In::PixelsOnScreen}, Dash::Solid, -1}}));
  CHECK(holds(svg,
              "<path class=\"piece of-A7-1\" d=\"M1 2L3.5 4.25\" fill=\"none\" stroke=\"black\" stroke-width=\"0.35\" "
              "stroke-dasharray=\"3 1.5\"/>"));
  CHECK(holds(svg, "<path d=\"M0 0L1 0L1 1Z\" fill=\"none\" stroke=\"black\" stroke-width=\"0.529\"/>"));
}

TEST_CASE("areas with holes are filled by the even-odd rule") {
  const std::string svg =
      svgText(pageWith({Fill{{{{0, 0}, {9, 0}, {9, 9}}, {{2, 1}, {3, 1}, {3, 2}}}, Ink::White, 1}}));
  CHECK(holds(
      svg, "class=\"opening of-door---gate\" d=\"M0 0L9 0L9 9ZM2 1L3 1L3 2Z\" fill-rule=\"evenodd\" fill=\"white\""));
}

TEST_CASE("text stays text, as wide as core says, and may hold any sign of XML") {
  const Text text{{10, 20}, 2.5, TextAnchor::Middle, 90, true, "<D1> & \"D2\"", -1};
  const std::string svg = svgText(pageWith({text}));
  CHECK(holds(svg, ">&lt;D1&gt; &amp; &quot;D2&quot;</text>"));
  CHECK(holds(svg,
              "x=\"10\" y=\"20\" transform=\"rotate(-90 10 20)\" text-anchor=\"middle\" font-size=\"3.634\" "
              "font-weight=\"bold\" textLength=\""));
  const std::string length = svg.substr(svg.find("textLength=\"") + 12);
  CHECK(std::stod(length) == Approx(widthOf(text)).margin(0.0006));
}

TEST_CASE("what XML cannot hold does not get into it") {
  const std::string svg =
      svgText(pageWith({Text{{0, 0}, 2.5, TextAnchor::Start, 0, false, std::string("a\x01z\xFF", 4), -1}}));
  CHECK(holds(svg, ">a□z□</text>"));
}

TEST_CASE("figures are rounded to a thousandth of a millimetre and carry no useless zero") {
  const std::string svg =
      svgText(pageWith({Stroke{{{-0.0004, 1.23456}, {100.1, -2.0005001}}, false, {0.35}, Dash::Chain, -1}}));
  CHECK(holds(svg, "d=\"M0 1.235L100.1 -2.001\""));
  CHECK(holds(svg, "stroke-dasharray=\"8 1.5 1 1.5\""));
}

TEST_CASE("the same page gives the same bytes, and no page at all is still a drawing") {
  const Page page = pageWith({Text{{1, 1}, 3, TextAnchor::End, 0, false, "twice", -1}});
  CHECK(svgText(page) == svgText(page));
  CHECK(holds(svgText(std::vector<Page>{}), "<svg"));
}
