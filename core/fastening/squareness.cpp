#include "core/fastening/squareness.h"

#include "core/layout/whole_root.h"

namespace ribwright {
namespace {

// The level leg of a right triangle.
Length legOf(Length longest, Length upright) {
  const Int128 c = longest.nanometres(), a = upright.nanometres();
  const Int128 square = c * c - a * a, root = wholeRoot(square);
  const bool nearerToNext = square - root * root > root;
  return Length::nanometres(static_cast<std::int64_t>(root + (nearerToNext ? 1 : 0)));
}

}  // namespace

std::optional<Squareness> squareness(Length rising, Length falling, Length height) {
  if (height <= Length() || rising <= height || falling <= height) return std::nullopt;
  const Length sum = legOf(rising, height), difference = legOf(falling, height);
  return Squareness{half(sum + difference), half(sum - difference), height};
}

std::optional<Squareness> squareness(const Wall& wall, const WallFace& face) {
  if (!wall.survey.diagonalRising || !wall.survey.diagonalFalling) return std::nullopt;
  const auto atCorners = [&](const HeightLine& line) {
    return std::pair(line.heightAt(Length(), Beside::Right), line.heightAt(face.width, Beside::Left));
  };
  const auto [baseLeft, baseRight] = atCorners(face.concrete);
  const auto [topLeft, topRight] = atCorners(face.steel);
  if (baseLeft != baseRight || topLeft != topRight) return std::nullopt;
  return squareness(*wall.survey.diagonalRising, *wall.survey.diagonalFalling, topLeft - baseLeft);
}

Length mostLean(Length height) { return scaled(height, 1, 480); }

}  // namespace ribwright
