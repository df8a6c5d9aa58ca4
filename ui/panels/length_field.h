// A field for one length that may be absent. What cannot be read stays as it was typed.
#pragma once

#include <QLineEdit>
#include <optional>

#include "core/units/length_text.h"

namespace ribwright {

class LengthField : public QLineEdit {
  Q_OBJECT

 public:
  // `name`: of the object.
  explicit LengthField(const char* name, QWidget* parent = nullptr);

  // Shows the length, unless something else is being typed.
  void setLength(const std::optional<Length>& length, const LengthStyle& style);
  // Forgets what is being typed.
  void giveUp() { setModified(false); }
  // Enters what was typed, as leaving the field does.
  void finishTyping();

  QSize sizeHint() const override;

 signals:
  // Blank: absent.
  void entered(const std::optional<Length>& length);
  void refused(const QString& why);

 protected:
  bool event(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  bool takesBack(const QKeyEvent& key) const;

  LengthStyle style_;
  std::optional<Length> length_;
};

}  // namespace ribwright
