#include "core/cutting/cut_marks.h"

#include <algorithm>
#include <map>
#include <set>

namespace ribwright {
namespace {

bool hangs(const Layouts& layouts, const PieceRef& ref) {
  const WallLayout& layout = *layouts[static_cast<std::size_t>(ref.wall)];
  const Piece& piece = layout.pieces[static_cast<std::size_t>(ref.piece)];
  return layout.runs.at(static_cast<std::size_t>(piece.run)).modules.at(static_cast<std::size_t>(piece.module)).hung;
}

class Finder {
 public:
  explicit Finder(const Layouts& layouts) : layouts_(layouts) {
    for (std::size_t wall = 0; wall < layouts.size(); ++wall) {
      for (std::size_t piece = 0; piece < layouts[wall]->pieces.size(); ++piece)
        byMark_[layouts[wall]->pieces[piece].mark] = {static_cast<int>(wall), static_cast<int>(piece)};
    }
  }

  void look(const SheetLot& lot) {
    for (const std::string& marks : lot.marks) {
      std::vector<PieceRef> pieces = piecesOf(marks);
      const auto isTaken = [&](const PieceRef& ref) { return taken_.count(ref) > 0; };
      const auto hang = [&](const PieceRef& ref) { return hangs(layouts_, ref); };
      if (pieces.size() < 2 || std::any_of(pieces.begin(), pieces.end(), isTaken)) continue;
      if (std::none_of(pieces.begin(), pieces.end(), hang)) continue;
      taken_.insert(pieces.begin(), pieces.end());
      found.push_back({lot.length, std::move(pieces)});
    }
  }

  std::vector<CutSheet> found;

 private:
  // Empty where one is not there any more, or named twice.
  std::vector<PieceRef> piecesOf(const std::string& marks) const {
    std::vector<PieceRef> pieces;
    for (std::size_t from = 0; from <= marks.size();) {
      const std::size_t plus = std::min(marks.find('+', from), marks.size());
      const auto at = byMark_.find(marks.substr(from, plus - from));
      if (at == byMark_.end() || std::count(pieces.begin(), pieces.end(), at->second) > 0) return {};
      pieces.push_back(at->second);
      from = plus + 1;
    }
    return pieces;
  }

  const Layouts& layouts_;
  std::map<std::string, PieceRef> byMark_;
  std::set<PieceRef> taken_;
};

}  // namespace

std::vector<CutSheet> cutSheets(const Job& job, const Layouts& layouts) {
  if (job.facts.orders.empty() || job.facts.hung.empty()) return {};
  Finder finder(layouts);
  for (const PlacedOrder& order : job.facts.orders) {
    for (const SheetLot& lot : order.placed) finder.look(lot);
  }
  return std::move(finder.found);
}

}  // namespace ribwright
