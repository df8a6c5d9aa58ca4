#include "ui/tools/part_menu.h"

#include <QCoreApplication>
#include <algorithm>

#include "core/editing/girt_edits.h"
#include "core/editing/opening_edits.h"
#include "core/editing/outline_edits.h"
#include "core/editing/part_names.h"
#include "core/editing/repeat_edits.h"
#include "core/editing/run_edits.h"
#include "core/editing/wall_parts.h"
#include "core/job/by_id.h"
#include "ui/tools/bay_dialog.h"

namespace ribwright {

namespace {

struct PartMenuTexts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::PartMenu)
};

class Filling {
 public:
  Filling(QMenu& menu, Session& session, const MenuPlace& place, const std::function<void(const QString&)>& told)
      : menu_(menu), session_(session), place_(place), told_(told), wall_(static_cast<std::size_t>(session.wall())) {}

  void fill() {
    const auto& parts = session_.chosenParts();
    const bool boxes = !parts.empty() && std::all_of(parts.begin(), parts.end(), [](const Part& part) {
      return part.kind == Part::Kind::Opening || part.kind == Part::Kind::Penetration;
    });
    if (boxes) addBoxes();
    if (parts.size() == 1 && parts[0].kind == Part::Kind::Opening) addStarts(parts[0].id);
    if (parts.size() == 1 && parts[0].kind == Part::Kind::Girt) fillGirt(parts[0]);
    if (parts.size() == 1 && parts[0].kind == Part::Kind::Column) fillColumn(parts[0]);
    if (boxes || (!parts.empty() && parts[0].kind == Part::Kind::Girt)) addRemove();
    if (!menu_.isEmpty()) menu_.addSeparator();
    addGrip();
    if (place_.at) addHere(*place_.at);
    addHang();
  }

 private:
  using Make = std::function<Outcome<Job>(const Job&)>;

  std::string named(const char* id, const std::vector<Part>& parts, WordValues more = {}) const {
    return editName(id, parts, session_.words(), session_.style(), std::move(more));
  }

  QAction* put(const QString& words, const char* name, const std::string& edit, Make make) {
    return put(menu_, words, name, edit, std::move(make));
  }

  QAction* put(QMenu& menu, const QString& words, const char* name, const std::string& edit, Make make) {
    QAction* action = menu.addAction(words);
    action->setObjectName(QLatin1String(name));
    QObject::connect(action, &QAction::triggered, &session_, [this_ = *this, edit, make = std::move(make)] {
      const auto faults = this_.session_.edit(edit, make);
      if (!faults.empty()) this_.told_(QString::fromStdString(faults.front().message));
    });
    return action;
  }

  // An edit that makes parts: they are chosen then.
  void putMaking(const QString& words, const char* name, const std::string& edit,
                 std::function<Outcome<MadeParts>(const Job&)> make) {
    QAction* action = menu_.addAction(words);
    action->setObjectName(QLatin1String(name));
    QObject::connect(action, &QAction::triggered, &session_, [this_ = *this, edit, make = std::move(make)] {
      if (const auto made = make(this_.session_.newest())) {
        this_.session_.apply(edit, made.value().job);
        this_.session_.chooseParts(made.value().parts);
      } else {
        this_.told_(QString::fromStdString(made.faults().front().message));
      }
    });
  }

  void addBoxes() {
    const std::vector<Part> parts = session_.chosenParts();
    const std::size_t wall = wall_;
    const Length by = session_.job().units == UnitSystem::FeetInches ? Length::feet(1) : Length::millimetres(300);
    Length width;
    for (const Opening& opening : session_.chosenWall().openings) {
      for (const Part& part : parts) width = part.id == opening.id ? std::max(width, opening.width) : width;
    }
    putMaking(PartMenuTexts::tr("&Copy beside"), "copyBeside", named("edit.copy", parts),
              [parts, by, width](const Job& job) {
                return partsCopied(job, parts, {width + by, Length()});
              });
    putMaking(PartMenuTexts::tr("One in &each bay"), "onePerBay", named("edit.step", parts),
              [parts, wall](const Job& job) { return onePerBay(job, wall, parts); });
    addSteps(parts);
    const auto opposite = oppositeWall(session_.job(), wall);
    if (!opposite) return;
    const std::string letter = session_.job().walls[*opposite].letter;
    putMaking(PartMenuTexts::tr("&Mirror to wall %1").arg(QString::fromStdString(letter)), "mirrorAcross",
              named("edit.mirror", parts, {{"wall", letter}}),
              [parts, wall](const Job& job) { return mirroredToOpposite(job, wall, parts); });
  }

