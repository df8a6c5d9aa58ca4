// What the tests of paper share: the sample jobs planned, every paper, and what other programs say of a file.
#pragma once

#include <QDir>
#include <QProcess>
#include <QTemporaryDir>
#include <vector>

#include "core/drawing/elevation.h"
#include "core/job/job_file.h"
#include "ui/printing/pages_pdf.h"

namespace ribwright::papertest {

inline constexpr PaperSize papers[] = {PaperSize::Letter, PaperSize::Tabloid, PaperSize::A4, PaperSize::A3};

struct Sample {
  QString name;
  Job job;
  Plan plan;
};

inline std::vector<Sample> paperSamples() {
  std::vector<Sample> all;
  const QDir folder(QStringLiteral(RIBWRIGHT_ROOT "/sample-jobs"));
  for (const QString& name : folder.entryList({"*.json"})) {
    auto read = loadJob(folder.filePath(name).toStdString());
    if (!read) qFatal("%s", oneLine(read.faults().front()).c_str());
    Plan made = plan(read.value());
    all.push_back({name, std::move(read).value(), std::move(made)});
  }
  return all;
}

// What a program writes; what it complains of goes to `complaint`.
inline QByteArray told(const QString& program, const QStringList& words, QByteArray* complaint = nullptr) {
  QProcess process;
  process.start(program, words);
  if (!process.waitForFinished(60'000)) qFatal("%s does not run", qPrintable(program));
  if (complaint) *complaint = process.readAllStandardError();
  return process.readAllStandardOutput();
}

// Pages written into a folder, for other programs to look at. Empty when they could not be.
inline QString writtenPdf(const QTemporaryDir& folder, const std::vector<Page>& pages,
                          const PdfDocument& document = {"Sample", "", ""}) {
  const QString path = folder.filePath(QStringLiteral("pages.pdf"));
  QFile file(path);
  const std::string pdf = pagesPdf(pages, document);
  if (pdf.empty() || !file.open(QIODevice::WriteOnly)) return {};
  return file.write(pdf.data(), qint64(pdf.size())) == qint64(pdf.size()) ? path : QString();
}

}  // namespace ribwright::papertest
