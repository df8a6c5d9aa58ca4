#include "ui/board/similarity.h"

#include <QCoreApplication>
#include <cmath>
#include <complex>

namespace ribwright {

namespace {

struct SimilarityTexts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::Similarity)
};

constexpr double degree = 3.14159265358979323846 / 180;

std::complex<double> number(const QPointF& point) { return {point.x(), point.y()}; }

Fault fault(const QString& words) { return {{}, words.toStdString()}; }

}  // namespace

// Points are taken as complex numbers: turning and scaling is one factor, what is left of the first point the shift.
Outcome<QTransform> similarityOf(const std::array<PointPair, 2>& points) {
  const auto from = number(points[0].onPicture), to = number(points[0].onFace);
  const auto across = number(points[1].onPicture) - from, along = number(points[1].onFace) - to;
  if (across == 0.0)
    return fault(
        SimilarityTexts::tr("The two points are one on the picture; set them far apart, such as at two corners."));
  if (along == 0.0)
    return fault(SimilarityTexts::tr("The two points lie at one place on the wall; type where each of them lies."));
  const auto factor = along / across;
  const auto shift = to - factor * from;
  return QTransform(factor.real(), factor.imag(), -factor.imag(), factor.real(), shift.real(), shift.imag());
}

double scaleOf(const QTransform& similarity) { return std::hypot(similarity.m11(), similarity.m12()); }

double turnOf(const QTransform& similarity) { return std::atan2(similarity.m12(), similarity.m11()) / degree; }

}  // namespace ribwright