  void addSteps(const std::vector<Part>& parts) {
    const int bays = static_cast<int>(session_.chosenWall().columns.bays.size());
    if (bays == 0) return;
    QAction* action = menu_.addAction(PartMenuTexts::tr("&Repeat along bays…"));
    action->setObjectName(QStringLiteral("repeatAlongBays"));
    QObject::connect(action, &QAction::triggered, &session_, [this_ = *this, parts, bays] {
      const auto chosen = askForBays(bays);
      if (!chosen) return;
      const auto made = steppedAlongBays(this_.session_.newest(), this_.wall_, parts, chosen->first, chosen->count);
      if (!made) return this_.told_(QString::fromStdString(made.faults().front().message));
      this_.session_.apply(this_.named("edit.step", parts), made.value().job);
      this_.session_.chooseParts(made.value().parts);
    });
  }

  void addStarts(const std::string& opening) {
    for (const auto side : {Start::Side::Left, Start::Side::Right}) {
      const bool left = side == Start::Side::Left;
      const std::size_t wall = wall_;
      put(left ? PartMenuTexts::tr("Start with a seam at its &left jamb")
               : PartMenuTexts::tr("Start with a seam at its ri&ght jamb"),
          left ? "seamAtLeftJamb" : "seamAtRightJamb",
          session_.words().say("edit.change-start", {{"wall", session_.chosenWall().letter}}, session_.style()),
          [wall, opening, side](const Job& job) -> Outcome<Job> {
            Job next = job;
            next.walls.at(wall).start = {Start::Rule::SeamAtJamb, {}, opening, side};
            return next;
          });
    }
  }

  void fillGirt(const Part& part) {
    const Girt* girt = girtOf(session_.chosenWall(), part);
    if (!girt || girt->id.empty()) return;
    const std::string id = girt->id;
    const std::size_t wall = wall_;
    if (place_.at) {
      const Length u = roundTo(place_.at->u, tapeMark(session_.job().units));
      put(PartMenuTexts::tr("&Split here"), "splitGirt", named("edit.split", {part}),
          [=](const Job& job) { return girtSplitAt(job, wall, id, u); });
      put(PartMenuTexts::tr("Keep the &left part"), "keepLeftPart", named("edit.stop", {part}),
          [=](const Job& job) { return girtEndMovedTo(job, wall, id, GirtEnd::Right, u); });
      put(PartMenuTexts::tr("Keep the ri&ght part"), "keepRightPart", named("edit.stop", {part}),
          [=](const Job& job) { return girtEndMovedTo(job, wall, id, GirtEnd::Left, u); });
    }
    QMenu* round = menu_.addMenu(PartMenuTexts::tr("Split r&ound"));
    for (const Opening& opening : session_.chosenWall().openings) {
      if (opening.sill > girt->height || opening.sill + opening.height < girt->height) continue;
      const std::string hole = opening.id;
      put(*round, QString::fromStdString(hole), ("splitRound:" + hole).c_str(), named("edit.split", {part}),
          [=](const Job& job) { return girtSplitRound(job, wall, id, hole); });
    }
    round->setEnabled(!round->isEmpty());
    put(PartMenuTexts::tr("&Run through"), "runThrough", named("edit.run-through", {part}),
        [=](const Job& job) { return girtRunThrough(job, wall, id); });
  }

  void fillColumn(const Part& part) {
    const auto number = columnOf(session_.chosenWall(), part);
    if (!number) return;
    const int column = *number;
    const std::size_t wall = wall_;
    put(PartMenuTexts::tr("&Delete, openings stay where they are"), "removeColumnStay", named("edit.remove", {part}),
        [=](const Job& job) { return columnRemoved(job, wall, column, Anchored::Stay); });
    put(PartMenuTexts::tr("Delete, &openings keep their distance"), "removeColumnFollow", named("edit.remove", {part}),
        [=](const Job& job) { return columnRemoved(job, wall, column, Anchored::Follow); });
  }

