#include "core/output/packet_tables.h"

#include "core/output/bundle_table.h"
#include "core/output/cost_table.h"
#include "core/output/opening_table.h"
#include "core/output/sharing_table.h"
#include "core/output/survey_table.h"
#include "core/output/tables.h"
#include "core/output/trim_tables.h"
#include "core/takeoff/sheet_needs.h"

namespace ribwright {

std::vector<PacketFile> packetTables(const Job& job, const Plan& plan, const LengthStyle& style, const Words& words) {
  const auto bytes = [&job](const Table& table) { return csvText(table, job.settings.byteOrderMark); };
  const auto what = [&words](const char* file) { return words.say(std::string("packet.").append(file), {}, {}); };
  const TrimTakeoff trim = trimTakeoff(job, plan.layouts());
  const std::vector<TrimBatch> batches = trimBatches(job, trim);
  return {{"sheet-order.csv", what("sheet-order"), 0, bytes(sheetOrderTable(plan, style.units))},
          {"sharing.csv", what("sharing"), 0, bytes(sharingTable(job, plan, style.units))},
          {"bundles.csv", what("bundles"), 0, bytes(bundleTable(job, plan, style.units))},
          {"delta-order.csv", what("delta-order"), 0,
           bytes(deltaOrderTable(deltaOrder(sheetNeeds(plan.order, plan.layouts()), job.facts.orders), style.units))},
          {"pieces.csv", what("pieces"), 0, bytes(pieceTable(plan, style.units))},
          {"holes.csv", what("holes"), 0, bytes(holeTable(plan, style.units))},
          {"cuts.csv", what("cuts"), 0, bytes(cutTable(plan, style.units))},
          {"module-marks.csv", what("module-marks"), 0, bytes(moduleMarkTable(plan, style.units))},
          {"trim-order.csv", what("trim-order"), 0, bytes(trimOrderTable(job, batches, style.units))},
          {"trim-cuts.csv", what("trim-cuts"), 0, bytes(trimCutTable(trim, batches, style.units))},
          {"openings.csv", what("openings"), 0, bytes(openingTable(job, style.units))},
          {"survey.csv", what("survey"), 0, bytes(surveyTable(job, style.units))},
          {"findings.csv", what("findings"), 0, bytes(findingTable(plan, style, words))}};
}

PacketFile packetContents(const Job& job, const std::vector<PacketFile>& files, const Words& words) {
  Table table;
  table.columns = {"file", "what", "pages", "bytes"};
  for (const PacketFile& file : files) {
    table.rows.push_back(
        {file.name, file.what, file.pages > 0 ? std::to_string(file.pages) : "", std::to_string(file.bytes.size())});
  }
  return {"contents.csv", words.say("packet.contents", {}, {}), 0, csvText(table, job.settings.byteOrderMark)};
}

}  // namespace ribwright
