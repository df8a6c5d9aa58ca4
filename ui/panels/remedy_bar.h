// What can be done about the chosen finding, a button each: pointed at, the wall is shown with it; pressed, it is done.
#pragma once

#include <QTimer>
#include <QWidget>
#include <optional>

#include "core/editing/remedies.h"
#include "ui/session/session.h"

class QVBoxLayout;

namespace ribwright {

class RemedyButton;

class RemedyBar : public QWidget {
  Q_OBJECT

 public:
  explicit RemedyBar(Session& session, QWidget* parent = nullptr);

  // They are sought a moment later, so that going through findings stays quick.
  void offerFor(const std::optional<Finding>& finding);

 signals:
  // It could not be done after all.
  void failed(const QString& words);

 private:
  void seek();
  void takeButtonsAway();
  static QString whatElse(const OfferedRemedy& remedy);
  RemedyButton* addButton(const QString& words, int number);
  void addRemedy(const OfferedRemedy& remedy, int number);
  void addConfirmation(const std::string& pattern);

  Session& session_;
  QVBoxLayout* buttons_;
  QTimer later_;
  std::optional<Finding> finding_;
  bool previews_ = false;
};

}  // namespace ribwright
