#include "core/editing/part_names.h"

namespace ribwright {

Phrase namedBy(const char* phrase, const std::string& id) { return {phrase, {{"id", id}}}; }

Phrase numberedBy(const char* phrase, std::int64_t number) { return {phrase, {{"number", number}}}; }

Phrase plainName(const std::string& id) { return {"", {{"id", id}}}; }

Phrase nameOf(const Part& part) {
  switch (part.kind) {
    case Part::Kind::Face:
      return {"name.wall", {{"wall", part.wall}}};
    case Part::Kind::Piece:
      return namedBy("name.sheet", part.id);
    case Part::Kind::Girt:
      return namedBy("name.girt", part.id);
    case Part::Kind::Column:
      return {"name.column", {{"number", part.id}}};
    case Part::Kind::Screw:
      return {"name.screw"};
    case Part::Kind::Batch:
      return namedBy("name.batch", part.id);
    case Part::Kind::Opening:
    case Part::Kind::Penetration:
      break;
  }
  return plainName(part.id);
}

Phrase nameOf(const std::vector<Part>& parts) {
  if (parts.size() == 1) return nameOf(parts.front());
  return {"name.several", {{"count", static_cast<std::int64_t>(parts.size())}}};
}

std::string editName(const char* id, const std::vector<Part>& parts, const Words& words, const LengthStyle& style,
                     WordValues more) {
  more.emplace_back("what", nameOf(parts));
  return words.say(id, more, style);
}

}  // namespace ribwright
