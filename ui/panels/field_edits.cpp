#include "ui/panels/field_edits.h"

#include <optional>

#include "core/drawing/particulars.h"
#include "core/editing/field_path.h"
#include "core/editing/field_words.h"
#include "core/editing/job_fields.h"
#include "core/editing/typed_fields.h"
#include "ui/session/session.h"

namespace ribwright {

namespace {

std::string nameSaid(const Session& session, const Phrase& phrase) {
  return session.words().say(phrase, {session.newest().units, session.newest().decimalSign});
}

Phrase whatOf(const Session& session, const std::vector<std::string>& paths) {
  if (paths.size() > 1) return {"field.several", {{"count", static_cast<std::int64_t>(paths.size())}}};
  return whatLiesAt(session.newest(), paths.front());
}

// The chosen part, where the field is its id.
std::optional<Part> renamed(const Session& session, const Field& field, const std::string& id) {
  const auto& part = session.chosen();
  if (!part || field.key != "id" || part->id != field.text) return std::nullopt;
  const bool own = (field.owner == "opening" && part->kind == Part::Kind::Opening) ||
                   (field.owner == "penetration" && part->kind == Part::Kind::Penetration) ||
                   (field.owner == "girt" && part->kind == Part::Kind::Girt);
  return own ? std::optional(Part{part->kind, part->wall, id}) : std::nullopt;
}

// A large job is planned a moment later, and has the wall by its new letter only then.
void chooseWallSoon(Session& session, const std::string& letter) {
  if (wallIndex(session.job(), letter)) return session.chooseWall(letter);
  QObject::connect(
      &session, &Session::jobChanged, &session, [&session, letter] { session.chooseWall(letter); },
      Qt::SingleShotConnection);
}

}  // namespace

std::vector<Fault> enterField(Session& session, const std::vector<std::string>& paths, const Field& field,
                              const QString& text) {
  const std::string typed = text.toStdString();
  const auto part = renamed(session, field, typed);
  const bool isChosenWall = field.owner == "wall" && field.key == "letter" && session.wall() >= 0 &&
                            session.chosenWall().letter == field.text;
  const std::string name = nameSaid(session, fieldSetPhrase(field, typed, whatOf(session, paths)));
  const auto faults = session.edit(
      name,
      [&](const Job& job) -> Outcome<Job> {
        Outcome<Job> next = job;
        for (const std::string& path : paths) {
          if (next) next = withTypedField(next.value(), path, typed);
        }
        return next;
      },
      paths.front());
  if (!faults.empty()) return faults;
  if (part) session.choose(part);
  if (isChosenWall) chooseWallSoon(session, typed);
  return {};
}

std::vector<Fault> stateField(Session& session, const std::string& path, const Field& field, bool stated) {
  const Phrase what = whatLiesAt(session.newest(), path);
  return session.edit(nameSaid(session, fieldStatedPhrase(field, stated, what)),
                      [&](const Job& job) { return stated ? withFieldStated(job, path) : withFieldAbsent(job, path); });
}

std::vector<Fault> addItem(Session& session, const Field& list, std::size_t at) {
  const Phrase what = whatLiesAt(session.newest(), pathAbove(list.path));
  return session.edit(nameSaid(session, itemAddedPhrase(list, what)),
                      [&](const Job& job) { return withItemAdded(job, list.path, at); });
}

std::vector<Fault> removeItem(Session& session, const Field& list, std::size_t at) {
  const Phrase what = whatLiesAt(session.newest(), pathAbove(list.path));
  return session.edit(nameSaid(session, itemRemovedPhrase(list, itemName(list, at), what)),
                      [&](const Job& job) { return withItemRemoved(job, list.path, at); });
}

std::vector<Fault> moveItem(Session& session, const Field& list, std::size_t at, std::size_t to) {
  const Phrase what = whatLiesAt(session.newest(), pathAbove(list.path));
  return session.edit(nameSaid(session, itemMovedPhrase(list, itemName(list, at), what)),
                      [&](const Job& job) { return withItemMoved(job, list.path, at, to); });
}

std::string itemName(const Field& list, std::size_t at) {
  if (at < list.fields.size()) {
    for (const Field& field : list.fields[at].fields) {
      const bool isName = field.key == "id" || field.key == "letter" || field.key == "mark" || field.key == "name";
      if (isName && !field.text.empty()) return field.text;
    }
  }
  return std::to_string(at + 1);
}

}  // namespace ribwright
