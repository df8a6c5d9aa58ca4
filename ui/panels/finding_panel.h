// What would go wrong, wants a look or is good to know: a list, and what the chosen line says in full.
#pragma once

#include <QWidget>
#include <vector>

#include "core/checks/finding.h"
#include "core/units/length_text.h"

class QLabel;
class QTreeWidget;

namespace ribwright {

class FindingPanel : public QWidget {
  Q_OBJECT

 public:
  explicit FindingPanel(QWidget* parent = nullptr);

  void setFindings(const std::vector<Finding>& findings, const LengthStyle& style);

 signals:
  // The wall of the finding that was chosen.
  void wallChosen(const QString& letter);

 private:
  void showChosen();

  QTreeWidget* list_;
  QLabel* words_;
  std::vector<Finding> findings_;
  LengthStyle style_;
};

}  // namespace ribwright
