#include "core/drawing/particulars.h"

#include <catch2/catch.hpp>
#include <filesystem>

#include "core/job/job_file.h"

using namespace ribwright;

namespace {

struct Sample {
  std::string name;
  Job job;
  Plan plan;
  LengthStyle style() const { return {job.units, job.decimalSign}; }
};

Sample sample(const std::string& name) {
  Sample read{name, loadJob(RIBWRIGHT_ROOT "/sample-jobs/" + name + ".json").value(), {}};
  read.plan = plan(read.job);
  return read;
}

std::vector<Sample> samples() {
  std::vector<Sample> all;
  for (const auto& entry : std::filesystem::directory_iterator(RIBWRIGHT_ROOT "/sample-jobs")) {
    if (entry.path().extension() == ".json") all.push_back(sample(entry.path().stem().string()));
  }
  return all;
}

std::vector<Part> partsOf(const Sample& sample, std::size_t index) {
  const Wall& wall = sample.job.walls[index];
  const WallPlan& planned = *sample.plan.walls[index];
  std::vector<Part> parts{{Part::Kind::Face, wall.letter, ""}};
  const auto add = [&](Part::Kind kind, const std::string& id) { parts.push_back({kind, wall.letter, id}); };
  for (const Piece& piece : planned.layout.pieces) add(Part::Kind::Piece, piece.mark);
  for (const Opening& opening : wall.openings) add(Part::Kind::Opening, opening.id);
  for (const Penetration& hole : wall.penetrations) add(Part::Kind::Penetration, hole.id);
  for (std::size_t i = 0; i < wall.girts.size(); ++i) add(Part::Kind::Girt, "#" + std::to_string(i + 1));
  const std::size_t columns = wall.columns.bays.empty() ? 0 : wall.columns.bays.size() + 1;
  for (std::size_t i = 1; i <= columns; ++i) add(Part::Kind::Column, std::to_string(i));
  for (std::size_t i = 0; i < planned.holes.holes.size(); i += 37) add(Part::Kind::Screw, std::to_string(i));
  for (const DrillBatch& batch : planned.batches) add(Part::Kind::Batch, batch.id);
  return parts;
}

std::string valueOf(const Sample& sample, const Part& part, const std::string& name) {
  for (const Particular& each : particularsOf(sample.job, sample.plan, part, Words::of("en"), sample.style())) {
    if (each.name == name) return each.value;
  }
  return "(none)";
}

}  // namespace

TEST_CASE("whatever stands in a sample job says what it is, in whole words") {
  int looked = 0;
  for (const Sample& sample : samples()) {
    for (std::size_t wall = 0; wall < sample.job.walls.size(); ++wall) {
      for (const Part& part : partsOf(sample, wall)) {
        INFO(sample.name << " " << part.wall << " " << int(part.kind) << " " << part.id);
        const auto all = particularsOf(sample.job, sample.plan, part, Words::of("en"), sample.style());
        REQUIRE(all.size() >= (part.kind == Part::Kind::Face ? 1u : 4u));
        for (const Particular& each : all) {
          for (const std::string& text : {each.name, each.value}) {
            CHECK_FALSE(text.empty());
            CHECK(text.find_first_of("{}") == std::string::npos);
            CHECK(text.find("part.") == std::string::npos);
            CHECK(text.find("paper.") == std::string::npos);
            CHECK(text.find("screws.") == std::string::npos);
          }
        }
        CHECK(lineOf(sample.job, sample.plan, part, Words::of("en"), sample.style()).find(": ") != std::string::npos);
        ++looked;
      }
    }
  }
  CHECK(looked > 800);
}

TEST_CASE("what a job has not says nothing") {
  const Sample sample = ::sample("gable-workshop");
  for (const Part& part : std::vector<Part>{{Part::Kind::Piece, "A", "A99"},
                                            {Part::Kind::Piece, "Z", "A1"},
                                            {Part::Kind::Girt, "A", "#99"},
                                            {Part::Kind::Girt, "A", "#0"},
                                            {Part::Kind::Column, "A", "0"},
                                            {Part::Kind::Column, "A", "99"},
                                            {Part::Kind::Column, "A", "9999999999999999999999"},
                                            {Part::Kind::Screw, "A", "-1"},
                                            {Part::Kind::Screw, "A", "99999999"},
                                            {Part::Kind::Opening, "A", ""}}) {
    INFO(int(part.kind) << " " << part.id);
    CHECK(particularsOf(sample.job, sample.plan, part, Words::of("en"), sample.style()).empty());
    CHECK(lineOf(sample.job, sample.plan, part, Words::of("en"), sample.style()).empty());
  }
}

