// Table of a sheet profile, in a job and in a file of its own.
#include "core/job/job_tables.h"

namespace ribwright {
namespace {

// A cover narrower than an inch or wider than ten feet is a slip of the pen, and would make sheets without number.
constexpr LengthRange coverRange{Length::inches(1), Length::feet(10), false};
constexpr LengthRange lapRange{Length(), Length::feet(10), false};

void sectionRules(Fields<Profile>& profile) {
  const Profile& read = profile.read();
  if (!profile.sound("cover", "over", "under", "section") || read.section.empty()) return;
  const auto shown = [&](Length length) { return exactText(length, profile.units()); };
  const Length first = read.section.front().x, last = read.section.back().x;
  const std::string lastPlace = itemPath("section", read.section.size() - 1, "x");
  if (first != -read.over) {
    profile.wrong("section[0].x",
                  "is " + shown(first) + "; the starting edge stands at minus over: " + shown(-read.over));
  }
  if (last != read.cover + read.under) {
    profile.wrong(lastPlace, "is " + shown(last) +
                                 "; the leading edge stands at cover + under: " + shown(read.cover + read.under));
  }
  for (std::size_t i = 1; i < read.section.size(); ++i) {
    if (read.section[i].x >= read.section[i - 1].x) continue;
    profile.wrong(itemPath("section", i, "x"),
                  "lies left of the point before; list the points from the starting edge to the leading edge");
  }
}

}  // namespace

void describe(Fields<Profile>& profile) {
  profile.required("id", &Profile::id, "named by its dimensions, as rib-36-1.25-at-12", idText);
  profile.member("name", &Profile::name, "what people read", lineText);
  profile.required("cover", &Profile::cover, "module line to module line", coverRange);
  profile.required("over", &Profile::over, "lip: starting edge past its module line, over the earlier sheet", lapRange);
  profile.required("under", &Profile::under, "leg: leading edge past its module line, under the next sheet", lapRange);
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
  if (lengths.sound("shortest", "longest") && lengths.read().shortest > lengths.read().longest) {
    lengths.wrong("shortest", "is more than longest; exchange them, or state both");
  }
}

}  // namespace ribwright
