#include "core/editing/field_lister.h"

#include <utility>

#include "core/editing/field_path.h"
#include "core/editing/field_text.h"

namespace ribwright {
namespace {

Phrase limits(std::string_view kind, const std::string& least, const std::string& most) {
  return {joined("limits.range", kind), {{"least", least}, {"most", most}}};
}

// No building is longer than the farthest length: that is no limit that anyone meets.
Phrase lengthLimits(const LengthRange& range, const LengthStyle& style) {
  const std::string least = typedLength(range.lowest, style), most = typedLength(range.highest, style);
  if (range.highest != farthest) return limits(range.lowestExcluded ? ".more" : "", least, most);
  if (range.lowest == -range.highest) return {};
  return {range.lowestExcluded ? "limits.more" : "limits.least", {{"least", least}}};
}

}  // namespace

FieldLister::FieldLister(std::string_view path, const LengthStyle& style, Lists lists)
    : Form(style.units), target_(path), style_(style), lists_(lists) {
  levels_.emplace_back();
}

bool FieldLister::isListed() const { return isWithin(levels_.back().field.path, target_); }
bool FieldLister::isOnWay() const { return isWithin(target_, levels_.back().field.path); }

// An item of a list that is only counted.
bool FieldLister::isOnlyCounted() const {
  const std::string& path = levels_.back().field.path;
  return lists_ == Lists::Counted && path.ends_with(']') && path != target_ && pathAbove(path) != target_;
}

void FieldLister::open(std::string path) {
  levels_.emplace_back();
  here().field.path = std::move(path);
}

void FieldLister::take(Field field) {
  root_ = std::move(field);
  found_ = true;
}

bool FieldLister::beginMember(const Key& key, bool usual) {
  std::string path = memberPath(here().field.path, key.name);
  if (!isWithin(path, target_) && !isWithin(target_, path)) return false;
  std::string owner = here().field.type;
  open(std::move(path));
  Field& field = here().field;
  field.owner = std::move(owner);
  field.key = key.name;
  field.required = key.required;
  field.optional = key.optional;
  field.absent = key.optional && usual;
  return true;
}

// What was gone through is kept by the one above it, as far as it was asked for.
void FieldLister::endMember() {
  Field field = std::move(here().field);
  levels_.pop_back();
  if (field.path == target_) {
    take(std::move(field));
  } else if (isListed()) {
    here().field.fields.push_back(std::move(field));
  }
}

bool FieldLister::beginObject(std::string_view type) {
  here().field.kind = FieldKind::Object;
  here().field.type = type;
  return isOnWay() || (isListed() && !isOnlyCounted());
}

void FieldLister::endObject() {
  if (levels_.size() == 1 && target_.empty()) take(std::move(here().field));
}

// An empty list shows what its items would be; the copy alone comes to have one.
std::size_t FieldLister::beginList(std::size_t size, ItemCount) {
  here().items = size;
  return size == 0 && isListed() ? 1 : size;
}

void FieldLister::beginItem(std::size_t index) { open(itemPath(here().field.path, index)); }

void FieldLister::endItem() {
  Level item = std::move(here());
  levels_.pop_back();
  if (item.field.path == target_) return take(std::move(item.field));
  if (isListed()) gather(std::move(item));
}

void FieldLister::gather(Level item) {
  Level& list = here();
  const bool isThere = list.items > 0;
  if (item.field.isText()) {
    list.field.kind = item.field.kind;
    list.field.limits = std::move(item.field.limits);
    if (!isThere) return;
    list.lengths.insert(list.lengths.end(), item.lengths.begin(), item.lengths.end());
    list.wholes.insert(list.wholes.end(), item.wholes.begin(), item.wholes.end());
    list.texts.insert(list.texts.end(), item.texts.begin(), item.texts.end());
    return;
  }
  list.field.kind = FieldKind::List;
  list.field.type = item.field.type;
  const bool asked = lists_ == Lists::Shown || (list.field.path == target_ && isThere);
  if (asked) list.field.fields.push_back(std::move(item.field));
}

void FieldLister::endList() {
  Level& list = here();
  list.field.items = list.items;
  switch (list.field.kind) {
    case FieldKind::Length:
      list.field.kind = FieldKind::Lengths;
      list.field.text = typedLengths(list.lengths, style_);
      break;
    case FieldKind::Whole:
      list.field.kind = FieldKind::Wholes;
      list.field.text = typedWholes(list.wholes);
      break;
    case FieldKind::Text:
      list.field.kind = FieldKind::Texts;
      list.field.text = typedLines(list.texts);
      break;
    default:
      break;
  }
}

void FieldLister::put(FieldKind kind, std::string text, Phrase limits) {
  Field& field = here().field;
  field.kind = kind;
  field.limits = std::move(limits);
  if (!field.absent) field.text = std::move(text);
}

void FieldLister::value(std::string& text, const TextRule& rule) {
  here().texts = {text};
  put(rule.holds == TextRule::Holds::Lines ? FieldKind::Lines : FieldKind::Text, text, {});
}

void FieldLister::value(int& whole, const WholeRange& range) {
  here().wholes = {whole};
  put(FieldKind::Whole, std::to_string(whole), limits("", std::to_string(range.lowest), std::to_string(range.highest)));
}

void FieldLister::value(bool& flag) { put(FieldKind::Flag, flag ? "true" : "false", {}); }

void FieldLister::value(Length& length, const LengthRange& range) {
  here().lengths = {length};
  put(FieldKind::Length, typedLength(length, style_), lengthLimits(range, style_));
}

void FieldLister::value(Angle& angle, const AngleRange& range) {
  put(FieldKind::Angle, typedAngle(angle, style_),
      limits("", typedAngle(range.lowest, style_), typedAngle(range.highest, style_)));
}

void FieldLister::value(Slope& slope) { put(FieldKind::Slope, typedSlope(slope, style_), {}); }

void FieldLister::choice(int& index, ChoiceWords words) {
  put(FieldKind::Choice, std::string(words[static_cast<std::size_t>(index)]), {});
  for (const std::string_view word : words) here().field.choices.emplace_back(word);
}

}  // namespace ribwright
