// What fields, choices and edits of them are called: ids of words and their values.
//
// Every key of every type has "field.<type>.<key>", its label, and ".tip", what it is; one that may be absent has
// ".absent", what then holds. A choice has "choice.<type>.<key>.<word>".
#pragma once

#include <string>
#include <string_view>

#include "core/editing/field.h"
#include "core/job/job.h"
#include "core/words/words.h"

namespace ribwright {

std::string labelId(const Field& field);
std::string tipId(const Field& field);
std::string absentId(const Field& field);
std::string choiceId(const Field& field, std::string_view word);

// The thing that a path lies in: "opening W1", "wall A", "the job".
Phrase whatLiesAt(const Job& job, std::string_view path);

// The field's text as a phrase: a choice and a flag in words, else as it is.
Phrase saidText(const Field& field, std::string_view text);

// Names of edits: "Drop below concrete of wall A: 2\"".
Phrase fieldSetPhrase(const Field& field, std::string_view text, const Phrase& what);
Phrase fieldStatedPhrase(const Field& field, bool stated, const Phrase& what);
Phrase itemAddedPhrase(const Field& list, const Phrase& what);
// `item`: what it is called in its list, an id or a number from 1.
Phrase itemRemovedPhrase(const Field& list, const std::string& item, const Phrase& what);
Phrase itemMovedPhrase(const Field& list, const std::string& item, const Phrase& what);

}  // namespace ribwright
