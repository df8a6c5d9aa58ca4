// The one font of paper, from the file that ships inside the program: the same letters on every machine.
#pragma once

#include <QRawFont>
#include <QString>

namespace ribwright {

// Family name of the shipped font, after loading it (once). Empty when it could not be loaded.
QString paperFontFamily();

// The font at this size of its em, in the painter's units, unhinted. Not valid when the shipped font could not be
// loaded.
QRawFont paperFont(double em, bool bold);

}  // namespace ribwright
