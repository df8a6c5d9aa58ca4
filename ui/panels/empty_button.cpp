#include "ui/panels/empty_button.h"

#include <QMenu>
#include <QToolTip>

#include "core/editing/empty_wall.h"
#include "core/job/by_id.h"
#include "core/job/job_file.h"

namespace ribwright {

EmptyButton::EmptyButton(Session& session, QWidget* parent)
    : QPushButton(parent), session_(session), profiles_(new QMenu(this)) {
  setObjectName(QStringLiteral("emptyDo"));
  profiles_->setObjectName(QStringLiteral("emptyProfiles"));
  connect(this, &QPushButton::clicked, this, &EmptyButton::act);
  connect(&session_, &Session::wallChanged, this, &EmptyButton::renew);
  connect(&session_, &Session::jobChanged, this, &EmptyButton::renew);
  renew();
}

void EmptyButton::renew() {
  const bool bare = session_.isOpen() && session_.wall() < 0;
  const WallLacks lacks =
      session_.isOpen() && session_.wall() >= 0 ? lacking(session_.chosenWall()) : WallLacks::Nothing;
  setVisible(bare || lacks != WallLacks::Nothing);
  setMenu(lacks == WallLacks::Profile ? profiles_ : nullptr);
  if (lacks == WallLacks::Profile) fillProfiles();
  if (bare) setText(tr("Begin a new job…"));
  if (lacks == WallLacks::Sheets) setText(tr("Hang sheets here"));
  if (lacks == WallLacks::Profile) setText(tr("Choose a profile"));
  if (lacks == WallLacks::Girts) setText(tr("Add girts"));
  setToolTip(
      lacks == WallLacks::Girts
          ? tr("As on the first wall that has girts; else at ordinary heights, to be moved to those of the plans")
          : QString());
}

// The job's own first.
void EmptyButton::fillProfiles() {
  profiles_->clear();
  const auto add = [this](const Profile& profile) {
    QAction* action = profiles_->addAction(QString::fromStdString(profile.name.empty() ? profile.id : profile.name));
    connect(action, &QAction::triggered, this, [this, id = profile.id, name = profile.name] {
      const auto wall = static_cast<std::size_t>(session_.wall());
      edit("edit.profile", {{"profile", name.empty() ? id : name}},
           [&](const Job& job) { return profileHung(job, wall, id); });
    });
  };
  for (const Profile& profile : session_.job().profiles) add(profile);
  if (!session_.job().profiles.empty()) profiles_->addSeparator();
  for (const Profile& profile : shippedProfiles()) {
    if (!byId(session_.job().profiles, profile.id)) add(profile);
  }
}

void EmptyButton::act() {
  if (session_.wall() < 0) return emit newAsked();
  const auto wall = static_cast<std::size_t>(session_.wall());
  const WallLacks lacks = lacking(session_.chosenWall());
  if (lacks == WallLacks::Sheets) edit("edit.sheeted", {}, [&](const Job& job) { return sheetsHung(job, wall); });
  if (lacks == WallLacks::Girts) edit("edit.girts", {}, [&](const Job& job) { return girtsAdded(job, wall); });
}

void EmptyButton::edit(const char* id, const WordValues& values, const Session::Edit& change) {
  WordValues all = values;
  all.emplace_back("wall", session_.chosenWall().letter);
  const auto faults = session_.edit(session_.words().say(id, all, session_.style()), change);
  if (faults.empty()) return;
  const QString why = QString::fromStdString(oneLine(faults.front()));
  QToolTip::showText(mapToGlobal(rect().bottomLeft()), why, this);
  emit refused(why);
}

}  // namespace ribwright
