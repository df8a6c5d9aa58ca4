// The fields of a new job, in the order in which plans are read; each fault stands under the field that it is about.
#pragma once

#include <QWidget>
#include <map>
#include <string>
#include <vector>

#include "core/editing/new_job.h"
#include "core/units/outcome.h"

class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;

namespace ribwright {

class NewJobForm : public QWidget {
  Q_OBJECT

 public:
  explicit NewJobForm(const NewJob& stated, QWidget* parent = nullptr);

  const NewJob& stated() const { return stated_; }
  void setStated(const NewJob& stated);
  void showFaults(const std::vector<Fault>& faults);
  // Of the end walls' girts, where they are left blank.
  void setEndGirtsHint(const QString& heights);
  QLineEdit* firstField() const;
  // Enter in a field goes to the next that is typed into.
  QList<QLineEdit*> typedFields() const;

 signals:
  void changed();
  // Enter in the last field.
  void lastDone();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  struct Choice {
    QString words;
    int value;
  };
  QLabel* label(const QString& words, QWidget* buddy);
  QLineEdit* text(const char* key, std::string NewJob::*member, const char* name, const QString& reads);
  QComboBox* choice(const char* name, const QString& reads, const std::vector<Choice>& choices);
  void makeFields();
  void makeBuilding();
  void makeSteel();
  void makeSheets();
  void makeSite();
  void addRow(const std::vector<std::pair<QString, QWidget*>>& fields);
  void fillMembers();
  void fillProfiles();
  void fillPatterns();
  void show(const NewJob& stated);
  void takeTyped();
  void takeChoices();
  void takeUnits();
  void takeBase();
  void takeProfile();
  void followBays();
  void fitToShape();

  NewJob stated_;
  std::string autoSideBays_, autoEndBays_;  // as the form filled them in itself
  bool showing_ = false;
  QGridLayout* grid_;
  struct Field {
    QLineEdit* edit;
    std::string NewJob::*member;
  };
  std::map<std::string, Field> fields_;  // by the key of their faults
  std::map<std::string, QLabel*> faults_;
  QList<QLineEdit*> order_;
  std::map<QWidget*, QLabel*> labels_;
  std::map<QWidget*, QLabel*> rowFault_;
  QComboBox *units_, *shape_, *roof_, *ends_, *member_, *typedBy_, *setting_, *base_, *profile_, *pattern_, *seen_,
      *wind_;
};

}  // namespace ribwright
