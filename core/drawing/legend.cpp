#include "core/drawing/legend.h"

#include <algorithm>

#include "core/drawing/column_marks.h"
#include "core/drawing/girt_lines.h"
#include "core/drawing/hatch.h"
#include "core/drawing/measured_lines.h"
#include "core/drawing/rib_ends.h"
#include "core/drawing/text_extent.h"

namespace ribwright {

namespace {

constexpr double least = 230;    // the legend may be this wide under a narrower wall: less than any paper's room
constexpr double markGap = 1.2;  // from a sign to its words
constexpr double entryGap = 5;
constexpr double legendGap = 0.7;

struct Sign {
  double reach = 0;  // half its width; 0: none
  std::vector<PaperPoint> (*ring)(const PaperPoint& middle) = nullptr;
};

constexpr Sign noSign{};
const Sign dotSign{reachOf(ScrewMark::Structural),
                   [](const PaperPoint& at) { return markRing(ScrewMark::Structural, at); }};
const Sign dashSign{reachOf(ScrewMark::Stitch), [](const PaperPoint& at) { return markRing(ScrewMark::Stitch, at); }};
const Sign crossSign{reachOf(ScrewMark::Jamb), [](const PaperPoint& at) { return markRing(ScrewMark::Jamb, at); }};
const Sign flangeUp{flangeReach, [](const PaperPoint& at) { return flangeRing(Girt::Flange::Up, at); }};
const Sign flangeDown{flangeReach, [](const PaperPoint& at) { return flangeRing(Girt::Flange::Down, at); }};
const Sign ribEnd{thinLine, [](const PaperPoint& at) { return ribRing({at.x, at.y - ribTick / 2}); }};

// A short piece of the line itself.
const Sign measured{
    2.5, [](const PaperPoint& at) {
      const double half = openingLine / 2;
      return std::vector<PaperPoint>{
          {at.x - 2.5, at.y - half}, {at.x + 2.5, at.y - half}, {at.x + 2.5, at.y + half}, {at.x - 2.5, at.y + half}};
    }};

const Sign translucentSign{hatchSignReach, [](const PaperPoint& at) { return hatchSign(at); }};

struct Entry {
  Sign sign;
  std::string words;
  bool bold = false;

  double signRoom() const { return sign.ring ? 2 * sign.reach + markGap : 0; }
  double width() const { return signRoom() + widthOf(words, smallText, bold); }
};

constexpr const char* screwWords[kHoleKinds] = {"paper.screws.base", "paper.screws.eave",    "paper.screws.rake",
                                                "paper.screws.girt", "paper.screws.end-lap", "paper.screws.head",
                                                "paper.screws.sill", "paper.screws.jamb",    "paper.screws.stitch"};

std::string countWords(const WallView& view, std::size_t kind, int count) {
  return view.say(screwWords[kind], {{"count", count}});
}

// "base 40, eave 40, girts 320" of those that are there.
std::string structuralWords(const WallView& view, const ScrewsShown& shown) {
  std::string kinds;
  int count = 0;
  for (std::size_t kind = 0; kind < kHoleKinds; ++kind) {
    if (shown.here[kind] == 0 || markOf(static_cast<HoleKind>(kind)) != ScrewMark::Structural) continue;
    count += shown.here[kind];
    if (!kinds.empty()) kinds += ", ";
    kinds += countWords(view, kind, shown.here[kind]);
  }
  return count == 0 ? "" : view.say("paper.screws.structural", {{"count", count}, {"kinds", kinds}});
}

void addScrews(std::vector<Entry>& entries, const WallView& view, const ScrewsShown& shown) {
  if (shown.all() == 0) return;
  const auto all = static_cast<std::int64_t>(view.holes->holes.size());
  const bool whole = view.hasLeftCorner() && view.hasRightCorner();
  entries.push_back({noSign, view.say("paper.screws.not-for-drilling"), true});
  if (!whole) entries.push_back({noSign, view.say("paper.screws.here", {{"all", all}})});
  if (const std::string words = structuralWords(view, shown); !words.empty()) entries.push_back({dotSign, words});
  for (const HoleKind kind : {HoleKind::Stitch, HoleKind::Jamb}) {
    const auto index = static_cast<std::size_t>(kind);
    const Sign& sign = kind == HoleKind::Stitch ? dashSign : crossSign;
    if (shown.here[index] > 0) entries.push_back({sign, countWords(view, index, shown.here[index])});
  }
  if (shown.marksLeftOut > 0)
    entries.push_back({noSign, view.say("paper.screws.left-out", {{"count", shown.marksLeftOut}})});
}

std::vector<Entry> entriesOf(const WallView& view, const Shown& shown) {
  std::vector<Entry> entries;
  addScrews(entries, view, shown.screws);
  const std::vector<HeightLabel> rows = rowHeights(view);
  const auto turns = [&](Girt::Flange flange) {
    return std::any_of(rows.begin(), rows.end(), [&](const HeightLabel& row) { return row.flange == flange; });
  };
  if (turns(Girt::Flange::Up)) entries.push_back({flangeUp, view.say("paper.flange.up")});
  if (turns(Girt::Flange::Down)) entries.push_back({flangeDown, view.say("paper.flange.down")});
  if (!measuredLines(view).empty())
    entries.push_back({measured, view.say("paper.measured", {{"times", std::int64_t(deviationEnlarged)}})});
  if (shown.translucent) entries.push_back({translucentSign, view.say("paper.translucent")});
  if (shown.ribs) entries.push_back({ribEnd, view.say("paper.rib-ends")});
  if (!view.bays && !columnsSeen(view).empty()) entries.push_back({noSign, view.say("paper.bays-without-room")});
  if (shown.columnsWithoutRoom > 0)
    entries.push_back({noSign, view.say("paper.columns-without-room", {{"count", shown.columnsWithoutRoom}})});
  return entries;
}

// Entries in lines no wider than the room.
std::vector<std::vector<Entry>> inLines(std::vector<Entry> entries, double room) {
  std::vector<std::vector<Entry>> lines;
  double width = 0;
  for (Entry& entry : entries) {
    const double wider = width + entryGap + entry.width();
    if (lines.empty() || wider > room) {
      width = entry.width();
      lines.emplace_back();
    } else {
      width = wider;
    }
    lines.back().push_back(std::move(entry));
  }
  return lines;
}

double widthOf(const std::vector<Entry>& line) {
  double width = entryGap * static_cast<double>(line.size() - 1);
  for (const Entry& entry : line) width += entry.width();
  return width;
}

}  // namespace

void drawLegend(Sketch& sketch, const WallView& view, const Shown& shown, double y) {
  const double wall = view.x(view.to);
  const auto lines = inLines(entriesOf(view, shown), std::max(least, wall));
  double widest = 0;
  for (const auto& line : lines) widest = std::max(widest, widthOf(line));
  for (const auto& line : lines) {
    double x = wall / 2 - widest / 2;
    const double baseline = y + ascentOf(smallText);
    for (const Entry& entry : line) {
      if (entry.sign.ring) sketch.marks({entry.sign.ring({x + entry.sign.reach, baseline - smallText / 2})});
      sketch.text({{x + entry.signRoom(), baseline}, smallText, TextAnchor::Start, 0, entry.bold, entry.words, -1});
      x += entry.width() + entryGap;
    }
    y += lineOf(smallText) + legendGap;
  }
}

}  // namespace ribwright
