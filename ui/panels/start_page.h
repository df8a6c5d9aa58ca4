// What stands in the window while no job is open: what to do, and the button for it.
#pragma once

#include <QWidget>

class QLabel;

namespace ribwright {

class StartPage : public QWidget {
  Q_OBJECT

 public:
  explicit StartPage(QWidget* parent = nullptr);

 signals:
  void newAsked();
  void openAsked();

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void fit();

  QLabel *title_, *words_;
};

}  // namespace ribwright
