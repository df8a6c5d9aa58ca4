#include "ui/panels/wall_view.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QHelpEvent>
#include <QMenu>
#include <QPushButton>
#include <QStackedWidget>
#include <QToolButton>
#include <QToolTip>
#include <QVBoxLayout>
#include <algorithm>

#include "core/drawing/board_picture.h"
#include "core/drawing/particulars.h"
#include "ui/board/elevation_board.h"
#include "ui/board/wall_board.h"
#include "ui/panels/elided_label.h"
#include "ui/panels/empty_button.h"
#include "ui/panels/underlined_button.h"
#include "ui/tools/board_tools.h"
#include "ui/tools/part_menu.h"
#include "ui/tools/tool_actions.h"

namespace ribwright {

namespace {

// A screen pixel is taken as 1/96 in, as Qt does before scaling for sharper screens.
constexpr double pixel = 25.4 / 96;  // mm

constexpr int changedWhile = 1800;  // ms that changed sheets are lit up

}  // namespace

WallView::WallView(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      stack_(new QStackedWidget(this)),
      board_(new WallBoard(this)),
      tools_(new BoardTools(session, board_)),
      pages_(new ElevationBoard(this)) {
  board_->setObjectName(QStringLiteral("board"));
  board_->installEventFilter(this);
  pages_->setObjectName(QStringLiteral("pages"));
  stack_->addWidget(board_);
  stack_->addWidget(pages_);
  setFocusProxy(board_);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  layout->addWidget(makeHead());
  layout->addWidget(stack_, 1);
  connect(board_, &WallBoard::partChosen, &session_, &Session::choose);
  connect(tools_, &BoardTools::told, this, &WallView::told);
  connect(tools_, &BoardTools::menuWanted, this, &WallView::showMenu);
  connect(board_, &WallBoard::partAlsoChosen, &session_, &Session::chooseAlso);
  connect(board_, &WallBoard::hovered, this, &WallView::hovered);
  connect(board_, &WallBoard::viewChanged, this, &WallView::viewChanged);
  connect(pages_, &ElevationBoard::viewChanged, this, &WallView::viewChanged);
  connect(&session_, &Session::jobChanged, this, [this] {
    pictures_.clear();
    showChanged();
  });
  changedFor_.setSingleShot(true);
  changedFor_.setInterval(changedWhile);
  connect(&changedFor_, &QTimer::timeout, this, [this] { board_->setChanged({}); });
  connect(&session_, &Session::previewChanged, this, &WallView::showWall);
  connect(&session_, &Session::wallChanged, this, &WallView::showWall);
  connect(&session_, &Session::pagesChanged, this, &WallView::showPages);
  connect(&session_, &Session::chosenChanged, this, [this] { board_->setChosen(session_.chosenParts()); });
}

QWidget* WallView::makeHead() {
  auto* head = new QWidget(this);
  title_ = new ElidedLabel(head);
  title_->setObjectName(QStringLiteral("wallTitle"));
  asBoard_ = new Underlined<QPushButton>(tr("Wall &board"), head);
  asBoard_->setObjectName(QStringLiteral("asBoard"));
  asBoard_->setToolTip(tr("The wall on the screen: every part can be chosen"));
  asPages_ = new Underlined<QPushButton>(tr("Page&s"), head);
  asPages_->setObjectName(QStringLiteral("asPages"));
  asPages_->setToolTip(tr("The wall's pages as they are printed"));
  auto* group = new QButtonGroup(head);
  auto* layout = new QHBoxLayout(head);
  const int margin = fontMetrics().height() / 4;
  layout->setContentsMargins(margin, margin, margin, margin);
  layout->setSpacing(0);
  layout->addWidget(title_, 1);
  empty_ = new EmptyButton(session_, head);
  layout->addWidget(empty_);
  layout->addSpacing(2 * margin);
  connect(empty_, &EmptyButton::newAsked, this, &WallView::newAsked);
  for (QWidget* button : makeToolButtons(head)) layout->addWidget(button);
  layout->addSpacing(2 * margin);
  for (QPushButton* button : {asBoard_, asPages_}) {
    button->setCheckable(true);
    group->addButton(button);
    layout->addWidget(button);
  }
  asBoard_->setChecked(true);
  connect(asPages_, &QPushButton::toggled, this, &WallView::setAsPrinted);
  return head;
}

// The tools that are used most stand in the head, the others behind the last button.
std::vector<QWidget*> WallView::makeToolButtons(QWidget* head) {
  toolActions_ = toolActions(tools_);
  std::vector<QWidget*> buttons;
  auto* more = new QMenu(head);
  for (std::size_t i = 0; i < toolActions_.size(); ++i) {
    const ToolKind kind = toolWords()[i].kind;
    const bool often = kind == ToolKind::Choose || kind == ToolKind::Window || kind == ToolKind::WalkDoor ||
                       kind == ToolKind::OverheadDoor || kind == ToolKind::Girt;
    if (!often) {
      more->addAction(toolActions_[i]);
      continue;
    }
    auto* button = new Underlined<QToolButton>(head);
    button->setDefaultAction(toolActions_[i]);
    buttons.push_back(button);
  }
  auto* rest = new QToolButton(head);
  rest->setObjectName(QStringLiteral("moreTools"));
  rest->setText(tr("Draw"));
  rest->setToolTip(tr("More to draw on the wall"));
  rest->setMenu(more);
  rest->setPopupMode(QToolButton::InstantPopup);
  buttons.push_back(rest);
  return buttons;
}

void WallView::showMenu(const MenuPlace& place, const QPoint& onScreen) {
  auto* menu = new QMenu(this);
  menu->setObjectName(QStringLiteral("partMenu"));
  menu->setAttribute(Qt::WA_DeleteOnClose);
  fillPartMenu(*menu, session_, place, [this](const QString& words) { emit told(words); });
  menu->popup(onScreen);
}

bool WallView::isAsPrinted() const { return stack_->currentWidget() == pages_; }

void WallView::setAsPrinted(bool printed) {
  if (printed == isAsPrinted()) return;
  const bool focused = stack_->currentWidget()->hasFocus();
  QWidget* shown = printed ? static_cast<QWidget*>(pages_) : board_;
  stack_->setCurrentWidget(shown);
  setFocusProxy(shown);
  if (focused) shown->setFocus(Qt::OtherFocusReason);
  (printed ? asPages_ : asBoard_)->setChecked(true);
  showPages();
  emit viewChanged();
}

// Pages are only made while they are seen.
void WallView::showPages() {
  if (isAsPrinted()) pages_->setPages(session_.pages());
}

std::shared_ptr<const BoardPicture> WallView::picture() {
  if (!session_.isOpen() || session_.wall() < 0) return nullptr;
  const auto wall = static_cast<std::size_t>(session_.wall());
  const auto made = [&](const Job& job, const Plan& plan) {
    if (auto drawn = session_.drawn()) return drawn;
    return std::make_shared<const BoardPicture>(boardPicture(job, plan, wall, session_.words()));
  };
  if (session_.isPreview() && wall < session_.seenJob().walls.size())
    return made(session_.seenJob(), session_.seenPlan());
  auto& kept = pictures_[session_.wall()];
  if (!kept) kept = made(session_.job(), session_.plan());
  return kept;
}

void WallView::showWall() {
  const auto shown = picture();
  title_->setText(shown               ? tr("%1, seen from outside").arg(QString::fromStdString(shown->title))
                  : session_.isOpen() ? tr("This job has no walls yet")
                                      : QString());
  board_->setWall(shown);
  board_->setChosen(session_.chosenParts());
}

// For a moment, the sheets that the last edit changed.
void WallView::showChanged() {
  std::vector<Part> parts;
  for (const auto& [wall, mark] : session_.orderChanges().changedSheets)
    parts.push_back({Part::Kind::Piece, wall, mark});
  board_->setChanged(parts);
  parts.empty() ? changedFor_.stop() : changedFor_.start();
}

void WallView::show(const Part& part) {
  if (!session_.isOpen() || session_.wall() < 0 || part.wall != session_.chosenWall().letter) return;
  if (!isAsPrinted()) return board_->show(part);
  const auto& pages = session_.pages();
  const auto found = std::find_if(pages.begin(), pages.end(), [&](const Page& page) {
    return std::find(page.drawing.parts.begin(), page.drawing.parts.end(), part) != page.drawing.parts.end();
  });
  if (found != pages.end()) pages_->showPage(static_cast<int>(found - pages.begin()));
}

void WallView::zoomIn() { isAsPrinted() ? pages_->zoomIn() : board_->zoomIn(); }

void WallView::zoomOut() { isAsPrinted() ? pages_->zoomOut() : board_->zoomOut(); }

void WallView::fit() { isAsPrinted() ? pages_->fit() : board_->fit(); }

void WallView::turnPage(int by) {
  if (isAsPrinted()) pages_->showPage(pages_->currentPage() + by);
}

QString WallView::zoomWords() const {
  if (!session_.isOpen()) return {};
  if (isAsPrinted()) return pageWords();
  return board_->zoom() > 0 ? tr("1 : %1").arg(qRound(1 / (board_->zoom() * pixel))) : QString();
}

QString WallView::pageWords() const {
  if (pages_->pageCount() == 0) return {};
  return tr("page %1 of %2, %3 %")
      .arg(pages_->currentPage() + 1)
      .arg(pages_->pageCount())
      .arg(qRound(pages_->zoom() * pixel * 100));
}

bool WallView::eventFilter(QObject* watched, QEvent* event) {
  if (watched != board_ || event->type() != QEvent::ToolTip) return QWidget::eventFilter(watched, event);
  const auto* help = static_cast<QHelpEvent*>(event);
  showHint(help->pos(), help->globalPos());
  return true;
}

void WallView::showHint(const QPoint& at, const QPoint& onScreen) {
  const std::optional<Part> part = board_->partAt(at);
  if (!part || !session_.isOpen()) return QToolTip::hideText();
  QStringList lines{QString::fromStdString(titleOf(session_.job(), *part, session_.words()))};
  for (const Particular& each :
       particularsOf(session_.job(), session_.plan(), *part, session_.words(), session_.style()))
    lines << QString::fromStdString(each.name + ": " + each.value);
  QToolTip::showText(onScreen, lines.join(QLatin1Char('\n')), board_);
}

}  // namespace ribwright
