// Girts that sag under their own weight while no props are in place.
#include <algorithm>

#include "core/checks/sag_words.h"
#include "core/checks/wall_look.h"
#include "core/fastening/girt_sag.h"

namespace ribwright {
void checkGirtSag(const WallLook& look, std::vector<Finding>& findings) {
  if (look.wall.survey.propsInPlace || !look.layout.sheeted) return;
  constexpr ModulusBy modulus = ModulusBy::American;
  const auto sags = girtSags(look.job, look.wall, look.layout, look.holes.supports, modulus);
  const auto worst =
      std::max_element(sags.begin(), sags.end(), [](const GirtSag& a, const GirtSag& b) { return a.sag < b.sag; });
  const Length limit = sagWorthProps(look.job.units), mark = tapeMark(look.job.units);
  if (worst == sags.end() || worst->sag <= limit) return;
  const std::string& girt = look.wall.girts[static_cast<std::size_t>(worst->girt)].id;
  findings.push_back(look.finding(Grade::Note, "girt-sag", girt,
                                  {{"girt", girt},
                                   {"u", roundTo(worst->at, mark)},
                                   {"from", worst->from},
                                   {"to", worst->to},
                                   {"sag", roundTo(worst->sag, mark)},
                                   {"limit", limit},
                                   {"taken", takenWords(*worst)}},
                                  sagSource(worst->taken, modulus).append("; common practice")));
}

}  // namespace ribwright
