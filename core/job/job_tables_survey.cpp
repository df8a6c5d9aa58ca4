// Tables of what was measured, hung and ordered.
#include "core/job/job_tables.h"

namespace ribwright {
namespace {

template <class Owner, class Reading>
void stationsRise(Fields<Owner>& owner, std::string_view list, const std::vector<Reading>& readings) {
  owner.eachAfter(list, readings, "u", [](const Reading& before, const Reading& reading) -> std::string_view {
    return reading.u > before.u ? "" : "does not lie right of the station before; list them from left to right";
  });
}

}  // namespace

void describe(Fields<WallSurvey>& survey) {
  survey.member("props_in_place", &WallSurvey::propsInPlace, "girts were held by props at midspan");
  survey.member("chalk_line", &WallSurvey::chalkLine, "height at which the chalk line was snapped", anyLength);
  survey.member("girts", &WallSurvey::girts, "measured girts");
  survey.member("slab", &WallSurvey::slab, "measured slab edge, from left to right");
  survey.member("diagonal_rising", &WallSurvey::diagonalRising, "bottom left to top right", positive);
  survey.member("diagonal_falling", &WallSurvey::diagonalFalling, "top left to bottom right", positive);
  survey.eachDiffers("girts", survey.read().girts, &GirtSurvey::girt, "girt");
  stationsRise(survey, "slab", survey.read().slab);
}

void describe(Fields<GirtSurvey>& girt) {
  girt.required("girt", &GirtSurvey::girt, "id of the girt", idText);
  girt.member("readings", &GirtSurvey::readings, "stations from left to right");
  stationsRise(girt, "readings", girt.read().readings);
}

void describe(Fields<GirtReading>& reading) {
  reading.required("u", &GirtReading::u, "station: to the right from the left corner", anyLength);
  reading.required("height", &GirtReading::height, "above the chalk line, of the edge that the girt is typed by",
                   anyLength);
  reading.member("within", &GirtReading::within, "stick check: the height holds within this, up and down", notNegative);
  reading.member("by", &GirtReading::by, "who measured", lineText);
  reading.member("date", &GirtReading::date, "when", lineText);
}

void describe(Fields<SlabReading>& reading) {
  reading.required("u", &SlabReading::u, "station: to the right from the left corner", anyLength);
  reading.required("z", &SlabReading::z, "height of the slab edge from the datum; down is negative", anyLength);
}

void describe(Fields<SiteFacts>& facts) {
  facts.member("hung", &SiteFacts::hung, "sheets that hang");
  facts.member("orders", &SiteFacts::orders, "orders placed");
  facts.eachDiffers("hung", facts.read().hung, &HungSheet::mark, "mark");
  facts.eachDiffers("orders", facts.read().orders, &PlacedOrder::id, "id");
}

void describe(Fields<HungSheet>& sheet) {
  sheet.required("mark", &HungSheet::mark, "position mark without a part, as B7", idText);
  sheet.required("leading_edge", &HungSheet::leadingEdge, "measured place of its leading metal edge", anyLength);
  sheet.member("by", &HungSheet::by, "who measured", lineText);
  sheet.member("date", &HungSheet::date, "when", lineText);
}

void describe(Fields<PlacedOrder>& order) {
  order.required("id", &PlacedOrder::id, "order number", idText);
  order.member("date", &PlacedOrder::date, "when it was placed", lineText);
  order.member("placed", &PlacedOrder::placed, "what was ordered");
  order.member("received", &PlacedOrder::received, "what came fit to hang");
  order.member("shortfall", &PlacedOrder::shortfall, "what will not come, or came unfit");
}

void describe(Fields<SheetLot>& lot) {
  lot.required("profile", &SheetLot::profile, "id of the profile when it was ordered", idText);
  lot.member("colour", &SheetLot::colour, "colour as ordered", lineText);
  lot.member("translucent", &SheetLot::translucent, "translucent sheets");
  lot.required("thickness", &SheetLot::thickness, "base steel", LengthRange{Length(), Length::millimetres(25), true});
  lot.required("length", &SheetLot::length, "of each sheet", positive);
  lot.required("quantity", &SheetLot::quantity, "how many sheets", WholeRange{0, 1'000'000});
  lot.member("marks", &SheetLot::marks, "position marks that they are for", idText);
}

}  // namespace ribwright
