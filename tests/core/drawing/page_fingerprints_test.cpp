// Every page names what it was printed from: the fingerprints of the job and of its own wall.
#include <algorithm>
#include <catch2/catch.hpp>

#include "core/drawing/elevation.h"
#include "core/drawing/page_frame.h"
#include "core/job/fingerprint.h"
#include "tests/core/drawing/drawn_jobs.h"
#include "tests/core/drawing/page_faults.h"

using namespace ribwright;

namespace {

const Wall& wallOf(const Job& job, const Page& page) {
  return *std::find_if(job.walls.begin(), job.walls.end(), [&](const Wall& wall) { return wall.letter == page.wall; });
}

// A fingerprint stands whole on one line, or broken after its third group on two lines one under the other.
bool namesIt(const Page& page, const Fingerprint& fingerprint) {
  const std::string whole = fingerprint.text();
  if (timesSaid(page, whole) == 1) return true;
  std::string first = whole.substr(0, whole.find('.') + 1);
  for (std::size_t group = 0; group < 3; ++group) first += fingerprint.groups[group] + ".";
  const std::vector<Text> texts = textsOf(page);
  for (std::size_t i = 1; i < texts.size(); ++i) {
    const Text &above = texts[i - 1], &below = texts[i];
    if (above.words + below.words != whole || above.words != first) continue;
    return above.at.x == below.at.x && above.at.y < below.at.y && below.at.y - above.at.y < 6;
  }
  return false;
}

// A job cell or wall cell as narrow as it gets: Letter in millimetres, and letters as wide as they get.
Page titleBlock(const Job& job, const std::string& fingerprint) {
  Sketch sketch;
  drawFrame(
      sketch, {PaperSize::Letter, &job, &Words::of("en"), "job" + fingerprint},
      {"Wall A, the long wall toward the road and the old silo beyond it", "elevation", 1, 1, {}, "A" + fingerprint});
  return {PaperSize::Letter, "A", "title block", std::move(sketch.drawing), "A"};
}

}  // namespace

TEST_CASE("each page names its job's fingerprint and its own wall's") {
  for (const DrawnJob& drawn : drawnJobs()) {
    for (const PaperSize paper : {PaperSize::Letter, PaperSize::A4, PaperSize::A3}) {
      for (const Page& page : elevationPages(drawn.job, drawn.plan, paper)) {
        INFO(drawn.name << ", " << nameOf(paper) << ": " << page.title);
        CHECK(namesIt(page, fingerprintOf(drawn.job)));
        CHECK(namesIt(page, fingerprintOf(drawn.job, wallOf(drawn.job, page))));
      }
    }
  }
}

TEST_CASE("fingerprints that are too wide for their cell are broken, never shortened") {
  Job job = metricGable();
  job.name = "A hall for hay and machines behind the farm of the old mill, second part of three, with a lean-to";
  for (const char* groups : {".mmm.mmm.mmm.mmm.mmm.mmm", ".111.111.111.111.111.111", ".k3f.9bq.77a.0c4.e2d.55b"}) {
    const Page page = titleBlock(job, groups);
    for (const std::string of : {"job", "A"}) {
      INFO(of << groups);
      CHECK(namesIt(page, readFingerprint(of + groups).value()));
    }
    CHECK(pageFaults(page) == std::vector<std::string>{});
  }
}

TEST_CASE("a page's fingerprints are those of the job as it is drawn, and change with its openings") {
  DrawnJob front = planned("front", busyFront());
  const std::string before = fingerprintOf(front.job).text();
  front.job.walls[0].openings.pop_back();
  front.plan = plan(front.job);
  const auto pages = elevationPages(front.job, front.plan, PaperSize::A3);
  CHECK(timesSaid(pages[0], before) == 0);
  CHECK(namesIt(pages[0], fingerprintOf(front.job)));
}

TEST_CASE("particulars that are longer than their cell go on in a second line, so that the date is read whole") {
  Job job = metricGable();
  job.name = "Hall";
  job.number = "26-022";
  job.revision = "B";
  job.date = "2026-03-02";
  Sketch sketch;
  drawFrame(sketch, {PaperSize::Letter, &job, &Words::of("es"), fingerprintOf(job).text()}, {"A", "", 1, 1, {}, ""});
  std::string all;
  for (const Text& text : textsOf({PaperSize::Letter, "A", "", sketch.drawing, "A"})) all += text.words + "\n";
  CHECK(all.find("2026-03-02\n") != std::string::npos);
}
