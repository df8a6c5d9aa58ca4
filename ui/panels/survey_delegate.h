// How a cell of the survey is painted and typed into: the reading, and how far it is off the plans, quieter, beside it.
#pragma once

#include <QStyledItemDelegate>

class QLineEdit;

namespace ribwright {

class SurveyDelegate : public QStyledItemDelegate {
  Q_OBJECT

 public:
  explicit SurveyDelegate(QObject* parent = nullptr);

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  void setEditorData(QWidget* editor, const QModelIndex& index) const override;
  void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override;

 signals:
  // What is typed shall be entered and the next cell (1) or the one before (-1) be gone to.
  void enterAsked(QLineEdit* editor, int step);
  // What is typed shall be forgotten.
  void gaveUp();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
};

}  // namespace ribwright
