// Girts along a wall, nested where they lap, and what stands in their way.
#include <algorithm>

#include "tests/fuzz/stated_supports.h"

namespace ribwright::fuzz {
namespace {

struct GirtRun {
  Span span;
  GirtFace face;
  bool endsAtFrom = false, endsAtTo = false;  // typed, within the wall
};

// Girts nested over one part of the wall.
struct Nest {
  std::vector<std::int32_t> girts;
  GirtFace face;
};

struct InTheWay {
  Stretch::Steel steel = Stretch::Steel::Column;
  std::string name;
  Span span;  // of the flange
  Nm low = 0, high = 0;
  Nm above = 0, below = 0;  // in the way of rows strictly between; a column: of all
};

struct BetweenJambs {
  Span span;
  Nm above = 0, below = 0;
};

class GirtParts {
 public:
  explicit GirtParts(const ScrewedWall& wall) : wall_(wall) {
    readGirts();
    if (wall.wall.girtSetting == GirtSetting::Flush) readColumns();
    readJambs();
    std::sort(cuts_.begin(), cuts_.end());
    cuts_.erase(std::unique(cuts_.begin(), cuts_.end()), cuts_.end());
  }

  void add(std::vector<SupportPart>& parts) const {
    for (std::size_t i = 0; i + 1 < cuts_.size(); ++i) {
      for (const Nest& nest : nestsOver(i)) {
        if (const auto part = partOf(nest, i)) parts.push_back(*part);
      }
    }
  }

 private:
  void cut(Nm u) {
    if (u >= 0 && u <= wall_.face.width) cuts_.push_back(u);
  }

  void readGirts() {
    cut(0);
    cut(wall_.face.width);
    for (const Girt& girt : wall_.wall.girts) {
      GirtRun run;
      const Nm from = girt.from ? nm(*girt.from) : 0, to = girt.to ? nm(*girt.to) : wall_.face.width;
      run.span = {std::max<Nm>(0, from), std::min(wall_.face.width, to)};
      run.face = statedGirtFace(wall_.job, girt);
      run.endsAtFrom = from > 0;
      run.endsAtTo = to < wall_.face.width;
      girts_.push_back(run);
      cut(run.span.from);
      cut(run.span.to);
    }
  }

  void readColumns() {
    const ColumnGrid& columns = wall_.wall.columns;
    if (columns.flange <= Length()) return;
    Nm centre = nm(columns.offset);
    for (std::size_t i = 0; i <= columns.bays.size(); ++i) {
      const Nm from = centre - halved(nm(columns.flange)), to = centre + halved(nm(columns.flange));
      addFlange({Stretch::Steel::Column, std::to_string(i + 1), {from, to}, from, to, kBelowAll, -kBelowAll});
      if (i < columns.bays.size()) centre += nm(columns.bays[i]);
    }
  }

  void readJambs() {
    for (const JambFlange& jamb : statedJambs(wall_)) {
      const auto steels = openingSteels(wall_);
      const auto steel = std::find_if(steels.begin(), steels.end(),
                                      [&](const OpeningSteel& s) { return s.opening->id == jamb.opening; });
      const Nm above = steel->floor ? kBelowAll : steel->sill, below = steel->head;
      addFlange({jamb.left ? Stretch::Steel::LeftJamb : Stretch::Steel::RightJamb,
                 jamb.opening,
                 {nm(jamb.from), nm(jamb.to)},
                 nm(jamb.low),
                 nm(jamb.high),
                 above,
                 below});
      between_.push_back({{steel->left, steel->right}, above, below});
    }
  }

  void addFlange(const InTheWay& flange) {
    flanges_.push_back(flange);
    cut(flange.span.from);
    cut(flange.span.to);
  }

  Span elementary(std::size_t i) const { return {cuts_[i], cuts_[i + 1]}; }
  static bool over(const Span& span, const Span& part) { return span.from <= part.from && part.to <= span.to; }

