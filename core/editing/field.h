// A field of a job: what a person sees and types, with its place, its kind and its limits.
//
// Paths are those of the job file: "walls[1].base.drop"; empty: the job itself.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/words/words.h"

namespace ribwright {

enum class FieldKind {
  Text,   // one line
  Lines,  // several lines
  Whole,  // a whole number
  Flag,   // "true" or "false"
  Length,
  Angle,
  Slope,
  Choice,   // one of `choices`
  Lengths,  // several in one text: 20', 4@25', 20'
  Wholes,   // several in one text: 3, 7
  Texts,    // one a line
  Object,
  List,  // of objects
};

struct Field {
  std::string path;
  std::string owner;  // type of the object that it stands in; empty for items of a list and for the job
  std::string key;    // its key there
  std::string type;   // of an Object: its own type; of a List: its items'
  FieldKind kind = FieldKind::Object;
  bool required = false;  // has no usual value: it must be stated
  bool optional = false;  // may be absent
  bool absent = false;
  std::string text;   // as a person types it; reads back as the same value. Empty when absent, and for Object and List
  std::string usual;  // what stands there when nothing is stated; empty when that is nothing
  Phrase limits;      // as a line of words; no id: none but the kind's own
  std::vector<std::string> choices;  // of a Choice: words of the job file
  std::size_t items = 0;             // of a List: how many it has
  // Of an Object: its fields in the table's order. Of a List that was asked for: an Object for each item.
  std::vector<Field> fields;

  bool isText() const { return kind != FieldKind::Object && kind != FieldKind::List; }
};

}  // namespace ribwright
