#include "core/editing/job_fields.h"

#include <algorithm>

#include "core/editing/coupled_fields.h"
#include "core/editing/field_lister.h"
#include "core/editing/field_path.h"
#include "core/editing/field_setter.h"
#include "core/editing/field_text.h"
#include "core/editing/held_job.h"
#include "core/editing/namings.h"
#include "core/editing/new_items.h"
#include "core/editing/outline_letters.h"
#include "core/job/length_style.h"
#include "core/units/typed_text.h"

namespace ribwright {
namespace {

const Job& nothingStated() {
  static const Job job;
  return job;
}

std::vector<Fault> set(Job& job, FieldSetter setter) {
  formObject(setter, job, nothingStated());
  return setter.faults();
}

void gatherTypes(const Field& field, std::map<std::string, Field>& types) {
  if (field.kind == FieldKind::Object) types.try_emplace(field.type, field);
  for (const Field& below : field.fields) gatherTypes(below, types);
}

void putUsual(Field& field, const std::map<std::string, Field>& types) {
  for (Field& below : field.fields) putUsual(below, types);
  const auto type = types.find(field.owner);
  if (type == types.end() || field.required) return;
  for (const Field& usual : type->second.fields) {
    if (usual.key == field.key) field.usual = usual.text;
  }
}

// Nothing can be read as these; as text and as a list it can.
bool isLeftOutWhenBlank(const Field& field) {
  const bool isValue = field.kind == FieldKind::Whole || field.kind == FieldKind::Length ||
                       field.kind == FieldKind::Angle || field.kind == FieldKind::Slope ||
                       field.kind == FieldKind::Flag || field.kind == FieldKind::Choice;
  return isValue && !field.required;
}

// What else is another when the field at `path` is.
std::vector<Fault> follow(Job& job, const Job& before, const Field& field, const std::string& text) {
  if (field.key == "letter" && field.owner == "wall") return callWallBy(job, *lastIndex(field.path), field.text, text);
  if (field.key == "id") callBy(job, pathAbove(field.path), field.text, text);
  changeTogether(job, before, field.path);
  return {};
}

std::vector<Fault> pathsNamedBy(const std::vector<std::string>& paths, std::string_view item, const std::string& id) {
  if (paths.empty()) return {};
  std::string who;
  for (std::size_t i = 0; i < paths.size() && i < 3; ++i) who += joined(i == 0 ? "" : ", ", paths[i]);
  if (paths.size() > 3) who += joined(" and ", paths.size() - 3, " more");
  return {{std::string(item), joined("\"", id, "\" is named by ", who, "; name another there first")}};
}

Outcome<Field> listAt(const Job& job, std::string_view path) {
  auto list = fieldAt(job, path);
  if (list && list.value().kind != FieldKind::List) return Fault{std::string(path), "is no list"};
  return list;
}

Fault noItem(std::string_view list, std::size_t at, std::size_t items) {
  return {std::string(list), joined("has ", items, " items; there is no place ", at)};
}

}  // namespace

Outcome<Field> fieldAt(const Job& job, std::string_view path) {
  Job copy = job;  // the lister fills in what is absent
  FieldLister lister(path, styleOf(job), FieldLister::Lists::Counted);
  formObject(lister, copy, nothingStated());
  if (!lister.found()) return Fault{std::string(path), "is nothing that this job has"};
  Field field = *lister.found();
  putUsual(field, fieldsByType(styleOf(job)));
  return field;
}

std::map<std::string, Field> fieldsByType(const LengthStyle& style) {
  Job job;
  FieldLister lister("", style, FieldLister::Lists::Shown);
  formObject(lister, job, nothingStated());
  std::map<std::string, Field> types;
  gatherTypes(*lister.found(), types);
  return types;
}

Outcome<Job> withField(const Job& job, std::string_view path, std::string_view text) {
  const auto field = fieldAt(job, path);
  if (!field) return field.faults();
  if (!field.value().isText()) return Fault{std::string(path), "is no field that text goes into"};
  if (!isSoundText(text)) return Fault{std::string(path), "is no sound UTF-8; type it anew"};
  if (isBlank(text) && isLeftOutWhenBlank(field.value())) return withFieldAbsent(job, path);
  Job next = job;
  auto faults = set(next, FieldSetter::reading(path, field.value().kind, text, styleOf(job)));
  if (faults.empty()) faults = follow(next, job, field.value(), std::string(text));
  if (!faults.empty()) return faults;
  return ifJobHeld(std::move(next), job);
}

Outcome<Job> withFieldAbsent(const Job& job, std::string_view path) {
  const auto field = fieldAt(job, path);
  if (!field) return field.faults();
  if (field.value().required || path.empty() || path.ends_with(']')) return Fault{std::string(path), "must be stated"};
  if (field.value().kind == FieldKind::List && field.value().items > 0)
    return Fault{std::string(path), "is taken out item by item"};
  Job next = job;
  auto faults = set(next, FieldSetter::puttingBack(path, styleOf(job)));
  if (!faults.empty()) return faults;
  changeTogether(next, job, path);
  return ifJobHeld(std::move(next), job);
}

Outcome<Job> withFieldStated(const Job& job, std::string_view path) {
  const auto field = fieldAt(job, path);
  if (!field) return field.faults();
  Job next = job;
  auto faults = set(next, FieldSetter::stating(path, styleOf(job)));
  if (!faults.empty()) return faults;
  if (field.value().absent) fillStated(next, path);
  return ifJobHeld(std::move(next), job);
}

Outcome<Job> withItemAdded(const Job& job, std::string_view list, std::size_t at) {
  const auto field = listAt(job, list);
  if (!field) return field.faults();
  if (at > field.value().items) return noItem(list, at, field.value().items);
  auto faults = lettersLost(job, list, {ListChange::Does::Adds, at, 0});
  if (!faults.empty()) return faults;
  Job next = job;
  faults = addItem(next, list, at);
  if (!faults.empty()) return faults;
  return ifJobHeld(std::move(next), job);
}

Outcome<Job> withItemRemoved(const Job& job, std::string_view list, std::size_t at) {
  const auto field = listAt(job, list);
  if (!field) return field.faults();
  if (at >= field.value().items) return noItem(list, at, field.value().items);
  const std::string item = itemPath(list, at);
  if (const auto id = fieldAt(job, item + ".id")) {
    auto named = pathsNamedBy(whoNames(job, item, id.value().text), item, id.value().text);
    if (!named.empty()) return named;
  }
  const ListChange change{ListChange::Does::Removes, at, 0};
  auto faults = lettersLost(job, list, change);
  if (!faults.empty()) return faults;
  Job next = job;
  faults = set(next, FieldSetter::changing(list, change, styleOf(job)));
  if (!faults.empty()) return faults;
  return ifJobHeld(std::move(next), job);
}

Outcome<Job> withItemMoved(const Job& job, std::string_view list, std::size_t at, std::size_t to) {
  const auto field = listAt(job, list);
  if (!field) return field.faults();
  if (at >= field.value().items) return noItem(list, at, field.value().items);
  if (to >= field.value().items) return noItem(list, to, field.value().items);
  const ListChange change{ListChange::Does::Moves, at, to};
  auto faults = lettersLost(job, list, change);
  if (!faults.empty()) return faults;
  Job next = job;
  faults = set(next, FieldSetter::changing(list, change, styleOf(job)));
  if (!faults.empty()) return faults;
  return ifJobHeld(std::move(next), job);
}

}  // namespace ribwright
