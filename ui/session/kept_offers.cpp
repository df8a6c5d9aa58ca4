#include "ui/session/kept_offers.h"

#include <QFileInfo>
#include <QWidget>
#include <algorithm>
#include <utility>

#include "ui/session/kept_card.h"

namespace ribwright {

KeptOffers::KeptOffers(const QString& keptFolder, QWidget* window)
    : QObject(window), keptFolder_(keptFolder), window_(window) {}

KeptOffers::~KeptOffers() {
  if (thread_) thread_->wait();
}

void KeptOffers::offerAll(const QStringList& jobs, const QString& first) {
  search([jobs, first, kept = keptFolder_] {
    QStringList folders;
    for (const QString& job : jobs) folders << QFileInfo(realPath(job)).absolutePath();
    folders.removeDuplicates();
    std::vector<KeptOffer> offers = searchKept(folders, kept);
    const QString top = first.isEmpty() ? QString() : realPath(first);
    std::stable_partition(offers.begin(), offers.end(), [&](const KeptOffer& offer) { return offer.file == top; });
    return offers;
  });
}

void KeptOffers::offerOf(const QString& job) {
  search([job, kept = keptFolder_] { return searchKeptOf(job, kept); });
}

void KeptOffers::search(const std::function<std::vector<KeptOffer>()>& look) {
  if (thread_ || dialog_) return;  // what is on its way or shown comes first
  thread_.reset(QThread::create([this, look] {
    auto found = std::make_shared<Found>();
    found->offers = look();
    for (const KeptOffer& offer : found->offers) found->cards.push_back(cardOf(offer));
    QMetaObject::invokeMethod(
        this, [this, found] { show(std::move(*found)); }, Qt::QueuedConnection);
  }));
  thread_->start();
}

void KeptOffers::show(Found found) {
  thread_->wait();
  thread_.reset();
  found_ = std::move(found);
  setCount(static_cast<int>(found_.offers.size()));
  if (found_.offers.empty()) return;
  dialog_ = new KeptDialog(window_);
  dialog_->setAttribute(Qt::WA_DeleteOnClose);
  dialog_->setCards(found_.cards);
  connect(dialog_, &KeptDialog::openKeptAsked, this, &KeptOffers::openKeptAsked);
  connect(dialog_, &KeptDialog::openFileAsked, this, [this](int offer) {
    const QString file = found_.offers[static_cast<std::size_t>(offer)].file;
    dialog_->reject();
    emit openFileAsked(file);
  });
  connect(dialog_, &KeptDialog::discardAsked, this, &KeptOffers::discard);
  connect(dialog_, &QDialog::finished, this, [this] { found_ = {}; });
  dialog_->open();
}

void KeptOffers::discard(int offer) {
  clear(found_.offers[static_cast<std::size_t>(offer)].spots);
  found_.offers.erase(found_.offers.begin() + offer);
  found_.cards.erase(found_.cards.begin() + offer);
  setCount(count_ - 1);
  found_.cards.empty() ? dialog_->reject() : dialog_->setCards(found_.cards);
}

KeptOffer KeptOffers::takeOut(int offer) {
  KeptOffer taken = std::move(found_.offers[static_cast<std::size_t>(offer)]);
  setCount(count_ - 1);
  dialog_->accept();
  return taken;
}

void KeptOffers::setCount(int count) {
  if (count == count_) return;
  count_ = count;
  emit countChanged();
}

}  // namespace ribwright
