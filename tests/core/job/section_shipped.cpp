// What each shipped profile claims by its id and name holds of its cross-section.
#include <catch2/catch.hpp>

#include <algorithm>
#include <charconv>
#include <cstdlib>
#include <string>
#include <vector>

#include "core/job/job_file.h"
#include "core/job/section.h"
#include "core/words/embedded.h"

namespace ribwright {
namespace {

// rib-36-1.25-at-12-leg-1.875: a shape, the cover, the depth and the pitch; inches, or millimetres where the cover is
// over 100.
struct Claim {
  std::string shape;
  Length cover, depth, pitch, pitchSlack;
  std::optional<Length> leg;
};

double number(const std::string& text) {
  double value = 0;
  const auto read = std::from_chars(text.data(), text.data() + text.size(), value);
  REQUIRE((read.ec == std::errc() && read.ptr == text.data() + text.size()));
  return value;
}

std::vector<std::string> dashed(const std::string& id) {
  std::vector<std::string> parts(1);
  for (const char c : id) {
    if (c == '-') {
      parts.emplace_back();
    } else {
      parts.back() += c;
    }
  }
  return parts;
}

Claim claimOf(const std::string& id) {
  const std::vector<std::string> parts = dashed(id);
  REQUIRE(parts.size() >= 5);
  REQUIRE(parts[3] == "at");
  const double unit = number(parts[1]) > 100 ? 1e6 : 25.4e6;
  const auto length = [&](const std::string& text) {
    return Length::nanometres(static_cast<std::int64_t>(number(text) * unit + 0.5));
  };
  Claim claim{parts[0], length(parts[1]), length(parts[2]), length(parts[4]), Length(), std::nullopt};
  // A pitch with decimals that do not end (2-2/3 in) is claimed to half its last place.
  const auto point = parts[4].find('.');
  if (point != std::string::npos && parts[4].size() - point > 3) claim.pitchSlack = scaled(length("1"), 1, 2000);
  if (parts.size() == 7) {
    REQUIRE(parts[5] == "leg");
    claim.leg = length(parts[6]);
  }
  return claim;
}

bool isFromSet(const std::string& text, const std::vector<std::string>& words) {
  return std::find(words.begin(), words.end(), text) != words.end();
}

// y above x of a section whose sides nowhere stand upright, rounded to the nanometre.
Length heightAt(const std::vector<SectionPoint>& section, Length x) {
  for (std::size_t i = 1; i < section.size(); ++i) {
    const SectionPoint &a = section[i - 1], &b = section[i];
    if (x < a.x || b.x < x) continue;
    return a.y + scaled(b.y - a.y, (x - a.x).nanometres(), (b.x - a.x).nanometres());
  }
  FAIL("x is not on the sheet");
  return Length();
}

Length apart(Length a, Length b) { return a < b ? b - a : a - b; }

std::vector<Rib> mainRibs(const Section& section) {
  std::vector<Rib> ribs;
  for (const Rib& rib : section.ribs) {
    if (rib.height == section.depth) ribs.push_back(rib);
  }
  return ribs;
}

// Middles of crowns; a crown cut by the metal's edge has its middle elsewhere and is left out.
std::vector<Length> crownMiddles(const Section& section, const Profile& profile) {
  std::vector<Length> middles;
  for (const Flat& crown : section.crownFlats) {
    if (crown.from == -profile.over || crown.to == profile.cover + profile.under) continue;
    middles.push_back(half(crown.from + crown.to));
  }
  return middles;
}

TEST_CASE("Every shipped profile is read, and its file is what would be written of it") {
  std::size_t files = 0;
  for (const EmbeddedFile& file : embeddedFiles()) {
    if (file.name.substr(0, 9) != "profiles/") continue;
    ++files;
    INFO(file.name);
    const auto read = readProfile(file.text, file.name);
    REQUIRE(read.ok());
    CHECK("profiles/" + read.value().id + ".json" == file.name);
    const UnitSystem units =
        claimOf(read.value().id).cover > Length::inches(100) ? UnitSystem::Millimetres : UnitSystem::FeetInches;
    const auto again = readProfile(writeProfile(read.value(), units), file.name);
    REQUIRE(again.ok());
    CHECK(again.value() == read.value());
  }
  CHECK(files >= 10);
  CHECK(files == shippedProfiles().size());
}

TEST_CASE("Shipped profiles are as wide, as deep and as the pitch that they are named by") {
  for (const Profile& profile : shippedProfiles()) {
    INFO(profile.id);
    const Claim claim = claimOf(profile.id);
    const Section section = sectionOf(profile);
    CHECK(isFromSet(claim.shape, {"rib", "trapezoid", "corrugated"}));
    CHECK(profile.cover == claim.cover);
    CHECK(section.depth == claim.depth);
    if (claim.leg) CHECK(profile.under == *claim.leg);

    const std::vector<Length> crowns = crownMiddles(section, profile);
    REQUIRE(crowns.size() >= 2);
    const auto pitches = static_cast<std::int64_t>(crowns.size()) - 1;
    const Length spread = crowns.back() - crowns.front();
    CHECK(apart(spread, claim.pitch * pitches) <= claim.pitchSlack * pitches);
    for (std::size_t i = 1; i < crowns.size(); ++i) {
      // A thousandth of a millimetre is what coordinates are given to.
      CHECK(apart(crowns[i] - crowns[i - 1], claim.pitch) <= claim.pitchSlack + Length::nanometres(2000));
    }
    const Length wholePitches = roundTo(profile.cover, claim.pitch);
    CHECK(apart(profile.cover, wholePitches) <= claim.pitchSlack * wholeTimes(wholePitches, claim.pitch));
  }
}

TEST_CASE("Shipped sections run from lip to leg on the supports, x never falling, in whole 1/64 in or 1/1000 mm") {
  for (const Profile& profile : shippedProfiles()) {
    INFO(profile.id);
    REQUIRE(profile.section.size() >= 2);
    CHECK(profile.section.front().x == -profile.over);
    CHECK(profile.section.back().x == profile.cover + profile.under);
    CHECK(profile.cover > profile.over + profile.under);
    CHECK(sectionOf(profile).metalWidth == profile.section.back().x - profile.section.front().x);
    for (std::size_t i = 0; i < profile.section.size(); ++i) {
      const SectionPoint& point = profile.section[i];
      INFO("point " << i);
      if (i > 0) CHECK(point.x > profile.section[i - 1].x);
      CHECK(point.y >= Length());
      for (const Length coordinate : {point.x, point.y}) {
        CHECK((rest(coordinate, Length::sixtyFourths(1)) == Length() ||
               rest(coordinate, Length::nanometres(1000)) == Length()));
      }
    }
    CHECK(bends(profile.section) == profile.section);  // no vertex that says nothing
  }
}

// The lip lies over the leg of the sheet before it: moved by one cover, both are one shape as far as both reach.
TEST_CASE("On the lap of two shipped sheets the lip's shape nests over the leg's within the thickness") {
  for (const Profile& profile : shippedProfiles()) {
    INFO(profile.id);
    std::vector<Length> places{-profile.over, profile.under};
    for (const SectionPoint& point : profile.section) {
      for (const Length x : {point.x, point.x - profile.cover}) {
        if (x >= -profile.over && x <= profile.under) places.push_back(x);
      }
    }
    Length highest;
    for (const Length x : places) {
      const Length lip = heightAt(profile.section, x), leg = heightAt(profile.section, x + profile.cover);
      CHECK(apart(lip, leg) <= Length::nanometres(1000));  // and so far within any thickness
      highest = std::max(highest, leg);
    }
    // A lap closes only over a rib: a crown that both sheets share.
    CHECK(highest == sectionOf(profile).depth);
    CHECK(profile.thickness > Length::nanometres(1000));
  }
}

TEST_CASE("Between the shipped sheet's ribs lie flats that bear on the supports") {
  for (const Profile& profile : shippedProfiles()) {
    INFO(profile.id);
    const Section section = sectionOf(profile);
    const std::size_t ribs = mainRibs(section).size();
    CHECK(ribs >= 2);
    CHECK(section.crownFlats.size() == ribs);
    CHECK(section.panFlats.size() + 1 >= ribs);
    CHECK(section.developedWidth > section.metalWidth.inMillimetres());
    CHECK(section.developedWidth < 2 * section.metalWidth.inMillimetres());
  }
}

TEST_CASE("Which shipped sheets may be turned end for end") {
  const std::vector<std::string> turnable = {"corrugated-24-0.5-at-2.667", "rib-36-0.75-at-9",
                                             "trapezoid-1000-20-at-125", "trapezoid-1100-18-at-137.5",
                                             "trapezoid-36-1.5-at-7.2"};
  for (const Profile& profile : shippedProfiles()) {
    INFO(profile.id);
    CHECK(sectionOf(profile).turnable == isFromSet(profile.id, turnable));
  }
}

// The trade's rules: cover 36 in, lip 1-1/2, leg 3/4, increment 1/2 in.
TEST_CASE("The frozen example's sheet ships") {
  const auto& profiles = shippedProfiles();
  const auto profile =
      std::find_if(profiles.begin(), profiles.end(), [](const Profile& p) { return p.id == "rib-36-1.25-at-12"; });
  REQUIRE(profile != profiles.end());
  CHECK(profile->over == Length::inches(1, 32));
  CHECK(profile->under == Length::inches(0, 48));
  CHECK(profile->lengths.increment == Length::inches(0, 32));
  CHECK(profile->metalWidth() == Length::inches(38, 16));
}

}  // namespace
}  // namespace ribwright
