// Pages as they were last looked at and found good: what stands on them, item by item, as text in golden/. A change
// shows as a difference of lines; RIBWRIGHT_ACCEPT=1 takes the new pages.
#include <catch2/catch.hpp>
#include <cmath>
#include <cstdlib>
#include <fstream>
#include <map>
#include <sstream>

#include "core/drawing/drill_pages.h"
#include "core/drawing/elevation.h"
#include "tests/core/drawing/drawn_jobs.h"
#include "tests/core/drawing/page_reading.h"
#include "tests/core/drawing/surveyed_job.h"

using namespace ribwright;

namespace {

// Hundredths of a millimetre: finer than any printer.
std::string figure(double mm) {
  const long hundredths = std::lround(mm * 100);
  const long whole = std::labs(hundredths) / 100, rest = std::labs(hundredths) % 100;
  std::string text = (hundredths < 0 ? "-" : "") + std::to_string(whole);
  if (rest != 0) text += (rest < 10 ? ".0" : ".") + std::to_string(rest);
  return text;
}

std::string place(const PaperPoint& point) { return figure(point.x) + "," + figure(point.y); }

std::string partOf(const Page& page, PartIndex index) {
  if (index < 0) return {};
  const Part& part = page.drawing.parts[static_cast<std::size_t>(index)];
  constexpr const char* kinds[] = {"face", "piece", "opening", "penetration", "girt", "column", "screw"};
  return std::string(" [") + kinds[static_cast<std::size_t>(part.kind)] + (part.id.empty() ? "]" : " " + part.id + "]");
}

std::string lineOf(const Page& page, const Text& text) {
  constexpr const char* anchors[] = {"start", "middle", "end"};
  std::string line = "text " + place(text.at) + " " + figure(text.height) + " ";
  line += anchors[static_cast<std::size_t>(text.anchor)];
  if (text.turn != 0) line += " turned " + figure(text.turn);
  if (text.bold) line += " bold";
  return line + " '" + text.words + "'" + partOf(page, text.part);
}

std::string lineOf(const Page& page, const Stroke& stroke) {
  constexpr const char* dashes[] = {"", " dashed", " chain"};
  std::string line = "line " + figure(stroke.width.size) + dashes[static_cast<std::size_t>(stroke.dash)];
  for (const PaperPoint& point : stroke.points) line += " " + place(point);
  return line + (stroke.closed ? " closed" : "") + partOf(page, stroke.part);
}

// Marks of screws and ribs are many in one: how many, where the first and the last stand, and the mean of all.
std::string lineOf(const Page& page, const Fill& fill) {
  std::string line = fill.ink == Ink::Black ? "black " : "white ";
  if (fill.rings.size() == 1) {
    for (const PaperPoint& point : fill.rings.front()) line += place(point) + " ";
    return line + partOf(page, fill.part);
  }
  PaperPoint mean;
  for (const auto& ring : fill.rings) {
    mean.x += ring.front().x / static_cast<double>(fill.rings.size());
    mean.y += ring.front().y / static_cast<double>(fill.rings.size());
  }
  line += std::to_string(fill.rings.size()) + " rings, first " + place(fill.rings.front().front()) + ", last ";
  return line + place(fill.rings.back().front()) + ", mean " + place(mean) + partOf(page, fill.part);
}

std::string textOf(const std::vector<Page>& pages) {
  std::string all;
  for (const Page& page : pages) {
    all += "page " + std::string(nameOf(page.paper)) + " '" + page.title + "'\n";
    for (const Item& item : page.drawing.items) {
      all += std::visit([&](const auto& it) { return lineOf(page, it); }, item) + "\n";
    }
  }
  return all;
}

std::string readAll(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  std::stringstream text;
  text << file.rdbuf();
  return text.str();
}

// The first line that differs, for a person to see.
std::string difference(const std::string& golden, const std::string& made) {
  std::istringstream a(golden), b(made);
  std::string was, is;
  for (int line = 1;; ++line) {
    const bool hasA = static_cast<bool>(std::getline(a, was)), hasB = static_cast<bool>(std::getline(b, is));
    if (!hasA && !hasB) return {};
    if (hasA && hasB && was == is) continue;
    return "line " + std::to_string(line) + "\n  was " + (hasA ? was : "nothing") + "\n  is  " +
           (hasB ? is : "nothing");
  }
}

void isAsAccepted(const std::string& name, const std::vector<Page>& pages) {
  std::string file = name;
  for (char& letter : file) letter = letter == ' ' ? '-' : letter;
  const std::string path = std::string(RIBWRIGHT_ROOT "/tests/core/drawing/golden/") + file + ".txt";
  const std::string made = textOf(pages);
  if (std::getenv("RIBWRIGHT_ACCEPT")) {
    std::ofstream(path, std::ios::binary) << made;
  }
  INFO(name << ": look at the page; if it is right, run this test with RIBWRIGHT_ACCEPT=1");
  CHECK(difference(readAll(path), made) == "");
}

}  // namespace

// One of each kind of page, on each paper: a plain gable, screws and openings, a wall over several pages, unsheeted
// walls.
TEST_CASE("the pages are as they were last accepted") {
  const std::map<std::string, PaperSize> golden{
      {"frozen gable", PaperSize::Letter}, {"screwed front", PaperSize::Tabloid},
      {"metric gable", PaperSize::A4},     {"tall banded wall", PaperSize::A3},
      {"narrow wall", PaperSize::A4},      {"unsheeted walls", PaperSize::Letter}};
  std::size_t seen = 0;
  for (const DrawnJob& drawn : drawnJobs()) {
    const auto found = golden.find(drawn.name);
    if (found == golden.end()) continue;
    ++seen;
    isAsAccepted(drawn.name, elevationPages(drawn.job, drawn.plan, found->second));
  }
  CHECK(seen == golden.size());
}

// One of each kind: survey blank, stick, template, strips and marks of a measured wall 3 ft wide; held batches of a
// gable that nobody measured.
TEST_CASE("the pages for drilling are as they were last accepted") {
  const Job narrow = surveyed(withMember(withScrews(narrowWall(), "rib-36-1.25-at-12", Length::feet(4))));
  isAsAccepted("drilled narrow wall", drillPages(narrow, plan(narrow), PaperSize::Letter));
  const Job gable = withScrews(metricGable(), "trapezoid-1035-35-at-207", Length::millimetres(1200));
  isAsAccepted("held metric gable", drillPages(gable, plan(gable), PaperSize::A4));
}
