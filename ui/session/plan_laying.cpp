#include "ui/session/plan_laying.h"

#include <QAction>
#include <QActionGroup>
#include <QFileInfo>
#include <QMenu>
#include <QThread>
#include <optional>

#include "ui/board/read_picture.h"
#include "ui/board/wall_board.h"
#include "ui/panels/lay_plan_dialog.h"
#include "ui/panels/wall_view.h"
#include "ui/session/window_actions.h"

namespace ribwright {

namespace {

constexpr int strengthPercents[] = {25, 50, 75};

QAction* add(QMenu* menu, const QString& words, const char* name, const QString& tip) {
  QAction* action = menu->addAction(words);
  action->setObjectName(QLatin1String(name));
  action->setToolTip(tip);
  action->setStatusTip(tip);
  return action;
}

Outcome<ScaledPicture> readScaled(const QString& file) {
  const auto picture = readPicture(file);
  if (!picture) return picture.faults();
  return inScales(picture.value());
}

}  // namespace

PlanLaying::PlanLaying(Session& session, WallView& view, QMenu* menu, QWidget* window)
    : QObject(window), session_(session), view_(view), window_(window) {
  makeActions(menu);
  connect(&session_, &Session::jobOpened, this, &PlanLaying::takeJob);
  connect(&session_, &Session::historyChanged, this, &PlanLaying::keepUnderNewName);
  connect(&session_, &Session::wallChanged, this, &PlanLaying::showPlan);
  showPlan();
}

PlanLaying::~PlanLaying() {
  for (QThread* thread : findChildren<QThread*>()) thread->wait();
}

void PlanLaying::makeActions(QMenu* menu) {
  menu->addSeparator();
  lay_ = add(menu, tr("Lay a pl&an over the wall…"), "layPlan",
             tr("A photograph or scan of the plans under the wall's lines, to be traced"));
  show_ = add(menu, tr("Plan in &view"), "showPlan", tr("The picture that lies over this wall"));
  show_->setCheckable(true);
  strengthMenu_ = menu->addMenu(tr("Densit&y of the plan"));
  strengths_ = new QActionGroup(this);
  for (const int percent : strengthPercents) {
    QAction* action = strengthMenu_->addAction(tr("%1 %").arg(percent));
    action->setObjectName(QStringLiteral("planStrength-%1").arg(percent));
    action->setCheckable(true);
    action->setData(percent);
    strengths_->addAction(action);
  }
  takeAway_ = add(menu, tr("Ta&ke the plan away"), "takePlanAway", tr("The picture's file stays where it is"));
  connect(lay_, &QAction::triggered, this, &PlanLaying::openDialog);
  connect(show_, &QAction::triggered, this, &PlanLaying::setShown);
  connect(strengths_, &QActionGroup::triggered, this, [this](const QAction* action) {
    change([action](LaidPlan& laid) { laid.percent = action->data().toInt(); });
  });
  connect(takeAway_, &QAction::triggered, this, &PlanLaying::takeAway);
}

// Of the chosen wall; null: none.
LaidPlan* PlanLaying::laid() {
  if (!session_.isOpen() || session_.wall() < 0) return nullptr;
  const auto found = plans_.find(session_.chosenWall().letter);
  return found == plans_.end() ? nullptr : &found->second;
}

void PlanLaying::openDialog() {
  if (!session_.isOpen() || session_.wall() < 0) return;
  const LaidPlan* now = laid();
  const QString folder = QFileInfo(now ? now->file : session_.path()).absolutePath();
  const std::string letter = session_.chosenWall().letter;
  auto* dialog = new LayPlanDialog(QString::fromStdString(letter), now ? std::optional(*now) : std::nullopt, folder,
                                   session_.style(), window_);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  connect(dialog, &QDialog::accepted, this, [this, letter, dialog] { take(letter, *dialog); });
  dialog->open();
}

void PlanLaying::take(const std::string& letter, const LayPlanDialog& dialog) {
  LaidPlan laid = dialog.laid();
  laid.file = QFileInfo(laid.file).absoluteFilePath();
  laid.shown = true;
  plans_[letter] = laid;
  file_ = laid.file;
  picture_ = dialog.picture();
  toldMissing_.erase(laid.file);
  view_.setAsPrinted(false);
  keep();
  showPlan();
}

void PlanLaying::takeAway() {
  if (!laid()) return;
  plans_.erase(session_.chosenWall().letter);
  keep();
  showPlan();
}

void PlanLaying::takeJob() {
  path_ = session_.path();
  plans_ = path_.isEmpty() ? LaidPlans() : keptLaidPlans(path_);
  toldMissing_.clear();
}

// Saved under another name, or for the first time: the plans go with the job.
void PlanLaying::keepUnderNewName() {
  if (!session_.isOpen() || session_.path() == path_) return;
  path_ = session_.path();
  keep();
}

// A picture that was not there is looked for again.
void PlanLaying::setShown(bool shown) {
  if (const LaidPlan* now = laid()) toldMissing_.erase(now->file);
  change([shown](LaidPlan& now) { now.shown = shown; });
}

void PlanLaying::change(const std::function<void(LaidPlan&)>& edit) {
  if (LaidPlan* now = laid()) edit(*now);
  keep();
  showPlan();
}

void PlanLaying::keep() {
  if (!path_.isEmpty()) keepLaidPlans(path_, plans_);
}

void PlanLaying::showActions() {
  const LaidPlan* now = laid();
  lay_->setEnabled(session_.isOpen() && session_.wall() >= 0);
  for (QAction* action : {show_, takeAway_, strengthMenu_->menuAction()}) action->setEnabled(now != nullptr);
  strengths_->setEnabled(now != nullptr);
  show_->setChecked(now && now->shown);
  if (now) tick(*strengths_, now->percent);
}

void PlanLaying::showPlan() {
  showActions();
  const LaidPlan* now = laid();
  if (!now || !now->shown) return view_.board()->setUnderlay(std::nullopt);
  if (file_ == now->file) return paint(*now);
  view_.board()->setUnderlay(std::nullopt);
  if (reading_ != now->file && !toldMissing_.contains(now->file)) read(now->file);
}

void PlanLaying::paint(const LaidPlan& laid) {
  const auto toFace = toFaceOf(laid);
  if (!toFace) return view_.board()->setUnderlay(std::nullopt);
  view_.board()->setUnderlay(Underlay{picture_, toFace.value(), laid.percent / 100.0});
}

// In another thread: the job is there to be worked on before a large picture is.
void PlanLaying::read(const QString& file) {
  reading_ = file;
  auto done = std::make_shared<std::optional<Outcome<ScaledPicture>>>();
  QThread* thread = QThread::create([file, done] { *done = readScaled(file); });
  thread->setParent(this);
  connect(thread, &QThread::finished, this, [this, thread, file, done] {
    thread->deleteLater();
    takeRead(file, **done);
  });
  thread->start(QThread::LowPriority);
}

// Once for each picture: a person who knows that it is gone can work on.
void PlanLaying::takeRead(const QString& file, const Outcome<ScaledPicture>& read) {
  if (reading_ == file) reading_.clear();
  if (!laid() || laid()->file != file) return;  // another wall is looked at meanwhile
  if (read) {
    file_ = file;
    picture_ = read.value();
    return showPlan();
  }
  if (toldMissing_.insert(file).second)
    emit told(
        tr("The plan over this wall is not shown. %1").arg(QString::fromStdString(oneLine(read.faults().front()))));
}

}  // namespace ribwright
