#include "tests/fuzz/stated_run.h"

#include <algorithm>

namespace ribwright::fuzz {
namespace {

Nm withinCover(Nm offset, Nm cover) {
  const Nm rest = offset % cover;
  return rest < 0 ? rest + cover : rest;
}

const Start& startOf(const Wall& wall, const StatedRun& run) {
  const Band& band = wall.bands[static_cast<std::size_t>(run.band)];
  return band.start ? *band.start : wall.start;
}

// The trade's rules: lip and leg both end under the jamb trim, beyond the cut. At the jamb nearer the start the later
// sheet starts on the cut line; at the far jamb the earlier sheet ends on it.
std::optional<Nm> seamAtJamb(const Start& start, const std::vector<StatedCut>& cuts, const StatedRun& run,
                             const Profile& profile) {
  const auto cut = std::find_if(cuts.begin(), cuts.end(),
                                [&](const StatedCut& c) { return !c.penetration && c.id == start.opening; });
  if (cut == cuts.end()) return std::nullopt;
  const Nm edge = run.along.t(start.side == Start::Side::Left ? cut->left : cut->right);
  const bool nearStart = (start.side == Start::Side::Left) == (run.along.hand == Hand::LeftToRight);
  const Nm line = nearStart ? edge + nm(profile.over) : edge - nm(profile.under);
  return withinCover(line, nm(profile.cover));
}

}  // namespace

const Profile* profileOf(const Job& job, const Wall& wall, int band) {
  const std::string& id = wall.bands[static_cast<std::size_t>(band)].profile;
  const auto found =
      std::find_if(job.profiles.begin(), job.profiles.end(), [&](const Profile& p) { return p.id == id; });
  return found == job.profiles.end() ? nullptr : &*found;
}

std::vector<StatedRun> statedRuns(const Wall& wall, const StatedFace& face, Hand hand) {
  std::vector<Nm> limits{0};
  for (const Length joint : wall.expansionJoints) limits.push_back(nm(joint));
  limits.push_back(face.width);
  std::vector<StatedRun> runs;
  for (std::size_t i = 0; i + 1 < limits.size(); ++i) {
    const std::size_t at = hand == Hand::LeftToRight ? i : limits.size() - 2 - i;
    StatedRun run;
    run.along = {hand, limits[at], limits[at + 1]};
    const Nm left = at == 0 ? nm(wall.reachLeft) : 0;
    const Nm right = at + 2 == limits.size() ? nm(wall.reachRight) : 0;
    run.reachAtStart = hand == Hand::LeftToRight ? left : right;
    run.reachAtEnd = hand == Hand::LeftToRight ? right : left;
    for (std::size_t band = 0; band < wall.bands.size(); ++band) {
      run.band = static_cast<int>(band);
      run.floor = band > 0 ? std::optional(nm(*wall.bands[band].from + wall.bands[band].gap)) : std::nullopt;
      run.ceiling = band + 1 < wall.bands.size() ? std::optional(nm(*wall.bands[band + 1].from)) : std::nullopt;
      runs.push_back(run);
    }
  }
  return runs;
}

std::optional<Nm> statedOffset(const Job& job, const Wall& wall, const StatedFace& face,
                               const std::vector<StatedCut>& cuts, const StatedRun& run) {
  const Start& start = startOf(wall, run);
  const Profile& profile = *profileOf(job, wall, run.band);
  const Nm cover = nm(profile.cover), width = run.along.width();
  switch (start.rule) {
    case Start::Rule::Flush:
      return nm(profile.over);
    case Start::Rule::ModuleLine:
      return 0;
    case Start::Rule::Typed:
      return nm(start.offset);
    case Start::Rule::EqualRips: {
      if (width < cover) return std::nullopt;
      const Nm rips = width - (width / cover - 1) * cover;
      return nm(half(Length::nanometres(rips)));
    }
    case Start::Rule::SeamOnRidge:
    case Start::Rule::SheetOnRidge: {
      const bool here = face.ridge && run.along.left < *face.ridge && *face.ridge < run.along.right;
      if (!here) return nm(profile.over);  // a run without the ridge starts flush
      return withinCover(run.along.t(*face.ridge) - (start.rule == Start::Rule::SheetOnRidge ? cover / 2 : 0), cover);
    }
    case Start::Rule::SeamAtJamb:
      return seamAtJamb(start, cuts, run, profile);
    case Start::Rule::BestOfSearch:
      break;
  }
  return std::nullopt;
}

bool isCandidate(const Job& job, const Wall& wall, const StatedFace& face, const std::vector<StatedCut>& cuts,
                 const StatedRun& run, Nm offset) {
  const Profile& profile = *profileOf(job, wall, run.band);
  const Nm cover = nm(profile.cover);
  if (offset % nm(Length::inches(0, 8)) == 0 || offset % nm(Length::millimetres(5)) == 0) return true;
  std::vector<Nm> places{0, run.along.width()};
  if (face.ridge) places.push_back(run.along.t(*face.ridge));
  const Nm seam = nm(job.settings.seamFromJamb);
  for (const StatedCut& cut : cuts) {
    for (const Nm edge : {run.along.t(cut.left), run.along.t(cut.right)}) {
      for (const Nm by : {Nm(0), seam, -seam, nm(profile.over), -nm(profile.under)}) places.push_back(edge + by);
    }
  }
  for (const Opening& opening : wall.openings) {
    const Nm jamb = statedJamb(wall, face.width, opening);
    for (const Nm edge : {run.along.t(jamb), run.along.t(jamb + nm(opening.width))}) {
      for (const Nm by : {Nm(0), seam, -seam}) places.push_back(edge + by);
    }
  }
  if (offset == nm(profile.over)) return true;
  return std::any_of(places.begin(), places.end(), [&](Nm place) { return withinCover(place, cover) == offset; });
}

// The first module is the last one whose metal still reaches the start.
ModuleWalk::ModuleWalk(const Job& job, const Wall& wall, const StatedRun& run, Nm offset)
    : job_(job), wall_(wall), run_(run), profile_(*profileOf(job, wall, run.band)) {
  line_ = offset <= nm(profile_.over) ? offset : offset - nm(profile_.cover);
  reached_ = 0;
  leading_ = -nm(profile_.metalWidth());
}

StatedModule ModuleWalk::module(int number) const {
  StatedModule module;
  module.line = line_;
  module.next = line_ + nm(profile_.cover);
  Nm starting = module.line - nm(profile_.over), leading = module.next + nm(profile_.under);
  const std::string mark = wall_.letter + std::to_string(number);
  for (const HungSheet& hung : job_.facts.hung) {
    if (hung.mark != mark) continue;
    module.hung = true;
    leading = run_.along.t(nm(hung.leadingEdge));
    starting = leading - nm(profile_.metalWidth());
    module.next = leading - nm(profile_.under);
    module.line = module.next - nm(profile_.cover);
  }
  module.starting = std::max(starting, -run_.reachAtStart);
  module.leading = std::min(leading, run_.along.width() + run_.reachAtEnd);
  module.startRipped = module.starting > starting;
  module.leadRipped = module.leading < leading;
  return module;
}

bool ModuleWalk::goesOn(int number) const {
  const Nm width = run_.along.width();
  if (reached_ < width) return true;
  const StatedModule next = module(number);
  return next.hung && next.next + nm(profile_.under) > leading_ && next.starting < width + run_.reachAtEnd;
}

void ModuleWalk::take(const StatedModule& module) {
  line_ = module.next;
  reached_ = module.leading;
  leading_ = module.next + nm(profile_.under);
}

}  // namespace ribwright::fuzz
