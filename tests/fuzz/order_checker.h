// The independent proof of an order: which sheets, how long, how packed, and where their steel goes. It takes pieces
// and blanks as they are, and reckons all else from the job's statements.
#pragma once

#include "core/job/job.h"
#include "core/takeoff/bundles.h"
#include "core/takeoff/order_account.h"
#include "core/takeoff/sheet_order.h"
#include "tests/fuzz/complaints.h"
#include "tests/fuzz/dice.h"

namespace ribwright::fuzz {

using Layouts = std::vector<const WallLayout*>;

struct CheckedOrder {
  const Job& job;
  const Layouts& layouts;
  const SheetOrder& order;

  const OrderLine& lineOf(const OrderedSheet& sheet) const { return order.lines[std::size_t(sheet.line)]; }
  const Blank& blank(int index) const { return order.blanks[std::size_t(index)]; }
  const Piece& piece(const PieceRef& ref) const {
    return layouts[std::size_t(ref.wall)]->pieces[std::size_t(ref.piece)];
  }
  const Profile& profile(const std::string& id) const;
};

// Every blank in one sheet, end to end with kerfs, within it; marks, lines and their figures.
void checkSheets(const CheckedOrder& checked, Complaints& complaints);
// Lengths made, no more than may be, least steel; off the shelf as the cutter's plan says; spares.
void checkOrderLengths(const CheckedOrder& checked, Complaints& complaints);
// bought = pieces + cut-outs + drops + waste + spares, waste reckoned from what is no metal.
void checkAccount(const CheckedOrder& checked, const OrderAccount& account, Complaints& complaints);
// Each sheet once, limits, hanging order, as few bundles as keep it.
void checkBundles(const CheckedOrder& checked, const std::vector<Bundle>& bundles, Complaints& complaints);

// Settings and lengths of an order thrown anew.
Job withOrdering(Job job, Dice& dice);
// Blanks of single pieces, some of them joined end to end.
std::vector<Blank> joinedBlanks(const Job& job, std::vector<Blank> alone, Dice& dice);

}  // namespace ribwright::fuzz
