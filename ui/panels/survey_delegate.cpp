#include "ui/panels/survey_delegate.h"

#include <QApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPainter>

#include "ui/panels/mixed_colour.h"
#include "ui/panels/survey_model.h"

namespace ribwright {

namespace {

constexpr int cellLetters = 11;  // of a cell

int marginOf(const QStyleOptionViewItem& option) { return option.fontMetrics.averageCharWidth() / 2 + 1; }

QColor quietInk(const QStyleOptionViewItem& option) {
  if (option.state & QStyle::State_Selected) return option.palette.color(QPalette::HighlightedText);
  return mixed(option.palette, 65);
}

QColor ink(const QStyleOptionViewItem& option) {
  return option.palette.color(option.state & QStyle::State_Selected ? QPalette::HighlightedText : QPalette::Text);
}

}  // namespace

SurveyDelegate::SurveyDelegate(QObject* parent) : QStyledItemDelegate(parent) {}

void SurveyDelegate::paint(QPainter* painter, const QStyleOptionViewItem& given, const QModelIndex& index) const {
  QStyleOptionViewItem option = given;
  initStyleOption(&option, index);
  const QString reading = option.text, off = index.data(SurveyModel::DeviationRole).toString();
  option.text.clear();
  const QStyle* style = option.widget ? option.widget->style() : QApplication::style();
  style->drawControl(QStyle::CE_ItemViewItem, &option, painter, option.widget);
  painter->save();
  if (!index.data(SurveyModel::ReachedRole).toBool())
    painter->fillRect(option.rect, QBrush(mixed(option.palette, 40), Qt::BDiagPattern));
  const int margin = marginOf(option);
  const QRect room = option.rect.adjusted(margin, 0, -margin, 0);
  QFont font = option.font;
  font.setItalic(index.data(SurveyModel::UnreadRole).toBool());
  painter->setFont(font);
  painter->setPen(ink(option));
  painter->drawText(room, Qt::AlignVCenter | Qt::AlignLeft, reading);
  painter->setFont(option.font);
  painter->setPen(quietInk(option));
  painter->drawText(room, Qt::AlignVCenter | Qt::AlignRight, off);
  painter->restore();
}

QSize SurveyDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const QFontMetrics& metrics = option.fontMetrics;
  const QString reading = index.data().toString(), off = index.data(SurveyModel::DeviationRole).toString();
  const int words = metrics.horizontalAdvance(reading) + metrics.horizontalAdvance(off) +
                    (off.isEmpty() ? 0 : 2 * metrics.averageCharWidth());
  const int width = std::max(words, cellLetters * metrics.averageCharWidth());
  return {width + 2 * marginOf(option) + 2, metrics.height() + metrics.height() / 3};
}

QWidget* SurveyDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&, const QModelIndex& index) const {
  auto* editor = new QLineEdit(parent);
  editor->setObjectName(QStringLiteral("surveyEditor"));
  editor->setFrame(false);
  editor->setAccessibleName(index.data(Qt::AccessibleTextRole).toString());
  return editor;
}

void SurveyDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
  auto* line = static_cast<QLineEdit*>(editor);
  if (line->isModified()) return;  // what is being typed stays
  line->setText(index.data(Qt::EditRole).toString());
  line->setModified(index.data(SurveyModel::UnreadRole).toBool());  // it may be readable by now
  line->selectAll();
}

// An editor that was only looked at enters nothing.
void SurveyDelegate::setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const {
  const auto* line = static_cast<QLineEdit*>(editor);
  if (line->isModified()) model->setData(index, line->text(), Qt::EditRole);
}

bool SurveyDelegate::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() != QEvent::KeyPress) return QStyledItemDelegate::eventFilter(watched, event);
  const auto* key = static_cast<QKeyEvent*>(event);
  const bool shift = key->modifiers().testFlag(Qt::ShiftModifier);
  switch (key->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Tab:
    case Qt::Key_Backtab:
      emit enterAsked(static_cast<QLineEdit*>(watched), shift || key->key() == Qt::Key_Backtab ? -1 : 1);
      return true;
    case Qt::Key_Escape:
      emit gaveUp();
      break;
    default:
      break;
  }
  return QStyledItemDelegate::eventFilter(watched, event);
}

}  // namespace ribwright
