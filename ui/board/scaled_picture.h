// A large picture to be painted at any size without delay: kept once more at each half of its size.
#pragma once

#include <QImage>
#include <QRectF>
#include <QTransform>
#include <vector>

class QPainter;

namespace ribwright {

struct ScaledPicture {
  std::vector<QImage> copies;  // the picture, then each half as wide and high as the one before

  bool isNull() const { return copies.empty(); }
  QSize size() const { return isNull() ? QSize() : copies.front().size(); }
};

ScaledPicture inScales(const QImage& picture);

// What of it falls into `area`. `toScreen`: from its pixels to those of the painter, turned and scaled as it likes.
void paintPicture(QPainter& painter, const ScaledPicture& picture, const QTransform& toScreen, const QRectF& area);

}  // namespace ribwright
