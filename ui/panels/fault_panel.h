// Why a file could not be read or written: each fault on a line of its own, to be read, copied and put away.
#pragma once

#include <QWidget>
#include <vector>

#include "core/units/outcome.h"

class QLabel;
class QPlainTextEdit;

namespace ribwright {

class FaultPanel : public QWidget {
  Q_OBJECT

 public:
  explicit FaultPanel(QWidget* parent = nullptr);

  // Shows itself with faults, and hides itself without.
  void setFaults(const QString& title, const std::vector<Fault>& faults);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void fit();

  QLabel* title_;
  QPlainTextEdit* lines_;
};

}  // namespace ribwright
