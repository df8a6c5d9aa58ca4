// A group of fields under its name, that can be folded away; what is in it is made when it is first opened.
#pragma once

#include <QCheckBox>
#include <QToolButton>
#include <QVBoxLayout>
#include <QWidget>
#include <functional>

namespace ribwright {

class FoldingGroup : public QWidget {
  Q_OBJECT

 public:
  // `name`: of the objects; the same name keeps its fold from one group to the next.
  FoldingGroup(const QString& name, const QString& title, bool open, QWidget* parent);

  // Called once, with what is to be filled.
  void setFilling(std::function<void(QWidget*)> fill);
  bool isOpen() const { return fold_->isChecked(); }
  void setOpen(bool open) { fold_->setChecked(open); }
  void setTitle(const QString& title) { fold_->setText(title); }
  QToolButton* fold() const { return fold_; }
  QVBoxLayout* head() const { return head_; }

 private:
  void show(bool open);

  QToolButton* fold_;
  QVBoxLayout* head_;
  QWidget* body_;
  std::function<void(QWidget*)> fill_;
};

}  // namespace ribwright
