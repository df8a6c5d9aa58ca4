// How far a packet is, and a button that stops it; hidden while none is made.
#pragma once

#include <QWidget>

class QProgressBar;
class QPushButton;

namespace ribwright {

class PacketBar : public QWidget {
  Q_OBJECT

 public:
  explicit PacketBar(QWidget* parent = nullptr);

  void begin();
  // `of` 0: it is not known yet.
  void setProgress(int done, int of);

 signals:
  void stopAsked();

 private:
  QProgressBar* bar_;
  QPushButton* stop_;
};

}  // namespace ribwright