// The gable end of the workshop: 40 ft wide, eaves at 12 ft, ridge at 18 ft 8 in, hung from right to left in 3-ft
// covers.
TEST_CASE("a sheet of a gable end gives its figures as a tape reads them") {
  const Sample sample = ::sample("gable-workshop");
  const Part first{Part::Kind::Piece, "B", "B1"};
  CHECK(valueOf(sample, first, "Kind") == "rake");
  CHECK(valueOf(sample, first, "Width of the metal") == "3' 2-1/4\"");
  CHECK(valueOf(sample, first, "Blank") == "13' 2\"");
  CHECK(valueOf(sample, first, "Right edge, from the corner") == "40' 0\"");
  CHECK(valueOf(sample, first, "Starting edge") == "factory edge");
  CHECK(valueOf(sample, first, "Lies over") == "(none)");
  CHECK(valueOf(sample, first, "Lies under") == "B2 by 2-1/4\"");
  CHECK(valueOf(sample, {Part::Kind::Piece, "B", "B2"}, "Lies over") == "B1 by 2-1/4\"");
  CHECK(valueOf(sample, {Part::Kind::Piece, "B", "B4.1"}, "Kind") == "below");
}

TEST_CASE("a wall says which way it hangs, and why") {
  const Sample sample = ::sample("gable-workshop");
  const Part wall{Part::Kind::Face, "B", ""};
  CHECK(titleOf(sample.job, wall, Words::of("en")) == "Wall B, right end");
  CHECK(valueOf(sample, wall, "Width") == "40' 0\"");
  CHECK(valueOf(sample, wall, "Sheets") == "14");
  CHECK(valueOf(sample, wall, "Hangs") == "right to left, for the sight point");
  CHECK(valueOf(sample, wall, "Steel line, highest") == "18' 8\"");
}

TEST_CASE("an opening is measured from both corners and from the nearest column") {
  const Sample sample = ::sample("gable-workshop");
  const Part window{Part::Kind::Opening, "B", "W2"};
  CHECK(valueOf(sample, window, "Kind") == "window");
  CHECK(valueOf(sample, window, "Width × height") == "4' 0\" × 3' 0\"");
  CHECK(valueOf(sample, window, "From the left corner") == "8' 0\"");
  CHECK(valueOf(sample, window, "From the right corner") == "28' 0\"");
}

TEST_CASE("metric particulars carry their unit") {
  const Sample sample = ::sample("metric-hall");
  const std::string& letter = sample.job.walls[0].letter;
  const std::string width = valueOf(sample, {Part::Kind::Face, letter, ""}, "Width");
  CHECK(width.ends_with(" mm"));
}

TEST_CASE("findings point at the sheets, openings and girts that they name") {
  int sheets = 0, openings = 0, girts = 0;
  for (const Sample& sample : samples()) {
    for (const Finding& finding : sample.plan.findings) {
      const auto part = partOf(sample.job, sample.plan, finding);
      if (!part) continue;
      INFO(sample.name << " " << finding.key());
      CHECK(part->wall == finding.wall);
      CHECK(finding.mark.starts_with(part->id));
      CHECK_FALSE(particularsOf(sample.job, sample.plan, *part, Words::of("en"), sample.style()).empty());
      sheets += part->kind == Part::Kind::Piece;
      openings += part->kind == Part::Kind::Opening;
      girts += part->kind == Part::Kind::Girt;
    }
  }
  CHECK(sheets > 0);
  CHECK(openings > 0);
  CHECK(girts > 0);
}

TEST_CASE("a batch that is held says why and what to do, and no ordinate to drill at") {
  int held = 0, cleared = 0;
  for (const Sample& each : samples()) {
    for (const auto& wall : each.plan.walls) {
      for (const DrillBatch& batch : wall->batches) {
        const Part part{Part::Kind::Batch, wall->layout.letter, batch.id};
        std::string all;
        for (const Particular& one : particularsOf(each.job, each.plan, part, Words::of("en"), each.style()))
          all += one.name + ": " + one.value + "\n";
        INFO(all);
        CHECK((all.find("from the lower end") == std::string::npos) == !batch.isCleared());
        CHECK((all.find("Held because: ") == std::string::npos) == batch.isCleared());
        CHECK((all.find("What to do: ") == std::string::npos) == batch.isCleared());
        ++(batch.isCleared() ? cleared : held);
      }
    }
  }
  CHECK(held > 0);
  CHECK(cleared > 0);
}
