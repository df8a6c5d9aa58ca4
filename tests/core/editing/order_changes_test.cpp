// What an edit did to the order.
#include "core/editing/order_changes.h"

#include "core/editing/opening_edits.h"
#include "core/editing/run_edits.h"
#include "tests/core/editing/edited_walls.h"
#include "tests/core/editing/length_styles.h"

using namespace ribwright;

namespace {

OrderChanges between(const Job& before, const Job& after) {
  const Plan was = plan(before);
  return orderChanges(was, plan(after, was));
}

std::string said(const OrderChanges& changes, const char* language = "en") {
  return orderChangeText(changes, Words::of(language), feetInches);
}

Length blanks(const Job& job) {
  Length sum;
  for (const OrderLine& line : plan(job).order.lines) sum += line.length * line.quantity();
  return sum;
}

int sheets(const Job& job) {
  int count = 0;
  for (const OrderLine& line : plan(job).order.lines) count += line.quantity();
  return count;
}

OrderChanges changes(int lengths, Length more, int sheetsMore) { return {lengths, more, sheetsMore, {}, {}, {}}; }

}  // namespace

TEST_CASE("the same job orders the same, and no sheet is changed") {
  const OrderChanges none = between(workshop(), workshop());
  CHECK(none == OrderChanges{});
  CHECK(said(none) == "the same lengths");
}

// The sheet above the window does not reach down to the base.
TEST_CASE("a base that is lowered makes every sheet on it longer and no other") {
  Job lower = workshop();
  lower.walls[A].base.drop += in(6);
  const OrderChanges found = between(workshop(), lower);
  CHECK(found.sheetsMore == 0);
  CHECK(found.more == blanks(lower) - blanks(workshop()));
  std::vector<std::pair<std::string, std::string>> onBase;
  const Plan after = plan(lower);
  for (const Piece& piece : after.walls[A]->layout.pieces) {
    if (piece.bottom < Length()) onBase.emplace_back("A", piece.mark);
  }
  CHECK(found.changedSheets == onBase);
  CHECK(found.lengthsChanged == static_cast<int>(onBase.size()));
  const OrderChanges back = between(lower, workshop());
  CHECK(back.more == -found.more);
  CHECK(back.lengthsChanged == found.lengthsChanged);
}

TEST_CASE("a window that moves within its sheets orders nothing otherwise, and lights the sheets that are cut anew") {
  const Job moved = given(openingMovedTo(workshop(), A, "W1", ft(28) + in(1), ft(3, 6)));
  const OrderChanges found = between(workshop(), moved);
  CHECK(found.sameOrder());
  CHECK_FALSE(found.changedSheets.empty());
  CHECK(found.changedSheets.size() < 4);
}

TEST_CASE("sheets of an opening that goes come as whole ones") {
  Job tall = workshop();
  tall.walls[A].openings[0].width = ft(12);
  tall.walls[A].openings[0].height = ft(10);
  const Job without = given(openingRemoved(tall, A, "W1"));
  const OrderChanges found = between(tall, without);
  CHECK(found.sheetsMore == sheets(without) - sheets(tall));
  CHECK(found.more == blanks(without) - blanks(tall));
  CHECK(found.lengthsChanged > 0);
}

TEST_CASE("a wall that is new or gone counts with all its sheets") {
  Job three = workshop();
  three.walls.pop_back();
  const OrderChanges come = between(three, workshop()), gone = between(workshop(), three);
  CHECK(come.sheetsMore == sheets(workshop()) - sheets(three));
  CHECK(come.lengthsChanged == come.sheetsMore);
  CHECK(come.changedSheets.size() == plan(workshop()).walls[3]->layout.pieces.size());
  CHECK(gone.sheetsMore == -come.sheetsMore);
  CHECK(gone.changedSheets.empty());
}

TEST_CASE("the change is said in the language of the window, one and many, more and less") {
  CHECK(said(changes(3, ft(2, 4), 0)) == "3 lengths changed, +2' 4\"");
  CHECK(said(changes(1, -in(4), -1)) == "1 length changed, −4\", 1 sheet fewer");
  CHECK(said(changes(2, Length(), 2)) == "2 lengths changed, as much in all, 2 sheets more");
  CHECK(said(changes(3, ft(2, 4), 1), "es") == "3 largos cambiados, +2' 4\", 1 lámina más");
}

TEST_CASE("with prices stated an edit says what the sheets cost more") {
  Job before = workshop();
  for (const Profile& profile : before.profiles)
    before.prices.items.push_back({Price::What::Sheet, profile.id, "", {}, Price::Per::Foot, 310});
  before.prices.currency = "$";
  Job after = before;
  after.walls[A].base.drop += in(6);
  const auto between = [](const Job& a, const Job& b) { return orderChanges(a, plan(a), b, plan(b)); };
  const OrderChanges found = between(before, after);
  REQUIRE(found.costMore);
  // 3.10 a foot: 1.55 for each half foot, and each line rounded for itself.
  const std::int64_t exact = 310 * found.more.nanometres() / Length::feet(1).nanometres();
  CHECK(std::abs(found.costMore->cents() - exact) <= 20);
  CHECK(found.costMore->cents() > 0);
  CHECK(said(found).ends_with(", +" + shownMoney(*found.costMore, '.', "$")));
  CHECK(between(after, before).costMore == -*found.costMore);
  CHECK(said(between(before, before)) == "the same lengths");
  Job dearer = before;
  dearer.prices.items[0].cents += 1;
  CHECK(said(between(before, dearer)).starts_with("the same lengths, +$"));
  CHECK(!between(workshop(), after).costMore);  // nothing was priced before
  after.prices.items.clear();
  CHECK(said(between(before, after)) == said(orderChanges(plan(before), plan(after))));
}
