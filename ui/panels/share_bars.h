// What parts a sum has: a bar, a figure and per cent each, so that it is read without colour.
#pragma once

#include <QWidget>
#include <vector>

#include "core/units/money.h"

namespace ribwright {

class ShareBars : public QWidget {
  Q_OBJECT

 public:
  struct Share {
    QString name;
    Money money;
  };

  explicit ShareBars(QWidget* parent = nullptr);

  // Bars are as long as their part of the greatest; per cent are of `total`.
  void setShares(const QString& title, std::vector<Share> shares, Money total, char decimalSign,
                 const std::string& currency);

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override { return sizeHint(); }

 protected:
  void paintEvent(QPaintEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  struct Row {
    QString name, figure, percent;
    double part = 0;  // of the greatest
  };
  int rowHeight() const;
  int widest(QString Row::*text) const;

  QString title_;
  std::vector<Row> rows_;
};

}  // namespace ribwright
