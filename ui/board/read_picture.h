// A picture from a file, upright as its camera noted it.
#pragma once

#include <QImage>
#include <QString>

#include "core/units/outcome.h"

namespace ribwright {

// PNG, JPEG and what else the system reads. Faults, at the file: it cannot be read, is no picture, or has more pixels
// than a computer should be asked to hold.
Outcome<QImage> readPicture(const QString& path);

// "*.png *.jpg ..." for asking for a file.
QString picturePatterns();

}  // namespace ribwright
