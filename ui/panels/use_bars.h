// Where the steel of each class goes: a bar a class, its parts told apart by their pattern, not by colour.
#pragma once

#include <QWidget>
#include <vector>

#include "core/takeoff/order_account.h"

namespace ribwright {

class UseBars : public QWidget {
  Q_OBJECT

 public:
  struct Bar {
    QString title;
    SteelAccount steel;
    QString waste;  // in words, behind the bar's title
  };
  explicit UseBars(QWidget* parent = nullptr);

  void setBars(std::vector<Bar> bars);

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override { return sizeHint(); }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  int legendLines() const;

  std::vector<Bar> bars_;
};

}  // namespace ribwright
