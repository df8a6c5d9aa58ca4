#include "ui/panels/survey_panel.h"

#include <QCheckBox>
#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>

#include "core/fastening/measured_faces.h"
#include "ui/panels/grade_text.h"
#include "ui/panels/length_field.h"
#include "ui/panels/survey_table.h"

namespace ribwright {

namespace {

constexpr int tableLines = 3;  // of the table at least

QLineEdit* textField(const char* name, QWidget* parent) {
  auto* made = new QLineEdit(parent);
  made->setObjectName(QLatin1String(name));
  return made;
}

}  // namespace

SurveyPanel::SurveyPanel(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
  setObjectName(QStringLiteral("survey"));
  table_ = new SurveyTable(session_, this);
  table_->setObjectName(QStringLiteral("surveyTable"));
  table_->setAccessibleName(tr("Readings of the chosen wall, heights above the chalk line"));
  words_ = new QLabel(this);
  words_->setObjectName(QStringLiteral("surveyWords"));
  words_->setTextFormat(Qt::PlainText);
  words_->setWordWrap(true);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  layout->addWidget(makeFields());
  layout->addWidget(table_, 1);
  layout->addWidget(words_);
  setFocusProxy(table_);
  fit();
  connectFields();
  connect(table_, &SurveyTable::told, this, &SurveyPanel::tell);
  connect(&session_, &Session::wallChanged, this, &SurveyPanel::showWall);
  if (session_.isOpen()) showWall();
}

QWidget* SurveyPanel::makeFields() {
  auto* fields = new QWidget(this);
  auto* grid = new QGridLayout(fields);
  const int margin = fontMetrics().height() / 4;
  grid->setContentsMargins(2 * margin, margin, 2 * margin, margin);
  grid->setVerticalSpacing(margin);
  by_ = textField("surveyBy", fields);
  date_ = textField("surveyDate", fields);
  props_ = new QCheckBox(tr("Props in place at midspan"), fields);
  props_->setObjectName(QStringLiteral("surveyProps"));
  chalk_ = lengthField("surveyChalk");
  rising_ = lengthField("surveyRising");
  falling_ = lengthField("surveyFalling");
  addField(grid, 0, 0, tr("Read by"), by_);
  addField(grid, 0, 2, tr("Date"), date_);
  grid->addWidget(props_, 0, 4, 1, 2);
  addField(grid, 1, 0, tr("Chalk line at"), chalk_);
  addField(grid, 1, 2, tr("Diagonal from bottom left"), rising_);
  addField(grid, 1, 4, tr("Diagonal from top left"), falling_);
  for (const int column : {1, 3, 5}) grid->setColumnStretch(column, 1);
  return fields;
}

LengthField* SurveyPanel::lengthField(const char* name) {
  auto* made = new LengthField(name, this);
  connect(made, &LengthField::refused, this, [this](const QString& why) { tell(why, true); });
  return made;
}

void SurveyPanel::addField(QGridLayout* grid, int row, int column, const QString& label, QWidget* field) {
  auto* words = new QLabel(label, this);
  words->setBuddy(field);
  field->setAccessibleName(label);
  grid->addWidget(words, row, column);
  grid->addWidget(field, row, column + 1);
}

void SurveyPanel::connectFields() {
  for (const QLineEdit* field : {by_, date_}) connect(field, &QLineEdit::textChanged, this, &SurveyPanel::takeReadBy);
  const auto wall = [this] { return static_cast<std::size_t>(session_.wall()); };
  connect(props_, &QCheckBox::clicked, this, [this, wall](bool inPlace) {
    session_.apply(tr("Props in place").toStdString(), setProps(session_.newest(), wall(), inPlace));
  });
  connect(chalk_, &LengthField::entered, this, [this, wall](const std::optional<Length>& z) {
    session_.apply(tr("Chalk line").toStdString(), setChalkLine(session_.newest(), wall(), z));
  });
  connect(rising_, &LengthField::entered, this,
          [this](const std::optional<Length>& length) { enterDiagonal(Diagonal::Rising, length); });
  connect(falling_, &LengthField::entered, this,
          [this](const std::optional<Length>& length) { enterDiagonal(Diagonal::Falling, length); });
}

void SurveyPanel::enterDiagonal(Diagonal which, const std::optional<Length>& length) {
  const auto job = setDiagonal(session_.newest(), static_cast<std::size_t>(session_.wall()), which, length);
  if (!job) {
    (which == Diagonal::Rising ? rising_ : falling_)->setModified(true);  // not taken: it stays as it was typed
    return tell(QString::fromStdString(oneLine(job.faults().front())), true);
  }
  session_.apply(tr("Diagonal").toStdString(), job.value());
}

int SurveyPanel::measured() const {
  return session_.isOpen() && session_.wall() >= 0 ? table_->cells()->measured() : 0;
}

void SurveyPanel::finishTyping() {
  table_->finishTyping();
  for (LengthField* field : {chalk_, rising_, falling_}) field->finishTyping();
}

void SurveyPanel::takeReadBy() {
  table_->cells()->setReadBy({by_->text().trimmed().toStdString(), date_->text().trimmed().toStdString()});
}

void SurveyPanel::showPlannedChalk() {
  const WallLayout& layout = session_.chosenPlan().layout;
  Wall planned = session_.chosenWall();
  planned.survey.chalkLine.reset();
  const bool laidOut = layout.face.width > Length();
  const Length z = laidOut ? chalkLineAt(planned, layout, Length()) : Length();
  const QString words = tr("as planned: %1").arg(QString::fromStdString(fineText(z, session_.style())));
  chalk_->setPlaceholderText(laidOut ? words : QString());
}

void SurveyPanel::showWall() {
  const bool there = session_.isOpen() && session_.wall() >= 0;
  setEnabled(there);
  if (there) {
    const Wall& wall = session_.chosenWall();
    if (wall.letter != wall_) {
      for (LengthField* field : {chalk_, rising_, falling_}) field->giveUp();
    }
    wall_ = wall.letter;
    props_->setChecked(wall.survey.propsInPlace);
    chalk_->setLength(wall.survey.chalkLine, session_.style());
    rising_->setLength(wall.survey.diagonalRising, session_.style());
    falling_->setLength(wall.survey.diagonalFalling, session_.style());
    showPlannedChalk();
  }
  table_->refill();
}

// A fault is told by a sign too, never by colour alone.
void SurveyPanel::tell(const QString& words, bool fault) {
  words_->setText(fault ? gradeSign(Grade::Look) + QLatin1Char(' ') + words : words);
  words_->setAccessibleName(words_->text());
}

void SurveyPanel::fit() {
  words_->setMargin(fontMetrics().height() / 4);
  table_->setMinimumHeight((2 * tableLines + 1) * fontMetrics().lineSpacing());
}

void SurveyPanel::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange && words_) fit();
}

}  // namespace ribwright
