#include "ui/panels/stated_delegate.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPainter>

#include "ui/panels/stated_model.h"

namespace ribwright {

namespace {

const char* const typedProperty = "ribwrightTyped";

}  // namespace

// The cell at hand has a frame, so that it is told from its row, which is chosen.
void StatedDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  QStyledItemDelegate::paint(painter, option, index);
  const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
  if (!view || view->currentIndex() != index || !view->hasFocus()) return;
  painter->save();
  painter->setPen(QPen(option.palette.color(QPalette::HighlightedText), 2));
  painter->drawRect(option.rect.adjusted(1, 1, -2, -2));
  painter->restore();
}

QWidget* StatedDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&, const QModelIndex& index) const {
  const QStringList choices = index.data(StatedModel::ChoicesRole).toStringList();
  QWidget* made = nullptr;
  if (choices.isEmpty()) {
    auto* line = new QLineEdit(parent);
    line->setFrame(false);
    made = line;
  } else {
    auto* list = new QComboBox(parent);
    list->setEditable(true);  // letters may be typed, and what is none of them is told
    list->setInsertPolicy(QComboBox::NoInsert);
    list->addItems(choices);
    list->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    connect(list, &QComboBox::activated, list, [list] { setTyped(list, true); });
    connect(list, &QComboBox::editTextChanged, list, [list] { setTyped(list, true); });
    list->lineEdit()->installEventFilter(const_cast<StatedDelegate*>(this));
    made = list;
  }
  made->setObjectName(QStringLiteral("cellEditor"));
  made->setAccessibleName(index.data(Qt::ToolTipRole).toString());
  return made;
}

QString StatedDelegate::typedIn(const QWidget* editor) {
  if (const auto* list = qobject_cast<const QComboBox*>(editor)) return list->currentText();
  return static_cast<const QLineEdit*>(editor)->text();
}

bool StatedDelegate::isTyped(const QWidget* editor) {
  if (const auto* line = qobject_cast<const QLineEdit*>(editor)) return line->isModified();
  return editor->property(typedProperty).toBool();
}

void StatedDelegate::setTyped(QWidget* editor, bool typed) {
  if (auto* line = qobject_cast<QLineEdit*>(editor)) return line->setModified(typed);
  editor->setProperty(typedProperty, typed);
}

void StatedDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
  if (isTyped(editor)) return;  // what is being typed stays
  const QString words = index.data(Qt::EditRole).toString();
  if (auto* list = qobject_cast<QComboBox*>(editor)) {
    list->setCurrentIndex(list->findText(words));
    list->setEditText(words);
    list->lineEdit()->selectAll();
  } else {
    auto* line = static_cast<QLineEdit*>(editor);
    line->setText(words);
    line->selectAll();
  }
  setTyped(editor, index.data(StatedModel::UnreadRole).toBool());  // it may be readable by now
}

// An editor that was only looked at enters nothing.
void StatedDelegate::setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const {
  if (!isTyped(editor)) return;
  setTyped(editor, false);
  model->setData(index, typedIn(editor), Qt::EditRole);
}

bool StatedDelegate::eventFilter(QObject* watched, QEvent* event) {
  auto* box = qobject_cast<QComboBox*>(watched->parent());
  auto* editor = box && watched == box->lineEdit() ? box : qobject_cast<QWidget*>(watched);
  if (event->type() != QEvent::KeyPress || !editor) return QStyledItemDelegate::eventFilter(watched, event);
  const auto* key = static_cast<QKeyEvent*>(event);
  const bool shift = key->modifiers().testFlag(Qt::ShiftModifier);
  switch (key->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Tab:
    case Qt::Key_Backtab:
      emit enterAsked(editor, shift || key->key() == Qt::Key_Backtab ? -1 : 1);
      return true;
    case Qt::Key_Escape:
      emit gaveUp();
      setTyped(editor, false);
      break;
    default:
      break;
  }
  return editor == watched ? QStyledItemDelegate::eventFilter(watched, event) : false;
}

}  // namespace ribwright
