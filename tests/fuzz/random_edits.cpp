#include "tests/fuzz/random_edits.h"

#include <functional>

#include "core/editing/column_edits.h"
#include "core/editing/copied_parts.h"
#include "core/editing/girt_edits.h"
#include "core/editing/grips.h"
#include "core/editing/opening_edits.h"
#include "core/editing/outline_edits.h"
#include "core/editing/part_edits.h"
#include "core/editing/penetration_edits.h"
#include "core/editing/placed_order_edits.h"
#include "core/editing/repeat_edits.h"
#include "core/editing/run_edits.h"
#include "core/editing/sight_edits.h"
#include "core/editing/trim_edits.h"

namespace ribwright::fuzz {
namespace {

class Editing {
 public:
  Editing(const Job& job, const Plan* plan, Dice& dice)
      : job_(job), plan_(plan), dice_(dice), at_(index(job.walls.size())), wall_(job.walls[at_]) {}

  TriedEdit any() {
    switch (dice_.small(0, plan_ ? 11 : 9)) {
      case 0:
        return opening();
      case 1:
        return penetration();
      case 2:
        return girt();
      case 3:
        return column();
      case 4:
        return outline();
      case 5:
        return run();
      case 6:
        return sight();
      case 7:
        return parts();
      case 8:
        return {"take shipped trim", takeShippedTrim(job_)};
      case 9:
        return placed();
      default:
        return drag();
    }
  }

 private:
  // Mostly one of so many, now and then one that is not there.
  std::size_t index(std::size_t many) {
    const auto most = static_cast<std::int64_t>(many) - (many > 0 ? 1 : 0);
    return static_cast<std::size_t>(dice_.between(0, most));
  }
  std::size_t indexOrBeyond(std::size_t many) { return dice_.oneIn(12) ? many : index(many); }

  Length along() {
    if (dice_.oneIn(40)) return dice_.of({Length::millimetres(30'000'000), -Length::millimetres(30'000'000), Length()});
    return dice_.length(-Length::feet(6), Length::feet(70));
  }
  Length up() {
    if (dice_.oneIn(40)) return dice_.of({Length::millimetres(30'000'000), Length()});
    return dice_.length(-Length::feet(2), Length::feet(24));
  }
  FacePoint place() { return {along(), up()}; }
  BoxEdge edge() { return {dice_.small(-1, 1), dice_.small(-1, 1)}; }
  Anchored anchored() { return dice_.of({Anchored::Follow, Anchored::Stay}); }

  template <class Item>
  std::string idIn(const std::vector<Item>& items) {
    if (items.empty() || dice_.oneIn(20)) return "none such";
    return dice_.of(items).id;
  }

  TriedEdit opening() {
    const std::string id = idIn(wall_.openings);
    const auto kind = static_cast<Opening::Kind>(dice_.small(0, 5));
    switch (dice_.small(0, 4)) {
      case 0: {
        const auto drawn = drawnOpening(job_, at_, kind, place(), place());
        if (!drawn) return {"draw opening", drawn.faults()};
        return {"draw opening", addOpening(job_, at_, drawn.value())};
      }
      case 1:
        return {"move opening", openingMovedTo(job_, at_, id, along(), up())};
      case 2:
        return {"resize opening", openingEdgeMovedTo(job_, at_, id, edge(), place())};
      case 3:
        return {"set opening", openingSetTo(job_, at_, id, {along(), along(), up(), up()})};
      default:
        return {"remove opening", openingRemoved(job_, at_, id), true};
    }
  }

  TriedEdit penetration() {
    const std::string id = idIn(wall_.penetrations);
    switch (dice_.small(0, 3)) {
      case 0: {
        const auto shape = dice_.of({Penetration::Shape::Round, Penetration::Shape::Rectangular});
        const auto drawn = drawnPenetration(job_, at_, shape, place(), place());
        if (!drawn) return {"draw penetration", drawn.faults()};
        return {"draw penetration", addPenetration(job_, at_, drawn.value())};
      }
      case 1:
        return {"move penetration", penetrationMovedTo(job_, at_, id, place())};
      case 2:
        return {"resize penetration", penetrationEdgeMovedTo(job_, at_, id, edge(), place())};
      default:
        return {"remove penetration", penetrationRemoved(job_, at_, id), true};
    }
  }

