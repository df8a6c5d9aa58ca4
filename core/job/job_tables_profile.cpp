// Table of a sheet profile, in a job and in a file of its own.
#include "core/job/job_tables.h"

namespace ribwright {
namespace {

// A cover narrower than an inch or wider than ten feet is a slip of the pen, and would make sheets without number.
constexpr LengthRange coverRange{Length::inches(1), Length::feet(10), false};
constexpr LengthRange lapRange{Length(), Length::feet(10), false};

void sectionRules(Fields<Profile>& profile) {
  const Profile& read = profile.read();
  profile.eachAfter(
      "section", read.section, "x", [](const SectionPoint& before, const SectionPoint& point) -> std::string_view {
        return point.x >= before.x
                   ? ""
                   : "lies left of the point before; list the points from the starting edge to the leading edge";
      });
  if (!profile.sound("cover", "over", "under") || !profile.soundAt("section") || read.section.empty()) return;
  const auto mustStand = [&](std::size_t i, Length right, std::string_view where) {
    const Length x = read.section[i].x;
    if (x == right || !profile.sound(itemPath("section", i))) return;
    profile.wrong(itemPath("section", i, "x"),
                  joined("is ", exactText(x, profile.units()), "; ", where, ": ", exactText(right, profile.units())));
  };
  mustStand(0, -read.over, "the starting edge stands at minus over");
  mustStand(read.section.size() - 1, read.cover + read.under, "the leading edge stands at cover + under");
}

}  // namespace

void describe(Fields<Profile>& profile) {
  profile.required("id", &Profile::id, "named by its dimensions, as rib-36-1.25-at-12", idText);
  profile.member("name", &Profile::name, "what people read", lineText);
  profile.required("cover", &Profile::cover, "module line to module line", coverRange);
  profile.required("over", &Profile::over, "lip, the starting edge past its module line, over the earlier sheet",
                   lapRange);
  profile.required("under", &Profile::under, "leg, the leading edge past its module line, under the next sheet",
                   lapRange);
  profile.requiredList("section", &Profile::section, ItemCount{2},
                       "cross-section from the starting edge to the leading edge");
  profile.required("thickness", &Profile::thickness, "base steel, without coating or paint",
                   LengthRange{Length(), Length::millimetres(25), true});
  profile.member("coating_grams_per_square_metre", &Profile::coatingGramsPerSquareMetre,
                 "metal coating and paint, both faces together", WholeRange{0, 10'000});
  profile.member("lengths", &Profile::lengths, "lengths that are made");
  profile.member("longest_span", &Profile::longestSpan, "girt spacing that it may span, from the maker's table",
                 positive);

  const Profile& read = profile.read();
  if (profile.sound("cover", "over", "under") && read.cover <= read.over + read.under) {
    profile.wrong("cover", "is no more than over + under; a sheet covers more than its laps");
  }
  sectionRules(profile);
}

void describe(Fields<SectionPoint>& point) {
  point.required("x", &SectionPoint::x, "across the sheet from the module line toward the leading edge", anyLength);
  point.required("y", &SectionPoint::y, "outward from the face of the supports", anyLength);
}

void describe(Fields<SheetLengths>& lengths) {
  lengths.member("shortest", &SheetLengths::shortest, "shortest length made", positive);
  lengths.member("longest", &SheetLengths::longest, "longest length made", positive);
  lengths.member("increment", &SheetLengths::increment, "step between lengths", positive);
  lengths.member("stocked", &SheetLengths::stocked, "sold in these lengths alone, and cut from them", positive);
  if (lengths.sound("shortest", "longest") && lengths.read().shortest > lengths.read().longest) {
    lengths.wrong("shortest", "is more than longest; exchange them, or state both");
  }
}

}  // namespace ribwright
