#include "ui/printing/pdf_finish.h"

namespace ribwright {

namespace {

constexpr char boxStart[] = "/MediaBox [";
constexpr char dateStart[] = "/CreationDate (";

// Overwrites from `start` to before `end` with `text` and spaces; false when the text is longer than that.
bool overwrite(QByteArray& pdf, qsizetype start, qsizetype end, const QByteArray& text) {
  if (end < start || text.size() > end - start) return false;
  pdf.replace(start, end - start, text.leftJustified(end - start, ' '));
  return true;
}

// The page's own upper edge stays where Qt drew down from; its lower edge moves to the exact height.
bool makeExact(QByteArray& pdf, qsizetype start, qsizetype end, const QSizeF& size) {
  const QList<QByteArray> numbers = pdf.mid(start, end - start).simplified().split(' ');
  if (numbers.size() != 4) return false;
  bool read = false;
  const double top = numbers[3].toDouble(&read);
  if (!read) return false;
  const double bottom = top - size.height();
  // Four decimals of a point are 0.00004 mm.
  const QByteArray box = "0 " + (bottom == 0 ? QByteArray("0") : QByteArray::number(bottom, 'f', 4)) + ' ' +
                         QByteArray::number(size.width(), 'f', 4) + ' ' + QByteArray::number(top, 'f', 0);
  return overwrite(pdf, start, end, box);
}

// A place in the file as ten digits of the table of objects.
QByteArray tenDigits(qsizetype place) { return QByteArray::number(place).rightJustified(10, '0'); }

// Takes bytes out, and tells the table of objects that all behind them stand that much nearer to the start.
bool takeOut(QByteArray& pdf, qsizetype start, qsizetype end) {
  constexpr qsizetype entry = 20;  // "0000000015 00000 n \n"
  const qsizetype count = end - start;
  pdf.remove(start, count);
  const qsizetype table = pdf.lastIndexOf("\nxref\n0 ");
  const qsizetype pointer = pdf.lastIndexOf("startxref\n");
  if (table < 0 || pointer < table) return false;
  const qsizetype first = pdf.indexOf('\n', table + 6) + 1, last = pdf.indexOf("trailer", table);
  for (qsizetype at = first; at + entry <= last; at += entry) {
    const qsizetype place = pdf.mid(at, 10).toLongLong();
    if (place > start) pdf.replace(at, 10, tenDigits(place - count));
  }
  pdf.replace(pointer, pdf.size() - pointer, "startxref\n" + QByteArray::number(table + 1) + "\n%%EOF\n");
  return true;
}

}  // namespace

QByteArray finishedPdf(QByteArray pdf, const std::vector<QSizeF>& sizes) {
  qsizetype at = 0;
  for (const QSizeF& size : sizes) {
    at = pdf.indexOf(boxStart, at);
    if (at < 0) return {};
    at += qsizetype(sizeof boxStart) - 1;
    if (!makeExact(pdf, at, pdf.indexOf(']', at), size)) return {};
  }
  if (pdf.indexOf(boxStart, at) >= 0) return {};
  const qsizetype date = pdf.indexOf(dateStart);
  const qsizetype dateEnd = pdf.indexOf(")\n", date);
  if (date < 0 || dateEnd < 0 || !takeOut(pdf, date, dateEnd + 2)) return {};
  return pdf;
}

}  // namespace ribwright