  TriedEdit girt() {
    const std::string id = idIn(wall_.girts);
    switch (dice_.small(0, 6)) {
      case 0:
        return {"add girt", addGirt(job_, at_, girtAtHeight(job_, at_, up()))};
      case 1:
        return {"move girt", girtMovedTo(job_, at_, id, up())};
      case 2: {
        const auto u = dice_.oneIn(4) ? std::nullopt : std::optional(along());
        return {"end girt", girtEndMovedTo(job_, at_, id, dice_.of({GirtEnd::Left, GirtEnd::Right}), u)};
      }
      case 3:
        return {"split girt", girtSplitAt(job_, at_, id, along())};
      case 4:
        return {"split girt round", girtSplitRound(job_, at_, id, idIn(wall_.openings))};
      case 5:
        return {"run girt through", girtRunThrough(job_, at_, id), true};
      default:
        return {"remove girt", girtRemoved(job_, at_, id), true};
    }
  }

  TriedEdit column() {
    const int number = static_cast<int>(indexOrBeyond(wall_.columns.bays.size() + 1)) + 1;
    switch (dice_.small(0, 3)) {
      case 0:
        return {"move column", columnMovedTo(job_, at_, number, along(), anchored())};
      case 1:
        return {"add column", columnAdded(job_, at_, along())};
      case 2:
        return {"remove column", columnRemoved(job_, at_, number, anchored())};
      default: {
        const char* text = dice_.of({"20', 2@15'", "3@6 m", "25'", "", "4@0", "7' 6 x"});
        return {"type bays", baysFromText(job_, at_, text, anchored())};
      }
    }
  }

  TriedEdit outline() {
    const std::size_t top = indexOrBeyond(wall_.top.size()), step = indexOrBeyond(wall_.base.steps.size());
    switch (dice_.small(0, 5)) {
      case 0:
        return {"add top point", topPointAdded(job_, at_, place())};
      case 1:
        return {"move top point", topPointMovedTo(job_, at_, top, place())};
      case 2:
        return {"remove top point", topPointRemoved(job_, at_, top), true};
      case 3:
        return {"add step", baseStepAdded(job_, at_, {along(), dice_.length(Length(), Length::feet(2))})};
      case 4:
        return {"move step", baseStepMovedTo(job_, at_, step, {along(), dice_.length(Length(), Length::feet(2))})};
      default:
        return {"remove step", baseStepRemoved(job_, at_, step), true};
    }
  }

  TriedEdit run() {
    const std::size_t joint = indexOrBeyond(wall_.expansionJoints.size()), band = indexOrBeyond(wall_.bands.size());
    switch (dice_.small(0, 6)) {
      case 0:
        return {"hang", hungFrom(job_, at_, static_cast<Hang>(dice_.small(0, 2)))};
      case 1:
        return {"add joint", jointAdded(job_, at_, along())};
      case 2:
        return {"move joint", jointMovedTo(job_, at_, joint, along())};
      case 3:
        return {"remove joint", jointRemoved(job_, at_, joint), true};
      case 4:
        return {"split band", bandSplitAt(job_, at_, up())};
      case 5:
        return {"move band", bandLimitMovedTo(job_, at_, band, up())};
      default:
        return {"remove band", bandRemoved(job_, at_, band), true};
    }
  }

  TriedEdit sight() {
    const std::size_t point = indexOrBeyond(job_.site.sightPoints.size());
    switch (dice_.small(0, 4)) {
      case 0:
        return {"add sight point", sightPointAdded(job_, {"yard", {along(), -Length::feet(90)}, dice_.small(0, 4)})};
      case 1:
        return {"move sight point", sightPointMovedTo(job_, point, {along(), along()})};
      case 2:
        return {"rename sight point", sightPointRenamed(job_, point, dice_.of({"gate", "", "two\nlines"}))};
      case 3:
        return {"weigh sight point", sightPointWeighted(job_, point, dice_.small(-1, 102))};
      default:
        return {"remove sight point", sightPointRemoved(job_, point), true};
    }
  }

  std::vector<Part> chosen() {
    std::vector<Part> parts;
    const auto choose = [&](Part::Kind kind, const std::string& id) {
      if (dice_.oneIn(3)) parts.push_back({kind, wall_.letter, id});
    };
    for (const Opening& opening : wall_.openings) choose(Part::Kind::Opening, opening.id);
    for (const Penetration& penetration : wall_.penetrations) choose(Part::Kind::Penetration, penetration.id);
    if (dice_.oneIn(3)) {
      for (const Girt& girt : wall_.girts) choose(Part::Kind::Girt, girt.id);
    }
    return parts;
  }

