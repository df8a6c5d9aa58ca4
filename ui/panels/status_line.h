// The window's lowest line: what the last edit did to the order and the drill batches, what lies under the cursor or is
// chosen, a packet's progress, counts, units and zoom.
#pragma once

#include <QObject>
#include <optional>

#include "ui/session/session.h"

class QLabel;
class QStatusBar;

namespace ribwright {

class ElidedLabel;
class PacketBar;

class StatusLine : public QObject {
  Q_OBJECT

 public:
  StatusLine(Session& session, QStatusBar* bar);

  PacketBar* packet() const { return packet_; }
  // What lies under the cursor; the chosen part without.
  void setHovered(const std::optional<Part>& part);
  void setZoom(const QString& words);

 private:
  void showJob();
  QString whatChanged() const;
  QString lastEdit() const;
  void showPart();

  Session& session_;
  ElidedLabel* changes_;  // hidden while there is nothing to tell
  ElidedLabel* part_;
  PacketBar* packet_;
  QLabel* counts_;
  QLabel* units_;
  QLabel* zoom_;
  std::optional<Part> hovered_;
};

}  // namespace ribwright
