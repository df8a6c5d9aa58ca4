#include "ui/session/price_file.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileDialog>
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

QString whatChanged(const ReadPrices& read) {
  QStringList words;
  if (!read.added.empty())
    words << Texts::tr("added %1 (%2)").arg(read.added.size()).arg(namedFew(read.added, mostNamed));
  if (!read.changed.empty())
    words << Texts::tr("changed %1 (%2)").arg(read.changed.size()).arg(namedFew(read.changed, mostNamed));
  if (!read.taken.empty())
    words << Texts::tr("struck %1 (%2)").arg(read.taken.size()).arg(namedFew(read.taken, mostNamed));
  if (read.alike > 0) words << Texts::tr("as they were: %1").arg(read.alike);
  if (read.blank > 0) words << Texts::tr("still without a price: %1").arg(read.blank);
  if (words.isEmpty()) words << Texts::tr("it names nothing");
  return Texts::tr("Price list read: %1.").arg(words.join(QStringLiteral("; ")));
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

TableFileEnd readPrices(Session& session, const QString& path) {
  const QString title = Texts::tr("The price list could not be read; nothing was changed.");
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) return tableFailed(title, path, file.errorString());
  if (file.size() > mostBytes) return tableFailed(title, path, Texts::tr("is too large to be a price list"));
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

TableFileEnd writePrices(Session& session, const QString& path) {
  session.settle();
  const Job& job = session.job();
  const Table table = priceTable(job, boughtThings(costOfJob(job, session.plan())), job.units);
  QString error;
  if (writeWhole(path, csvText(table, job.settings.byteOrderMark), error))
    return {Texts::tr("Price list written into %1.").arg(path), {}, {}};
  return tableFailed(Texts::tr("The price list could not be written."), path, error);
}

TableFileEnd writeCost(Session& session, const QString& path) {
  session.settle();
  const Job& job = session.job();
  const Table table = costTable(job, costOfJob(job, session.plan()), job.units);
  QString error;
  if (writeWhole(path, csvText(table, job.settings.byteOrderMark), error))
    return {Texts::tr("Cost of the job written into %1.").arg(path), {}, {}};
  return tableFailed(Texts::tr("The cost of the job could not be written."), path, error);
}

TableFileEnd askAndReadPrices(Session& session, QWidget* window) {
  const QString path = QFileDialog::getOpenFileName(window, Texts::tr("Read a price list"), session.folder(),
                                                    Texts::tr("Tables (*.csv);;All files (*)"));
  return path.isEmpty() ? TableFileEnd() : readPrices(session, path);
}

TableFileEnd askAndWritePrices(Session& session, QWidget* window) {
  const QString path = asked(window, session, Texts::tr("Write the price list"), "prices.csv");
  return path.isEmpty() ? TableFileEnd() : writePrices(session, path);
}

TableFileEnd askAndWriteCost(Session& session, QWidget* window) {
  const QString path = asked(window, session, Texts::tr("Write the cost of the job"), "cost.csv");
  return path.isEmpty() ? TableFileEnd() : writeCost(session, path);
}

}  // namespace ribwright
