#include "core/drawing/drawing_scale.h"

namespace ribwright {

namespace {

std::vector<DrawingScale> scales(std::initializer_list<std::int64_t> belows) {
  std::vector<DrawingScale> all;
  for (const std::int64_t below : belows) all.push_back({below});
  return all;
}

}  // namespace

std::vector<DrawingScale> usualScales(UnitSystem units) {
  if (units == UnitSystem::Millimetres) return scales({20, 25, 50, 75, 100, 150, 200});
  return scales({24, 32, 48, 64, 96, 128, 192});
}

std::vector<DrawingScale> smallScales(UnitSystem units) {
  if (units == UnitSystem::Millimetres) return scales({250, 500, 1000, 2000, 5000, 10000, 20000, 50000, 100000});
  return scales({384, 768, 1536, 3072, 6144, 12288, 24576, 49152, 98304});
}

std::string scaleWords(const DrawingScale& scale, UnitSystem units, const Words& words) {
  if (scale.below == 1) return words.say("paper.scale.full", {}, {});
  std::string ratio = "1:" + std::to_string(scale.below);
  if (units == UnitSystem::Millimetres) return ratio;
  // 12 in / below as a fraction of an inch in lowest terms.
  std::int64_t above = 12, under = scale.below;
  for (const std::int64_t prime : {2, 3}) {
    while (above % prime == 0 && under % prime == 0) {
      above /= prime;
      under /= prime;
    }
  }
  const std::string inches = std::to_string(above) + "/" + std::to_string(under);
  return words.say("paper.scale.ft-in", {{"inches", inches}, {"ratio", ratio}}, {});
}

Length scaleBarOnPaper(UnitSystem units) {
  return units == UnitSystem::Millimetres ? Length::millimetres(100) : Length::inches(3);
}

}  // namespace ribwright
