#include "core/drawing/bare_page.h"

#include "core/drawing/wall_view.h"
#include "core/job/fingerprint.h"
#include "core/job/length_style.h"

namespace ribwright {

std::vector<BarePage> barePages(std::vector<Sketch> sketches, const std::string& subject, const std::string& figures,
                                std::optional<DrawingScale> scale) {
  std::vector<BarePage> pages;
  for (Sketch& sketch : sketches) pages.push_back({std::move(sketch), subject, scale, 0, figures});
  return pages;
}

namespace {

// A page of all walls is known by the building and by the job's own fingerprint, which its frame says.
std::string titleOf(const PageFrame& frame, const BarePage& page) {
  if (page.wall == BarePage::wholeJob) return frame.words->say("paper.whole-job", {}, {});
  return wallTitle(frame.job->walls[page.wall], *frame.words);
}

}  // namespace

std::vector<Page> framed(const PageFrame& frame, std::vector<BarePage> pages) {
  const Job& job = *frame.job;
  const LengthStyle style = styleOf(job);
  std::vector<std::string> fingerprints;
  for (const Wall& wall : job.walls) fingerprints.push_back(fingerprintOf(job, wall).text());
  std::vector<Page> done;
  const int count = static_cast<int>(pages.size());
  for (BarePage& bare : pages) {
    const int number = static_cast<int>(done.size()) + 1;
    const bool ofAll = bare.wall == BarePage::wholeJob;
    const PageTitle title{
        titleOf(frame, bare), bare.subject, number, count, bare.scale, ofAll ? "" : fingerprints[bare.wall]};
    PageFrame own = frame;
    own.figures = bare.figures;
    drawFrame(bare.sketch, own, title);
    const std::string page = frame.words->say("paper.page", {{"page", number}, {"pages", count}}, style);
    done.push_back({frame.paper, ofAll ? "" : job.walls[bare.wall].letter,
                    title.wall + ", " + title.subject + ", " + page, std::move(bare.sketch.drawing), title.wall});
  }
  return done;
}

}  // namespace ribwright
