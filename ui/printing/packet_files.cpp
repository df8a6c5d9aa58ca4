#include "ui/printing/packet_files.h"

#include <algorithm>

#include "core/drawing/elevation.h"
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

PacketFile svgFile(const std::vector<Page>& pages, const Words& words) {
  const std::string& letter = pages.front().wall;
  return {"elevation-" + letter + ".svg", words.say("packet.elevation", {{"wall", letter}}, {}),
          static_cast<int>(pages.size()), svgText(pages)};
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
  const std::vector<Page> pages = elevationPages(shown, plan, form.paper, words);
  const auto walls = byWall(pages);
  steps.expect(static_cast<int>(pages.size() + walls.size()) + 1);
  if (!pages.empty()) {
    std::string pdf = pagesPdf(pages, {job.name, job.date, form.language}, [&] { return steps.next(); });
    if (steps.stopped()) return packetStopped();
    if (pdf.empty()) return Fault{"elevations.pdf", "could not be painted; is there memory left?"};
    files.push_back(
        {"elevations.pdf", words.say("packet.elevations", {}, {}), static_cast<int>(pages.size()), std::move(pdf)});
  }
  for (const auto& wall : walls) {
    if (!steps.next()) return packetStopped();
    files.push_back(svgFile(wall, words));
  }
  if (!steps.next()) return packetStopped();
  files.push_back(packetContents(job, files, words));
  return files;
}

}  // namespace ribwright
