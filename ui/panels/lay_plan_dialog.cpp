#include "ui/panels/lay_plan_dialog.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QGridLayout>
#include <QGuiApplication>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QScreen>
#include <QScrollArea>
#include <QVBoxLayout>
#include <cmath>

#include "ui/board/marked_picture.h"
#include "ui/board/read_picture.h"
#include "ui/panels/grade_text.h"
#include "ui/panels/length_field.h"
#include "ui/panels/named_widgets.h"
#include "ui/session/window_text.h"

namespace ribwright {

namespace {

constexpr int layingLetters = 150, layingLines = 44;
constexpr int sideLetters = 40;
constexpr int manyPixels = 100;  // one alone is too short to be said well

void showFault(QLabel* label, const QString& words) {
  label->setText(words.isEmpty() ? QString() : gradeSign(Grade::Stop) + QLatin1Char(' ') + words);
  label->setVisible(!words.isEmpty());
}

}  // namespace

LayPlanDialog::LayPlanDialog(const QString& wall, const std::optional<LaidPlan>& laid, const QString& folder,
                             const LengthStyle& style, QWidget* parent)
    : QDialog(parent), style_(style), folder_(folder), shown_(new MarkedPicture(this)) {
  setObjectName(QStringLiteral("layPlanDialog"));
  setWindowTitle(tr("Lay a plan over the wall: %1").arg(wall));
  shown_->setObjectName(QStringLiteral("planPicture"));
  auto* across = new QHBoxLayout;
  auto* layout = new QVBoxLayout(this);
  layout->addWidget(makeFileRow());
  layout->addWidget(pathFault_);
  across->addWidget(shown_, 1);
  across->addWidget(makeSide());
  layout->addLayout(across, 1);
  layout->addWidget(makeButtons());
  connect(shown_, &MarkedPicture::crossMoved, this, &LayPlanDialog::look);
  connect(shown_, &MarkedPicture::crossChosen, this, &LayPlanDialog::showPoints);
  const QSize wanted(layingLetters * fontMetrics().averageCharWidth(), layingLines * fontMetrics().lineSpacing());
  resize(wanted.boundedTo(screen()->availableSize()));
  if (laid) showStated(*laid);
  look();
  (shown_->picture().isNull() ? static_cast<QWidget*>(path_) : shown_)->setFocus();
}

// A field that is being typed into tells while there still is someone to hear it.
LayPlanDialog::~LayPlanDialog() { hide(); }

const ScaledPicture& LayPlanDialog::picture() const { return shown_->picture(); }

QWidget* LayPlanDialog::makeFileRow() {
  auto* row = new QWidget(this);
  auto* layout = new QHBoxLayout(row);
  layout->setContentsMargins(0, 0, 0, 0);
  auto* words = new QLabel(tr("&Picture"), row);
  path_ = new QLineEdit(row);
  path_->setObjectName(QStringLiteral("planFile"));
  path_->setAccessibleName(tr("File of the picture"));
  words->setBuddy(path_);
  auto* choose = new QPushButton(tr("C&hoose…"), row);
  choose->setObjectName(QStringLiteral("choosePlanFile"));
  choose->setAutoDefault(false);
  layout->addWidget(words);
  layout->addWidget(path_, 1);
  layout->addWidget(choose);
  pathFault_ = sentences({}, "planFileFault", this);
  pathFault_->hide();
  connect(path_, &QLineEdit::editingFinished, this, &LayPlanDialog::readFile);
  connect(choose, &QPushButton::clicked, this, &LayPlanDialog::browse);
  return row;
}

void LayPlanDialog::addField(QGridLayout* grid, const QString& words, const QString& spoken, const char* name,
                             Field& field) {
  field.edit = new LengthField(name, grid->parentWidget());
  field.edit->setAccessibleName(spoken);
  field.edit->setLength(std::nullopt, style_);
  field.fault = sentences({}, name, grid->parentWidget());
  field.fault->setObjectName(QLatin1String(name) + QStringLiteral("Fault"));
  field.fault->hide();
  auto* label = new QLabel(words, grid->parentWidget());
  label->setBuddy(field.edit);
  const int row = grid->rowCount();
  grid->addWidget(label, row, 0);
  grid->addWidget(field.edit, row, 1);
  grid->addWidget(field.fault, row + 1, 0, 1, 2);
  connect(field.edit, &LengthField::entered, this,
          [this, &field](const std::optional<Length>& length) { enter(field, length); });
  connect(field.edit, &LengthField::refused, this, [this, &field](const QString& why) {
    field.length.reset();
    showFault(field.fault, why);
    look();
  });
}

QWidget* LayPlanDialog::makeSide() {
  auto* side = new QWidget(this);
  auto* grid = new QGridLayout(side);
  grid->addWidget(
      sentences(tr("Click two points on the picture whose places on the wall are known, far apart, and type "
                   "where they are. Arrow keys move the chosen cross by a pixel."),
                "planWords", side),
      0, 0, 1, 2);
  const std::array<std::pair<const char*, const char*>, 2> names{{{"planU1", "planZ1"}, {"planU2", "planZ2"}}};
  for (int i = 0; i < MarkedPicture::crosses; ++i) {
    const auto at = static_cast<std::size_t>(i);
    points_[at] = new QRadioButton(side);
    points_[at]->setObjectName(QStringLiteral("planPoint%1").arg(i + 1));
    grid->addWidget(points_[at], grid->rowCount(), 0, 1, 2);
    connect(points_[at], &QRadioButton::clicked, this, [this, i] { shown_->chooseCross(i); });
    addField(grid, tr("From the left corner"), tr("Point %1, from the left corner").arg(i + 1), names[at].first,
             along_[at]);
    addField(grid, tr("From the top of concrete"), tr("Point %1, from the top of concrete").arg(i + 1),
             names[at].second, up_[at]);
  }
  lies_ = sentences({}, "planLies", side);
  fault_ = sentences({}, "planFault", side);
  fault_->hide();
  grid->addWidget(lies_, grid->rowCount(), 0, 1, 2);
  grid->addWidget(fault_, grid->rowCount(), 0, 1, 2);
  grid->setRowStretch(grid->rowCount(), 1);
  auto* area = new QScrollArea(this);
  area->setWidget(side);
  area->setWidgetResizable(true);
  area->setFrameShape(QFrame::NoFrame);
  area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  area->setFocusPolicy(Qt::NoFocus);
  area->setFixedWidth(std::max(sideLetters * fontMetrics().averageCharWidth(), side->minimumSizeHint().width()) +
                      fontMetrics().height());
  return area;
}

QWidget* LayPlanDialog::makeButtons() {
  auto* row = new QWidget(this);
  auto* layout = new QHBoxLayout(row);
  layout->setContentsMargins(0, 0, 0, 0);
  auto* lay = new QPushButton(tr("&Lay it over the wall"), row);
  lay->setObjectName(QStringLiteral("layNow"));
  lay->setDefault(true);
  auto* cancel = new QPushButton(tr("Cancel"), row);
  cancel->setObjectName(QStringLiteral("cancelLaying"));
  cancel->setAutoDefault(false);
  layout->addStretch(1);
  layout->addWidget(lay);
  layout->addWidget(cancel);
  connect(lay, &QPushButton::clicked, this, &LayPlanDialog::accept);
  connect(cancel, &QPushButton::clicked, this, &QDialog::reject);
  return row;
}

void LayPlanDialog::showStated(const LaidPlan& laid) {
  laid_ = laid;
  path_->setText(laid.file);
  for (std::size_t i = 0; i < laid.points.size(); ++i) {
    shown_->setCross(static_cast<int>(i), laid.points[i]);
    enter(along_[i], laid.places[i].u);
    enter(up_[i], laid.places[i].z);
  }
  takeFile(laid.file);
}

void LayPlanDialog::browse() {
  const QString path = QFileDialog::getOpenFileName(this, tr("Choose a picture of the plan"),
                                                    path_->text().isEmpty() ? folder_ : path_->text(),
                                                    tr("Pictures (%1);;All files (*)").arg(picturePatterns()));
  if (path.isEmpty()) return;
  path_->setText(path);
  path_->setModified(true);
  readFile();
}

// Points of one picture say nothing of another.
void LayPlanDialog::readFile() {
  if (!path_->isModified()) return;
  path_->setModified(false);
  const QString path = path_->text().trimmed();
  if (path != laid_.file) {
    for (int i = 0; i < MarkedPicture::crosses; ++i) shown_->setCross(i, std::nullopt);
    shown_->chooseCross(0);
  }
  takeFile(path);
  look();
}

void LayPlanDialog::takeFile(const QString& path) {
  laid_.file = path;
  QGuiApplication::setOverrideCursor(Qt::WaitCursor);
  const auto read = path.isEmpty() ? Outcome<QImage>(QImage()) : readPicture(path);
  shown_->setPicture(read ? inScales(read.value()) : ScaledPicture());
  QGuiApplication::restoreOverrideCursor();
  showFault(pathFault_, read ? QString() : text(oneLine(read.faults().front())));
}

void LayPlanDialog::enter(Field& field, const std::optional<Length>& length) {
  field.length = length;
  field.edit->setLength(length, style_);
  showFault(field.fault, {});
  look();
}

void LayPlanDialog::showPoints() {
  for (int i = 0; i < MarkedPicture::crosses; ++i) {
    const auto& cross = shown_->cross(i);
    QRadioButton* point = points_[static_cast<std::size_t>(i)];
    point->setChecked(i == shown_->chosenCross());
    point->setText(cross
                       ? tr("Point &%1: %2 across, %3 down").arg(i + 1).arg(qRound(cross->x())).arg(qRound(cross->y()))
                       : tr("Point &%1: not on the picture yet").arg(i + 1));
  }
}

// How the picture would lie, or why two points do not say it.
void LayPlanDialog::look() {
  showPoints();
  const auto all = stated();
  const auto toFace = all ? toFaceOf(*all) : Outcome<QTransform>(QTransform());
  lies_->setText(all && toFace ? liesWords() : QString());
  tell(toFace ? QString() : text(oneLine(toFace.faults().front())));
}

void LayPlanDialog::tell(const QString& fault) {
  showFault(fault_, fault);
  fault_->setAccessibleName(fault_->text());
}

QString LayPlanDialog::liesWords() const {
  const QTransform toFace = toFaceOf(*stated()).value();
  const auto hundred = Length::nanometres(std::llround(scaleOf(toFace) * manyPixels * 1e6));
  const QString turn = QString::number(std::abs(turnOf(toFace)), 'f', 1).replace(QLatin1Char('.'), style_.decimalSign);
  const QString words =
      tr("%1 pixels of the picture are %2 on the wall.").arg(manyPixels).arg(text(fineText(hundred, style_)));
  const QString turned = turnOf(toFace) < 0 ? tr("The picture is turned to the left by %1°.").arg(turn)
                                            : tr("The picture is turned to the right by %1°.").arg(turn);
  return words + QLatin1Char(' ') + (std::abs(turnOf(toFace)) < 0.05 ? tr("The picture is not turned.") : turned);
}

std::optional<LaidPlan> LayPlanDialog::stated() const {
  LaidPlan all = laid_;
  for (std::size_t i = 0; i < all.points.size(); ++i) {
    const auto& cross = shown_->cross(static_cast<int>(i));
    if (!cross || !along_[i].length || !up_[i].length) return std::nullopt;
    all.points[i] = *cross;
    all.places[i] = {*along_[i].length, *up_[i].length};
  }
  return all;
}

// What keeps it from being laid, its place first in the keyboard's order; empty: nothing.
QString LayPlanDialog::missing() {
  if (shown_->picture().isNull()) return path_->setFocus(), tr("Choose a picture that can be read.");
  for (int i = 0; i < MarkedPicture::crosses; ++i) {
    if (shown_->cross(i)) continue;
    shown_->chooseCross(i);
    shown_->setFocus();
    return tr("Click point %1 on the picture.").arg(i + 1);
  }
  for (std::size_t i = 0; i < along_.size(); ++i) {
    for (Field* field : {&along_[i], &up_[i]}) {
      if (field->length) continue;
      field->edit->setFocus();
      return field->edit->isModified() ? tr("A length cannot be read.")
                                       : tr("Type where point %1 is on the wall.").arg(i + 1);
    }
  }
  return {};
}

void LayPlanDialog::accept() {
  readFile();
  for (auto* fields : {&along_, &up_}) {
    for (Field& field : *fields) field.edit->finishTyping();
  }
  const QString why = missing();
  if (!why.isEmpty()) return tell(why);
  const LaidPlan all = *stated();
  if (!toFaceOf(all)) return look();
  laid_ = all;
  QDialog::accept();
}

// Enter in a field goes on to the next.
void LayPlanDialog::keyPressEvent(QKeyEvent* event) {
  const bool enters = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
  if (enters && qobject_cast<QLineEdit*>(focusWidget())) {
    focusNextChild();
    return;
  }
  QDialog::keyPressEvent(event);
}

}  // namespace ribwright
