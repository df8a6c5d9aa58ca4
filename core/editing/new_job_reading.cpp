#include "core/editing/new_job_reading.h"

#include "core/editing/roof_text.h"
#include "core/units/typed_text.h"

namespace ribwright {

namespace {

// No building is longer; more is a slip of the pen.
constexpr Length longest = Length::millimetres(3'000'000);

class Texts {
 public:
  Texts(const LengthStyle& style, std::vector<Fault>& faults) : style_(style), faults_(faults) {}

  Length length(std::string_view key, const std::string& text, bool more) {
    const auto read = parseLength(text, style_);
    if (!read) return tell(key, read.faults()), Length();
    const bool small = more ? read.value() <= Length() : read.value() < Length();
    if (small) return tell(key, more ? "must be more than 0" : "must not be less than 0"), Length();
    if (read.value() > longest) return tell(key, "is more than 3 km; write a shorter length"), Length();
    return read.value();
  }

  std::vector<Length> bays(std::string_view key, const std::string& text) {
    std::vector<Length> read = lengths(key, text);
    for (const Length bay : read) {
      if (bay <= Length())
        return tell(key, "a bay is more than 0; write 3@20' or 20', 25', 20'"), std::vector<Length>();
      if (bay > longest) return tell(key, "a bay is more than 3 km; write a shorter one"), std::vector<Length>();
    }
    return read;
  }

  std::vector<Length> rising(std::string_view key, const std::string& text) {
    std::vector<Length> read = lengths(key, text);
    for (std::size_t i = 1; i < read.size(); ++i) {
      if (read[i] > read[i - 1]) continue;
      tell(key, "heights rise from the top of concrete; write each girt's own, as " +
                    lengthStringText({Length::feet(3, 6), Length::feet(7, 4)}, style_));
      return {};
    }
    return read;
  }

  std::optional<std::variant<Slope, Length>> rise(std::string_view key, const std::string& text) {
    auto read = parseRise(text, style_);
    if (!read) return tell(key, read.faults()), std::nullopt;
    return std::move(read).value();
  }

 private:
  std::vector<Length> lengths(std::string_view key, const std::string& text) {
    auto read = parseLengthString(text, style_);
    if (!read) return tell(key, read.faults()), std::vector<Length>();
    return std::move(read).value();
  }
  void tell(std::string_view key, std::string message) { faults_.push_back(faultAt(key, std::move(message))); }
  void tell(std::string_view key, const std::vector<Fault>& faults) {
    for (const Fault& fault : faults) tell(key, fault.message);
  }

  LengthStyle style_;
  std::vector<Fault>& faults_;
};

}  // namespace

Fault faultAt(std::string_view key, std::string message) { return {std::string(key), std::move(message)}; }

NewJobRead readTexts(const NewJob& stated, std::vector<Fault>& faults) {
  NewJobRead read;
  read.style = {stated.units, stated.decimalComma ? ',' : '.'};
  Texts texts(read.style, faults);
  const bool building = stated.shape == NewJob::Shape::Rectangle;
  read.length = texts.length("length", stated.length, true);
  if (building) read.width = texts.length("width", stated.width, true);
  read.eave = texts.length("eave", stated.eave, true);
  const bool sloped = stated.roof == Roof::Kind::SingleSlope || stated.roof == Roof::Kind::Gable;
  if (sloped) read.rise = texts.rise("slope", stated.slope);
  read.sideBays = texts.bays("side_bays", stated.sideBays);
  if (building) read.endBays = texts.bays("end_bays", stated.endBays);
  read.sideGirts = texts.rising("side_girts", stated.sideGirts);
  read.endGirtsStated = building && !isBlank(stated.endGirts);
  if (read.endGirtsStated) read.endGirts = texts.rising("end_girts", stated.endGirts);
  read.baseHeight = texts.length("base_height", stated.baseHeight, false);
  if (stated.seenFrom != NewJob::Side::Nowhere) read.seenAt = texts.length("seen_at", stated.seenAt, true);
  return read;
}

}  // namespace ribwright
