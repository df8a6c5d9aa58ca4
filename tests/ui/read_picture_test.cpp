// Pictures of plans as they are read and kept to be painted: upright, not too large, in scaled copies.
#include <QPainter>
#include <QTemporaryDir>
#include <QtTest>
#include <cmath>

#include "tests/ui/points_apart.h"
#include "tests/ui/whole_file.h"
#include "tests/ui/window_tests.h"
#include "ui/board/read_picture.h"
#include "ui/board/scaled_picture.h"

using namespace ribwright;

namespace {

const QColor markedAt(255, 0, 220);

}  // namespace

class ReadPictureTest : public QObject {
  Q_OBJECT

 private slots:
  // A camera held upright writes its rows sideways and says so.
  void aPhotographIsTurnedAsItsCameraNoted() {
    const QTemporaryDir folder;
    const QString path = folder.filePath("photo.jpg");
    QImage sideways(40, 20, QImage::Format_RGB32);
    sideways.fill(Qt::white);
    QVERIFY(sideways.save(path, "JPG"));
    QByteArray bytes = readFile(path);
    // An Exif segment with the one tag, orientation 6: turn a quarter clockwise.
    bytes.insert(2, QByteArray::fromHex("ffe1002245786966000049492a00080000000100120103000100000006000000"
                                        "00000000"));
    QVERIFY(writeFile(path, bytes));
    const auto read = readPicture(path);
    QVERIFY(read.ok());
    QCOMPARE(read.value().size(), QSize(20, 40));
  }

  void moreThanCanBeHeldIsRefusedInPlainWords() {
    const QTemporaryDir folder;
    const QString path = folder.filePath("large.png");
    QVERIFY(QImage(33000, 8, QImage::Format_Mono).save(path));
    const auto read = readPicture(path);
    QVERIFY(!read.ok());
    QVERIFY(QString::fromStdString(oneLine(read.faults().front())).contains("33000 x 8 pixels"));
    QImage large(11000, 10000, QImage::Format_Mono);  // 14 megabytes as one bit each, 440 as colours
    large.fill(1);
    QVERIFY(large.save(path));
    const QString why = QString::fromStdString(oneLine(readPicture(path).faults().front()));
    QVERIFY2(why.contains("100 million pixels"), qPrintable(why));
    const QByteArray half = readFile(path).left(2000);
    QVERIFY(writeFile(path, half));
    QVERIFY(!readPicture(path).ok());
  }

  void copiesOfALargePictureStandWhereItDoes() {
    QImage picture(1501, 999, QImage::Format_RGB32);
    picture.fill(Qt::white);
    QPainter(&picture).fillRect(QRect(1200, 800, 100, 100), markedAt);
    const ScaledPicture scaled = inScales(picture);
    QVERIFY(scaled.copies.size() >= 3);
    for (const double zoom : {2.0, 1.0, 0.4, 0.2, 0.12}) {
      QImage seen(600, 400, QImage::Format_RGB32);
      seen.fill(Qt::black);
      QPainter painter(&seen);
      const QPointF middle = QPointF(1250, 850) * zoom;
      const QTransform toScreen = QTransform::fromTranslate(300 - middle.x(), 200 - middle.y()).scale(zoom, zoom);
      paintPicture(painter, scaled, toScreen, seen.rect());
      painter.end();
      QPointF sum;
      int count = 0;
      for (int y = 0; y < seen.height(); ++y) {
        for (int x = 0; x < seen.width(); ++x) {
          if (seen.pixelColor(x, y).green() > 128 || seen.pixelColor(x, y).red() < 128) continue;
          sum += QPointF(x + 0.5, y + 0.5);
          ++count;
        }
      }
      QVERIFY(count > 0);
      QVERIFY2(apart(sum / count, {300, 200}) < 1, qPrintable(QString::number(zoom)));
    }
  }
};

WINDOW_TEST(ReadPictureTest)
#include "read_picture_test.moc"
