// The chosen blank as it lies to be cut: the drawing of its page, as wide as its room.
#pragma once

#include <QWidget>
#include <optional>

#include "core/drawing/blank_picture.h"

namespace ribwright {

class BlankView : public QWidget {
  Q_OBJECT

 public:
  explicit BlankView(QWidget* parent = nullptr);

  // Absent: nothing. What is drawn is told in words too, for those who do not see it.
  void show(const std::optional<NumberedBlank>& blank, const BlankWords& words);
  const Drawing& drawing() const { return drawing_; }

  QSize sizeHint() const override;
  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  double pixels() const;  // of a millimetre of the drawing
  void draw();

  std::optional<NumberedBlank> blank_;
  BlankWords words_;
  Drawing drawing_;
  double tall_ = 0;  // mm
};

}  // namespace ribwright