  // With columns, and now and then with what cannot be edited.
  std::vector<Part> chosenWithColumns() {
    std::vector<Part> parts = chosen();
    for (std::size_t i = 0; i <= wall_.columns.bays.size(); ++i) {
      if (dice_.oneIn(4)) parts.push_back({Part::Kind::Column, wall_.letter, std::to_string(i + 1)});
    }
    if (dice_.oneIn(30)) parts.push_back({Part::Kind::Piece, wall_.letter, "1"});
    return parts;
  }

  static TriedEdit tried(const char* name, const Outcome<MadeParts>& made) {
    if (!made) return {name, made.faults()};
    return {name, made.value().job};
  }

  FacePoint nudge() {
    return {dice_.length(-Length::feet(3), Length::feet(3)), dice_.length(-Length::feet(1), Length::feet(1))};
  }

  TriedEdit parts() {
    const int bays = static_cast<int>(wall_.columns.bays.size());
    switch (dice_.small(0, 6)) {
      case 0:
        return {"remove parts", partsRemoved(job_, chosenWithColumns()), true};
      case 1: {
        const FacePoint by = nudge();
        return {"move parts", partsMoved(job_, chosenWithColumns(), by.u, by.z)};
      }
      case 2:
        return tried("copy parts", partsCopied(job_, chosen(), nudge()));
      case 3:
        return tried("step along bays",
                     steppedAlongBays(job_, at_, chosen(), dice_.small(0, bays), dice_.small(0, bays + 1)));
      case 4:
        return tried("one per bay", onePerBay(job_, at_, chosen()));
      case 5:
        return tried("mirror", mirroredToOpposite(job_, at_, chosen()));
      default: {
        const auto copied = copiedParts(job_, at_, chosen());
        if (!copied) return {"paste", copied.faults()};
        const auto read = parseCopied(copiedText(copied.value()));
        if (!read || !(read.value() == copied.value())) return {"paste", Fault{"", "the text is not read back equal"}};
        return tried("paste", pasted(job_, index(job_.walls.size()), read.value(), nudge()));
      }
    }
  }

  TriedEdit placed() {
    const auto& orders = job_.facts.orders;
    const std::string id = idIn(orders);
    const std::int64_t many = dice_.oneIn(12) ? dice_.between(-1, 2'000'000) : dice_.between(0, 20);
    SheetLot lot =
        lotOf({{job_.profiles.empty() ? "none" : dice_.of(job_.profiles).id, Length::millimetres(1), "red", false},
               dice_.length(Length::feet(1), Length::feet(40))},
              dice_.between(0, 40));
    switch (dice_.small(0, 3)) {
      case 0:
        return {"place order", placeOrder(job_, dice_.oneIn(9) ? id : nextOrderNumber(job_), "2026-06-01", {lot})};
      case 1:
        return {"receive all", receiveAll(job_, id)};
      case 2: {
        if (!orders.empty() && !orders.front().placed.empty() && !dice_.oneIn(6)) lot = orders.front().placed.front();
        return {"receive", setReceived(job_, id, kindOf(lot), many, dice_.between(0, 3))};
      }
      default:
        return {"strike order", withoutOrder(job_, id)};
    }
  }

  TriedEdit drag() {
    std::vector<Part> all = chosenWithColumns();
    all.push_back({Part::Kind::Face, wall_.letter, ""});
    const std::vector<Grip> grips = gripsOf(job_, *plan_, at_, all);
    if (grips.empty()) return sight();
    const Grip& grip = dice_.of(grips);
    const FacePoint by = nudge();
    const FacePoint to = dice_.oneIn(10) ? grip.at : FacePoint{grip.at.u + by.u, grip.at.z + by.z};
    return {"drag " + std::to_string(static_cast<int>(grip.kind)), dragged(job_, *plan_, at_, grip, to, anchored())};
  }

  const Job& job_;
  const Plan* plan_;
  Dice& dice_;
  std::size_t at_;
  const Wall& wall_;
};

}  // namespace

TriedEdit randomEdit(const Job& job, const Plan* plan, Dice& dice) { return Editing(job, plan, dice).any(); }

}  // namespace ribwright::fuzz
