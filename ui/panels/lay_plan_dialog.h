// Asks for a picture of the plans and for two points of it: where they are on the picture, and where on the wall.
#pragma once

#include <QDialog>
#include <array>
#include <optional>

#include "core/units/length_text.h"
#include "ui/board/laid_plan.h"
#include "ui/board/scaled_picture.h"

class QGridLayout;
class QLabel;
class QLineEdit;
class QRadioButton;

namespace ribwright {

class LengthField;
class MarkedPicture;

class LayPlanDialog : public QDialog {
  Q_OBJECT

 public:
  // `laid`: what is to be laid anew; absent: nothing yet. `folder`: where pictures are looked for first.
  LayPlanDialog(const QString& wall, const std::optional<LaidPlan>& laid, const QString& folder,
                const LengthStyle& style, QWidget* parent = nullptr);
  ~LayPlanDialog() override;

  // Once accepted.
  const LaidPlan& laid() const { return laid_; }
  const ScaledPicture& picture() const;

  void accept() override;

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  struct Field {
    LengthField* edit;
    QLabel* fault;
    std::optional<Length> length;
  };
  QWidget* makeFileRow();
  QWidget* makeSide();
  QWidget* makeButtons();
  void addField(QGridLayout* grid, const QString& words, const QString& spoken, const char* name, Field& field);
  void showStated(const LaidPlan& laid);
  void browse();
  void readFile();
  void takeFile(const QString& path);
  void enter(Field& field, const std::optional<Length>& length);
  void showPoints();
  void look();
  void tell(const QString& fault);
  QString missing();
  QString liesWords() const;
  std::optional<LaidPlan> stated() const;

  LengthStyle style_;
  QString folder_;
  LaidPlan laid_;
  QLineEdit* path_;
  QLabel* pathFault_;
  MarkedPicture* shown_;
  std::array<QRadioButton*, 2> points_{};
  std::array<Field, 2> along_{}, up_{};
  QLabel* lies_;
  QLabel* fault_;
};

}  // namespace ribwright
