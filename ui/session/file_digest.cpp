#include "ui/session/file_digest.h"

#include <QCryptographicHash>
#include <QFile>

namespace ribwright {

namespace {

constexpr QCryptographicHash::Algorithm kind = QCryptographicHash::Sha256;

}  // namespace

QByteArray digestOf(std::string_view bytes) {
  return QCryptographicHash::hash(QByteArray::fromRawData(bytes.data(), static_cast<qsizetype>(bytes.size())), kind);
}

QByteArray digestOfFile(const QString& path) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) return {};
  QCryptographicHash hash(kind);
  return hash.addData(&file) ? hash.result() : QByteArray();
}

}  // namespace ribwright
