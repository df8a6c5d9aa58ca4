#include "ui/panels/field_form.h"

#include <QGridLayout>
#include <QLabel>
#include <QVBoxLayout>
#include <algorithm>

#include "core/editing/field_path.h"
#include "core/editing/field_words.h"
#include "core/editing/job_fields.h"
#include "core/editing/typed_fields.h"
#include "ui/panels/field_editor.h"
#include "ui/panels/field_edits.h"
#include "ui/panels/field_list.h"
#include "ui/panels/folding_group.h"
#include "ui/panels/grade_text.h"
#include "ui/session/session.h"
#include "ui/session/window_text.h"

namespace ribwright {

namespace {

constexpr int labelShare = 45, mostLabelLetters = 32;
constexpr std::size_t mostOpen = 20;  // fields in a form whose groups are not folded

std::size_t countOf(const Field& object) {
  std::size_t count = 0;
  for (const Field& field : object.fields) count += field.kind == FieldKind::Object ? countOf(field) : 1;
  return count;
}

// What would make another form: objects that are there or not, things that can be named, one choice or several.
void addShape(const Field& object, std::string& shape) {
  for (const Field& field : object.fields) {
    shape += field.key;
    if (field.kind == FieldKind::Object) {
      shape += field.absent ? "-(" : "(";
      if (!field.absent) addShape(field, shape);
      shape += ')';
    }
    shape += ' ';
  }
}

const Field* fieldIn(const Field& object, std::string_view path) {
  for (const Field& field : object.fields) {
    if (field.path == path) return &field;
    if (isWithin(path, field.path)) return fieldIn(field, path);
  }
  return nullptr;
}

}  // namespace

FieldForm::FieldForm(Session& session, Shows shows, QWidget* parent)
    : QWidget(parent), session_(session), shows_(shows) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
}

void FieldForm::setPaths(const std::vector<std::string>& paths) {
  if (paths != paths_) {
    finishTyping();
    drop();
  }
  paths_ = paths;
  refresh();
}

void FieldForm::finishTyping() {
  const auto rows = rows_;  // entering may build the form anew
  for (const Row& row : rows) row.editor->finishTyping();
  const auto lists = lists_;
  for (FieldList* list : lists) list->finishTyping();
}

std::vector<Field> FieldForm::readAll() const {
  std::vector<Field> objects;
  if (!session_.isOpen()) return objects;
  for (const std::string& path : paths_) {
    if (auto object = fieldAt(session_.newest(), path)) objects.push_back(std::move(object).value());
  }
  if (objects.size() != paths_.size()) objects.clear();
  return objects;
}

void FieldForm::refresh() {
  const std::vector<Field> objects = readAll();
  if (objects.empty()) return drop();
  std::string shape = objects.size() > 1 ? "several " : "";
  addShape(objects.front(), shape);
  if (!content_ || shape != build_) {
    build(objects);
    build_ = shape;
  }
  for (const Row& row : rows_) {
    if (const Field* field = fieldIn(objects.front(), row.path)) row.editor->show(shownAt(*field, objects));
  }
  for (FieldList* list : lists_) list->refresh();
}

// Its inputs may be telling right now, and go a moment later.
void FieldForm::drop() {
  if (!content_) return;
  for (const Row& row : rows_) row.editor->disconnect(this);
  rows_.clear();
  lists_.clear();
  build_.clear();
  content_->hide();
  content_->setParent(nullptr);
  content_->deleteLater();
  content_ = nullptr;
}

// What is being typed, and where the keyboard is, outlive the form.
void FieldForm::build(const std::vector<Field>& objects) {
  struct Kept {
    std::string path;
    std::optional<QString> typed;
    QString fault;
    bool focus;
  };
  std::vector<Kept> kept;
  for (const Row& row : rows_)
    kept.push_back({row.path, row.editor->typed(), row.editor->fault(), row.editor->input()->hasFocus()});
  drop();
  content_ = new QWidget(this);
  layout()->addWidget(content_);
  fill(content_, objects.front().path);
  content_->show();
  for (const Row& row : rows_) {
    const auto was = std::find_if(kept.begin(), kept.end(), [&](const Kept& one) { return one.path == row.path; });
    if (was == kept.end()) continue;
    if (was->typed) row.editor->setTyped(*was->typed), row.editor->setFault(was->fault);
    if (was->focus) row.editor->input()->setFocus();
  }
}

void FieldForm::fill(QWidget* body, const std::string& path) {
  const std::vector<Field> objects = readAll();
  if (objects.empty()) return;
  const Field* object = path == objects.front().path ? &objects.front() : fieldIn(objects.front(), path);
  if (!object) return;
  auto* rows = new QGridLayout(body);
  rows->setContentsMargins(body->contentsMargins().left(), 0, 0, 0);
  body->setContentsMargins(0, 0, 0, 0);
  rows->setColumnStretch(0, labelShare);
  rows->setColumnStretch(1, 100 - labelShare);
  // In a large form the groups are found below its own fields; else in the table's order.
  const bool apart = countOf(objects.front()) > mostOpen;
  for (const Field& field : object->fields) {
    if (field.isText()) addField(rows, shownAt(field, objects));
    if (!field.isText() && !apart && shows_ == Shows::All) addObject(rows, field);
  }
  for (const Field& field : object->fields) {
    if (!field.isText() && apart && shows_ == Shows::All) addObject(rows, field);
  }
}

