#include <QGuiApplication>
#include <cstdio>

#include "app/commands.h"
#include "core/drawing/elevation.h"
#include "core/output/file_set.h"
#include "core/output/packet_tables.h"
#include "core/output/svg.h"
#include "ui/printing/elevation_pdf.h"

namespace ribwright {
namespace {

// Where no one is logged in Qt finds no folder for sockets and says so; a packet needs none.
void withoutTalkOfFolders(QtMsgType, const QMessageLogContext&, const QString& message) {
  if (message.startsWith(QLatin1String("QStandardPaths:"))) return;
  const std::string line = message.toStdString() + "\n";
  std::fwrite(line.data(), 1, line.size(), stderr);
}

// The painter wants an application, and no display: pages look the same wherever they are made.
std::string pdfOf(const std::vector<Page>& pages, const std::string& title) {
  char name[] = "ribwright", platform[] = "-platform", offscreen[] = "offscreen";
  char* words[] = {name, platform, offscreen, nullptr};
  int count = 3;
  qInstallMessageHandler(withoutTalkOfFolders);
  const QGuiApplication application(count, words);
  return elevationPdf(pages, title);
}

Outcome<std::vector<PacketFile>> elevations(const Job& shown, const Plan& plan, PaperSize paper) {
  std::vector<Page> all;
  std::vector<PacketFile> svgs;
  for (const auto& wall : plan.walls) {
    const std::string& letter = wall->layout.letter;
    const auto pages = elevationPages(shown, plan, letter, paper);
    if (pages.empty()) continue;
    svgs.push_back({"elevation-" + letter + ".svg", "elevation of wall " + letter, static_cast<int>(pages.size()),
                    svgText(pages)});
    all.insert(all.end(), pages.begin(), pages.end());
  }
  if (all.empty()) return svgs;
  std::string pdf = pdfOf(all, shown.name);
  if (pdf.empty()) return Fault{"elevations.pdf", "could not be painted; is there memory left?"};
  svgs.insert(svgs.begin(),
              {"elevations.pdf", "elevation of every wall", static_cast<int>(all.size()), std::move(pdf)});
  return svgs;
}

Outcome<std::vector<PacketFile>> packetOf(const PlannedJob& planned, PaperSize paper) {
  const auto& [job, plan, style] = planned;
  Job shown = job;
  shown.units = style.units;
  auto drawn = elevations(shown, plan, paper);
  if (!drawn) return drawn.faults();
  std::vector<PacketFile> files = packetTables(job, plan, style);
  for (PacketFile& file : drawn.value()) files.push_back(std::move(file));
  files.push_back(packetContents(job, files));
  return files;
}

}  // namespace

int writePacket(const Request& request) {
  const auto planned = readAndPlan(request);
  if (!planned) return refuse(planned.faults());
  const auto& [job, plan, style] = planned.value();
  const auto files = packetOf(planned.value(), request.paper.value_or(usualPaper(style.units)));
  if (!files) return refuse(files.faults());
  DiskStorage disk;
  const auto faults = writeFileSet(request.directory, files.value(), disk);
  if (!faults.empty()) return refuse(faults);

  std::string text = "Wrote into " + request.directory + ":\n";
  for (const PacketFile& file : files.value()) text += "  " + file.name + ": " + file.what + "\n";
  return print(text + "Findings: " + gradeCounts(plan) + "\n", plan);
}

}  // namespace ribwright
