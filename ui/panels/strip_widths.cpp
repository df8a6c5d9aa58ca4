#include "ui/panels/strip_widths.h"

#include <cmath>
#include <cstddef>

namespace ribwright {

namespace {

// Pixels for a unit of size, for those that are not held at their least.
double scaleOf(const std::vector<double>& sizes, const std::vector<int>& least, const std::vector<bool>& held,
               int room) {
  double left = room, size = 0;
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    if (held[i]) left -= least[i];
    if (!held[i]) size += sizes[i];
  }
  return size > 0 ? left / size : 0;
}

// Holds those that the scale would press below their least; false when there are no more.
bool holdPressed(const std::vector<double>& sizes, const std::vector<int>& least, double scale,
                 std::vector<bool>& held) {
  bool more = false;
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    if (held[i] || sizes[i] * scale >= least[i]) continue;
    held[i] = true;
    more = true;
  }
  return more;
}

}  // namespace

std::vector<int> stripWidths(const std::vector<double>& sizes, const std::vector<int>& least, int room) {
  std::vector<bool> held(sizes.size(), false);
  double scale = scaleOf(sizes, least, held, room);
  while (holdPressed(sizes, least, scale, held)) scale = scaleOf(sizes, least, held, room);
  std::vector<int> widths;
  double rounded = 0;  // what rounding has kept back so far
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    const double exact = held[i] ? least[i] : sizes[i] * scale + rounded;
    widths.push_back(held[i] ? least[i] : static_cast<int>(std::floor(exact + 1e-9)));
    if (!held[i]) rounded = exact - widths.back();
    if (!held[i] && widths.back() < least[i]) widths.back() = least[i];
  }
  return widths;
}

}  // namespace ribwright
