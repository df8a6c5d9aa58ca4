// A field that is so or not.
#pragma once

#include <QCheckBox>

#include "ui/panels/field_editor.h"

namespace ribwright {

class FlagEditor : public FieldEditor {
  Q_OBJECT

 public:
  FlagEditor(const Session& session, const ShownField& shown, QWidget* parent);
  void show(const ShownField& shown) override;

 protected:
  void accept() override {}

 private:
  QCheckBox* box_;
};

}  // namespace ribwright
