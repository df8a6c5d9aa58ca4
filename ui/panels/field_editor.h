// What one field of a job is shown and typed in, with what is wrong with it right below.
#pragma once

#include <QLabel>
#include <QWidget>
#include <optional>
#include <vector>

#include "core/editing/field.h"
#include "core/units/outcome.h"

namespace ribwright {

class Session;

// A field as it is to be shown: of one object, or of several at once.
struct ShownField {
  Field field;                     // of the first
  bool various = false;            // they do not agree
  QString instead;                 // what holds while it is absent, or usually: shown where nothing is typed
  std::vector<std::string> names;  // what it may name; empty when it names nothing
};

class FieldEditor : public QWidget {
  Q_OBJECT

 public:
  // Of the kind that the field needs; `session`: for its words. Its input is called "field:" and the field's path
  // without indices.
  static FieldEditor* make(const Session& session, const ShownField& shown, QWidget* parent);

  virtual void show(const ShownField& shown) = 0;
  // What was entered stands; or the first thing that is wrong with it.
  void tell(const std::vector<Fault>& faults);
  virtual void finishTyping() {}
  // What is being typed, or was refused; absent: nothing.
  virtual std::optional<QString> typed() const { return std::nullopt; }
  virtual void setTyped(const QString&) {}
  QWidget* input() const { return input_; }
  QString fault() const { return fault_->isHidden() ? QString() : fault_->text(); }
  void setFault(const QString& words);

 signals:
  void entered(const QString& text);
  // The keyboard went elsewhere.
  void left();

 protected:
  FieldEditor(const Session& session, const ShownField& shown, QWidget* input, QWidget* parent);
  const Session& session() const { return session_; }
  virtual void accept() = 0;
  void clearFault() { setFault({}); }
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void bringFaultIntoView();

  const Session& session_;
  std::string path_;
  QWidget* input_;
  QLabel* fault_;
};

// "field:walls.base.drop"
QString fieldName(const std::string& path);
QString labelOf(const Session& session, const Field& field);
QString tipOf(const Session& session, const Field& field);
// A choice or a flag in words, else the text as it is.
QString shownText(const Session& session, const Field& field);

}  // namespace ribwright
