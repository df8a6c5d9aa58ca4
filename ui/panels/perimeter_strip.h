// The building's walls unrolled in walking order, each as wide as it is in the building where there is room. Choosing
// one here chooses it everywhere.
#pragma once

#include <QScrollArea>
#include <vector>

#include "ui/session/session.h"

namespace ribwright {

class WallTile;

class PerimeterStrip : public QScrollArea {
  Q_OBJECT

 public:
  explicit PerimeterStrip(Session& session, QWidget* parent = nullptr);

  const std::vector<WallTile*>& tiles() const { return tiles_; }

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void showJob();
  void showWall();
  void step(int by);
  void placeTiles();
  int tileHeight() const;

  Session& session_;
  QWidget* row_;
  std::vector<WallTile*> tiles_;
};

}  // namespace ribwright
