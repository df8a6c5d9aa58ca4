// What is stated of openings, penetrations, girts and bands, column by column.
#include "core/editing/stated_field_kinds.h"
#include "core/job/job_file_joined.h"
#include "core/job/job_file_text.h"
#include "core/job/stated_words.h"
#include "core/layout/wall_face.h"

namespace ribwright {
namespace {

std::string columnWord(int column) { return joined("column ", column); }

// A wall without bays has one place to measure from.
int columnCount(const Wall& wall) { return static_cast<int>(std::max<std::size_t>(1, columnsOf(wall.columns).size())); }

std::vector<std::string> fromWords(const CellReading& reading) {
  std::vector<std::string> words{std::string(anchorFromWords[0]), std::string(anchorFromWords[1])};
  for (int column = 1; column <= columnCount(reading.wall); ++column) words.push_back(columnWord(column));
  return words;
}

std::string fromText(const Anchor& anchor) {
  if (anchor.from == Anchor::From::Column) return columnWord(anchor.column);
  return std::string(anchorFromWords[static_cast<std::size_t>(anchor.from)]);
}

std::string takeFrom(Anchor& anchor, std::string_view text, const CellReading& reading) {
  if (text == fromText(anchor)) return {};  // also of a column that is gone: it is found by the checks
  int index = 0;
  std::string wrong = takeChoice(index, text, fromWords(reading));
  if (!wrong.empty()) return wrong;
  anchor.from = static_cast<Anchor::From>(std::min(index, static_cast<int>(Anchor::From::Column)));
  anchor.column = std::max(0, index - 1);
  return {};
}

template <class Item>
StatedField<Item> fromField() {
  return {
      "from",
      "place.column",
      CellForm::Choice,
      false,
      [](const Item& item, const LengthStyle&) { return fromText(item.place); },
      [](Item& item, std::string_view text, const CellReading& reading) { return takeFrom(item.place, text, reading); },
      fromWords};
}

// A round one has a diameter.
template <auto Side>
StatedField<Penetration> sideField(std::string_view name, std::string_view path, bool needed) {
  return {name,
          path,
          CellForm::Length,
          needed,
          [](const Penetration& item, const LengthStyle& style) { return typedLength(item.*Side, style); },
          [](Penetration& item, std::string_view text, const CellReading& reading) {
            Length length;
            std::string wrong = takeLength(length, text, reading);
            if (!wrong.empty()) return wrong;
            item.*Side = length;
            if (item.shape == Penetration::Shape::Round) item.width = item.height = length;
            return wrong;
          }};
}

}  // namespace

const std::vector<StatedField<Opening>>& openingFields() {
  static const std::vector<StatedField<Opening>> fields{textField < Opening, [](auto& o) -> auto& {return o.id;
}
> ("id", "id", CellForm::Id, true), choiceField < Opening, [](auto& o) -> auto& { return o.kind; }
, openingKindWords > ("kind", "kind", true), fromField<Opening>(), lengthField < Opening, [](auto& o) -> auto& {
  return o.place.distance;
}
> ("distance", "place.distance", true), choiceField < Opening, [](auto& o) -> auto& { return o.place.to; }
, anchorToWords > ("to", "place.to", false), lengthField < Opening, [](auto& o) -> auto& { return o.width; }
> ("width", "width", true), lengthField < Opening, [](auto& o) -> auto& { return o.height; }
> ("height", "height", true), lengthField < Opening, [](auto& o) -> auto& { return o.sill; }
> ("sill", "sill", false), lengthField < Opening, [](auto& o) -> auto& { return o.jambTrim; }
> ("jamb_trim", "jamb_trim", false)
};  // namespace ribwright
return fields;
}

const std::vector<StatedField<Penetration>>& penetrationFields() {
  static const std::vector<StatedField<Penetration>> fields{textField < Penetration, [](auto& p) -> auto& {return p.id;
}
> ("id", "id", CellForm::Id, true), choiceField < Penetration, [](auto& p) -> auto& { return p.shape; }
, penetrationShapeWords > ("shape", "shape", true), fromField<Penetration>(), lengthField < Penetration,
    [](auto& p) -> auto& {
  return p.place.distance;
}
> ("distance", "place.distance", true), lengthField < Penetration, [](auto& p) -> auto& { return p.centre; }
> ("centre", "centre", true), sideField<&Penetration::width>("width", "width", true),
    sideField<&Penetration::height>("height", "height", true), lengthField < Penetration, [](auto& p) -> auto& {
  return p.clearance;
}
> ("clearance", "clearance", false)
}
;
return fields;
}

const std::vector<StatedField<Girt>>& girtFields() {
  static const std::vector<StatedField<Girt>> fields{textField < Girt, [](auto& g) -> auto& {return g.id;
}
> ("id", "id", CellForm::Id, true), lengthField < Girt, [](auto& g) -> auto& { return g.height; }
> ("height", "height", true), choiceField < Girt, [](auto& g) -> auto& { return g.typedBy; }
, girtTypedByWords > ("typed_by", "typed_by", false), choiceField < Girt, [](auto& g) -> auto& { return g.flange; }
, girtFlangeWords > ("flange", "flange", false), nameField < Girt, [](auto& g) -> auto& { return g.member; }
, &Job::members > ("member", "member"), optionalLengthField < Girt, [](auto& g) -> auto& { return g.from; }
> ("from", "from"), optionalLengthField < Girt, [](auto& g) -> auto& { return g.to; }
> ("to", "to"), optionalLengthField < Girt, [](auto& g) -> auto& { return g.clipSlot; }
> ("clip_slot", "clip_slot")
}
;
return fields;
}

const std::vector<StatedField<Band>>& bandFields() {
  static const std::vector<StatedField<Band>> fields{optionalLengthField < Band, [](auto& b) -> auto& {return b.from;
}
> ("from", "from"), nameField < Band, [](auto& b) -> auto& { return b.profile; }
, &Job::profiles > ("profile", "profile"), textField < Band, [](auto& b) -> auto& { return b.colour; }
> ("colour", "colour", CellForm::Text, false), nameField < Band, [](auto& b) -> auto& { return b.pattern; }
, &Job::patterns > ("pattern", "pattern"), optionalLengthField < Band, [](auto& b) -> auto& { return b.thickness; }
> ("thickness", "thickness"), lengthField < Band, [](auto& b) -> auto& { return b.gap; }
> ("gap", "gap", false)
}
;
return fields;
}

}  // namespace ribwright
