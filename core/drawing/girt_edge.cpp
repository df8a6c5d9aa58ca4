#include "core/drawing/girt_edge.h"

namespace ribwright {

const char* typedById(Girt::TypedBy by) {
  switch (by) {
    case Girt::TypedBy::WebLine:
      return "part.girt.web-line";
    case Girt::TypedBy::Bottom:
      return "part.girt.bottom";
    case Girt::TypedBy::Top:
      return "part.girt.top";
    case Girt::TypedBy::Centre:
      break;
  }
  return "part.girt.centre";
}

}  // namespace ribwright
