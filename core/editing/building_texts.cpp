#include "core/editing/building_texts.h"

#include "core/editing/building_edits.h"
#include "core/editing/roof_text.h"
#include "core/job/job_file_text.h"
#include "core/job/length_style.h"

namespace ribwright {

namespace {

std::string riseText(const Job& job) {
  const Roof& roof = job.building.roof;
  if (roof.slope) return slopeText(*roof.slope, job.units);
  const auto& height = roof.kind == Roof::Kind::Gable ? roof.ridgeHeight : roof.farEave;
  return height ? fineText(*height, styleOf(job)) : std::string();
}

void read(const LengthStyle& style, const char* place, const std::string& text, Length& into,
          std::vector<Fault>& faults) {
  const auto length = parseLength(text, style);
  if (!length) return faults.push_back({place, length.faults().front().message});
  if (length.value() <= Length()) return faults.push_back({place, "must be more than 0"});
  into = length.value();
}

void readRise(const Job& job, const std::string& text, Roof& roof, std::vector<Fault>& faults) {
  const auto rise = parseRise(text, styleOf(job));
  if (!rise) return faults.push_back({"rise", rise.faults().front().message});
  const bool gable = roof.kind == Roof::Kind::Gable;
  roof.slope.reset();
  (gable ? roof.ridgeHeight : roof.farEave).reset();
  if (const Slope* slope = std::get_if<Slope>(&rise.value())) {
    roof.slope = *slope;
  } else {
    (gable ? roof.ridgeHeight : roof.farEave) = std::get<Length>(rise.value());
  }
}

// What another kind of roof does not have.
void forget(Roof& roof, Roof::Kind kind) {
  roof.kind = kind;
  roof.ridgeAt.reset();
  roof.ridgeHeight.reset();
  roof.farEave.reset();
  roof.farSlope.reset();
  if (kind == Roof::Kind::Level || kind == Roof::Kind::None) roof.slope.reset();
}

bool slopes(Roof::Kind kind) { return kind == Roof::Kind::Gable || kind == Roof::Kind::SingleSlope; }

Outcome<Job> fitted(Job job) {
  for (const Displaced& each : displaced(job)) {
    auto put = openingPutWhereItFits(job, each.wall, each.id);
    if (put) job = std::move(put).value();
  }
  return job;
}

}  // namespace

Outcome<BuildingTexts> buildingTexts(const Job& job) {
  const auto size = buildingSize(job);
  if (!size) return size.faults();
  const Roof& roof = job.building.roof;
  const LengthStyle style = styleOf(job);
  return BuildingTexts{fineText(size.value().length, style),
                       fineText(size.value().width, style),
                       roof.kind,
                       roof.ends,
                       roof.kind == Roof::Kind::None ? std::string() : fineText(roof.eave, style),
                       slopes(roof.kind) ? riseText(job) : std::string()};
}

Outcome<Job> buildingFromTexts(const Job& job, const BuildingTexts& typed) {
  const auto stands = buildingTexts(job);
  if (!stands) return stands.faults();
  const BuildingTexts& before = stands.value();
  const LengthStyle style = styleOf(job);
  std::vector<Fault> faults;
  BuildingSize size = buildingSize(job).value();
  Roof roof = job.building.roof;
  if (typed.length != before.length) read(style, "length", typed.length, size.length, faults);
  if (typed.width != before.width) read(style, "width", typed.width, size.width, faults);
  if (typed.roof != before.roof) forget(roof, typed.roof);
  roof.ends = typed.ends;
  if (typed.roof != Roof::Kind::None && typed.eave != before.eave) read(style, "eave", typed.eave, roof.eave, faults);
  const bool risesAnew = typed.rise != before.rise || typed.roof != before.roof;
  if (slopes(typed.roof) && risesAnew) readRise(job, typed.rise, roof, faults);
  if (!faults.empty()) return faults;
  return buildingSetTo(job, size, roof);
}

Outcome<Job> buildingFromTextsAndFitted(const Job& job, const BuildingTexts& typed) {
  auto made = buildingFromTexts(job, typed);
  if (!made) return made.faults();
  return fitted(std::move(made).value());
}

}  // namespace ribwright
