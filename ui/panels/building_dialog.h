// The building made longer, wider or higher: seen on the board while it is typed, one step when it is done.
#pragma once

#include <QDialog>
#include <map>
#include <string>

#include "core/editing/building_texts.h"
#include "ui/session/session.h"

class QCheckBox;
class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QPushButton;

namespace ribwright {

class BuildingDialog : public QDialog {
  Q_OBJECT

 public:
  // Of an open job with an outline.
  explicit BuildingDialog(Session& session, QWidget* parent = nullptr);
  // An edit that is not made is seen no more.
  ~BuildingDialog() override;

 private:
  void addRow(QGridLayout* grid, const QString& words, QWidget* field, const char* place);
  QLineEdit* edit(const char* name, const QString& reads, const std::string& text);
  void makeFields(QGridLayout* grid);
  QWidget* makeButtons();
  BuildingTexts typed() const;
  Outcome<Job> made(const Job& job) const;
  void look();
  void showFaults(const std::vector<Fault>& faults);
  void tellDisplaced(const Job& job);
  void change();

  Session& session_;
  BuildingTexts stands_;
  QLineEdit *length_, *width_, *eave_, *rise_;
  QComboBox *roof_, *ends_;
  QCheckBox* fit_;
  QLabel *displaced_, *fault_;
  QPushButton* change_ = nullptr;
  std::map<std::string, QLabel*> faults_;
  std::map<QWidget*, QLabel*> labels_;
};

}  // namespace ribwright
