// What is ordered: its lines, how many lengths, where the steel goes, how it is packed. Of the whole building.
#pragma once

#include <QWidget>
#include <vector>

#include "core/takeoff/bundles.h"
#include "core/takeoff/class_tradeoff.h"
#include "ui/session/session.h"

class QComboBox;
class QLabel;

namespace ribwright {

class LengthChart;
class RowTable;
class UseBars;

class OrderPanel : public QWidget {
  Q_OBJECT

 public:
  explicit OrderPanel(Session& session, QWidget* parent = nullptr);

  void refill();

 signals:
  // A line's or bundle's pieces were chosen; this is one of them.
  void pointedAt(const Part& part);

 private:
  void layOut();
  void showClass();
  void chooseLengths(int most);
  void chooseLine(int row);
  void chooseBundle(int row);
  void chooseSheets(const std::vector<int>& sheets);

  Session& session_;
  RowTable *lines_, *bundles_;
  QComboBox* classes_;
  LengthChart* chart_;
  QLabel* lengths_;
  UseBars* use_;
  std::vector<ClassTradeOff> tradeOffs_;
  std::vector<Bundle> packed_;
};

}  // namespace ribwright
