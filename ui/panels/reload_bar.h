// A quiet line: the file of the open job has changed on the disk, and can be read again.
#pragma once

#include <QFrame>

class QLabel;

namespace ribwright {

class ReloadBar : public QFrame {
  Q_OBJECT

 public:
  explicit ReloadBar(QWidget* parent = nullptr);

  void offer(const QString& fileName);

 signals:
  void readAgainAsked();

 private:
  QLabel* words_;
};

}  // namespace ribwright
