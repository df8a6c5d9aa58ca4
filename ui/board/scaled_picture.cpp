#include "ui/board/scaled_picture.h"

#include <QPaintDevice>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace ribwright {

namespace {

constexpr int smallestSide = 64;    // pixels: no copy has a shorter one
constexpr double crispFrom = 3;     // pixels of the screen to one of the picture: from there on its pixels are squares
constexpr double enoughPixels = 1;  // of the copy that is painted, to one of the screen

double scaleOf(const QTransform& transform) { return std::sqrt(std::abs(transform.determinant())); }

// The smallest that is not seen enlarged.
const QImage& copyFor(const ScaledPicture& picture, double scale) {
  const auto& copies = picture.copies;
  std::size_t which = 0;
  while (which + 1 < copies.size() && scale * std::pow(2.0, static_cast<double>(which + 1)) <= enoughPixels) ++which;
  return copies[which];
}

}  // namespace

// Painted fastest in the painter's own kind of pixels.
ScaledPicture inScales(const QImage& picture) {
  ScaledPicture made;
  if (picture.isNull()) return made;
  const auto format = picture.hasAlphaChannel() ? QImage::Format_ARGB32_Premultiplied : QImage::Format_RGB32;
  made.copies.push_back(picture.convertToFormat(format));
  while (std::min(made.copies.back().width(), made.copies.back().height()) >= 2 * smallestSide) {
    const QSize half = made.copies.back().size() / 2;
    made.copies.push_back(made.copies.back().scaled(half, Qt::IgnoreAspectRatio, Qt::SmoothTransformation));
  }
  for (QImage& copy : made.copies) copy.setDevicePixelRatio(1);
  return made;
}

void paintPicture(QPainter& painter, const ScaledPicture& picture, const QTransform& toScreen, const QRectF& area) {
  if (picture.isNull() || !toScreen.isInvertible()) return;
  const double scale = scaleOf(toScreen) * painter.device()->devicePixelRatio();
  const QImage& copy = copyFor(picture, scale);
  const QSize size = picture.size();
  const QTransform toPicture =
      QTransform::fromScale(double(size.width()) / copy.width(), double(size.height()) / copy.height());
  const QTransform placed = toPicture * toScreen;
  const QRect seen = placed.inverted().mapRect(area).toAlignedRect().adjusted(-1, -1, 1, 1).intersected(copy.rect());
  if (seen.isEmpty()) return;
  painter.save();
  painter.setRenderHint(QPainter::SmoothPixmapTransform, scale < crispFrom);
  painter.setTransform(placed, true);
  painter.drawImage(seen.topLeft(), copy, seen);
  painter.restore();
}

}  // namespace ribwright
