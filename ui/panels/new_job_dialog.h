// A job begun: what a person states at the left, what would hang there at the right, as it is typed.
#pragma once

#include <QDialog>
#include <optional>
#include <vector>

#include "core/editing/new_job.h"
#include "core/units/outcome.h"

class QLabel;
class QPushButton;
class QTimer;

namespace ribwright {

class NewJobForm;
class NewJobPicture;

class NewJobDialog : public QDialog {
  Q_OBJECT

 public:
  explicit NewJobDialog(QWidget* parent = nullptr);

  // Of a dialog that was accepted: what was stated, or a copy of a sample.
  const std::optional<Job>& job() const { return job_; }

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QWidget* makeSide();
  QWidget* makeButtons();
  void look();
  void make();
  void keep();
  void begin(const Job& job);
  void tell(const QString& words);

  NewJobForm* form_;
  NewJobPicture* picture_;
  QTimer* soon_;
  QLabel* told_;
  QPushButton* make_ = nullptr;
  std::optional<Job> job_;
};

}  // namespace ribwright
