#include "core/editing/field_setter.h"

#include <algorithm>

#include "core/editing/field_path.h"
#include "core/editing/field_text.h"
#include "core/job/job_file_limits.h"
#include "core/job/job_file_text.h"
#include "core/units/typed_text.h"

namespace ribwright {
namespace {

// The first of several faults goes with the field; the rest would say the same of what follows.
std::vector<Fault> placed(std::vector<Fault> faults, const std::string& place) {
  for (Fault& fault : faults) fault.place = place;
  return faults;
}

}  // namespace

FieldSetter FieldSetter::reading(std::string_view path, FieldKind kind, std::string_view text,
                                 const LengthStyle& style) {
  FieldSetter setter(Does::Reads, path, text, style);
  setter.kind_ = kind;
  return setter;
}

FieldSetter FieldSetter::puttingBack(std::string_view path, const LengthStyle& style) {
  return {Does::PutsBack, path, {}, style};
}

FieldSetter FieldSetter::stating(std::string_view path, const LengthStyle& style) {
  return {Does::States, path, {}, style};
}

FieldSetter FieldSetter::changing(std::string_view list, const ListChange& change, const LengthStyle& style) {
  FieldSetter setter(Does::Changes, list, {}, style);
  setter.change_ = change;
  return setter;
}

std::vector<Fault> FieldSetter::faults() const {
  if (!found_) return {{target_, "is nothing that this job has"}};
  return faults_;
}

bool FieldSetter::beginMember(const Key& key, bool) {
  std::string path = memberPath(path_, key.name);
  if (!isWithin(target_, path)) return false;
  lengths_.push_back(path_.size());
  path_ = std::move(path);
  if (isAt()) found_ = true;
  return true;
}

void FieldSetter::endMember() {
  path_.resize(lengths_.back());
  lengths_.pop_back();
}

bool FieldSetter::beginObject(std::string_view) { return isWithin(target_, path_) && !isAt(); }

std::size_t FieldSetter::beginList(std::size_t size, ItemCount) {
  return isAt() && does_ == Does::Reads ? readItems(kind_) : size;
}

// What cannot be read leaves the list with nothing in it; there is a fault then, and no job.
std::size_t FieldSetter::readItems(FieldKind kind) {
  if (kind == FieldKind::Lengths) take(lengthItems_, parseLengthString(text_, style_));
  if (kind == FieldKind::Wholes) take(wholeItems_, readWholes(text_));
  if (kind == FieldKind::Texts) textItems_ = readLines(text_);
  return lengthItems_.size() + wholeItems_.size() + textItems_.size();
}

void FieldSetter::beginItem(std::size_t index) {
  lengths_.push_back(path_.size());
  path_ += itemPath("", index);
  item_ = index;
  if (isAt()) found_ = true;
}

template <class T>
void FieldSetter::take(T& value, const Outcome<T>& read) {
  if (read) {
    value = read.value();
  } else {
    faults_ = placed(read.faults(), target_);
  }
}

template <class T>
bool FieldSetter::takeItem(T& value, const std::vector<T>& items) const {
  if (isAt() || item_ >= items.size()) return false;
  value = items[item_];
  return true;
}

void FieldSetter::value(std::string& text, const TextRule&) {
  if (!takeItem(text, textItems_) && isAt() && does_ == Does::Reads) text = text_;
}

void FieldSetter::value(int& whole, const WholeRange& range) {
  if (takeItem(whole, wholeItems_) || !isAt() || does_ != Does::Reads) return;
  take(whole, readWhole(text_));
  if (!faults_.empty()) faults_.front().message += joined("; write ", rangeText(range));
}

void FieldSetter::value(bool& flag) {
  if (isAt() && does_ == Does::Reads) take(flag, readFlag(text_));
}

void FieldSetter::value(Length& length, const LengthRange&) {
  if (!takeItem(length, lengthItems_) && isAt() && does_ == Does::Reads) take(length, parseLength(text_, style_));
}

void FieldSetter::value(Angle& angle, const AngleRange&) {
  if (isAt() && does_ == Does::Reads) take(angle, readAngle(text_, style_));
}

void FieldSetter::value(Slope& slope) {
  if (isAt() && does_ == Does::Reads) take(slope, readSlope(text_, style_));
}

void FieldSetter::choice(int& index, ChoiceWords words) {
  if (!isAt() || does_ != Does::Reads) return;
  const auto found = std::find(words.begin(), words.end(), text_);
  if (found == words.end()) {
    faults_ = {{target_, joined(inQuotes(text_), " is none of these: ", choicesText(words))}};
  } else {
    index = static_cast<int>(found - words.begin());
  }
}

bool FieldSetter::putsBack() const { return isAt() && does_ == Does::PutsBack; }

ListChange FieldSetter::listChange() const { return isAt() && does_ == Does::Changes ? change_ : ListChange{}; }

}  // namespace ribwright
