#include "core/fastening/upright_margin.h"

#include "core/layout/whole_root.h"

namespace ribwright {

Length uprightMargin(Length margin, const HeightLine& line, Length from, Length to) {
  Int128 run = (to - from).nanometres();
  Int128 rise = (line.heightAt(to, Beside::Left) - line.heightAt(from, Beside::Right)).nanometres();
  if (rise < 0) rise = -rise;
  if (rise == 0 || margin <= Length()) return margin;
  // Lines of many metres are shortened so that squares stay inside 128 bits; their slope moves by less than 1 in 10^10.
  while (run > (Int128(1) << 36) || rise > (Int128(1) << 36)) {
    run = (run + 1) / 2;
    rise = (rise + 1) / 2;
  }
  const Int128 square = Int128(margin.nanometres()) * margin.nanometres();
  const Int128 above = square * (run * run + rise * rise), below = run * run;
  const Int128 least = (above + below - 1) / below;
  return Length::nanometres(static_cast<std::int64_t>(wholeRoot(least - 1) + 1));
}

}  // namespace ribwright
