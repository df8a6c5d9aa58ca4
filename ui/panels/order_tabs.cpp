#include "ui/panels/order_tabs.h"

#include "ui/panels/is_seen.h"

namespace ribwright {

// Pages stand in the order of their use.
OrderTabs::OrderTabs(Session& session, QWidget* parent) : QTabWidget(parent), session_(session) {
  setObjectName(QStringLiteral("order"));
  setDocumentMode(true);
  connect(&session_, &Session::jobChanged, this, [this] {
    for (Page& page : pages_) page.stale = true;
    refillSeen();
  });
  connect(this, &QTabWidget::currentChanged, this, &OrderTabs::refillSeen);
}

void OrderTabs::add(QWidget* page, const QString& title, std::function<void()> refill) {
  pages_.push_back({std::move(refill), true});
  addTab(page, title);
}

void OrderTabs::showEvent(QShowEvent* event) {
  QTabWidget::showEvent(event);
  refillSeen();
}

void OrderTabs::refillSeen() {
  const int at = currentIndex();
  if (!isSeen(this) || !session_.isOpen() || at < 0 || at >= static_cast<int>(pages_.size())) return;
  Page& page = pages_[static_cast<std::size_t>(at)];
  if (!page.stale) return;
  page.stale = false;
  page.refill();
}

}  // namespace ribwright
