#include "core/takeoff/order_account.h"

namespace ribwright {
namespace {

AccountKind accountKindOf(const Piece& piece) {
  switch (piece.kind) {
    case PieceKind::Full:
      return AccountKind::Full;
    case PieceKind::Rip:
      return AccountKind::Rip;
    case PieceKind::Rake:
      return AccountKind::Rake;
    case PieceKind::Notched:
      return AccountKind::Notched;
    case PieceKind::Above:
      return AccountKind::Above;
    case PieceKind::Below:
      return AccountKind::Below;
    case PieceKind::Mixed:
      break;
  }
  return AccountKind::Mixed;
}

const Piece& pieceAt(const std::vector<const WallLayout*>& layouts, const PieceRef& ref) {
  return layouts[static_cast<std::size_t>(ref.wall)]->pieces[static_cast<std::size_t>(ref.piece)];
}

// Part of a line's weight that an area of it has.
double kilograms(const OrderLine& line, Area area) {
  const Area one = line.metalWidth * line.length;
  return one == Area() ? 0 : line.kilogramsOfOne() * (area.inSquareMetres() / one.inSquareMetres());
}

class AccountWork {
 public:
  AccountWork(const SheetOrder& order, const std::vector<const WallLayout*>& layouts)
      : order_(order), layouts_(layouts) {}

  OrderAccount work() {
    account_.lines.resize(order_.lines.size());
    for (const OrderedSheet& sheet : order_.sheets) addSheet(sheet);
    for (const OrderLine& line : order_.lines) {
      if (line.spares > 0) addSpares(line);
    }
    return std::move(account_);
  }

 private:
  void addSheet(const OrderedSheet& sheet) {
    const OrderLine& line = order_.lines[static_cast<std::size_t>(sheet.line)];
    SteelAccount steel;
    steel.bought = line.metalWidth * line.length;
    steel.drops = line.metalWidth * sheet.drop;
    std::size_t parts = 0;
    for (const int blank : sheet.blanks) {
      for (const BlankPart& part : order_.blanks[static_cast<std::size_t>(blank)].parts) {
        const Piece& piece = pieceAt(layouts_, part.piece);
        steel.pieces += piece.area;
        steel.cutOuts += cutOutsOf(*layouts_[static_cast<std::size_t>(part.piece.wall)], piece);
        ++parts;
      }
    }
    steel.waste = steel.bought - steel.pieces - steel.cutOuts - steel.drops;
    steel.wasteKilograms = kilograms(line, steel.waste);
    const AccountKind kind = parts == 1 ? accountKindOf(pieceAt(layouts_, sheet.first)) : AccountKind::Shared;
    add(line, layouts_[static_cast<std::size_t>(sheet.first.wall)]->letter, kind, steel);
  }

  void addSpares(const OrderLine& line) {
    SteelAccount steel;
    steel.bought = steel.spares = line.metalWidth * line.length * line.spares;
    add(line, "", AccountKind::Spare, steel);
  }

  void add(const OrderLine& line, const std::string& wall, AccountKind kind, const SteelAccount& steel) {
    account_.total += steel;
    account_.lines[static_cast<std::size_t>(line.line - 1)] += steel;
    account_.classes[line.sheet()] += steel;
    account_.walls[wall] += steel;
    account_.kinds[kind] += steel;
  }

  const SheetOrder& order_;
  const std::vector<const WallLayout*>& layouts_;
  OrderAccount account_;
};

}  // namespace

SteelAccount& SteelAccount::operator+=(const SteelAccount& other) {
  bought += other.bought;
  pieces += other.pieces;
  cutOuts += other.cutOuts;
  drops += other.drops;
  spares += other.spares;
  waste += other.waste;
  wasteKilograms += other.wasteKilograms;
  return *this;
}

OrderAccount orderAccount(const SheetOrder& order, const std::vector<const WallLayout*>& layouts) {
  return AccountWork(order, layouts).work();
}

}  // namespace ribwright
