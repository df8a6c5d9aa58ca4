// How the columns and choices of what is stated are called in the window.
#pragma once

#include <QString>
#include <string>

#include "core/editing/stated_cells.h"
#include "ui/session/session.h"

namespace ribwright {

QString columnTitle(StatedList list, std::string_view column);
// "new opening" ...
QString newItemWords(StatedList list);

// A choice of the job file, "walk door", "column 2", as the window says it; what is a name stays.
QString choiceWords(const Session& session, const std::string& choice);
// What the cell is read as: a choice that is typed or pasted as the window says it, in the words of the job file.
std::string statedWords(const Session& session, const std::vector<std::string>& choices, const QString& typed);

// What a blank cell means where it means something: "corner", "as the wall".
QString blankWords(StatedList list, std::string_view column, std::size_t row);

}  // namespace ribwright
