// Every field and every choice has its words, in every language.
#include "core/editing/field_words.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <set>

#include "core/editing/job_fields.h"

using namespace ribwright;

namespace {

std::set<std::string> wanted() {
  std::set<std::string> ids;
  for (const auto& [type, object] : fieldsByType({})) {
    for (const Field& field : object.fields) {
      ids.insert(labelId(field));
      ids.insert(tipId(field));
      if (field.optional) ids.insert(absentId(field));
      for (const std::string& word : field.choices) ids.insert(choiceId(field, word));
    }
  }
  return ids;
}

}  // namespace

TEST_CASE("every key of every type has its words, and no words are left over") {
  const auto ids = wanted();
  CHECK(ids.size() > 500);
  for (const std::string& language : Words::languages()) {
    const Words& words = Words::of(language);
    for (const std::string& id : ids) {
      INFO(language << ": " << id);
      CHECK(words.knows(id));
      CHECK_FALSE(words.say(id, {}, {}).empty());
    }
    for (const std::string& id : words.ids()) {
      const bool ofField =
          (id.starts_with("field.") && std::count(id.begin(), id.end(), '.') > 1 && !id.starts_with("field.what.")) ||
          id.starts_with("choice.");
      INFO(language << ": " << id);
      CHECK((!ofField || ids.contains(id)));
    }
  }
}

TEST_CASE("a tip is a whole sentence, a label is none") {
  for (const std::string& language : Words::languages()) {
    const Words& words = Words::of(language);
    for (const auto& [type, object] : fieldsByType({})) {
      for (const Field& field : object.fields) {
        INFO(language << ": " << labelId(field));
        CHECK(words.say(tipId(field), {}, {}).ends_with('.'));
        CHECK_FALSE(words.say(labelId(field), {}, {}).ends_with('.'));
      }
    }
  }
}

TEST_CASE("an edit says which field of what becomes what") {
  Job job;
  job.walls.resize(1);
  job.walls[0].letter.assign(1, 'A');  // GCC 12 sees an overflow in = "A" that is not there
  job.walls[0].bands.resize(1);
  const Field drop = fieldAt(job, "walls[0].base.drop").value();
  const Field cladding = fieldAt(job, "walls[0].cladding").value();
  const Phrase wall = whatLiesAt(job, "walls[0].base.drop");
  const auto said = [](const char* language, const Phrase& phrase) { return Words::of(language).say(phrase, {}); };
  CHECK(said("en", fieldSetPhrase(drop, "2\"", wall)) == "Drop below concrete of wall A: 2\"");
  CHECK(said("es", fieldSetPhrase(drop, "2\"", wall)) == "Descuelgue bajo el concreto, pared A: 2\"");
  CHECK(said("en", fieldSetPhrase(cladding, "by others", wall)) == "Cladding of wall A: by others");
  CHECK(said("en", fieldStatedPhrase(fieldAt(job, "walls[0].base.grade").value(), false, wall)) ==
        "Finished grade of wall A: not stated");
}
