// A table of what is stated, and under it in words the cell at hand, or what could not be read.
#pragma once

#include <QWidget>

#include "core/editing/stated_cells.h"
#include "ui/session/session.h"

namespace ribwright {

class ElidedLabel;
class StatedTable;

class StatedPanel : public QWidget {
  Q_OBJECT

 public:
  // The table is called `name`, the words below it `name` and "Words".
  StatedPanel(Session& session, StatedList list, const QString& name, QWidget* parent = nullptr);

  int count() const;
  void refill();
  // Enters what is being typed.
  void finishTyping();

 signals:
  void pointedAt(const Part& part);

 private:
  void tell(const QString& words, bool fault);

  StatedTable* table_;
  ElidedLabel* words_;
};

}  // namespace ribwright
