// A field in one line of text: lengths and strings of lengths, angles, slopes, numbers, names.
#pragma once

#include "ui/panels/field_editor.h"
#include "ui/panels/typed_line.h"

namespace ribwright {

class LineEditor : public FieldEditor {
  Q_OBJECT

 public:
  LineEditor(const Session& session, const ShownField& shown, QWidget* parent);
  void show(const ShownField& shown) override;
  void finishTyping() override { line_->finishTyping(); }
  std::optional<QString> typed() const override;
  void setTyped(const QString& text) override;

 protected:
  void accept() override { line_->accept(); }

 private:
  TypedLine* line_;
};

}  // namespace ribwright
