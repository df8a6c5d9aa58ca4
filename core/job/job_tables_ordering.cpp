// Tables of how steel is ordered, trimmed with and paid for.
#include "core/job/job_tables.h"
#include "core/job/stated_words.h"

namespace ribwright {
namespace {

constexpr std::string_view reaches[] = {"off", "on", "per wall"};
constexpr std::string_view openings[] = {"any opening",   "doors",   "all but doors", "walk doors", "overhead doors",
                                         "sliding doors", "windows", "louvres",       "framed"};

constexpr LengthRange sheetThickness{Length(), Length::millimetres(25), true};

}  // namespace

void describe(Fields<Sharing>& sharing) {
  sharing.member("reach", &Sharing::reach, "which walls' pieces may share blanks", ChoiceWords(reaches));
  sharing.member("rake_pairs", &Sharing::rakePairs, "two pieces under a rake along one sloped cut, one turned");
  sharing.member("rip_pairs", &Sharing::ripPairs, "a start rip and an end rip side by side");
  sharing.member("drops", &Sharing::drops, "a short piece beyond a longer one");
  sharing.member("gangs", &Sharing::gangs, "short pieces end to end, up to the shortest length made");
}

void describe(Fields<Spares>& spares) {
  spares.member("percent", &Spares::percent, "of the sheets of each line, up to the next whole one",
                WholeRange{0, 100});
  spares.member("fewest", &Spares::fewest, "sheets of each line, where that is more", WholeRange{0, 10'000});
}

void describe(Fields<Bundles>& bundles) {
  bundles.member("heaviest_kilograms", &Bundles::heaviestKilograms, "heaviest bundle", WholeRange{1, 100'000});
  bundles.member("most_sheets", &Bundles::mostSheets, "most sheets in a bundle", WholeRange{1, 10'000});
  bundles.member("length_spread", &Bundles::lengthSpread, "longest less shortest sheet of a bundle, at most",
                 notNegative);
}

void describe(Fields<Trim>& trim) {
  trim.required("id", &Trim::id, "named by its dimensions, as jamb-4x1.5", idText);
  trim.member("name", &Trim::name, "what people read", lineText);
  trim.member("girth", &Trim::girth, "width of the flat strip that it is bent from", notNegative);
  trim.member("section", &Trim::section, "as seen along it, for drawings");
  trim.member("thickness", &Trim::thickness, "base steel", LengthRange{Length(), Length::millimetres(25), false});
  trim.member("colour", &Trim::colour, "colour as ordered", lineText);
  trim.member("stocked", &Trim::stocked, "lengths that are sold", positive);
  trim.member("splice_lap", &Trim::spliceLap, "where two lengths lap, the upper over the lower", notNegative);
  trim.member("end_trim", &Trim::endTrim, "lost at the ends of each stocked length, both together", notNegative);
}

void describe(Fields<TrimRule>& rule) {
  rule.required("id", &TrimRule::id, "what it is called, as window head", idText);
  rule.member("where", &TrimRule::where, "what is trimmed, and so what is measured", ChoiceWords(trimWhereWords));
  rule.member("of", &TrimRule::of, "at openings: of which kind", ChoiceWords(openings));
  rule.member("trim", &TrimRule::trim, "id of the trim", lineText);
  rule.member("colour", &TrimRule::colour, "if other than the trim's", lineText);
  rule.member("times", &TrimRule::times, "length = size x times / parts + allowance", WholeRange{1, 1000});
  rule.member("parts", &TrimRule::parts, "length = size x times / parts + allowance", WholeRange{1, 1000});
  rule.member("allowance", &TrimRule::allowance, "added to the size; less than nothing where it stays short",
              anyLength);
  rule.member("lip", &TrimRule::lip, "of each end, slit and folded; part of the allowance", notNegative);
  rule.member("laps", &TrimRule::laps, "its ends over or under what they meet", ChoiceWords(trimLapsWords));
}

void describe(Fields<Prices>& prices) {
  prices.member("currency", &Prices::currency, "as it is written beside a sum", lineText);
  prices.member("source", &Prices::source, "who told the prices", lineText);
  prices.member("date", &Prices::date, "when", lineText);
  prices.member("items", &Prices::items, "what is paid for what");
}

void describe(Fields<Price>& price) {
  price.member("what", &Price::what, "what is paid for", ChoiceWords(priceWhatWords));
  price.member("item", &Price::item, "id of the profile or trim; of a charge what it is for", lineText);
  price.member("colour", &Price::colour, "if only of this colour", lineText);
  price.member("thickness", &Price::thickness, "if only of this base steel", sheetThickness);
  price.member("per", &Price::per, "what the price is for", ChoiceWords(pricePerWords));
  price.required("cents", &Price::cents, "whole hundredths of the currency", WholeRange{0, 2'000'000'000});
}

}  // namespace ribwright