  std::vector<Nest> nestsOver(std::size_t i) const {
    std::vector<Nest> nests;
    for (std::size_t g = 0; g < girts_.size(); ++g) {
      if (!over(girts_[g].span, elementary(i))) continue;
      const GirtFace& face = girts_[g].face;
      const auto index = static_cast<std::int32_t>(g);
      const auto nest = std::find_if(nests.begin(), nests.end(), [&](const Nest& n) {
        return std::max(n.face.low, face.low) <= std::min(n.face.high, face.high);
      });
      if (nest == nests.end()) {
        nests.push_back({{index}, face});
        continue;
      }
      nest->girts.push_back(index);
      GirtFace& shared = nest->face;
      shared.low = std::max(shared.low, face.low);
      shared.high = std::min(shared.high, face.high);
      shared.row = shared.low + halved(shared.high - shared.low);
      shared.known = shared.known && face.known;
    }
    return nests;
  }

  // What stands there instead of the nest: nothing, a flange, or the nest's own steel (then no flange is given).
  struct Instead {
    bool stopped = false;
    const InTheWay* flange = nullptr;
  };

  Instead insteadOf(const Nest& nest, const Span& part) const {
    Instead instead;
    int flanges = 0;
    for (const InTheWay& flange : flanges_) {
      if (!over(flange.span, part) || nest.face.row <= flange.above || nest.face.row >= flange.below) continue;
      ++flanges;
      instead = {true, &flange};
    }
    const bool open = std::any_of(between_.begin(), between_.end(), [&](const BetweenJambs& b) {
      return over(b.span, part) && b.above < nest.face.row && nest.face.row < b.below;
    });
    if (open || flanges > 1) instead = {true, nullptr};
    return instead;
  }

  // Whether steel of one of the nest's girts would go on over a part, were nothing in its way; and something is.
  bool stoppedOver(const Nest& nest, std::size_t i) const {
    const std::vector<Nest> nests = nestsOver(i);
    return std::any_of(nests.begin(), nests.end(), [&](const Nest& other) {
      const bool shares = std::any_of(other.girts.begin(), other.girts.end(), [&](std::int32_t g) {
        return std::find(nest.girts.begin(), nest.girts.end(), g) != nest.girts.end();
      });
      return shares && insteadOf(other, elementary(i)).stopped;
    });
  }

  bool endsAt(const Nest& nest, Nm u, bool atFrom) const {
    return std::any_of(nest.girts.begin(), nest.girts.end(), [&](std::int32_t g) {
      const GirtRun& run = girts_[static_cast<std::size_t>(g)];
      return atFrom ? run.endsAtFrom && run.span.from == u : run.endsAtTo && run.span.to == u;
    });
  }

  std::optional<SupportPart> partOf(const Nest& nest, std::size_t i) const {
    const Span part = elementary(i);
    const Instead instead = insteadOf(nest, part);
    if (instead.stopped && !instead.flange) return std::nullopt;
    SupportPart found;
    found.id = wall_.wall.girts[static_cast<std::size_t>(nest.girts.front())].id;
    Stretch& s = found.stretch;
    s.from = at(part.from);
    s.to = at(part.to);
    s.row = at(nest.face.row);
    s.girts = nest.girts;
    if (instead.flange) {
      s.steel = instead.flange->steel;
      s.name = instead.flange->name;
      s.low = at(instead.flange->low);
      s.high = at(instead.flange->high);
      return found;
    }
    s.low = at(nest.face.low);
    s.high = at(nest.face.high);
    s.known = nest.face.known;
    for (const std::int32_t g : nest.girts) {
      if (!s.name.empty()) s.name += "+";
      s.name += wall_.wall.girts[static_cast<std::size_t>(g)].id;
    }
    s.endsAtFrom = endsAt(nest, part.from, true) || (i > 0 && stoppedOver(nest, i - 1));
    s.endsAtTo = endsAt(nest, part.to, false) || (i + 2 < cuts_.size() && stoppedOver(nest, i + 1));
    return found;
  }

  const ScrewedWall& wall_;
  std::vector<GirtRun> girts_;
  std::vector<InTheWay> flanges_;
  std::vector<BetweenJambs> between_;
  std::vector<Nm> cuts_;
};

}  // namespace

void addGirtParts(const ScrewedWall& wall, std::vector<SupportPart>& parts) { GirtParts(wall).add(parts); }

}  // namespace ribwright::fuzz
