#include "core/words/words.h"

#include <catch2/catch.hpp>

#include "core/words/embedded.h"

using namespace ribwright;

TEST_CASE("words put values in, lengths in the reader's units") {
  const Words& words = Words::of("en");
  const WordValues values = {{"width", Length::inches(4, 32)},
                             {"limit", Length::inches(5)},
                             {"mark", std::string("B7")},
                             {"wall", std::string("B")}};
  const std::string feetInches = words.say("finding.narrow-rip.why", values, {});
  CHECK(feetInches.find("4-1/2\"") != std::string::npos);
  CHECK(feetInches.find('{') == std::string::npos);
  const std::string metric = words.say("finding.narrow-rip.why", values, {UnitSystem::Millimetres, ','});
  CHECK(metric.find("114,3 mm") != std::string::npos);
}

TEST_CASE("an unknown id is shown as it is, an unknown value keeps its braces") {
  const Words& words = Words::of("en");
  CHECK(words.say("no.such.words", {}, {}) == "no.such.words");
  CHECK(words.say("finding.narrow-rip.where", {{"wall", std::string("B")}}, {}).find("{mark}") != std::string::npos);
}

TEST_CASE("a language that is not shipped is an error") { CHECK_THROWS_AS(Words::of("tlh"), std::runtime_error); }

TEST_CASE("embedded files are sorted and none is empty") {
  const auto& files = embeddedFiles();
  for (std::size_t i = 0; i < files.size(); ++i) {
    CHECK_FALSE(files[i].text.empty());
    if (i > 0) CHECK(files[i - 1].name < files[i].name);
  }
}

TEST_CASE("a value may be a phrase, said with its own values in the language of the whole") {
  const Phrase lap{"screws.row.end-lap", {{"id", std::string("g2")}}};
  const Phrase corner{"screws.in-corner", {{"kind", Phrase{"screws.kind.sill"}}}};
  const Words& words = Words::of("en");
  CHECK(words.say("screws.end.rows", {{"steel", lap}, {"rows", corner}}, {}) == "end lap on girt g2, corner sill");
  const Phrase list{"", {{"", lap}, {"", std::int64_t(3)}, {"", Length::feet(4)}}};
  CHECK(words.say("screws.sheets", {{"marks", list}}, {}) == "sheets end lap on girt g2, 3, 4' 0\"");
  CHECK(words.say(Phrase{"no.such.words"}, {}) == "no.such.words");
}

TEST_CASE("paper and findings speak English and Spanish") {
  CHECK(Words::languages() == std::vector<std::string>{"en", "es"});
}

TEST_CASE("a finding is said in Spanish through and through, its phrases too") {
  const WordValues values = {{"wall", std::string("B")},
                             {"steel", Phrase{"screws.end.left", {{"id", std::string("g2")}}}},
                             {"sheets", Phrase{"screws.sheets", {{"marks", std::string("B3, B7")}}}}};
  CHECK(Words::of("es").say("finding.screw-off-steel-end.where", values, {}) ==
        "pared B, extremo izquierdo del larguero g2, láminas B3, B7");
}
