#include "core/checks/sag_words.h"

namespace ribwright {

Phrase takenWords(const GirtSag& sag) {
  switch (sag.taken) {
    case GirtSag::Taken::Simple:
      return {"sag.simple"};
    case GirtSag::Taken::TwoEqual:
      return {"sag.two"};
    case GirtSag::Taken::ThreeEqual:
      return {"sag.three"};
    case GirtSag::Taken::Continuous:
      break;
  }
  return {"sag.continuous", {{"spans", std::int64_t(sag.spans)}}};
}

}  // namespace ribwright
