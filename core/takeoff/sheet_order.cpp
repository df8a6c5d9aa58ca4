#include "core/takeoff/sheet_order.h"

#include <map>
#include <stdexcept>
#include <tuple>

#include "core/job/by_id.h"
#include "core/job/section.h"
#include "core/job/sheet_weight.h"
#include "core/takeoff/cut_shape.h"

namespace ribwright {
namespace {

// What makes two sheets one line, in the order that lines stand: the longest first.
struct LineKey {
  std::string profile;
  Length thickness;
  std::string colour;
  bool translucent = false;
  Length length;

  friend bool operator<(const LineKey& a, const LineKey& b) {
    return std::tie(a.profile, a.thickness, a.colour, a.translucent, b.length) <
           std::tie(b.profile, b.thickness, b.colour, b.translucent, a.length);
  }
};

struct Gathered {
  std::vector<std::string> marks;
  std::map<CutShape, int> shapes;  // in order of first appearance: 0, 1 ...
  int line = 0;
};

using Lines = std::map<LineKey, Gathered>;

// Where a piece is ordered: its line, and which of the line's cut shapes it has; none for a plain sheet.
struct Place {
  const Gathered* line = nullptr;
  std::optional<int> shape;
};

const Wall& wallOf(const Job& job, const WallLayout& layout) {
  const Wall* wall = byLetter(job.walls, layout.letter);
  if (!wall) throw std::invalid_argument("sheet order: no wall " + layout.letter);
  return *wall;
}

const Profile& profileOf(const Job& job, const std::string& id) {
  const Profile* profile = byId(job.profiles, id);
  if (!profile) throw std::invalid_argument("sheet order: no profile " + id);
  return *profile;
}

// The lines of one run, but for translucency and length. Translucent sheets have no paint, so the band's colour says
// nothing.
LineKey keyOf(const Job& job, const Band& band) {
  return {band.profile, band.thickness.value_or(profileOf(job, band.profile).thickness), band.colour, false, Length()};
}

std::vector<Place> gather(const Job& job, const WallLayout& layout, Lines& lines) {
  std::vector<LineKey> runKeys;
  const Wall& wall = wallOf(job, layout);
  for (const SheetRun& run : layout.runs)
    runKeys.push_back(keyOf(job, wall.bands.at(static_cast<std::size_t>(run.band))));
  std::vector<Place> places;
  places.reserve(layout.pieces.size());
  for (const Piece& piece : layout.pieces) {
    const auto run = static_cast<std::size_t>(piece.run);
    const Module& module = layout.runs.at(run).modules.at(static_cast<std::size_t>(piece.module));
    LineKey key = runKeys.at(run);
    key.translucent = module.translucent;
    if (key.translucent) key.colour.clear();
    key.length = piece.blankLength;
    Gathered& line = lines[key];
    line.marks.push_back(piece.mark);
    Place place{&line, std::nullopt};
    if (!isUncut(piece)) {
      const CutShape shape = cutShape(piece, module, layout.direction.hand);
      place.shape = line.shapes.emplace(shape, static_cast<int>(line.shapes.size())).first->second;
    }
    places.push_back(place);
  }
  return places;
}

// 0: a ... 25: z, 26: aa, 27: ab ...
std::string shapeLetters(int shape) {
  std::string letters;
  for (int left = shape; left >= 0; left = left / 26 - 1)
    letters.insert(letters.begin(), static_cast<char>('a' + left % 26));
  return letters;
}

OrderLine lineOf(const LineKey& key, Gathered& gathered, const Profile& profile, double developedWidth) {
  OrderLine line;
  line.line = gathered.line;
  line.profile = key.profile;
  line.colour = key.colour;
  line.translucent = key.translucent;
  line.thickness = key.thickness;
  line.length = key.length;
  line.marks = std::move(gathered.marks);
  line.coverArea = profile.cover * key.length * line.quantity();
  if (!key.translucent) {
    line.kilograms =
        line.quantity() * sheetKilograms(developedWidth, key.length, key.thickness, profile.coatingGramsPerSquareMetre);
  }
  return line;
}

}  // namespace

SheetOrder sheetOrder(const Job& job, const std::vector<const WallLayout*>& layouts) {
  Lines lines;
  std::vector<std::vector<Place>> places;
  for (const WallLayout* layout : layouts) places.push_back(gather(job, *layout, lines));

  SheetOrder order;
  std::map<std::string, double> developedWidths;
  for (auto& [key, gathered] : lines) {
    const Profile& profile = profileOf(job, key.profile);
    const auto [width, isNew] = developedWidths.try_emplace(key.profile);
    if (isNew) width->second = sectionOf(profile).developedWidth;
    gathered.line = static_cast<int>(order.lines.size()) + 1;
    order.lines.push_back(lineOf(key, gathered, profile, width->second));
  }
  for (const auto& wall : places) {
    std::vector<std::string>& codes = order.codes.emplace_back();
    for (const Place& place : wall) {
      codes.push_back(std::to_string(place.line->line) + (place.shape ? shapeLetters(*place.shape) : ""));
    }
  }
  return order;
}

}  // namespace ribwright
