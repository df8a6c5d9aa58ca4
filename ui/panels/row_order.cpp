#include "ui/panels/row_order.h"

#include <optional>

namespace ribwright {

namespace {

// What the text begins with: all its digits, or one other letter.
QStringView chunkAt(const QString& text, qsizetype at) {
  qsizetype end = at + 1;
  if (text[at].isDigit()) {
    while (end < text.size() && text[end].isDigit()) ++end;
  }
  return QStringView(text).mid(at, end - at);
}

QStringView withoutZeros(QStringView digits) {
  while (digits.size() > 1 && digits.front() == QLatin1Char('0')) digits = digits.mid(1);
  return digits;
}

int compared(QStringView a, QStringView b) {
  if (!a.front().isDigit() || !b.front().isDigit()) return a.compare(b, Qt::CaseInsensitive);
  const QStringView one = withoutZeros(a), other = withoutZeros(b);
  if (one.size() != other.size()) return one.size() < other.size() ? -1 : 1;
  return one.compare(other);
}

std::optional<Length> lengthOf(const QString& text, const LengthStyle& style) {
  const auto read = parseLength(text.toStdString(), style);
  return read ? std::optional(read.value()) : std::nullopt;
}

}  // namespace

bool naturallyBefore(const QString& a, const QString& b) {
  qsizetype i = 0, j = 0;
  while (i < a.size() && j < b.size()) {
    const QStringView one = chunkAt(a, i), other = chunkAt(b, j);
    const int order = compared(one, other);
    if (order != 0) return order < 0;
    i += one.size();
    j += other.size();
  }
  return a.size() - i < b.size() - j;
}

bool lengthBefore(const QString& a, const QString& b, const LengthStyle& style) {
  const auto one = lengthOf(a, style), other = lengthOf(b, style);
  if (one && other) return *one < *other;
  if (one || other) return one.has_value();
  return naturallyBefore(a, b);
}

}  // namespace ribwright
