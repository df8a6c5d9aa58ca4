// One thing that is stated of an item of a wall (an opening's width, a girt's member), as text in a table's column.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/job/job.h"

namespace ribwright {

enum class CellForm { Id, Choice, Length, Text };

// What a cell's text is read against. `style`: what a bare number means.
struct CellReading {
  const Job& job;
  const Wall& wall;
  LengthStyle style;
};

template <class Item>
struct StatedField {
  std::string_view name;  // of its column, in tables of any language the same
  std::string_view path;  // of the member, as faults of the job file call it
  CellForm form;
  // A blank cell is a fault; else it is what the item has when nothing is stated.
  bool needed;
  std::string (*text)(const Item&, const LengthStyle&);
  // Takes the text, or says what is wrong with it.
  std::string (*take)(Item&, std::string_view, const CellReading&);
  // Words to choose from; null: none.
  std::vector<std::string> (*choices)(const CellReading&) = nullptr;
};

// In capitals or not.
bool sameWord(std::string_view a, std::string_view b);

// Each says what is wrong with the text, or takes it and says nothing.
std::string takeLength(Length& length, std::string_view text, const CellReading& reading);
// Index of the word, in capitals or not.
std::string takeChoice(int& index, std::string_view text, const std::vector<std::string>& words);
// Of `ids`; what they are, is said as "profile".
std::string takeName(std::string& name, std::string_view text, const std::vector<std::string>& ids,
                     std::string_view what);

template <class List>
std::vector<std::string> idsOf(const List& list) {
  std::vector<std::string> ids;
  for (const auto& item : list) ids.push_back(item.id);
  return ids;
}

const std::vector<StatedField<Opening>>& openingFields();
const std::vector<StatedField<Penetration>>& penetrationFields();
const std::vector<StatedField<Girt>>& girtFields();
const std::vector<StatedField<Band>>& bandFields();

// Takes a cell's text; a blank one as `needed` says. Says what is wrong.
template <class Item>
std::string takeCell(const StatedField<Item>& field, Item& item, std::string_view text, const CellReading& reading) {
  if (!text.empty()) return field.take(item, text, reading);
  if (field.needed) return "is blank; it is needed";
  static const Item usual{};
  const std::string stated = field.text(usual, reading.style);
  return stated.empty() ? field.take(item, {}, reading) : field.take(item, stated, reading);
}

}  // namespace ribwright
