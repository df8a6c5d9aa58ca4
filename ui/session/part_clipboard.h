// Cut, copy, paste, delete, select all: of the chosen parts, or of the text field that has the keyboard. Between
// windows parts go through the clipboard, with the members that they name.
#pragma once

#include <QObject>
#include <vector>

#include "ui/session/session.h"

class QKeyEvent;
class QWidget;

namespace ribwright {

class PartClipboard : public QObject {
  Q_OBJECT

 public:
  PartClipboard(Session& session, QObject* parent);

  void cut();
  void copy();
  // On the chosen wall, as one step; what was pasted is chosen.
  void paste();
  void remove();
  // Openings, penetrations and girts of the chosen wall.
  void chooseAll();

  // These keys are the field's or table's own that has the keyboard.
  static bool belongsToField(const QKeyEvent& event);

 signals:
  void told(const QString& words);

 private:
  bool put();
  void tell(const std::vector<Fault>& faults);

  Session& session_;
};

}  // namespace ribwright
