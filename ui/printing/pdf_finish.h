// What QPdfWriter of Qt 6.4 leaves undone: pages of exact size, and the same bytes for the same pages.
#pragma once

#include <QByteArray>
#include <QList>
#include <QSizeF>
#include <vector>

namespace ribwright {

// QPdfWriter rounds a page to whole points of 1/72 in and stamps the local time of writing. Gives the document with
// each page box made exact about the same upper left corner, and without the time; the table of objects is kept true.
// `sizes` in points, one a page in order. Empty when the document is not as QPdfWriter of Qt 6 writes it.
QByteArray finishedPdf(QByteArray pdf, const std::vector<QSizeF>& sizes);

}  // namespace ribwright
