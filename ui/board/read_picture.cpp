#include "ui/board/read_picture.h"

#include <QCoreApplication>
#include <QFile>
#include <QImageReader>

namespace ribwright {

namespace {

struct ReadPictureTexts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::ReadPicture)
};

constexpr int longestSide = 32000;  // pixels: beyond, painters reckon wrong
// A sheet of 24 x 36 in at 300 dots to the inch has 78 million. Four bytes each, and a third more for the copies.
constexpr qint64 mostPixels = 100'000'000;
constexpr int mostMegabytes = 400;

Fault fault(const QString& path, const QString& words) { return {path.toStdString(), words.toStdString()}; }

bool isTooLarge(const QSize& size) {
  const bool many = qint64(size.width()) * size.height() > mostPixels;
  return many || size.width() > longestSide || size.height() > longestSide;
}

QString tooLarge(const QSize& size) {
  return ReadPictureTexts::tr(
             "is %1 x %2 pixels; at most %3 million pixels and %4 a side can be laid: save it smaller, or only "
             "the part with this wall")
      .arg(size.width())
      .arg(size.height())
      .arg(mostPixels / 1'000'000)
      .arg(longestSide);
}

}  // namespace

Outcome<QImage> readPicture(const QString& path) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) return fault(path, file.errorString());
  QImageReader::setAllocationLimit(mostMegabytes);
  QImageReader reader(&file);
  reader.setAutoTransform(true);
  reader.setDecideFormatFromContent(true);
  if (!reader.canRead())
    return fault(path, ReadPictureTexts::tr("is no picture that can be read; save it as PNG or JPEG"));
  if (isTooLarge(reader.size())) return fault(path, tooLarge(reader.size()));
  QImage picture = reader.read();
  if (picture.isNull()) return fault(path, ReadPictureTexts::tr("cannot be read whole: %1").arg(reader.errorString()));
  if (isTooLarge(picture.size())) return fault(path, tooLarge(picture.size()));
  return picture;
}

QString picturePatterns() {
  QStringList patterns;
  for (const QByteArray& format : QImageReader::supportedImageFormats())
    patterns << QStringLiteral("*.") + QString::fromLatin1(format);
  return patterns.join(QLatin1Char(' '));
}

}  // namespace ribwright
