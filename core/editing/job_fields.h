// Every field of a job, as a person sees it and as a person changes it.
//
// The fields are those of the job file's tables, and every edit is held against all their rules, also those between
// fields and between what names and what is named: what an edit gives back can be saved and read again. A rule that
// was broken before stays so without keeping other edits back.
//
// Text is read and written in the job's own units and decimal sign. Faults carry the path of the field that they are
// about; when an edit is refused there is no new job.
#pragma once

#include <cstddef>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "core/editing/field.h"
#include "core/job/job.h"
#include "core/units/outcome.h"

namespace ribwright {

// What lies at a path, with all that lies below it; of lists of objects below it only how many items they have, of one
// at the path itself each item. Fault: there is nothing.
Outcome<Field> fieldAt(const Job& job, std::string_view path);

// The fields of every type that a job is made of, by the type's name: keys, kinds, choices, limits, and in `text` what
// stands there when nothing is stated. Paths are those of the first place where the type stands.
std::map<std::string, Field> fieldsByType(const LengthStyle& style);

// Reads text into the field. What is called by another id then is called so wherever this job names it. A blank text
// makes an optional field that is no text absent.
Outcome<Job> withField(const Job& job, std::string_view path, std::string_view text);
// As it is when nothing is stated; an object with all that is in it. Fault: it must be stated.
Outcome<Job> withFieldAbsent(const Job& job, std::string_view path);
// An optional object comes to be there, with what can be stated for it.
Outcome<Job> withFieldStated(const Job& job, std::string_view path);

// `at`: before which item; the list's size: behind the last. The new item is made like its neighbour, with an id and a
// place of its own.
Outcome<Job> withItemAdded(const Job& job, std::string_view list, std::size_t at);
// Fault: it is named elsewhere in the job, told where.
Outcome<Job> withItemRemoved(const Job& job, std::string_view list, std::size_t at);
// The item at `at` comes to stand at `to`.
Outcome<Job> withItemMoved(const Job& job, std::string_view list, std::size_t at, std::size_t to);

}  // namespace ribwright
