// The fields of an object of the job, of all that lies in it, and of several objects at once: those that do not agree
// show that, and entering one sets all of them.
#pragma once

#include <QWidget>
#include <string>
#include <vector>

#include "core/editing/field.h"

class QGridLayout;

namespace ribwright {

class FieldEditor;
class FieldList;
class FoldingGroup;
class Session;
struct ShownField;

class FieldForm : public QWidget {
  Q_OBJECT

 public:
  enum class Shows { All, OwnFields };  // OwnFields: neither objects nor lists in it
  FieldForm(Session& session, Shows shows, QWidget* parent);

  // The objects at these paths, of one type; none: nothing. Groups of large forms begin folded.
  void setPaths(const std::vector<std::string>& paths);
  const std::vector<std::string>& paths() const { return paths_; }
  // As the newest job has it.
  void refresh();
  // Enters what is being typed.
  void finishTyping();

 private:
  struct Row {
    std::string path;  // of the first object's
    FieldEditor* editor;
  };

  std::vector<Field> readAll() const;
  void build(const std::vector<Field>& objects);
  void drop();
  void fill(QWidget* body, const std::string& object);
  void addField(QGridLayout* rows, const ShownField& shown);
  void addObject(QGridLayout* rows, const Field& object);
  void addStated(FoldingGroup* group, const Field& object);
  void enter(const std::string& path, FieldEditor* editor, const QString& text);
  std::vector<std::string> pathsOf(const std::string& path) const;
  ShownField shownAt(const Field& field, const std::vector<Field>& others) const;

  Session& session_;
  Shows shows_;
  std::vector<std::string> paths_;
  std::string build_;  // what the form was built for
  QWidget* content_ = nullptr;
  std::vector<Row> rows_;
  std::vector<FieldList*> lists_;
};

}  // namespace ribwright
