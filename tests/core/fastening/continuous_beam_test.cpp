// The three-moment equation against a beam of fine elements, and against what is known of its moments.
#include "core/fastening/continuous_beam.h"

#include <catch2/catch.hpp>

#include "beam_elements.h"

using namespace ribwright;
using namespace ribwright::examples;

namespace {

void agree(const std::vector<BeamSpan>& spans) {
  const std::vector<double> elements = sagsByElements(spans);
  const std::vector<BeamSag> found = beamSags(spans);
  REQUIRE(found.size() == spans.size());
  const double most = *std::max_element(elements.begin(), elements.end());
  for (std::size_t i = 0; i < spans.size(); ++i) {
    INFO("span " << i + 1 << " of " << spans.size());
    // A thousandth of the greatest for spans that hardly sag at all between longer ones.
    CHECK(found[i].down == Approx(elements[i]).epsilon(0.005).margin(0.001 * most));
    CHECK(found[i].at >= 0);
    CHECK(found[i].at <= spans[i].length);
  }
}

}  // namespace

TEST_CASE("sags of unequal continuous spans are those of a beam of fine elements") {
  agree({{6000, .05, 1e11}});
  agree({{6000, .05, 1e11}, {6000, .05, 1e11}});
  agree({{6000, .05, 1e11}, {4500, .05, 1e11}});
  agree({{6096, .05, 1e11}, {7620, .05, 1e11}, {6096, .05, 1e11}});
  agree({{6000, .05, 1e11}, {6000, .05, 1e11}, {6000, .05, 1e11}, {5000, .05, 1e11}, {2500, .05, 1e11}});
}

TEST_CASE("spans of unlike steel bend and weigh each by their own") {
  agree({{6000, .05, 1e11}, {6000, .09, 3e11}, {4000, .05, 1e11}});
}

TEST_CASE("a short span between two long ones bows up and does not sag") {
  const auto sags = beamSags({{8000, .05, 1e11}, {1000, .05, 1e11}, {8000, .05, 1e11}});
  CHECK(sags[1].down == 0);
  CHECK(sags[0].down > 0);
}

// Known of two equal spans: -wL^2/8 over the middle support; of three: -wL^2/10 over both inner ones.
TEST_CASE("moments over the supports of equal spans") {
  const BeamSpan span{10, 2, 7};
  const auto two = supportMoments({span, span});
  CHECK(two[0] == 0);
  CHECK(two[1] == Approx(-25));
  CHECK(two[2] == 0);
  const auto three = supportMoments({span, span, span});
  CHECK(three[1] == Approx(-20));
  CHECK(three[2] == Approx(-20));
}
