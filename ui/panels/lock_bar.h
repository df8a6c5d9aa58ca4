// A quiet line: the job is open in another window, and here to be looked at; or that window has let it go.
#pragma once

#include <QFrame>

class QLabel;
class QPushButton;

namespace ribwright {

class LockBar : public QFrame {
  Q_OBJECT

 public:
  explicit LockBar(QWidget* parent = nullptr);

  // `since`: a time of day or a date; empty host: this computer. `maySayGone`: nobody can tell whether that window still
  // is there, so a person may say that it is not.
  void showTaken(const QString& file, const QString& host, const QString& since, bool maySayGone);
  void showFree(const QString& file);

 signals:
  void goOnAsked();
  void goneAsked();

 private:
  void say(const QString& words);

  QLabel* words_;
  QPushButton *goOn_, *gone_;
};

}  // namespace ribwright
