// A field in several lines: notes, and lists of names with one a line.
#pragma once

#include "ui/panels/field_editor.h"
#include "ui/panels/typed_lines.h"

namespace ribwright {

class LinesEditor : public FieldEditor {
  Q_OBJECT

 public:
  LinesEditor(const Session& session, const ShownField& shown, QWidget* parent);
  void show(const ShownField& shown) override;
  void finishTyping() override { lines_->finishTyping(); }
  std::optional<QString> typed() const override;
  void setTyped(const QString& text) override;

 protected:
  void accept() override { lines_->accept(); }

 private:
  TypedLines* lines_;
};

}  // namespace ribwright
