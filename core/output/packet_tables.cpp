#include "core/output/packet_tables.h"

#include "core/output/tables.h"

namespace ribwright {

std::vector<PacketFile> packetTables(const Job& job, const Plan& plan, const LengthStyle& style) {
  const auto bytes = [&job](const Table& table) { return csvText(table, job.settings.byteOrderMark); };
  return {{"sheet-order.csv", "sheets to order, a line a length", 0, bytes(sheetOrderTable(plan, style.units))},
          {"pieces.csv", "every piece: its place, size and kind", 0, bytes(pieceTable(plan, style.units))},
          {"holes.csv", "every hole of every sheet: not for drilling", 0, bytes(holeTable(plan, style.units))},
          {"cuts.csv", "corners of every piece, to cut by", 0, bytes(cutTable(plan, style.units))},
          {"findings.csv", "what stops, wants a look or is good to know", 0, bytes(findingTable(plan, style))}};
}

PacketFile packetContents(const Job& job, const std::vector<PacketFile>& files) {
  Table table;
  table.columns = {"file", "what", "pages", "bytes"};
  for (const PacketFile& file : files) {
    table.rows.push_back(
        {file.name, file.what, file.pages > 0 ? std::to_string(file.pages) : "", std::to_string(file.bytes.size())});
  }
  return {"contents.csv", "what is in this packet", 0, csvText(table, job.settings.byteOrderMark)};
}

}  // namespace ribwright
