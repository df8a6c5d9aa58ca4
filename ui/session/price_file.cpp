#include "ui/session/price_file.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileDialog>
#include <optional>

#include "core/output/cost_table.h"
#include "core/output/price_table.h"

namespace ribwright {

namespace {

constexpr std::size_t mostPricesNamed = 8;

struct PriceFileTexts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::PriceFile)
};

QString whatChanged(const ReadPrices& read) {
  QStringList words;
  if (!read.added.empty())
    words << PriceFileTexts::tr("added %1 (%2)").arg(read.added.size()).arg(namedFew(read.added, mostPricesNamed));
  if (!read.changed.empty())
    words
        << PriceFileTexts::tr("changed %1 (%2)").arg(read.changed.size()).arg(namedFew(read.changed, mostPricesNamed));
  if (!read.taken.empty())
    words << PriceFileTexts::tr("struck %1 (%2)").arg(read.taken.size()).arg(namedFew(read.taken, mostPricesNamed));
  if (read.alike > 0) words << PriceFileTexts::tr("as they were: %1").arg(read.alike);
  if (read.blank > 0) words << PriceFileTexts::tr("still without a price: %1").arg(read.blank);
  if (words.isEmpty()) words << PriceFileTexts::tr("it names nothing");
  return PriceFileTexts::tr("Price list read: %1.").arg(words.join(QStringLiteral("; ")));
}

QString asked(QWidget* window, const Session& session, const QString& title, const char* name) {
  return QFileDialog::getSaveFileName(window, title, session.folder() + QLatin1Char('/') + QLatin1String(name),
                                      PriceFileTexts::tr("Tables (*.csv)"));
}

}  // namespace

JobCost costOfJob(const Job& job, const Plan& plan) {
  const auto layouts = plan.layouts();
  return costOf(job, layouts, plan.order, cutTrim(job, layouts));
}

TableFileEnd readPrices(Session& session, const QString& path) {
  const QString title = PriceFileTexts::tr("The price list could not be read; nothing was changed.");
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) return tableFailed(title, path, file.errorString());
  if (file.size() > mostTableBytes)
    return tableFailed(title, path, PriceFileTexts::tr("is too large to be a price list"));
  const std::string text = file.readAll().toStdString();
  std::optional<ReadPrices> read;
  const auto faults =
      session.edit(PriceFileTexts::tr("Read a price list").toStdString(), [&](const Job& newest) -> Outcome<Job> {
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
    return {PriceFileTexts::tr("Price list written into %1.").arg(path), {}, {}};
  return tableFailed(PriceFileTexts::tr("The price list could not be written."), path, error);
}

TableFileEnd writeCost(Session& session, const QString& path) {
  session.settle();
  const Job& job = session.job();
  const Table table = costTable(job, costOfJob(job, session.plan()), job.units);
  QString error;
  if (writeWhole(path, csvText(table, job.settings.byteOrderMark), error))
    return {PriceFileTexts::tr("Cost of the job written into %1.").arg(path), {}, {}};
  return tableFailed(PriceFileTexts::tr("The cost of the job could not be written."), path, error);
}

TableFileEnd askAndReadPrices(Session& session, QWidget* window) {
  const QString path = QFileDialog::getOpenFileName(window, PriceFileTexts::tr("Read a price list"), session.folder(),
                                                    PriceFileTexts::tr("Tables (*.csv);;All files (*)"));
  return path.isEmpty() ? TableFileEnd() : readPrices(session, path);
}

TableFileEnd askAndWritePrices(Session& session, QWidget* window) {
  const QString path = asked(window, session, PriceFileTexts::tr("Write the price list"), "prices.csv");
  return path.isEmpty() ? TableFileEnd() : writePrices(session, path);
}

TableFileEnd askAndWriteCost(Session& session, QWidget* window) {
  const QString path = asked(window, session, PriceFileTexts::tr("Write the cost of the job"), "cost.csv");
  return path.isEmpty() ? TableFileEnd() : writeCost(session, path);
}

}  // namespace ribwright
