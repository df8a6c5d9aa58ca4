#include "core/cutting/share_blanks.h"

#include <algorithm>
#include <map>

#include "core/cutting/bought_length.h"
#include "core/cutting/gangs.h"
#include "core/cutting/lowest_pairs.h"
#include "core/cutting/pair_ways.h"

namespace ribwright {
namespace {

using Pieces = std::vector<const SharePiece*>;

BlankPart partOf(const SharePiece& piece, Length from, Length to) {
  BlankPart part;
  part.piece = piece.ref;
  part.upsideDown = piece.rightToLeft;
  part.left = piece.left;
  part.right = piece.right;
  part.from = from;
  part.to = to;
  return part;
}

BlankPart turnedPart(const SharePiece& piece) {
  BlankPart part = partOf(turned(piece), Length(), Length());
  part.turned = true;
  part.upsideDown = !part.upsideDown;
  return part;
}

Blank aloneOf(const SharePiece& piece) {
  Blank blank;
  blank.sheet = piece.sheet;
  blank.length = piece.alone;
  blank.parts = {partOf(piece, Length(), piece.alone)};
  return blank;
}

// End to end, so that the first one's lower end is an end of the blank.
Blank endToEnd(Blank::Way way, const Pieces& pieces, Length kerf) {
  Blank blank;
  blank.way = way;
  blank.sheet = pieces.front()->sheet;
  Length from;
  for (const SharePiece* piece : pieces) {
    blank.saved += piece->bought;
    blank.length = from + piece->needed;
    blank.parts.push_back(partOf(*piece, from, blank.length));
    from = blank.length + kerf;
  }
  blank.saved = blank.saved - boughtLength(pieces.front()->profile->lengths, blank.length);
  if (blank.parts.front().upsideDown) {
    for (BlankPart& part : blank.parts) {
      const Length to = part.to;
      part.to = blank.length - part.from;
      part.from = blank.length - to;
    }
  }
  return blank;
}

Blank pairOf(const SharePiece& first, const SharePiece& second, const PairWay& way, Length kerf) {
  if (way.way == Blank::Way::Drop) return endToEnd(way.way, {&first, &second}, kerf);
  Blank blank;
  blank.saved = way.saved;
  blank.way = way.way;
  blank.sheet = first.sheet;
  blank.length = way.length;
  blank.parts = {partOf(first, Length(), Length()),
                 way.turned ? turnedPart(second) : partOf(second, Length(), Length())};
  // Each with its lower end at an end of the blank.
  for (std::size_t i = 0; i < 2; ++i) {
    BlankPart& part = blank.parts[i];
    const Length needed = i == 0 ? first.needed : second.needed;
    part.from = part.upsideDown ? way.length - needed : Length();
    part.to = part.upsideDown ? way.length : needed;
  }
  return blank;
}

// The blanks of one class, from its pieces by mark.
class Sharer {
 public:
  Sharer(const Settings& settings, const Pieces& pieces) : settings_(settings), pieces_(pieces) {}

  std::vector<Blank> blanks() {
    joinCut();
    std::erase_if(pieces_, [&](const SharePiece* piece) {
      if (!piece->mayShare) blanks_.push_back(aloneOf(*piece));
      return !piece->mayShare;
    });
    pair();
    gang();
    for (const SharePiece* piece : pieces_) blanks_.push_back(aloneOf(*piece));
    std::sort(blanks_.begin(), blanks_.end(),
              [](const Blank& a, const Blank& b) { return a.parts.front().piece < b.parts.front().piece; });
    return std::move(blanks_);
  }

 private:
  static std::pair<const SharePiece*, const SharePiece*> inOrder(const SharePiece* a, const SharePiece* b) {
    return comesFirst(*a, *b) ? std::pair(a, b) : std::pair(b, a);
  }

  std::optional<PairWay> wayOf(std::size_t a, std::size_t b) const {
    const auto [first, second] = inOrder(pieces_[a], pieces_[b]);
    return pairWay(*first, *second, settings_);
  }

