// What can be done to what is chosen on the wall, or at a place of it, as a menu.
#pragma once

#include <QMenu>
#include <functional>
#include <optional>
#include <vector>

#include "core/editing/grips.h"
#include "core/job/building.h"
#include "ui/session/session.h"

namespace ribwright {

struct MenuPlace {
  std::optional<FacePoint> at;  // on the face; absent: asked for by key
  std::optional<Grip> grip;     // near it
};

// Fills an empty menu. `told`: why something could not be done.
void fillPartMenu(QMenu& menu, Session& session, const MenuPlace& place,
                  const std::function<void(const QString&)>& told);

}  // namespace ribwright
