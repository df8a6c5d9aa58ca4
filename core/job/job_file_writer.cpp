#include "core/job/job_file_writer.h"

#include <utility>

#include "core/job/job_file_text.h"

namespace ribwright {

bool JobWriter::beginMember(const Key& key, bool usual) {
  if (usual && !key.required) return false;
  keys_.push_back(key.name);
  nodes_.emplace_back();
  return true;
}

void JobWriter::endMember() {
  JsonNode value = std::move(nodes_.back());
  nodes_.pop_back();
  nodes_.back().with(keys_.back(), std::move(value));
  keys_.pop_back();
}

bool JobWriter::beginObject(std::string_view) {
  nodes_.back() = JsonNode::object();
  return true;
}

std::size_t JobWriter::beginList(std::size_t size, ItemCount) {
  nodes_.back() = JsonNode::list();
  return size;
}

void JobWriter::beginItem(std::size_t) { nodes_.emplace_back(); }

void JobWriter::endItem() {
  JsonNode item = std::move(nodes_.back());
  nodes_.pop_back();
  nodes_.back().items.push_back(std::move(item));
}

void JobWriter::value(std::string& text, const TextRule&) { nodes_.back() = JsonNode::ofText(text); }
void JobWriter::value(int& whole, const WholeRange&) { nodes_.back() = JsonNode::ofNumber(std::to_string(whole)); }
void JobWriter::value(bool& flag) { nodes_.back() = JsonNode::ofFlag(flag); }
void JobWriter::value(Length& length, const LengthRange&) {
  nodes_.back() = JsonNode::ofText(exactText(length, units()));
}
void JobWriter::value(Angle& angle, const AngleRange&) { nodes_.back() = JsonNode::ofNumber(degreesText(angle)); }
void JobWriter::value(Slope& slope) { nodes_.back() = JsonNode::ofText(slopeText(slope, units())); }

void JobWriter::choice(int& index, ChoiceWords words) {
  nodes_.back() = JsonNode::ofText(words[static_cast<std::size_t>(index)]);
}

}  // namespace ribwright
