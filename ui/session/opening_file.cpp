#include "ui/session/opening_file.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <optional>

#include "core/output/opening_table.h"

namespace ribwright {

namespace {

constexpr std::size_t mostOpeningsNamed = 12;

struct OpeningFileTexts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::OpeningFile)
};

QString whatChanged(const ReadOpenings& read) {
  QStringList words;
  if (!read.added.empty())
    words << OpeningFileTexts::tr("added %1 (%2)").arg(read.added.size()).arg(namedFew(read.added, mostOpeningsNamed));
  if (!read.changed.empty())
    words << OpeningFileTexts::tr("changed %1 (%2)")
                 .arg(read.changed.size())
                 .arg(namedFew(read.changed, mostOpeningsNamed));
  if (read.alike > 0) words << OpeningFileTexts::tr("as they were: %1").arg(read.alike);
  if (words.isEmpty()) words << OpeningFileTexts::tr("it names no opening");
  return OpeningFileTexts::tr("Opening schedule read: %1. None was removed.").arg(words.join(QStringLiteral("; ")));
}

QString beside(const Session& session) { return session.folder(); }

}  // namespace

TableFileEnd readOpenings(Session& session, const QString& path) {
  const QString title = OpeningFileTexts::tr("The opening schedule could not be read; nothing was changed.");
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) return tableFailed(title, path, file.errorString());
  if (file.size() > mostTableBytes)
    return tableFailed(title, path, OpeningFileTexts::tr("is too large to be an opening schedule"));
  const std::string text = file.readAll().toStdString();
  std::optional<ReadOpenings> read;
  const auto faults = session.edit(OpeningFileTexts::tr("Read an opening schedule").toStdString(),
                                   [&](const Job& newest) -> Outcome<Job> {
                                     Outcome<ReadOpenings> taken = withOpeningsOf(newest, text);
                                     if (!taken) return taken.faults();
                                     read = std::move(taken).value();
                                     return read->job;
                                   });
  if (!faults.empty()) return {{}, title, faults};
  return {read ? whatChanged(*read) : QString(), {}, {}};
}

TableFileEnd writeOpenings(const Session& session, const QString& path) {
  const Job& job = session.newest();
  const std::string text = csvText(openingTable(job, job.units), job.settings.byteOrderMark);
  QString error;
  if (writeWhole(path, text, error))
    return {OpeningFileTexts::tr("Opening schedule written into %1.").arg(path), {}, {}};
  return tableFailed(OpeningFileTexts::tr("The opening schedule could not be written."), path, error);
}

TableFileEnd askAndReadOpenings(Session& session, QWidget* window) {
  const QString path =
      QFileDialog::getOpenFileName(window, OpeningFileTexts::tr("Read an opening schedule"), beside(session),
                                   OpeningFileTexts::tr("Tables (*.csv);;All files (*)"));
  return path.isEmpty() ? TableFileEnd() : readOpenings(session, path);
}

TableFileEnd askAndWriteOpenings(const Session& session, QWidget* window) {
  const QString path = QFileDialog::getSaveFileName(window, OpeningFileTexts::tr("Write the opening schedule"),
                                                    beside(session) + QStringLiteral("/openings.csv"),
                                                    OpeningFileTexts::tr("Tables (*.csv)"));
  return path.isEmpty() ? TableFileEnd() : writeOpenings(session, path);
}

}  // namespace ribwright
