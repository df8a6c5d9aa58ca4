#include "ui/session/table_file.h"

#include <QSaveFile>
#include <QStringList>

namespace ribwright {

TableFileEnd tableFailed(const QString& title, const QString& path, const QString& what) {
  return {{}, title, {{path.toStdString(), what.toStdString()}}};
}

QString namedFew(const std::vector<std::string>& names, std::size_t most) {
  QStringList all;
  for (std::size_t i = 0; i < names.size() && i < most; ++i) all << QString::fromStdString(names[i]);
  if (names.size() > most) all << QStringLiteral("…");
  return all.join(QStringLiteral(", "));
}

bool writeWhole(const QString& path, const std::string& text, QString& error) {
  QSaveFile file(path);
  const bool whole = file.open(QIODevice::WriteOnly) &&
                     file.write(text.data(), qint64(text.size())) == qint64(text.size()) && file.commit();
  error = file.errorString();
  return whole;
}

}  // namespace ribwright
