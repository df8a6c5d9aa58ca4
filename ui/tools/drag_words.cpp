#include "ui/tools/drag_words.h"

#include "core/drawing/shown_length.h"

namespace ribwright {

namespace {

QString signedWords(Length length, const LengthStyle& style) {
  const bool less = length < Length();
  return (less ? QStringLiteral("\u2212") : QStringLiteral("+")) + lengthWords(less ? -length : length, style);
}

}  // namespace

QString lengthWords(Length length, const LengthStyle& style) { return QString::fromStdString(fineText(length, style)); }

QString sizeWords(const FaceBox& box, const LengthStyle& style) {
  return lengthWords(box.right - box.left, style) + QStringLiteral(" \u00d7 ") +
         lengthWords(box.top - box.bottom, style);
}

QString wayWords(const FacePoint& from, const FacePoint& to, const LengthStyle& style) {
  QStringList ways;
  if (from.u != to.u) ways << signedWords(to.u - from.u, style);
  if (from.z != to.z) ways << signedWords(to.z - from.z, style);
  return ways.join(QStringLiteral(", "));
}

void addGaps(HandPicture& picture, const DraggedWall& wall, const Job& job, const FaceBox& box,
             const std::vector<std::string>& without) {
  for (const NeighbourGap& gap : neighbourGaps(job, *wall.plan, wall.wall, box, without))
    picture.gaps.push_back({gap, lengthWords(gap.length(), wall.style())});
}

}  // namespace ribwright
