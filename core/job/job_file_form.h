// The one table per type that reading, writing and the schema go by.
//
// A type's table is a function `describe(Fields<T>&)` (job_tables_*.cpp): key, member, one line of words, limits. A
// Form goes through it: the reader fills the members from a file, the writer takes them out, the schema tells what may
// stand there. Keys are snake_case. A list of objects is described through its item's own table.
#pragma once

#include <algorithm>
#include <cstddef>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

#include "core/job/job_file_joined.h"
#include "core/units/angle.h"
#include "core/units/length.h"
#include "core/units/length_text.h"

namespace ribwright {

struct LengthRange {
  Length lowest, highest;
  bool lowestExcluded = false;
};
struct WholeRange {
  int lowest = 0, highest = 0;
};
struct AngleRange {
  Angle lowest, highest;
};
struct TextRule {
  std::size_t fewest = 0, most = 0;  // characters (code points)
  enum class Holds { Line, Lines, Id, Letters } holds = Holds::Line;
};
struct ItemCount {
  std::size_t fewest = 0;  // the most is the same for all lists (mostItems, job_file_tree.h)
};
using ChoiceWords = std::span<const std::string_view>;  // of an enum, in its order

struct Key {
  std::string_view name, says;
  bool required = false;  // always written; its absence is a fault
  bool optional = false;  // may be absent, which is no value of its own; `usual` then says that it is
};

// What becomes of a list before its items are gone through: an item comes to stand at `at`, goes from there, or moves
// from there to `to`.
struct ListChange {
  enum class Does { Nothing, Adds, Removes, Moves } does = Does::Nothing;
  std::size_t at = 0, to = 0;
};

class Form {
 public:
  virtual ~Form() = default;

  // A member of the object at hand; `usual`: it equals its default. False: nothing to do here. True: one value, then
  // endMember.
  virtual bool beginMember(const Key& key, bool usual) = 0;
  virtual void endMember() = 0;
  // False: not to be described; no endObject then.
  virtual bool beginObject(std::string_view type) = 0;
  virtual void endObject() = 0;
  // Returns how many items there are to be; each is beginItem, one value, endItem.
  virtual std::size_t beginList(std::size_t size, ItemCount count) = 0;
  virtual void beginItem(std::size_t index) = 0;
  virtual void endItem() = 0;
  virtual void endList() = 0;

  virtual void value(std::string& text, const TextRule& rule) = 0;
  virtual void value(int& whole, const WholeRange& range) = 0;
  virtual void value(bool& flag) = 0;
  virtual void value(Length& length, const LengthRange& range) = 0;
  virtual void value(Angle& angle, const AngleRange& range) = 0;
  virtual void value(Slope& slope) = 0;
  virtual void choice(int& index, ChoiceWords words) = 0;

  // Of a form that edits what it goes through. True: the member at hand becomes what it is when nothing is stated.
  virtual bool putsBack() const { return false; }
  virtual ListChange listChange() const { return {}; }

  // Rules between members. `at` and `below` are paths from the object at hand ("girts[3].id").
  virtual void wrong(std::string_view at, std::string_view message);
  virtual bool soundAt(std::string_view path) const;     // no fault so far exactly there
  virtual bool soundBelow(std::string_view path) const;  // nor anywhere inside it

  UnitSystem units() const { return units_; }

 protected:
  explicit Form(UnitSystem units) : units_(units) {}
  UnitSystem units_;
};

inline void Form::wrong(std::string_view, std::string_view) {}
inline bool Form::soundAt(std::string_view) const { return true; }
inline bool Form::soundBelow(std::string_view) const { return true; }

template <class T>
class Fields;
template <class T>
void formObject(Form& form, T& object, const T& usual);

template <class T>
void formValue(Form& form, T& object, const T& usual) {
  formObject(form, object, usual);
}
inline void formValue(Form& form, bool& flag, const bool&) { form.value(flag); }
inline void formValue(Form& form, Slope& slope, const Slope&) { form.value(slope); }
template <class T, class Rule>
requires(!std::is_enum_v<T>) void formValue(Form& form, T& scalar, const T&, const Rule& rule) {
  form.value(scalar, rule);
}
template <class E>
requires std::is_enum_v<E>
void formValue(Form& form, E& chosen, const E&, const ChoiceWords& words) {
  int index = static_cast<int>(chosen);
  form.choice(index, words);
  chosen = static_cast<E>(index);
}

// The members of one T, told one by one; what tables are written in.
template <class T>
class Fields {
 public:
  Fields(Form& form, T& object, const T& usual) : form_(form), object_(object), usual_(usual) {}

  const T& read() const { return object_; }
  Form& form() { return form_; }
  UnitSystem units() const { return form_.units(); }

