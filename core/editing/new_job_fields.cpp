#include "core/editing/new_job_fields.h"

#include "core/editing/new_job_file.h"
#include "core/editing/roof_text.h"
#include "core/units/length_text.h"

namespace ribwright {

namespace {

using Holds = NewJobText::Holds;

constexpr NewJobText texts[] = {
    {"name", "what the job is called", &NewJob::name, Holds::Name},
    {"number", "job number", &NewJob::number, Holds::Name},
    {"length", "along wall A, or of a free wall", &NewJob::length, Holds::Length},
    {"width", "of a rectangle", &NewJob::width, Holds::Length},
    {"eave", "height of the steel line at the eave", &NewJob::eave, Holds::Length},
    {"slope", "slope, or height of the ridge or of the higher side", &NewJob::slope, Holds::Slope},
    {"side_bays", "bays of the side walls", &NewJob::sideBays, Holds::Lengths},
    {"end_bays", "bays of the end walls", &NewJob::endBays, Holds::Lengths},
    {"side_girts", "heights of the side walls' girts", &NewJob::sideGirts, Holds::Lengths},
    {"end_girts", "heights of the end walls' girts; blank: as the sides, and on upward", &NewJob::endGirts,
     Holds::Lengths},
    {"member", "id of the girts' cross-section", &NewJob::member, Holds::Name},
    {"base_height", "drop, ledge, shelf or wall, as the base's form has it", &NewJob::baseHeight, Holds::Length},
    {"profile", "id of a shipped profile", &NewJob::profile, Holds::Name},
    {"pattern", "id of a shipped pattern", &NewJob::pattern, Holds::Name},
    {"colour", "colour as ordered", &NewJob::colour, Holds::Name},
    {"seen_at", "distance of what passes by", &NewJob::seenAt, Holds::Length},
};

std::string lengthAnew(const std::string& text, const LengthStyle& from, const LengthStyle& to) {
  const auto length = parseLength(text, from);
  return length ? fineText(length.value(), to) : text;
}

std::string lengthsAnew(const std::string& text, const LengthStyle& from, const LengthStyle& to) {
  const auto lengths = parseLengthString(text, from);
  return lengths ? lengthStringText(lengths.value(), to) : text;
}

}  // namespace

std::span<const NewJobText> newJobTexts() { return texts; }

NewJob inUnits(const NewJob& stated, UnitSystem units) {
  NewJob made = stated;
  made.units = units;
  const char sign = stated.decimalComma ? ',' : '.';
  const LengthStyle from{stated.units, sign}, to{units, sign};
  for (const NewJobText& field : newJobTexts()) {
    std::string& text = made.*field.text;
    if (field.holds == Holds::Length || (field.holds == Holds::Slope && !isSlopeText(text)))
      text = lengthAnew(text, from, to);
    if (field.holds == Holds::Lengths) text = lengthsAnew(text, from, to);
  }
  return made;
}

std::string equalBaysText(std::string_view width, const LengthStyle& style) {
  const auto read = parseLength(width, style);
  const Length mark = tapeMark(style.units);
  if (!read || read.value() <= mark || read.value() > Length::feet(100'000)) return {};
  const bool feet = style.units == UnitSystem::FeetInches;
  const Length longest = feet ? Length::feet(25) : Length::millimetres(7500);
  const std::int64_t count = -wholeTimes(-read.value(), longest);
  const Length bay = mark * wholeTimes(read.value(), mark * count);
  std::vector<Length> bays(static_cast<std::size_t>(count), bay);
  bays.back() = read.value() - bay * (count - 1);
  return lengthStringText(bays, style);
}

std::string usualBaseHeight(Base::Form form, UnitSystem units) {
  const bool feet = units == UnitSystem::FeetInches;
  switch (form) {
    case Base::Form::Overhang:
      return feet ? "1-3/4\"" : "45";
    case Base::Form::Notch:
      return feet ? "1-1/2\"" : "40";
    case Base::Form::BaseTrim:
      return feet ? "1\"" : "25";
    case Base::Form::OnWall:
      return feet ? "3'" : "900";
  }
  return {};
}

NewJob inOtherUnits(const NewJob& stated, UnitSystem units, bool decimalComma) {
  const NewJob was = shippedNewJob(stated.units), is = shippedNewJob(units);
  NewJob next = units == stated.units ? stated : inUnits(stated, units);
  const auto renew = [&](auto NewJob::*field) {
    if (units != stated.units && stated.*field == was.*field) next.*field = is.*field;
  };
  for (const NewJobText& text : newJobTexts()) {
    if (text.holds != NewJobText::Holds::Name) renew(text.text);
  }
  renew(&NewJob::member);
  if (stated.profile == was.profile && stated.pattern == was.pattern) renew(&NewJob::profile), renew(&NewJob::pattern);
  next.decimalComma = decimalComma;
  const char sign = decimalComma ? ',' : '.';
  for (const NewJobText& text : newJobTexts()) {
    if (text.holds != NewJobText::Holds::Lengths) continue;
    const bool shipped = next.*text.text == is.*text.text;  // with a decimal point
    const char had = !shipped && stated.decimalComma ? ',' : '.';
    const auto lengths = parseLengthString(next.*text.text, {units, had});
    if (had != sign && lengths && !lengths.value().empty())
      next.*text.text = lengthStringText(lengths.value(), {units, sign});
  }
  return next;
}

}  // namespace ribwright