  // What came out of one sheet already stays with it while it fits there.
  void joinCut() {
    std::map<int, Pieces> sheets;
    for (const SharePiece* piece : pieces_) {
      if (piece->cutWith) sheets[*piece->cutWith].push_back(piece);
    }
    for (auto& [number, parts] : sheets) {
      std::sort(parts.begin(), parts.end(), [](auto* a, auto* b) { return comesFirst(*a, *b); });
      const std::optional<Blank> blank = parts.size() < 2 ? std::nullopt : blankOfCut(parts);
      if (!blank || blank->length > parts.front()->cutFrom) continue;
      blanks_.push_back(*blank);
      std::erase_if(pieces_, [number = number](const SharePiece* piece) { return piece->cutWith == number; });
    }
  }

  std::optional<Blank> blankOfCut(const Pieces& parts) const {
    const auto way = parts.size() == 2 ? pairWay(*parts[0], *parts[1], settings_) : std::nullopt;
    if (way) return pairOf(*parts[0], *parts[1], *way, settings_.kerf);
    return endToEnd(Blank::Way::Gang, parts, settings_.kerf);
  }

  void pair() {
    std::vector<PairSaving> savings;
    for (std::size_t a = 0; a < pieces_.size(); ++a) {
      for (std::size_t b = a + 1; b < pieces_.size(); ++b) {
        if (const auto way = wayOf(a, b))
          savings.push_back({static_cast<int>(a), static_cast<int>(b), way->saved.nanometres()});
      }
    }
    std::vector<bool> gone(pieces_.size());
    for (const auto& pair : lowestPairs(static_cast<int>(pieces_.size()), savings)) {
      const auto a = static_cast<std::size_t>(pair.first), b = static_cast<std::size_t>(pair.second);
      const auto [first, second] = inOrder(pieces_[a], pieces_[b]);
      blanks_.push_back(pairOf(*first, *second, *wayOf(a, b), settings_.kerf));
      gone[a] = gone[b] = true;
    }
    drop(gone);
  }

  void gang() {
    if (!settings_.sharing.gangs || pieces_.empty()) return;
    const SheetLengths& lengths = pieces_.front()->profile->lengths;
    if (!lengths.stocked.empty()) return;
    std::vector<Length> needed;
    for (const SharePiece* piece : pieces_) needed.push_back(piece->needed);
    std::vector<bool> gone(pieces_.size());
    for (const auto& gang : gangs(needed, lengths.shortest, settings_.kerf)) {
      Pieces parts;
      for (const std::size_t i : gang) {
        parts.push_back(pieces_[i]);
        gone[i] = true;
      }
      std::sort(parts.begin(), parts.end(),
                [](const SharePiece* a, const SharePiece* b) { return comesFirst(*a, *b); });
      blanks_.push_back(endToEnd(Blank::Way::Gang, parts, settings_.kerf));
    }
    drop(gone);
  }

  void drop(const std::vector<bool>& gone) {
    Pieces left;
    for (std::size_t i = 0; i < pieces_.size(); ++i) {
      if (!gone[i]) left.push_back(pieces_[i]);
    }
    pieces_ = std::move(left);
  }

  const Settings& settings_;
  Pieces pieces_;
  std::vector<Blank> blanks_;
};

}  // namespace

std::vector<Blank> shareBlanks(const Job& job, const std::vector<const WallLayout*>& layouts) {
  const std::vector<SharePiece> pieces = sharePieces(job, layouts);
  std::map<SheetClass, Pieces> classes;
  for (const SharePiece& piece : pieces) classes[piece.sheet].push_back(&piece);
  std::vector<Blank> all;
  for (const auto& [sheet, members] : classes) {
    for (Blank& blank : Sharer(job.settings, members).blanks()) all.push_back(std::move(blank));
  }
  return all;
}

}  // namespace ribwright