void FieldForm::addField(QGridLayout* rows, const ShownField& shown) {
  FieldEditor* editor = FieldEditor::make(session_, shown, rows->parentWidget());
  auto* label = new QLabel(labelOf(session_, shown.field), rows->parentWidget());
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  label->setMaximumWidth(mostLabelLetters * fontMetrics().averageCharWidth());
  label->setBuddy(editor->input());
  label->setToolTip(tipOf(session_, shown.field));
  const int row = rows->rowCount();
  rows->addWidget(label, row, 0);
  rows->addWidget(editor, row, 1);
  rows_.push_back({shown.field.path, editor});
  connect(editor, &FieldEditor::entered, this,
          [this, editor, path = shown.field.path](const QString& typed) { enter(path, editor, typed); });
  connect(editor, &FieldEditor::left, this, [this] { session_.endMerging(); });
}

void FieldForm::addObject(QGridLayout* rows, const Field& object) {
  if (paths_.size() > 1 && (object.kind == FieldKind::List || object.optional)) return;  // of each its own
  const auto whole = fieldAt(session_.newest(), paths_.front());
  const bool open = whole && countOf(whole.value()) <= mostOpen;
  auto* group = new FoldingGroup(fieldName(object.path), labelOf(session_, object), open, rows->parentWidget());
  group->fold()->setToolTip(tipOf(session_, object));
  rows->addWidget(group, rows->rowCount(), 0, 1, 2);
  if (object.optional) addStated(group, object);
  group->setFilling([this, object](QWidget* body) {
    if (object.kind == FieldKind::List) {
      auto* list = new FieldList(session_, object, body);
      lists_.push_back(list);
      auto* layout = new QVBoxLayout(body);
      layout->setContentsMargins(body->contentsMargins().left(), 0, 0, 0);
      body->setContentsMargins(0, 0, 0, 0);
      layout->addWidget(list);
    } else if (!object.absent) {
      fill(body, object.path);
    }
  });
}

void FieldForm::addStated(FoldingGroup* group, const Field& object) {
  auto* stated = new QCheckBox(tr("stated"), group);
  stated->setObjectName(fieldName(object.path) + QStringLiteral(".stated"));
  stated->setAccessibleName(labelOf(session_, object) + QStringLiteral(": ") + stated->text());
  stated->setChecked(!object.absent);
  auto* fault = new QLabel(group);
  fault->setTextFormat(Qt::PlainText);
  fault->setWordWrap(true);
  fault->setVisible(object.absent);
  if (object.absent) fault->setText(text(session_.words().say(absentId(object), {}, session_.style())));
  group->head()->addWidget(stated);
  group->head()->addWidget(fault);
  connect(stated, &QCheckBox::clicked, this, [this, object, stated, fault](bool on) {
    const auto faults = stateField(session_, object.path, object, on);
    if (faults.empty()) return;
    stated->setChecked(!on);
    fault->setText(gradeSign(Grade::Look) + QLatin1Char(' ') + text(oneLine(faults.front())));
    fault->show();
  });
}

void FieldForm::enter(const std::string& path, FieldEditor* editor, const QString& typed) {
  const std::vector<Field> objects = readAll();
  const Field* field = objects.empty() ? nullptr : fieldIn(objects.front(), path);
  if (!field) return;
  const bool stands = !shownAt(*field, objects).various && typed == text(field->text);
  const Field before = *field;
  if (stands) return editor->tell({});
  // It no longer counts as being typed while the job goes on, and does again when it was refused.
  const auto kept = editor->typed();
  editor->tell({});
  const auto faults = enterField(session_, pathsOf(path), before, typed);
  if (faults.empty()) return;
  if (kept) editor->setTyped(*kept);
  editor->tell(faults);
}

// The same field of every object.
std::vector<std::string> FieldForm::pathsOf(const std::string& path) const {
  std::vector<std::string> paths;
  for (const std::string& object : paths_) paths.push_back(object + path.substr(paths_.front().size()));
  return paths;
}

ShownField FieldForm::shownAt(const Field& field, const std::vector<Field>& others) const {
  ShownField shown;
  shown.field = field;
  const std::vector<std::string> paths = pathsOf(field.path);
  for (std::size_t i = 0; i < others.size() && i < paths.size(); ++i) {
    const Field* other = fieldIn(others[i], paths[i]);
    if (other && (other->text != field.text || other->absent != field.absent)) shown.various = true;
  }
  const Job& job = session_.newest();
  const auto say = [&](const std::string& id, const WordValues& values = {}) {
    return text(session_.words().say(id, values, session_.style()));
  };
  const auto usual = [&](const std::string& value) { return say("field.usual", {{"value", value}}); };
  if (namesThings(field.owner, field.key)) {
    shown.names = namesFor(job, field.path);
    shown.instead = say("part.not-stated");
  } else if (shown.various) {
    shown.instead = say("field.various");
  } else if (field.optional) {
    const std::string held = heldInstead(job, field.path);
    shown.instead = held.empty() ? say(absentId(field)) : usual(held);
  } else if (!field.usual.empty()) {
    shown.instead = usual(field.usual);
  }
  if (shown.various && !shown.names.empty()) shown.instead = say("field.various");
  return shown;
}

}  // namespace ribwright
