#include "ui/printing/packet_files.h"

#include "core/drawing/elevation.h"
#include "core/output/svg.h"
#include "ui/printing/elevation_pdf.h"

namespace ribwright {

namespace {

// One SVG a wall, of the pages that come one after the other.
std::vector<PacketFile> svgFiles(const std::vector<Page>& pages) {
  std::vector<PacketFile> files;
  for (std::size_t first = 0; first < pages.size();) {
    std::size_t last = first;
    while (last < pages.size() && pages[last].wall == pages[first].wall) ++last;
    const std::vector<Page> own(pages.begin() + static_cast<std::ptrdiff_t>(first),
                                pages.begin() + static_cast<std::ptrdiff_t>(last));
    const std::string& letter = pages[first].wall;
    files.push_back(
        {"elevation-" + letter + ".svg", "elevation of wall " + letter, static_cast<int>(own.size()), svgText(own)});
    first = last;
  }
  return files;
}

}  // namespace

Outcome<std::vector<PacketFile>> packetFiles(const Job& job, const Plan& plan, UnitSystem units, PaperSize paper) {
  Job shown = job;
  shown.units = units;
  std::vector<PacketFile> files = packetTables(job, plan, {units, job.decimalSign});
  const std::vector<Page> pages = elevationPages(shown, plan, paper);
  if (!pages.empty()) {
    std::string pdf = elevationPdf(pages, job.name);
    if (pdf.empty()) return Fault{"elevations.pdf", "could not be painted; is there memory left?"};
    files.push_back({"elevations.pdf", "elevation of every wall", static_cast<int>(pages.size()), std::move(pdf)});
  }
  for (PacketFile& svg : svgFiles(pages)) files.push_back(std::move(svg));
  files.push_back(packetContents(job, files));
  return files;
}

}  // namespace ribwright
