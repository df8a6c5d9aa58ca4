// Cells of tables of parts: a figure, which is set to the right, keeps from the words of the next column.
#pragma once

#include <QStyledItemDelegate>

namespace ribwright {

class CellDelegate : public QStyledItemDelegate {
  Q_OBJECT

 public:
  using QStyledItemDelegate::QStyledItemDelegate;

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

}  // namespace ribwright
