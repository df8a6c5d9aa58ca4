#include "ui/printing/packet_files.h"

#include <algorithm>

#include "core/drawing/drill_pages.h"
#include "core/drawing/elevation.h"
#include "core/drawing/packet_pages.h"
#include "core/drawing/schedule_pages.h"
#include "core/output/svg.h"
#include "ui/printing/pages_pdf.h"

namespace ribwright {

namespace {

// Counts steps and asks before each whether to go on; once stopped it stays so.
class Steps {
 public:
  explicit Steps(const PacketProgress& progress) : progress_(progress) {}

  void expect(int more) { of_ = done_ + more; }
  bool next() {
    goOn_ = goOn_ && (!progress_.step || progress_.step(done_, of_));
    ++done_;
    return goOn_;
  }
  bool stopped() const { return !goOn_; }

 private:
  const PacketProgress& progress_;
  int done_ = 0, of_ = 0;
  bool goOn_ = true;
};

// The pages of each wall, which come one after the other.
std::vector<std::vector<Page>> byWall(const std::vector<Page>& pages) {
  std::vector<std::vector<Page>> walls;
  for (const Page& page : pages) {
    if (walls.empty() || walls.back().front().wall != page.wall) walls.emplace_back();
    walls.back().push_back(page);
  }
  return walls;
}

// Pages that are one PDF, and an SVG a wall.
struct Document {
  std::string pdf, pdfWords;  // name, id of what it is
  std::string svg, svgWords;  // the same; name up to the wall's letter; empty: none
  std::vector<Page> pages;
};

PacketFile svgFile(const Document& document, const std::vector<Page>& pages, const Words& words) {
  const std::string& letter = pages.front().wall;
  return {document.svg + letter + ".svg", words.say(document.svgWords, {{"wall", letter}}, {}),
          static_cast<int>(pages.size()), svgText(pages)};
}

std::vector<Document> documentsOf(const Job& job, const Plan& plan, PaperSize paper, const Words& words) {
  std::vector<Document> documents{{"elevations.pdf", "packet.elevations", "elevation-", "packet.elevation",
                                   elevationPages(job, plan, paper, words)},
                                  {"drill-templates.pdf", "packet.drill-templates", "drill-templates-",
                                   "packet.drill-template", drillPages(job, plan, paper, words)},
                                  {"schedules.pdf", "packet.schedules", {}, {}, schedulePages(job, plan, paper, words)},
                                  {"packet.pdf", "packet.packet", {}, {}, packetPages(job, plan, paper, words)}};
  std::erase_if(documents, [](const Document& document) { return document.pages.empty(); });
  return documents;
}

}  // namespace

Fault packetStopped() { return {"packet", "was stopped; nothing of it has been written"}; }

Outcome<std::vector<PacketFile>> packetFiles(const Job& job, const Plan& plan, const PacketForm& form,
                                             const PacketProgress& progress) {
  const Words& words = Words::of(form.language);
  Job shown = job;
  shown.units = form.units;
  Steps steps(progress);
  if (!steps.next()) return packetStopped();
  std::vector<PacketFile> files = packetTables(job, plan, {form.units, job.decimalSign}, words);
  if (!steps.next()) return packetStopped();
  const std::vector<Document> documents = documentsOf(shown, plan, form.paper, words);
  int expected = 1;
  for (const Document& document : documents)
    expected += static_cast<int>(document.pages.size() + (document.svg.empty() ? 0 : byWall(document.pages).size()));
  steps.expect(expected);
  for (const Document& document : documents) {
    std::string pdf = pagesPdf(document.pages, {job.name, job.date, form.language}, [&] { return steps.next(); });
    if (steps.stopped()) return packetStopped();
    if (pdf.empty()) return Fault{document.pdf, "could not be painted; is there memory left?"};
    files.push_back(
        {document.pdf, words.say(document.pdfWords, {}, {}), static_cast<int>(document.pages.size()), std::move(pdf)});
    if (document.svg.empty()) continue;
    for (const auto& wall : byWall(document.pages)) {
      if (!steps.next()) return packetStopped();
      files.push_back(svgFile(document, wall, words));
    }
  }
  if (!steps.next()) return packetStopped();
  files.push_back(packetContents(job, files, words));
  return files;
}

}  // namespace ribwright
