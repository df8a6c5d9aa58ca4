#include "core/drawing/screw_legend.h"

#include <algorithm>
#include <optional>

#include "core/drawing/text_extent.h"

namespace ribwright {

namespace {

constexpr double least = 230;    // the legend may be this wide under a narrower wall: less than any paper's room
constexpr double markGap = 1.2;  // from a mark to its words
constexpr double entryGap = 5;
constexpr double lineGap = 0.7;

struct Entry {
  std::optional<ScrewMark> mark;
  std::string words;
  bool bold = false;

  double markRoom() const { return mark ? 2 * reachOf(*mark) + markGap : 0; }
  double width() const { return markRoom() + widthOf(words, smallText, bold); }
};

constexpr const char* kindIds[kHoleKinds] = {"paper.screws.base", "paper.screws.eave",    "paper.screws.rake",
                                             "paper.screws.girt", "paper.screws.end-lap", "paper.screws.head",
                                             "paper.screws.sill", "paper.screws.jamb",    "paper.screws.stitch"};

std::string countWords(const WallView& view, std::size_t kind, int count) {
  return view.say(kindIds[kind], {{"count", count}});
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

std::vector<Entry> entriesOf(const WallView& view, const ScrewsShown& shown) {
  const auto all = static_cast<std::int64_t>(view.holes->holes.size());
  const bool whole = view.hasLeftCorner() && view.hasRightCorner();
  std::vector<Entry> entries{{{}, view.say("paper.screws.not-for-drilling"), true}};
  if (!whole) entries.push_back({{}, view.say("paper.screws.here", {{"all", all}}), false});
  if (const std::string words = structuralWords(view, shown); !words.empty())
    entries.push_back({ScrewMark::Structural, words, false});
  for (const HoleKind kind : {HoleKind::Stitch, HoleKind::Jamb}) {
    const auto index = static_cast<std::size_t>(kind);
    if (shown.here[index] > 0) entries.push_back({markOf(kind), countWords(view, index, shown.here[index]), false});
  }
  if (shown.marksLeftOut > 0)
    entries.push_back({{}, view.say("paper.screws.left-out", {{"count", shown.marksLeftOut}}), false});
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

void drawScrewLegend(Sketch& sketch, const WallView& view, const ScrewsShown& shown, double y) {
  if (shown.all() == 0) return;
  const double wall = view.x(view.to);
  const auto lines = inLines(entriesOf(view, shown), std::max(least, wall));
  double widest = 0;
  for (const auto& line : lines) widest = std::max(widest, widthOf(line));
  for (const auto& line : lines) {
    double x = wall / 2 - widest / 2;
    const double baseline = y + ascentOf(smallText);
    for (const Entry& entry : line) {
      if (entry.mark) sketch.marks({markRing(*entry.mark, {x + reachOf(*entry.mark), baseline - smallText / 2})});
      sketch.text({{x + entry.markRoom(), baseline}, smallText, TextAnchor::Start, 0, entry.bold, entry.words, -1});
      x += entry.width() + entryGap;
    }
    y += lineOf(smallText) + lineGap;
  }
}

}  // namespace ribwright
