// Fields of the usual kinds. `Of` gives the member of an item: a lambda that takes it, const or not, by reference.
#pragma once

#include <type_traits>

#include "core/editing/stated_field.h"
#include "core/editing/typed_length.h"

namespace ribwright {

template <class Item, auto Of>
StatedField<Item> lengthField(std::string_view name, std::string_view path, bool needed) {
  return {name,
          path,
          CellForm::Length,
          needed,
          [](const Item& item, const LengthStyle& style) { return typedLength(Of(item), style); },
          [](Item& item, std::string_view text, const CellReading& reading) {
            return takeLength(Of(item), text, reading);
          }};
}

// Blank: not stated.
template <class Item, auto Of>
StatedField<Item> optionalLengthField(std::string_view name, std::string_view path) {
  return {name,
          path,
          CellForm::Length,
          false,
          [](const Item& item, const LengthStyle& style) {
            return Of(item) ? typedLength(*Of(item), style) : std::string();
          },
          [](Item& item, std::string_view text, const CellReading& reading) {
            if (text.empty()) return Of(item).reset(), std::string();
            Length length;
            std::string wrong = takeLength(length, text, reading);
            if (wrong.empty()) Of(item) = length;
            return wrong;
          }};
}

template <const auto& Words>
std::vector<std::string> wordsOf() {
  return {std::begin(Words), std::end(Words)};
}

// Words in the order of the member's enum.
template <class Item, auto Of, const auto& Words>
StatedField<Item> choiceField(std::string_view name, std::string_view path, bool needed) {
  return {name,
          path,
          CellForm::Choice,
          needed,
          [](const Item& item, const LengthStyle&) { return std::string(Words[static_cast<std::size_t>(Of(item))]); },
          [](Item& item, std::string_view text, const CellReading&) {
            int index = 0;
            std::string wrong = takeChoice(index, text, wordsOf<Words>());
            if (wrong.empty()) Of(item) = static_cast<std::remove_reference_t<decltype(Of(item))>>(index);
            return wrong;
          },
          [](const CellReading&) { return wordsOf<Words>(); }};
}

// The file's own rules look at it.
template <class Item, auto Of>
StatedField<Item> textField(std::string_view name, std::string_view path, CellForm form, bool needed) {
  return {name,
          path,
          form,
          needed,
          [](const Item& item, const LengthStyle&) { return std::string(Of(item)); },
          [](Item& item, std::string_view text, const CellReading&) {
            Of(item) = text;
            return std::string();
          }};
}

// Of what the job holds in a list.
template <class Item, auto Of, auto List>
StatedField<Item> nameField(std::string_view name, std::string_view path) {
  return {name,
          path,
          CellForm::Choice,
          false,
          [](const Item& item, const LengthStyle&) { return std::string(Of(item)); },
          [](Item& item, std::string_view text, const CellReading& reading) {
            constexpr bool profiles = std::is_same_v<decltype(List), std::vector<Profile> Job::*>;
            constexpr bool members = std::is_same_v<decltype(List), std::vector<Member> Job::*>;
            constexpr std::string_view what = profiles ? "profile" : members ? "member" : "pattern";
            return takeName(Of(item), text, idsOf(reading.job.*List), what);
          },
          [](const CellReading& reading) { return idsOf(reading.job.*List); }};
}

}  // namespace ribwright
