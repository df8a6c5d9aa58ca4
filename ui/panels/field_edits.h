// What is entered into fields, as edits of the session under names that a person reads.
#pragma once

#include <QString>
#include <string>
#include <vector>

#include "core/editing/field.h"
#include "core/units/outcome.h"

namespace ribwright {

class Session;

// One text for the fields at these paths, in one edit; `field` is the first of them. Typing on in the same fields makes
// no further step. What was chosen by an id stays chosen by the new one. Faults when it was refused.
std::vector<Fault> enterField(Session& session, const std::vector<std::string>& paths, const Field& field,
                              const QString& text);
// An optional object comes to be there, or is left out.
std::vector<Fault> stateField(Session& session, const std::string& path, const Field& field, bool stated);

std::vector<Fault> addItem(Session& session, const Field& list, std::size_t at);
std::vector<Fault> removeItem(Session& session, const Field& list, std::size_t at);
std::vector<Fault> moveItem(Session& session, const Field& list, std::size_t at, std::size_t to);

// What an item of a list is called: its id where it has one, else its number from 1. `list`: with its items.
std::string itemName(const Field& list, std::size_t at);

}  // namespace ribwright
