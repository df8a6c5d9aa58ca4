// A finding: something that would go wrong, or wants a look, with its place, reason, remedy and source.
//
// Words live in resources/words.<language>.json under "finding.<id>.where", ".why" and ".do", with values in braces.
#pragma once

#include <string>

#include "core/words/words.h"

namespace ribwright {

enum class Grade { Stop, Look, Note };  // wrong if built as shown; wants a look; good to know

struct Finding {
  Grade grade = Grade::Look;
  std::string id;      // "narrow-rip"; never translated
  std::string wall;    // letter, or empty
  std::string mark;    // piece, opening, girt; or empty
  WordValues values;   // what the words name
  std::string source;  // "UFGS 07413 3.1.1.1", "common practice" ...
  std::string part{};  // which of several of one kind at one mark ("left jamb"); or empty

  // Stable under edits elsewhere: id, wall, mark and part. What silencing goes by.
  std::string key() const;
  // What its words name: the values, and {wall} and {mark}.
  WordValues said() const;
  bool operator==(const Finding&) const = default;
};

}  // namespace ribwright
