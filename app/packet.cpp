#include <QGuiApplication>
#include <cstdio>

#include "app/commands.h"
#include "core/output/file_set.h"
#include "ui/printing/packet_files.h"

namespace ribwright {
namespace {

// Where no one is logged in Qt finds no folder for sockets and says so; a packet needs none.
void withoutTalkOfFolders(QtMsgType, const QMessageLogContext&, const QString& message) {
  if (message.startsWith(QLatin1String("QStandardPaths:"))) return;
  const std::string line = message.toStdString() + "\n";
  std::fwrite(line.data(), 1, line.size(), stderr);
}

// Painters want an application, and no display: pages look the same wherever they are made.
Outcome<std::vector<PacketFile>> paintedOffscreen(const PlannedJob& planned, const PacketForm& form) {
  char name[] = "ribwright", platform[] = "-platform", offscreen[] = "offscreen";
  char* words[] = {name, platform, offscreen, nullptr};
  int count = 3;
  qInstallMessageHandler(withoutTalkOfFolders);
  const QGuiApplication application(count, words);
  return packetFiles(planned.job, planned.plan, form);
}

}  // namespace

int writePacket(const Request& request) {
  const auto planned = readAndPlan(request);
  if (!planned) return refuse(planned.faults());
  const auto& [job, plan, style] = planned.value();
  PacketForm form{style.units, request.paper.value_or(customaryPaper(style.units))};
  if (!request.language.empty()) form.language = request.language;
  const auto files = paintedOffscreen(planned.value(), form);
  if (!files) return refuse(files.faults());
  DiskStorage disk;
  const auto faults = writeFileSet(request.directory, files.value(), disk);
  if (!faults.empty()) return refuse(faults);

  std::string text = "Wrote into " + request.directory + ":\n";
  for (const PacketFile& file : files.value()) text += "  " + file.name + ": " + file.what + "\n";
  return print(text + "Findings: " + gradeCounts(plan) + "\n", plan);
}

}  // namespace ribwright
