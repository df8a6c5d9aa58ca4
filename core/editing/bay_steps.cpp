// Copies along the bays.
#include <algorithm>

#include "core/editing/opening_edits.h"
#include "core/editing/penetration_edits.h"
#include "core/editing/repeat_edits.h"
#include "core/editing/wall_items.h"
#include "core/editing/wall_things.h"
#include "core/layout/wall_face.h"

namespace ribwright {
namespace {

// Which bay a place lies in, 1, 2 ...; past the last column the last one. 0: left of column 1.
int bayAt(const std::vector<Length>& columns, Length u) {
  const auto beyond = std::upper_bound(columns.begin(), columns.end(), u) - columns.begin();
  return static_cast<int>(std::min(beyond, static_cast<std::ptrdiff_t>(columns.size()) - 1));
}

std::vector<Fault> faultsOfBays(const Wall& wall, int firstBay, int count) {
  const int bays = static_cast<int>(wall.columns.bays.size());
  if (bays == 0) return {{listPlace(wall, "columns"), "has no bays; state the columns first"}};
  if (firstBay >= 1 && count >= 1 && count <= bays && firstBay <= bays - count + 1) return {};
  return {{listPlace(wall, "columns"), joined("has bays 1 to ", bays, "; name a first one and a count within them")}};
}

class Stepping {
 public:
  Stepping(const Wall& wall, int firstBay, int count)
      : wall_(wall), columns_(columnsOf(wall.columns)), firstBay_(firstBay), count_(count) {}

  // `named`: u of what its anchor names when it is measured from a column.
  template <class Item>
  void add(std::vector<Item>& copies, Item item, const Outcome<FaceBox>& box, Length named) {
    if (!box) return fault(box.faults().front());
    const int own = bayAt(columns_, box.value().left);
    if (own == 0)
      return fault({itemPlace(wall_, "columns", item.id), "stands left of column 1; put it into a bay first"});
    const Length distance = named - columnAt(own);
    for (int bay = firstBay_; bay < firstBay_ + count_; ++bay) {
      if (bay == own) continue;
      item.place.from = Anchor::From::Column;
      item.place.column = bay;
      item.place.distance = distance;
      copies.push_back(item);
    }
  }

  const std::vector<Fault>& faults() const { return faults_; }

 private:
  Length columnAt(int number) const { return columns_[static_cast<std::size_t>(number) - 1]; }
  void fault(Fault one) { faults_.push_back(std::move(one)); }

  const Wall& wall_;
  std::vector<Length> columns_;
  int firstBay_, count_;
  std::vector<Fault> faults_;
};

}  // namespace

Outcome<MadeParts> steppedAlongBays(const Job& job, std::size_t wall, const std::vector<Part>& parts, int firstBay,
                                    int count) {
  const Wall& on = job.walls.at(wall);
  if (auto faults = faultsOfBays(on, firstBay, count); !faults.empty()) return faults;
  const auto things = thingsOf(on, parts);
  if (!things) return things.faults();
  if (!things.value().girts.empty())
    return Fault{itemPlace(on, "girts", things.value().girts.front().id), "is a girt; bays repeat openings alone"};
  Stepping stepping(on, firstBay, count);
  WallThings copies;
  for (const Opening& opening : things.value().openings) {
    const auto box = openingBox(job, on, opening);
    const Length left = box ? box.value().left : Length();
    const bool centre = opening.place.to == Anchor::To::Centre;
    stepping.add(copies.openings, opening, box, centre ? left + half(opening.width) : left);
  }
  for (const Penetration& penetration : things.value().penetrations) {
    const auto box = penetrationBox(job, on, penetration);
    stepping.add(copies.penetrations, penetration, box, box ? box.value().left + half(penetration.width) : Length());
  }
  if (!stepping.faults().empty()) return stepping.faults();
  if (things.value().openings.empty() && things.value().penetrations.empty())
    return Fault{listPlace(on, "openings"), "nothing of what is chosen stands on this wall; choose an opening on it"};
  return withThings(job, wall, std::move(copies));
}

Outcome<MadeParts> onePerBay(const Job& job, std::size_t wall, const std::vector<Part>& parts) {
  const int bays = static_cast<int>(job.walls.at(wall).columns.bays.size());
  return steppedAlongBays(job, wall, parts, 1, std::max(bays, 1));
}

}  // namespace ribwright
