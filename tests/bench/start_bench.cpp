// How long the window takes from the start of its process to its first frame with a job, against an empty window's
// program: start_bench [RUNS]. On a virtual display that does not start anew with each client (Xvfb -noreset), or it
// measures that.
//
// Each is started anew RUNS times in turn; the medians count.
#include <QDir>
#include <QElapsedTimer>
#include <QFileInfo>
#include <QProcess>
#include <algorithm>
#include <cstdio>
#include <string>
#include <vector>

#include "tests/bench/first_frame.h"
#include "ui/session/main_window.h"
#include "ui/session/run_window.h"

namespace {

using namespace ribwright;

// Until the program says that its first frame is painted, in milliseconds; negative: it could not be run.
double timeOf(const QString& program, const QStringList& arguments) {
  QProcess process;
  process.setProcessChannelMode(QProcess::ForwardedErrorChannel);
  QElapsedTimer clock;
  clock.start();
  process.start(program, arguments);
  const bool painted = process.waitForReadyRead(60'000) && process.readAllStandardOutput().startsWith("frame");
  const auto took = static_cast<double>(clock.nsecsElapsed()) / 1e6;
  return process.waitForFinished(60'000) && painted ? took : -1;
}

double median(std::vector<double> times) {
  std::sort(times.begin(), times.end());
  return times[times.size() / 2];
}

int showJob(char** words, const std::string& job) {
  return runWindow(1, words, job, "en", [](MainWindow& window) { new bench::FirstFrame(window); });
}

int compare(const QString& self, int runs) {
  const QString empty = QFileInfo(self).dir().filePath(QStringLiteral("empty_window"));
  const QDir samples(QStringLiteral(RIBWRIGHT_ROOT "/sample-jobs"));
  for (const QString& name : samples.entryList({QStringLiteral("*.json")})) {
    std::vector<double> ours, bare, word;
    for (int run = 0; run < runs; ++run) {
      bare.push_back(timeOf(empty, {}));
      word.push_back(timeOf(empty, {QStringLiteral("word")}));
      ours.push_back(timeOf(self, {QStringLiteral("--show"), samples.filePath(name)}));
      if (bare.back() < 0 || word.back() < 0 || ours.back() < 0) return 1;
    }
    std::printf("%-22s first frame %6.1f ms; empty window %5.1f ms: %.2f times; one word %5.1f ms: %.2f times\n",
                qPrintable(name), median(ours), median(bare), median(ours) / median(bare), median(word),
                median(ours) / median(word));
  }
  return 0;
}

}  // namespace

int main(int argc, char** argv) {
  if (argc == 3 && std::string(argv[1]) == "--show") return showJob(argv, argv[2]);
  QCoreApplication application(argc, argv);
  const int runs = argc > 1 ? std::max(1, QString::fromLocal8Bit(argv[1]).toInt()) : 11;
  return compare(QCoreApplication::applicationFilePath(), runs);
}
