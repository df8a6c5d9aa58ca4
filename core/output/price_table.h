// The price list as a table: out of a job for a spreadsheet, and back into it.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/job/job.h"
#include "core/output/csv.h"
#include "core/takeoff/price_choice.h"
#include "core/units/length_text.h"
#include "core/units/outcome.h"

namespace ribwright {

// what,item,colour,thickness_in,per,price: a row a price in the order of the list, then a row without a price for each
// of `bought` that none applies to. Words of the job file; price: one `per` costs so much of the currency.
Table priceTable(const Job& job, const std::vector<BoughtThing>& bought, UnitSystem units);

struct ReadPrices {
  Job job;
  std::vector<std::string> added, changed, taken;  // "sheet rib-36 light stone", in the order of the table
  std::size_t alike = 0;                           // rows that say what was stated already
  std::size_t blank = 0;                           // rows without a price that had none
};

// The job with the prices of a table's text (readCsv): what its list has under the same what, item, colour and
// thickness is changed, other prices are added at its end, and one whose row has no price any more is taken away. Rows
// that are not there change nothing. what, item and price are needed; of a cut or a charge `per` may be blank or
// "each". Faults, each with line and column, and nothing is taken: a word that is none of the job file's; a sum or a
// length that cannot be read or is less than nothing; a price without item or per; one thing twice; what the job file
// would not hold.
Outcome<ReadPrices> withPricesOf(const Job& job, std::string_view csv);

// "sheet rib-36 light stone 0.018 in": what a price is for, in the words of the job file.
std::string pricedName(const Price& price, UnitSystem units);

}  // namespace ribwright
