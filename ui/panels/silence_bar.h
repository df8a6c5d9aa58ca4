// Puts the chosen finding aside: a reason, and a button.
#pragma once

#include <QWidget>
#include <optional>

#include "ui/session/session.h"

class QLineEdit;
class QPushButton;

namespace ribwright {

class SilenceBar : public QWidget {
  Q_OBJECT

 public:
  explicit SilenceBar(Session& session, QWidget* parent = nullptr);

  void offerFor(const std::optional<Finding>& finding);

 signals:
  void failed(const QString& words);

 private:
  void silence();

  Session& session_;
  QLineEdit* reason_;
  QPushButton* button_;
  std::string key_;
};

}  // namespace ribwright
