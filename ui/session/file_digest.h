// A digest of a file's bytes, to see whether it still is what was read or written.
#pragma once

#include <QByteArray>
#include <QString>
#include <string_view>

namespace ribwright {

QByteArray digestOf(std::string_view bytes);
// Empty when the file is not there or cannot be read.
QByteArray digestOfFile(const QString& path);

}  // namespace ribwright
