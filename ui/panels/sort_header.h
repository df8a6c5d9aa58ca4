// The header of a table: a click, or Space and Enter on the column that the arrow keys went to, sorts by a column;
// rising, falling, then as it was. Widths that someone has drawn are kept from one day to the next.
#pragma once

#include <QHeaderView>
#include <QTimer>
#include <map>

namespace ribwright {

class SortHeader : public QHeaderView {
  Q_OBJECT

 public:
  explicit SortHeader(QWidget* parent = nullptr);

  // Of the column; 0: nobody has drawn it.
  int drawnWidth(int column);
  // While columns are fitted to what stands in them nobody draws.
  void setFitting(bool fitting) { fitting_ = fitting; }

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void paintSection(QPainter* painter, const QRect& rect, int column) const override;

 private:
  void sortBy(int column);
  void goTo(int column);
  void read();
  void keep();
  QString key() const;

  int at_ = 0;  // the column that the keyboard is at
  bool fitting_ = false, read_ = false;
  std::map<int, double> drawn_;  // in letters
  QTimer later_;
};

}  // namespace ribwright
