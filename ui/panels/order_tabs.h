// What is ordered and cut for the whole building, a page each in the Order dock: made up anew when it is looked at.
#pragma once

#include <QTabWidget>
#include <functional>
#include <vector>

#include "ui/session/session.h"

namespace ribwright {

class OrderTabs : public QTabWidget {
  Q_OBJECT

 public:
  explicit OrderTabs(Session& session, QWidget* parent = nullptr);

  // `refill` is called when the page is seen and the job, or its plan, is another than the last time.
  void add(QWidget* page, const QString& title, std::function<void()> refill);

  // What is looked at is made up anew where it is stale: call it when the tabs come to the front.
  void refillSeen();

 signals:
  // A part was chosen in one of the pages, to be brought into view.
  void pointedAt(const Part& part);

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  struct Page {
    std::function<void()> refill;
    bool stale = true;
  };
  Session& session_;
  std::vector<Page> pages_;
};

}  // namespace ribwright
