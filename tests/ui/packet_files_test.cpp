// A packet in memory: told step by step how far it is, stopped at any step, the same in a thread of its own.
#include <QHashFunctions>
#include <QThread>
#include <QtTest>
#include <atomic>
#include <memory>

#include "tests/ui/paper_samples.h"
#include "tests/ui/window_tests.h"
#include "ui/painting/paper_font.h"
#include "ui/printing/packet_files.h"

using namespace ribwright;
using namespace ribwright::papertest;

class PacketFilesTest : public QObject {
  Q_OBJECT

 private slots:
  void stepsCountUpToTheirEnd();
  void itStopsAtEveryStep();
  void aThreadOfItsOwnGivesTheSameBytes();
  void twoThreadsAtOnceGiveTheSameBytes();
  void theDateOfTheJobIsThatOfThePdf();

 private:
  Outcome<std::vector<PacketFile>> packet(const PacketProgress& progress = {}) const {
    return packetFiles(sample_.job, sample_.plan, {sample_.job.units, PaperSize::A4}, progress);
  }
  // The packet, made in a thread that is not the application's.
  std::unique_ptr<QThread> inThread(std::vector<PacketFile>& files) const {
    std::unique_ptr<QThread> thread(QThread::create([this, &files] { files = packet().value(); }));
    thread->start();
    return thread;
  }

  const Sample sample_ = paperSamples().at(1);  // the gable workshop
};

void PacketFilesTest::stepsCountUpToTheirEnd() {
  std::vector<std::pair<int, int>> steps;
  const auto files = packet({[&](int done, int of) {
    steps.push_back({done, of});
    return true;
  }});
  QVERIFY(files);
  const auto pdf = std::find_if(files.value().begin(), files.value().end(),
                                [](const PacketFile& file) { return file.name == "elevations.pdf"; });
  QVERIFY(pdf != files.value().end());
  QVERIFY(int(steps.size()) > pdf->pages);
  for (std::size_t i = 0; i < steps.size(); ++i) {
    QCOMPARE(steps[i].first, int(i));
    // Not known before the pages are drawn, and one and the same from then on.
    QVERIFY(steps[i].second == 0 ? i < 2 : steps[i].second == int(steps.size()));
  }
}

void PacketFilesTest::itStopsAtEveryStep() {
  int count = 0;
  QVERIFY(packet({[&](int, int) { return ++count > 0; }}));
  for (int stopAt = 0; stopAt < count; ++stopAt) {
    int last = -1;
    const auto files = packet({[&](int done, int) {
      last = done;
      return done < stopAt;
    }});
    QVERIFY(!files);
    QCOMPARE(files.faults(), std::vector<Fault>{packetStopped()});
    QCOMPARE(last, stopAt);  // and nothing was asked any more
  }
}

void PacketFilesTest::aThreadOfItsOwnGivesTheSameBytes() {
  paperFontFamily();
  std::vector<PacketFile> there;
  QVERIFY(inThread(there)->wait(60'000));
  QVERIFY(!there.empty());
  QVERIFY(there == packet().value());
}

void PacketFilesTest::twoThreadsAtOnceGiveTheSameBytes() {
  const std::vector<PacketFile> here = packet().value();
  std::vector<PacketFile> one, two;
  const auto first = inThread(one), second = inThread(two);
  for (int i = 0; i < 20; ++i) QHashSeed::resetRandomGlobalSeed();  // whatever the window does meanwhile
  QVERIFY(first->wait(60'000) && second->wait(60'000));
  QVERIFY(one == here && two == here);
}

void PacketFilesTest::theDateOfTheJobIsThatOfThePdf() {
  Job job = sample_.job;
  job.date = "2026-03-02";
  const auto pdfOf = [&] {
    const auto files = packetFiles(job, sample_.plan, {job.units, PaperSize::A4});
    for (const PacketFile& file : files.value()) {
      if (file.name == "elevations.pdf") return QByteArray::fromStdString(file.bytes);
    }
    return QByteArray();
  };
  QTemporaryDir folder;
  const auto info = [&](const QByteArray& pdf) {
    QFile file(folder.filePath("dated.pdf"));
    if (!file.open(QIODevice::WriteOnly) || file.write(pdf) != pdf.size()) return QByteArray();
    file.close();
    return told("pdfinfo", {"-rawdates", file.fileName()});
  };
  QVERIFY(info(pdfOf()).contains("D:20260302000000Z"));
  job.date.clear();
  const QByteArray undated = info(pdfOf());
  QVERIFY(undated.contains("Pages:") && !undated.contains("Date"));
}

WINDOW_TEST(PacketFilesTest)
#include "packet_files_test.moc"
