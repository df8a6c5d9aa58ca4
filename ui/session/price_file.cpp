#include "ui/session/price_file.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileDialog>
#include <QSaveFile>
#include <optional>

#include "core/output/cost_table.h"
#include "core/output/price_table.h"

namespace ribwright {

namespace {

constexpr qint64 mostBytes = 16 * 1024 * 1024;
constexpr std::size_t mostNamed = 8;

struct Texts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::PriceFile)
};

OpeningFileEnd failed(const QString& title, const QString& path, const QString& what) {
  return {{}, title, {{path.toStdString(), what.toStdString()}}};
}

QString named(const std::vector<std::string>& names) {
  QStringList all;
  for (std::size_t i = 0; i < names.size() && i < mostNamed; ++i) all << QString::fromStdString(names[i]);
  if (names.size() > mostNamed) all << QStringLiteral("…");
  return all.join(QStringLiteral(", "));
}

QString whatChanged(const ReadPrices& read) {
  QStringList words;
  if (!read.added.empty()) words << Texts::tr("added %1 (%2)").arg(read.added.size()).arg(named(read.added));
  if (!read.changed.empty()) words << Texts::tr("changed %1 (%2)").arg(read.changed.size()).arg(named(read.changed));
  if (!read.taken.empty()) words << Texts::tr("struck %1 (%2)").arg(read.taken.size()).arg(named(read.taken));
  if (read.alike > 0) words << Texts::tr("as they were: %1").arg(read.alike);
  if (read.blank > 0) words << Texts::tr("still without a price: %1").arg(read.blank);
  if (words.isEmpty()) words << Texts::tr("it names nothing");
  return Texts::tr("Price list read: %1.").arg(words.join(QStringLiteral("; ")));
}

bool writeWhole(const QString& path, const std::string& text, QString& error) {
  QSaveFile file(path);
  const bool whole = file.open(QIODevice::WriteOnly) &&
                     file.write(text.data(), qint64(text.size())) == qint64(text.size()) && file.commit();
  error = file.errorString();
  return whole;
}

QString asked(QWidget* window, const Session& session, const QString& title, const char* name) {
  return QFileDialog::getSaveFileName(window, title, session.folder() + QLatin1Char('/') + QLatin1String(name),
                                      Texts::tr("Tables (*.csv)"));
}

}  // namespace

JobCost costOfJob(const Job& job, const Plan& plan) {
  const auto layouts = plan.layouts();
  return costOf(job, layouts, plan.order, cutTrim(job, layouts));
}

OpeningFileEnd readPrices(Session& session, const QString& path) {
  const QString title = Texts::tr("The price list could not be read; nothing was changed.");
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) return failed(title, path, file.errorString());
  if (file.size() > mostBytes) return failed(title, path, Texts::tr("is too large to be a price list"));
  const std::string text = file.readAll().toStdString();
  std::optional<ReadPrices> read;
  const auto faults =
      session.edit(Texts::tr("Read a price list").toStdString(), [&](const Job& newest) -> Outcome<Job> {
        Outcome<ReadPrices> taken = withPricesOf(newest, text);
        if (!taken) return taken.faults();
        read = std::move(taken).value();
        return read->job;
      });
  if (!faults.empty()) return {{}, title, faults};
  return {read ? whatChanged(*read) : QString(), {}, {}};
}

OpeningFileEnd writePrices(Session& session, const QString& path) {
  session.settle();
  const Job& job = session.job();
  const Table table = priceTable(job, boughtThings(costOfJob(job, session.plan())), job.units);
  QString error;
  if (writeWhole(path, csvText(table, job.settings.byteOrderMark), error))
    return {Texts::tr("Price list written into %1.").arg(path), {}, {}};
  return failed(Texts::tr("The price list could not be written."), path, error);
}

OpeningFileEnd writeCost(Session& session, const QString& path) {
  session.settle();
  const Job& job = session.job();
  const Table table = costTable(job, costOfJob(job, session.plan()), job.units);
  QString error;
  if (writeWhole(path, csvText(table, job.settings.byteOrderMark), error))
    return {Texts::tr("Cost of the job written into %1.").arg(path), {}, {}};
  return failed(Texts::tr("The cost of the job could not be written."), path, error);
}

OpeningFileEnd askAndReadPrices(Session& session, QWidget* window) {
  const QString path = QFileDialog::getOpenFileName(window, Texts::tr("Read a price list"), session.folder(),
                                                    Texts::tr("Tables (*.csv);;All files (*)"));
  return path.isEmpty() ? OpeningFileEnd() : readPrices(session, path);
}

OpeningFileEnd askAndWritePrices(Session& session, QWidget* window) {
  const QString path = asked(window, session, Texts::tr("Write the price list"), "prices.csv");
  return path.isEmpty() ? OpeningFileEnd() : writePrices(session, path);
}

OpeningFileEnd askAndWriteCost(Session& session, QWidget* window) {
  const QString path = asked(window, session, Texts::tr("Write the cost of the job"), "cost.csv");
  return path.isEmpty() ? OpeningFileEnd() : writeCost(session, path);
}

}  // namespace ribwright
