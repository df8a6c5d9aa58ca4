#include "core/job/job_file_reader.h"

#include <algorithm>
#include <charconv>

#include "core/job/job_file_joined.h"
#include "core/job/job_file_limits.h"
#include "core/job/job_file_text.h"
#include "core/units/typed_text.h"

namespace ribwright {
namespace {

std::string_view nameOf(JsonNode::Is is) {
  constexpr std::string_view names[] = {"null", "true or false", "a number", "text", "a list", "an object"};
  return names[static_cast<std::size_t>(is)];
}

}  // namespace

JobReader::JobReader(const JsonNode& root, std::string_view name, UnitSystem units) : Form(units), name_(name) {
  places_.push_back({&root, 0});
}

bool JobReader::beginMember(const Key& key, bool) {
  Object& object = objects_.back();
  object.known.push_back(key.name);
  const JsonNode* found = object.node->find(key.name);
  if (!found) {
    if (key.required) wrong(key.name, joined("is missing: ", key.says));
    return false;
  }
  places_.push_back({found, path_.size()});
  path_ += joined(path_.empty() ? "" : ".", key.name);
  return true;
}

void JobReader::endMember() {
  path_.resize(places_.back().pathLength);
  places_.pop_back();
}

bool JobReader::beginObject(std::string_view) {
  if (!isA(JsonNode::Is::Object, "an object in braces belongs here")) return false;
  objects_.push_back({&node(), path_.size(), faults_.size(), {}});
  return true;
}

void JobReader::endObject() {
  const Object object = std::move(objects_.back());
  objects_.pop_back();
  for (const std::string& key : object.node->keys) {
    if (std::find(object.known.begin(), object.known.end(), key) != object.known.end()) continue;
    // Beyond what is told, looking for the nearest would only take time.
    const std::string_view nearest = faults_.size() < mostFaults ? nearestOf(key, object.known) : std::string_view();
    add(pathFrom(object, pathKey(key)), "is no key of this file; the nearest is " + inQuotes(nearest));
  }
}

std::size_t JobReader::beginList(std::size_t, ItemCount count) {
  if (!isA(JsonNode::Is::List, "a list in square brackets belongs here")) return 0;
  const std::size_t size = node().items.size();
  if (size < count.fewest) {
    fault(joined("needs at least ", count.fewest, " items and has ", size));
  }
  return size;
}

void JobReader::beginItem(std::size_t index) {
  const JsonNode& list = node();
  places_.push_back({&list.items[index], path_.size()});
  path_ += itemPath("", index);
}

void JobReader::endItem() { endMember(); }
void JobReader::endList() {}

void JobReader::value(std::string& text, const TextRule& rule) {
  if (!isA(JsonNode::Is::Text, "text in double quotes belongs here")) return;
  const std::string trouble = troubleWith(node().text, rule);
  if (!trouble.empty()) return fault(trouble);
  text = node().text;
}

void JobReader::value(int& whole, const WholeRange& range) {
  if (!isA(JsonNode::Is::Number, "a whole number belongs here")) return;
  const std::string& digits = node().text;
  std::int64_t number = 0;
  const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), number);
  if (error == std::errc::result_out_of_range) return fault(digits + " is out of range; write " + rangeText(range));
  if (end != digits.data() + digits.size()) return fault(digits + " is no whole number; write " + rangeText(range));
  if (number < range.lowest || number > range.highest)
    return fault(digits + " is out of range; write " + rangeText(range));
  whole = static_cast<int>(number);
}

void JobReader::value(bool& flag) {
  if (isA(JsonNode::Is::Flag, "true or false belongs here")) flag = node().flag;
}

void JobReader::value(Length& length, const LengthRange& range) {
  if (node().is == JsonNode::Is::Number) {
    return fault(node().text +
                 " is a bare number; write a length as text with its unit, as \"7' 6\\\"\" or \"2286 mm\"");
  }
  if (!isA(JsonNode::Is::Text, "a length belongs here, as text with its unit: \"7' 6\\\"\" or \"2286 mm\"")) return;
  const auto read = fileLength(node().text, units());
  if (!read) return fault(read.faults().front().message);
  if (!holds(range, read.value()))
    return fault(inQuotes(node().text) + " is out of range; it may be " + rangeText(range, units()));
  length = read.value();
}

void JobReader::value(Angle& angle, const AngleRange& range) {
  if (!isA(JsonNode::Is::Number, "a number of degrees belongs here")) return;
  const auto read = degreesFromText(node().text);
  if (!read) return fault(read.faults().front().message);
  if (read.value() < range.lowest || read.value() > range.highest) {
    return fault(node().text + " is out of range; it may be " + rangeText(range));
  }
  angle = read.value();
}

void JobReader::value(Slope& slope) {
  if (!isA(JsonNode::Is::Text, "a slope belongs here, as text: \"4:12\", \"150 in 250\" or \"9.5 deg\"")) return;
  const auto read = slopeFromText(node().text, units());
  if (!read) return fault(read.faults().front().message);
  slope = read.value();
}

void JobReader::choice(int& index, ChoiceWords words) {
  if (!isA(JsonNode::Is::Text, "one of these belongs here: " + choicesText(words))) return;
  const auto found = std::find(words.begin(), words.end(), node().text);
  if (found == words.end()) return fault(inQuotes(node().text) + " is none of these: " + choicesText(words));
  index = static_cast<int>(found - words.begin());
}

void JobReader::wrong(std::string_view at, std::string_view message) { add(pathFrom(objects_.back(), at), message); }

bool JobReader::soundAt(std::string_view path) const {
  const Object& object = objects_.back();
  const std::string place = pathFrom(object, path);
  return std::none_of(faults_.begin() + static_cast<std::ptrdiff_t>(object.firstFault), faults_.end(),
                      [&](const Fault& fault) { return fault.place == place; });
}

bool JobReader::soundBelow(std::string_view path) const {
  const Object& object = objects_.back();
  const std::string place = pathFrom(object, path);
  return std::none_of(faults_.begin() + static_cast<std::ptrdiff_t>(object.firstFault), faults_.end(),
                      [&](const Fault& fault) {
                        if (!fault.place.starts_with(place)) return false;
                        return fault.place.size() == place.size() || fault.place[place.size()] == '.' ||
                               fault.place[place.size()] == '[';
                      });
}

std::vector<Fault> JobReader::faults() && {
  for (Fault& fault : faults_) fault.place = fault.place.empty() ? name_ : name_ + ": " + fault.place;
  if (more_ > 0) faults_.push_back({name_, joined("has ", more_, " more faults; mend these first")});
  return std::move(faults_);
}

bool JobReader::isA(JsonNode::Is is, std::string_view wanted) {
  if (node().is == is) return true;
  fault(joined("is ", nameOf(node().is), "; ", wanted));
  return false;
}

void JobReader::fault(std::string_view message) { add(path_, message); }

void JobReader::add(std::string path, std::string_view message) {
  if (faults_.size() < mostFaults) {
    faults_.push_back({std::move(path), std::string(message)});
  } else {
    ++more_;
  }
}

std::string JobReader::pathFrom(const Object& object, std::string_view at) const {
  std::string path = path_.substr(0, object.pathLength);
  if (!path.empty()) path += '.';
  return path += at;
}

}  // namespace ribwright