  void addRemove() {
    const std::vector<Part> parts = session_.chosenParts();
    put(PartMenuTexts::tr("&Delete"), "removeParts", named("edit.remove", parts),
        [parts](const Job& job) { return partsRemoved(job, parts); });
  }

  // A joint, a band's limit, a step or a point of the top that is near.
  void addGrip() {
    if (!place_.grip) return;
    const Grip grip = *place_.grip;
    const std::size_t wall = wall_, index = grip.index;
    Make make;
    if (grip.kind == Grip::Kind::Joint) make = [=](const Job& job) { return jointRemoved(job, wall, index); };
    if (grip.kind == Grip::Kind::Band) make = [=](const Job& job) { return bandRemoved(job, wall, index); };
    if (grip.kind == Grip::Kind::BaseStep) make = [=](const Job& job) { return baseStepRemoved(job, wall, index); };
    if (grip.kind == Grip::Kind::TopPoint) make = [=](const Job& job) { return topPointRemoved(job, wall, index); };
    if (!make) return;
    const std::string edit = session_.words().say("edit.remove", {{"what", nameOf(grip)}}, session_.style());
    put(QString::fromStdString(edit), "removeGrip", edit, make);
  }

  void addHere(const FacePoint& place) {
    const Length mark = tapeMark(session_.job().units);
    const FacePoint at{roundTo(place.u, mark), roundTo(place.z, mark)};
    const std::size_t wall = wall_;
    QMenu* here = menu_.addMenu(PartMenuTexts::tr("&Add here"));
    const auto add = [&](const QString& words, const char* name, const char* what, Make make) {
      put(*here, words, name, session_.words().say("edit.add", {{"what", Phrase{what}}}, session_.style()),
          std::move(make));
    };
    add(PartMenuTexts::tr("&Girt"), "girtHere", "name.a-girt",
        [=](const Job& job) { return addGirt(job, wall, girtAtHeight(job, wall, at.z)); });
    add(PartMenuTexts::tr("&Column"), "columnHere", "name.a-column",
        [=](const Job& job) { return columnAdded(job, wall, at.u); });
    add(PartMenuTexts::tr("&Expansion joint"), "jointHere", "name.a-joint",
        [=](const Job& job) { return jointAdded(job, wall, at.u); });
    add(PartMenuTexts::tr("&Band of other sheets"), "bandHere", "name.a-band",
        [=](const Job& job) { return bandSplitAt(job, wall, at.z); });
    add(PartMenuTexts::tr("&Step of the concrete"), "baseStepHere", "name.a-base-step",
        [=](const Job& job) { return baseStepAdded(job, wall, at); });
    if (!session_.chosenWall().top.empty())
      add(PartMenuTexts::tr("&Point of the top"), "topPointHere", "name.a-top-point",
          [=](const Job& job) { return topPointAdded(job, wall, at); });
  }

  void addHang() {
    QMenu* hang = menu_.addMenu(PartMenuTexts::tr("&Hang the sheets"));
    const std::string edit =
        session_.words().say("edit.hang", {{"wall", session_.chosenWall().letter}}, session_.style());
    const std::size_t wall = wall_;
    const auto add = [&](const QString& words, const char* name, Hang which) {
      QAction* action = put(*hang, words, name, edit, [=](const Job& job) { return hungFrom(job, wall, which); });
      action->setCheckable(true);
      action->setChecked(session_.chosenWall().hang == which);
    };
    add(PartMenuTexts::tr("&By rule: laps away from the sight point"), "hangByRule", Hang::ByRule);
    add(PartMenuTexts::tr("&Left to right"), "hangLeftToRight", Hang::LeftToRight);
    add(PartMenuTexts::tr("&Right to left"), "hangRightToLeft", Hang::RightToLeft);
  }

  QMenu& menu_;
  Session& session_;
  MenuPlace place_;
  std::function<void(const QString&)> told_;
  std::size_t wall_;
};

}  // namespace

void fillPartMenu(QMenu& menu, Session& session, const MenuPlace& place,
                  const std::function<void(const QString&)>& told) {
  if (session.isOpen() && session.wall() >= 0) Filling(menu, session, place, told).fill();
}

}  // namespace ribwright
