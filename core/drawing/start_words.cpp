#include "core/drawing/start_words.h"

namespace ribwright {

Phrase startPhrase(const Start& start, const LengthStyle& style) {
  switch (start.rule) {
    case Start::Rule::Flush:
      return {"part.start.flush"};
    case Start::Rule::ModuleLine:
      return {"part.start.module-line"};
    case Start::Rule::EqualRips:
      return {"part.start.equal-rips"};
    case Start::Rule::SeamOnRidge:
      return {"part.start.seam-on-ridge"};
    case Start::Rule::SheetOnRidge:
      return {"part.start.sheet-on-ridge"};
    case Start::Rule::SeamAtJamb:
      return {start.side == Start::Side::Left ? "part.start.seam-at-left-jamb" : "part.start.seam-at-right-jamb",
              {{"opening", start.opening}}};
    case Start::Rule::Typed:
      return {"part.start.typed", {{"offset", fineText(start.offset, style)}}};
    case Start::Rule::BestOfSearch:
      return {"part.start.best-of-search"};
  }
  return {};
}

}  // namespace ribwright
