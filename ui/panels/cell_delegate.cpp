#include "ui/panels/cell_delegate.h"

#include <QApplication>

namespace ribwright {

namespace {

int roomBeside(const QStyleOptionViewItem& option, const QModelIndex& index) {
  const bool figure = index.data(Qt::TextAlignmentRole).toInt() & Qt::AlignRight;
  return figure ? option.fontMetrics.averageCharWidth() : 0;
}

}  // namespace

void CellDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  QStyleOptionViewItem whole = option;
  initStyleOption(&whole, index);
  const QStyle* style = option.widget ? option.widget->style() : QApplication::style();
  style->drawPrimitive(QStyle::PE_PanelItemViewItem, &whole, painter, option.widget);
  QStyleOptionViewItem kept = option;
  kept.rect.adjust(0, 0, -roomBeside(option, index), 0);
  QStyledItemDelegate::paint(painter, kept, index);
}

QSize CellDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  QStyleOptionViewItem whole = option;
  initStyleOption(&whole, index);
  return QStyledItemDelegate::sizeHint(option, index) + QSize(roomBeside(whole, index), 0);
}

}  // namespace ribwright