  template <class M, class... Rule>
  void member(std::string_view key, M T::*at, std::string_view says, const Rule&... rule) {
    put({key, says, false}, object_.*at, usual_.*at, rule...);
  }
  template <class M, class... Rule>
  void required(std::string_view key, M T::*at, std::string_view says, const Rule&... rule) {
    put({key, says, true}, object_.*at, usual_.*at, rule...);
  }
  template <class M, class... Rule>
  void put(const Key& key, M& value, const M& usual, const Rule&... rule) {
    if (!form_.beginMember(key, value == usual)) return;
    if (form_.putsBack()) {
      value = usual;
    } else {
      formValue(form_, value, usual, rule...);
    }
    form_.endMember();
  }
  template <class M, class... Rule>
  void put(const Key& key, std::optional<M>& value, const std::optional<M>& usual, const Rule&... rule) {
    const Key optional{key.name, key.says, key.required, true};
    if (!form_.beginMember(optional, value == usual)) return;
    if (form_.putsBack()) {
      value = usual;
    } else {
      if (!value) value.emplace();
      formValue(form_, *value, M{}, rule...);
    }
    form_.endMember();
  }
  template <class M, class... Rule>
  void put(const Key& key, std::vector<M>& values, const std::vector<M>& usual, const Rule&... rule) {
    if (!form_.beginMember(key, values == usual)) return;
    if (form_.putsBack()) values = usual;
    putList(values, ItemCount{key.required ? std::size_t{1} : std::size_t{0}}, rule...);
    form_.endMember();
  }
  // A list that needs at least `count.fewest` items.
  template <class M, class... Rule>
  void requiredList(std::string_view key, std::vector<M> T::*at, ItemCount count, std::string_view says,
                    const Rule&... rule) {
    if (!form_.beginMember({key, says, true}, false)) return;
    putList(object_.*at, count, rule...);
    form_.endMember();
  }

  // A member that stands in the file as something else.
  template <class M, class Local, class... Rule>
  void converted(std::string_view key, M T::*at, std::string_view says, Local (*there)(M), M (*back)(Local),
                 const Rule&... rule) {
    Local value = there(object_.*at);
    put({key, says, false}, value, there(usual_.*at), rule...);
    object_.*at = back(value);
  }

  void wrong(std::string_view at, std::string_view message) { form_.wrong(at, message); }
  bool soundAt(std::string_view path) const { return form_.soundAt(path); }
  template <class... Path>
  bool sound(Path... paths) const {
    return (form_.soundBelow(paths) && ...);
  }

  // Holds each item of a list against the one before it, where both were read: `judge` says what is wrong with the
  // second at its `key`, or nothing.
  template <class M, class Judge>
  void eachAfter(std::string_view list, const std::vector<M>& items, std::string_view key, Judge judge) {
    std::vector<std::pair<std::size_t, std::string_view>> faults;  // told afterwards, since a fault hides its item
    for (std::size_t i = 1; i < items.size(); ++i) {
      const std::string_view message = judge(items[i - 1], items[i]);
      if (!message.empty() && soundItem(list, i - 1, key) && soundItem(list, i, key)) faults.emplace_back(i, message);
    }
    for (const auto& [i, message] : faults) wrong(itemPath(list, i, key), message);
  }

  // No two items of a list share this text (an id, a letter). An empty one is a fault already where it stands.
  template <class M>
  void eachDiffers(std::string_view list, const std::vector<M>& items, std::string M::*text, std::string_view key) {
    std::map<std::string_view, std::size_t> first;
    for (std::size_t i = 0; i < items.size(); ++i) {
      const std::string& name = items[i].*text;
      if (name.empty()) continue;
      const auto [seen, isNew] = first.emplace(name, i);
      if (isNew) continue;
      wrong(itemPath(list, i, key),
            joined("\"", name, "\" is taken already by ", itemPath(list, seen->second), "; each needs its own"));
    }
  }

 private:
  template <class M, class... Rule>
  void putList(std::vector<M>& values, ItemCount count, const Rule&... rule) {
    values.resize(form_.beginList(values.size(), count));
    change(values, form_.listChange());
    for (std::size_t i = 0; i < values.size(); ++i) {
      form_.beginItem(i);
      formValue(form_, values[i], M{}, rule...);
      form_.endItem();
    }
    form_.endList();
  }

  template <class M>
  static void change(std::vector<M>& values, const ListChange& list) {
    using Does = ListChange::Does;
    const auto place = [&](std::size_t i) { return values.begin() + static_cast<std::ptrdiff_t>(i); };
    if (list.does == Does::Adds) values.insert(place(list.at), M{});
    if (list.does == Does::Removes) values.erase(place(list.at));
    if (list.does == Does::Moves && list.at < list.to)
      std::rotate(place(list.at), place(list.at + 1), place(list.to + 1));
    if (list.does == Does::Moves && list.at > list.to) std::rotate(place(list.to), place(list.at), place(list.at + 1));
  }

  bool soundItem(std::string_view list, std::size_t i, std::string_view key) const {
    return soundAt(itemPath(list, i)) && (key.empty() || soundAt(itemPath(list, i, key)));
  }

  Form& form_;
  T& object_;
  const T& usual_;
};

template <class T>
void formObject(Form& form, T& object, const T& usual) {
  if (!form.beginObject(typeName(object))) return;
  Fields<T> fields(form, object, usual);
  describe(fields);
  form.endObject();
}

}  // namespace ribwright
