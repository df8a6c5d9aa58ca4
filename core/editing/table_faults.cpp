#include "core/editing/table_faults.h"

#include <algorithm>

#include "core/job/job_file_limits.h"
#include "core/job/job_file_text.h"
#include "core/job/job_file_tree.h"

namespace ribwright {

bool TableFaults::beginMember(const Key& key, bool usual) {
  if (usual && !key.required) return false;
  lengths_.push_back(path_.size());
  if (!path_.empty()) path_ += '.';
  path_ += key.name;
  return true;
}

void TableFaults::endMember() {
  path_.resize(lengths_.back());
  lengths_.pop_back();
}

bool TableFaults::beginObject(std::string_view) {
  objects_.push_back(path_.size());
  return true;
}

void TableFaults::endObject() { objects_.pop_back(); }

std::size_t TableFaults::beginList(std::size_t size, ItemCount count) {
  if (size < count.fewest) fault(joined("needs at least ", count.fewest, " items and has ", size));
  if (size > mostItems) fault(joined("has ", size, " items; at most ", mostItems, " belong here"));
  return size;
}

void TableFaults::beginItem(std::size_t index) {
  lengths_.push_back(path_.size());
  path_ += itemPath("", index);
}

void TableFaults::value(std::string& text, const TextRule& rule) {
  std::string trouble = troubleWith(text, rule);
  if (!trouble.empty()) fault(std::move(trouble));
}

void TableFaults::value(int& whole, const WholeRange& range) {
  if (whole < range.lowest || whole > range.highest) fault(joined(whole, " is out of range; write ", rangeText(range)));
}

void TableFaults::value(Length& length, const LengthRange& range) {
  if (holds(range, length)) return;
  fault(joined(exactText(length, units()), " is out of range; it may be ", rangeText(range, units())));
}

void TableFaults::value(Angle& angle, const AngleRange& range) {
  if (angle < range.lowest || angle > range.highest)
    fault(joined(degreesText(angle), " is out of range; it may be ", rangeText(range)));
}

void TableFaults::wrong(std::string_view at, std::string_view message) {
  faults_.push_back({pathOf(at), std::string(message)});
}

bool TableFaults::soundAt(std::string_view path) const {
  if (faults_.empty()) return true;
  const std::string place = pathOf(path);
  return std::none_of(faults_.begin(), faults_.end(), [&](const Fault& one) { return one.place == place; });
}

bool TableFaults::soundBelow(std::string_view path) const {
  if (faults_.empty()) return true;
  const std::string place = pathOf(path);
  return std::none_of(faults_.begin(), faults_.end(), [&](const Fault& one) {
    if (!one.place.starts_with(place)) return false;
    return one.place.size() == place.size() || one.place[place.size()] == '.' || one.place[place.size()] == '[';
  });
}

std::string TableFaults::pathOf(std::string_view at) const {
  const std::string object = path_.substr(0, objects_.back());
  return object.empty() ? std::string(at) : joined(object, ".", at);
}

}  // namespace ribwright
