// A field that is one of several: words of the trade, or things of the job by their ids.
#pragma once

#include "ui/panels/calm_combo.h"
#include "ui/panels/field_editor.h"

namespace ribwright {

class ChoiceEditor : public FieldEditor {
  Q_OBJECT

 public:
  ChoiceEditor(const Session& session, const ShownField& shown, QWidget* parent);
  void show(const ShownField& shown) override;

 protected:
  void accept() override { refused_ = false; }
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void fill();
  void add(const QString& words, const std::string& text);
  void showStanding();

  CalmCombo* combo_;
  ShownField shown_;
  bool refused_ = false;  // what was chosen stays in sight until it is taken back
};

}  // namespace ribwright
