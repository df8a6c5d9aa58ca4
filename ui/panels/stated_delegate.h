// How a cell of what is stated is typed into: a line of text, or a list to choose from.
#pragma once

#include <QStyledItemDelegate>

namespace ribwright {

class StatedDelegate : public QStyledItemDelegate {
  Q_OBJECT

 public:
  using QStyledItemDelegate::QStyledItemDelegate;

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  void setEditorData(QWidget* editor, const QModelIndex& index) const override;
  void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override;

  // What stands in an editor, and whether it is other than what it began with.
  static QString typedIn(const QWidget* editor);
  static bool isTyped(const QWidget* editor);
  static void setTyped(QWidget* editor, bool typed);

 signals:
  // What is typed shall be entered and the next cell (1) or the one before (-1) be gone to.
  void enterAsked(QWidget* editor, int step);
  // What is typed shall be forgotten.
  void gaveUp();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
};

}  // namespace ribwright
