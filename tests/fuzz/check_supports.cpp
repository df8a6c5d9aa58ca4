#include <algorithm>

#include "tests/fuzz/hole_checker.h"
#include "tests/fuzz/stated_supports.h"

namespace ribwright::fuzz {
namespace {

std::string stretchText(const SupportPart& part) {
  const Stretch& s = part.stretch;
  return "kind " + std::to_string(static_cast<int>(part.kind)) + " " + part.id + " \"" + s.name + "\" u " +
         text(s.from) + (s.endsAtFrom ? "|" : "") + " to " + text(s.to) + (s.endsAtTo ? "|" : "") + " face " +
         text(s.low) + " to " + text(s.high) + " row " + text(s.row) + " steel " +
         std::to_string(static_cast<int>(s.steel)) + (s.known ? "" : " not known");
}

// Of the same steel, wherever along the wall.
bool alike(Stretch a, const Stretch& b) {
  a.from = b.from;
  a.to = b.to;
  a.endsAtFrom = b.endsAtFrom;
  a.endsAtTo = b.endsAtTo;
  return a == b;
}

class SupportCheck {
 public:
  SupportCheck(const ScrewedWall& wall, Complaints& complaints)
      : wall_(wall), parts_(statedSupports(wall)), used_(parts_.size(), false), complaints_(complaints) {}

  void all() {
    for (const SupportRow& row : wall_.holes.supports.rows) {
      for (const Stretch& stretch : row.stretches) check(row, stretch);
      const bool top = row.kind == SupportKind::Eave || row.kind == SupportKind::Rake;
      complaints_.check(row.alongTop == top, "a row along the top or not");
      complaints_.check(std::is_sorted(row.stretches.begin(), row.stretches.end(),
                                       [](const Stretch& a, const Stretch& b) { return a.from < b.from; }),
                        "stretches of row " + row.id + " out of order");
    }
    for (std::size_t i = 0; i < parts_.size(); ++i) {
      complaints_.check(used_[i], "no stretch has the steel " + stretchText(parts_[i]));
    }
    checkOrder();
    const std::vector<JambFlange> jambs = statedJambs(wall_);
    complaints_.check(jambs == wall_.holes.supports.jambs, "jamb flanges differ");
  }

 private:
  // Parts of the wall tile it from end to end, are of one steel, and no steel ends between them.
  void check(const SupportRow& row, const Stretch& stretch) {
    const SupportPart found{row.kind, row.id, stretch, 0};
    Length u = stretch.from;
    std::optional<Nm> straight;
    bool endsHere = false;
    while (u < stretch.to) {
      const auto part = std::find_if(parts_.begin(), parts_.end(), [&](const SupportPart& p) {
        return p.kind == row.kind && p.id == row.id && p.stretch.from == u && p.stretch.to <= stretch.to &&
               alike(p.stretch, stretch);
      });
      const std::size_t index = static_cast<std::size_t>(part - parts_.begin());
      if (part == parts_.end() || used_[index]) {
        complaints_.add("no such steel at u " + text(u) + ": " + stretchText(found));
        return;
      }
      used_[index] = true;
      if (u == stretch.from) {
        complaints_.check(part->stretch.endsAtFrom == stretch.endsAtFrom,
                          "free end at its left: " + stretchText(found));
      } else {
        complaints_.check(!endsHere && !part->stretch.endsAtFrom, "goes on over an end: " + stretchText(found));
        complaints_.check(*straight == part->straight, "goes on over a bend: " + stretchText(found));
      }
      straight = part->straight;
      endsHere = part->stretch.endsAtTo;
      u = part->stretch.to;
    }
    complaints_.check(stretch.from < stretch.to, "a stretch of no length: " + stretchText(found));
    complaints_.check(endsHere == stretch.endsAtTo, "free end at its right: " + stretchText(found));
  }

  // Base; eave and rake; girts from the lowest; heads and sills opening by opening.
  void checkOrder() {
    const auto rank = [](SupportKind kind) {
      switch (kind) {
        case SupportKind::Base:
          return 0;
        case SupportKind::Eave:
        case SupportKind::Rake:
          return 1;
        case SupportKind::Girt:
          return 2;
        default:
          return 3;
      }
    };
    const auto& rows = wall_.holes.supports.rows;
    for (std::size_t i = 1; i < rows.size(); ++i) {
      const SupportRow &a = rows[i - 1], &b = rows[i];
      complaints_.check(rank(a.kind) <= rank(b.kind), "rows out of order");
      if (a.kind == SupportKind::Girt && b.kind == SupportKind::Girt) {
        complaints_.check(girtRow(a.id) <= girtRow(b.id), "girts out of order: " + a.id + ", " + b.id);
      }
      if (rank(a.kind) == 3 && rank(b.kind) == 3) {
        complaints_.check(openingPlace(a.id) <= openingPlace(b.id), "openings out of order");
      }
    }
  }

  Nm girtRow(const std::string& id) const {
    for (const Girt& girt : wall_.wall.girts) {
      if (girt.id == id) return statedGirtFace(wall_.job, girt).row;
    }
    return 0;
  }

  std::size_t openingPlace(const std::string& id) const {
    const auto& openings = wall_.wall.openings;
    return static_cast<std::size_t>(
        std::find_if(openings.begin(), openings.end(), [&](const Opening& o) { return o.id == id; }) -
        openings.begin());
  }

  const ScrewedWall& wall_;
  std::vector<SupportPart> parts_;
  std::vector<bool> used_;
  Complaints& complaints_;
};

}  // namespace

void checkSupports(const ScrewedWall& wall, Complaints& complaints) { SupportCheck(wall, complaints).all(); }

}  // namespace ribwright::fuzz
