#include "core/drawing/bare_page.h"

#include "core/drawing/wall_view.h"
#include "core/job/fingerprint.h"

namespace ribwright {

std::vector<BarePage> barePages(std::vector<Sketch> sketches, const std::string& subject, const std::string& figures,
                                std::optional<DrawingScale> scale) {
  std::vector<BarePage> pages;
  for (Sketch& sketch : sketches) pages.push_back({std::move(sketch), subject, scale, 0, figures});
  return pages;
}

std::vector<Page> framed(const PageFrame& frame, std::vector<BarePage> pages) {
  const Job& job = *frame.job;
  const LengthStyle style{job.units, job.decimalSign};
  std::vector<std::string> fingerprints;
  for (const Wall& wall : job.walls) fingerprints.push_back(fingerprintOf(job, wall).text());
  std::vector<Page> done;
  const int count = static_cast<int>(pages.size());
  for (BarePage& bare : pages) {
    const int number = static_cast<int>(done.size()) + 1;
    const Wall& wall = job.walls[bare.wall];
    const PageTitle title{wallTitle(wall, *frame.words), bare.subject, number, count, bare.scale,
                          fingerprints[bare.wall]};
    PageFrame own = frame;
    own.figures = bare.figures;
    drawFrame(bare.sketch, own, title);
    const std::string page = frame.words->say("paper.page", {{"page", number}, {"pages", count}}, style);
    done.push_back({frame.paper, wall.letter, title.wall + ", " + title.subject + ", " + page,
                    std::move(bare.sketch.drawing), title.wall});
  }
  return done;
}

}  // namespace ribwright
