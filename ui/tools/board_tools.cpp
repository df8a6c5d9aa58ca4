#include "ui/tools/board_tools.h"

#include <QKeyEvent>
#include <algorithm>
#include <cmath>

#include "core/editing/part_edits.h"
#include "core/editing/part_names.h"
#include "ui/board/wall_board.h"
#include "ui/tools/drag_words.h"
#include "ui/tools/draw_work.h"
#include "ui/tools/framed_parts.h"
#include "ui/tools/grip_work.h"

namespace ribwright {

namespace {

constexpr double snapReach = 6;  // pixels
constexpr double dragFrom = 4;   // pixels: a click moves less

double between(const QPointF& a, const QPointF& b) { return std::hypot(a.x() - b.x(), a.y() - b.y()); }

bool isMovedDirectly(const Part& part) {
  return part.kind == Part::Kind::Opening || part.kind == Part::Kind::Penetration;
}

bool isMovedWhenChosen(const Part& part) { return part.kind == Part::Kind::Girt || part.kind == Part::Kind::Column; }

bool isWhole(const Grip& grip) {
  return grip.kind == Grip::Kind::Opening || grip.kind == Grip::Kind::Penetration || grip.kind == Grip::Kind::Girt ||
         grip.kind == Grip::Kind::Column;
}

}  // namespace

BoardTools::BoardTools(Session& session, WallBoard* board)
    : QObject(board), session_(session), board_(board), typing_(new TypedField(board)) {
  board_->setHand(this);
  connect(typing_, &TypedField::typed, this, &BoardTools::takeTyped);
  connect(typing_, &TypedField::entered, this, &BoardTools::enterTyped);
  connect(typing_, &TypedField::left, this, &BoardTools::stepBack);
  connect(&session_, &Session::jobChanged, this, &BoardTools::drop);
  connect(&session_, &Session::wallChanged, this, &BoardTools::drop);
  connect(&session_, &Session::historyChanged, this, &BoardTools::dropWhatIsOvertaken);
  connect(&session_, &Session::chosenChanged, this, &BoardTools::showRest);
}

DraggedWall BoardTools::wall() const {
  return {session_.sharedJob(), session_.sharedPlan(), static_cast<std::size_t>(session_.wall()), &session_.words()};
}

FacePoint BoardTools::faceAt(const QPointF& pixel) const { return onFace(board_->shownAt().placeOf(pixel)); }

PointerAt BoardTools::pointerAt(const QPointF& pixel, Qt::KeyboardModifiers keys) const {
  const Length reach = Length::nanometres(std::llround(snapReach / board_->zoom() * 1e6));
  return {faceAt(pixel), reach, !(keys & Qt::ControlModifier)};
}

void BoardTools::take(ToolKind tool) {
  drop();
  tool_ = tool;
  emit toolChanged();
  showRest();
}

bool BoardTools::stepBack() {
  if (typing_->isVisible()) {
    typing_->shut();
    if (drag_) drag_->endTyping();
    if (!hovering_) return true;
  }
  if (drag_ && !hovering_) {
    drop();
    return true;
  }
  if (tool_ == ToolKind::Choose) return false;
  take(ToolKind::Choose);
  return true;
}

// Grips are taken first; of what lies under the pointer those things that can be moved.
std::optional<Grip> BoardTools::gripAt(const QPointF& pixel) const {
  if (!session_.isOpen() || session_.wall() < 0 || session_.isPlanning()) return std::nullopt;
  const DraggedWall on = wall();
  std::vector<Part> parts = session_.chosenParts();
  if (parts.size() > 1) return std::nullopt;
  if (parts.empty()) parts.push_back({Part::Kind::Face, on.stated().letter, {}});
  std::optional<Grip> nearest;
  double least = gripReach;
  for (const Grip& grip : gripsOf(*on.job, *on.plan, on.wall, parts)) {
    const double away = between(board_->shownAt().at(onBoard(grip.at)), pixel);
    if (away >= least || isWhole(grip)) continue;
    least = away;
    nearest = grip;
  }
  return nearest;
}

std::optional<Grip> BoardTools::wholeGripOf(const Part& part) const {
  const DraggedWall on = wall();
  for (const Grip& grip : gripsOf(*on.job, *on.plan, on.wall, {part})) {
    if (isWhole(grip)) return grip;
  }
  return std::nullopt;
}

// A chosen girt or column is taken through the screws on it.
std::optional<Part> BoardTools::movableAt(const QPointF& pixel) const {
  const std::optional<Part> part = board_->partAt(pixel);
  if (!part || part->kind != Part::Kind::Screw || session_.chosenParts().size() != 1) return part;
  const Part& chosen = session_.chosenParts().front();
  const auto whole = isMovedWhenChosen(chosen) ? wholeGripOf(chosen) : std::nullopt;
  if (!whole) return part;
  const QPointF at = board_->shownAt().at(onBoard(whole->at));
  const double away = whole->alongU ? std::abs(pixel.x() - at.x()) : std::abs(pixel.y() - at.y());
  return away <= gripReach ? chosen : part;
}

bool BoardTools::takes(const QPointF& pixel, Qt::KeyboardModifiers keys) {
  if (!session_.isOpen() || session_.wall() < 0) return false;
  session_.settle();
  pixel_ = pressedAt_ = pixel;
  pressedKeys_ = keys;
  clicked_.reset();
  if (tool_ == ToolKind::Choose) return beginChoosing(pixel, keys);
  pressed_ = true;
  if (!drawing_) hover(pixel, keys);
  if (drawsBoxes(tool_) && !drawing_) beginCorner(drag_->to());
  return true;
}

bool BoardTools::beginChoosing(const QPointF& pixel, Qt::KeyboardModifiers keys) {
  const auto grip = gripAt(pixel);
  const std::optional<Part> part = movableAt(pixel);
  const auto& chosen = session_.chosenParts();
  const bool isChosen = part && std::find(chosen.begin(), chosen.end(), *part) != chosen.end();
  if (keys & Qt::ShiftModifier) {
    framed_ = faceAt(pixel);
  } else if (grip) {
    begin(gripWork(wall(), *grip), grip->at, faceAt(pixel));
  } else if (isChosen && chosen.size() > 1) {
    begin(partsWork(wall(), chosen), {}, faceAt(pixel));
  } else if (part && (isMovedDirectly(*part) || (isMovedWhenChosen(*part) && isChosen))) {
    const auto whole = wholeGripOf(*part);
    if (!whole) return false;
    begin(gripWork(wall(), *whole), whole->at, faceAt(pixel));
    taken_ = part;
  } else {
    return false;
  }
  clicked_ = part;
  pressed_ = true;
  return true;
}

void BoardTools::begin(std::unique_ptr<DragWork> work, const FacePoint& start, const FacePoint& pressed) {
  drag_ = std::make_unique<WallDrag>(wall(), std::move(work), start, pressed);
  hovering_ = false;
}

void BoardTools::beginCorner(const FacePoint& pressed) {
  const FacePoint start = boxStart(wall(), tool_, pressed);
  begin(boxWork(wall(), tool_, start), start, start);
  drawing_ = true;
}

// With nothing in hand yet, a drawing tool shows where it would begin.
void BoardTools::hover(const QPointF& pixel, Qt::KeyboardModifiers keys) {
  if (!session_.isOpen() || session_.wall() < 0) return;
  if (!drag_) {
    begin(putsAtPlaces(tool_) ? placeWork(wall(), tool_) : cornerWork(wall()), {}, {});
    hovering_ = true;
  }
  drag_->moveTo(pointerAt(pixel, keys));
  picture_ = drag_->picture();
}

void BoardTools::movedTo(const QPointF& pixel, Qt::KeyboardModifiers keys) {
  pixel_ = pixel;
  if (framed_) {
    const FacePoint to = faceAt(pixel);
    picture_.frame = FaceBox{std::min(framed_->u, to.u), std::max(framed_->u, to.u), std::min(framed_->z, to.z),
                             std::max(framed_->z, to.z)};
    return;
  }
  if (drag_ && !hovering_) {
    const bool still = pressed_ && !drag_->isMoved() && between(pixel, pressedAt_) < dragFrom;
    if (still) return;
    drag_->moveTo(pointerAt(pixel, keys));
    return showDrag();
  }
  if (tool_ != ToolKind::Choose && !typing_->isVisible()) hover(pixel, keys);
}

// What cannot be is not shown; the reading tells why.
void BoardTools::showDrag() {
  picture_ = drag_->picture();
  if (drag_->made() && drag_->isMoved()) session_.preview(drag_->made().value());
  if (!drag_->isMoved()) session_.endPreview();
  board_->update();
}

void BoardTools::letGo(const QPointF& pixel, Qt::KeyboardModifiers keys) {
  pressed_ = false;
  if (framed_) return chooseFramed();
  if (!drag_) return;
  if (hovering_) return finish();
  const bool moved = drag_->isMoved() && between(pixel, pressedAt_) >= dragFrom;
  if (moved) return finish();
  if (drawing_) return drag_->isMoved() ? finish() : void();  // a click: the other corner is yet to come
  drop();
  const std::optional<Part> part = clicked_;
  if (part && (keys & Qt::ControlModifier)) return session_.chooseAlso(*part);
  if (part) session_.choose(part);
}

// Enters the edit; what cannot be stays in the hand while a corner or a place is still asked for.
void BoardTools::finish() {
  if (!drag_->made()) {
    emit told(QString::fromStdString(drag_->made().faults().front().message));
    if (!drawing_ && !hovering_) drop();
    return;
  }
  const Job job = drag_->made().value();
  const std::string name = drag_->name();
  const std::vector<Part> chosen = drag_->chosenAfter();
  const std::optional<Part> part = taken_;
  forgetDrag();  // its preview is planned already: the edit goes on from it
  session_.apply(name, job);
  if (!chosen.empty()) return session_.chooseParts(chosen);
  if (part && session_.chosenParts().size() < 2) session_.choose(part);
}

void BoardTools::forgetDrag() {
  typing_->shut();
  drag_.reset();
  hovering_ = drawing_ = false;
  taken_.reset();
  framed_.reset();
}

void BoardTools::drop() {
  forgetDrag();
  session_.endPreview();
  showRest();
}

// A drag that began in a job before the newest would take back what was done since.
void BoardTools::dropWhatIsOvertaken() {
  if (drag_ && session_.isOpen() && drag_->job() != session_.sharedNewest()) drop();
}

// With nothing in hand: the grips of what is chosen.
void BoardTools::showRest() {
  if (drag_ && !hovering_) return;
  picture_ = HandPicture();
  if (tool_ == ToolKind::Choose && session_.isOpen() && session_.wall() >= 0 && session_.chosenParts().size() < 2) {
    const DraggedWall on = wall();
    std::vector<Part> parts = session_.chosenParts();
    if (parts.empty()) parts.push_back({Part::Kind::Face, on.stated().letter, {}});
    for (const Grip& grip : gripsOf(*on.job, *on.plan, on.wall, parts)) {
      if (!isWhole(grip)) picture_.grips.push_back(grip.at);
    }
  }
  board_->update();
}

void BoardTools::chooseFramed() {
  const auto frame = picture_.frame;
  const std::optional<Part> part = clicked_;
  drop();
  if (frame) return session_.chooseParts(framedParts(session_.chosenPlan(), session_.chosenWall(), *frame));
  if (part) session_.chooseAlso(*part);
}

bool BoardTools::clickedAt(const QPointF&, Qt::KeyboardModifiers) { return false; }

bool BoardTools::keyPressed(const QKeyEvent& event) {
  if (event.key() == Qt::Key_Escape) return stepBack();
  if (!session_.isOpen() || session_.wall() < 0) return false;
  if (nudge(event)) return true;
  if (event.key() == Qt::Key_F10 && event.modifiers() == Qt::ShiftModifier) {
    menuAsked(std::nullopt, board_->mapToGlobal(board_->rect().center()));
    return true;
  }
  const int walls = (event.key() == Qt::Key_PageDown) - (event.key() == Qt::Key_PageUp);
  if (walls != 0 && event.modifiers() == Qt::NoModifier) {
    session_.chooseWall(session_.wall() + walls);
    return true;
  }
  if (event.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier)) return false;
  const QString text = event.text();
  const bool inHand = drag_ != nullptr || tool_ != ToolKind::Choose;
  const bool begins = !text.isEmpty() && (text[0].isDigit() || QStringLiteral("=-.,(").contains(text[0]));
  if (inHand && begins) return openTyping(text);
  return takeByLetter(event);
}

bool BoardTools::takeByLetter(const QKeyEvent& event) {
  if ((drag_ && !hovering_) || !session_.isOpen() || session_.wall() < 0) return false;
  if (event.modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) return false;
  for (const ToolWords& tool : toolWords()) {
    if (tool.key != QKeySequence(event.key())) continue;
    take(tool.kind);
    return true;
  }
  return false;
}

// Arrows move what is chosen by whole inches or centimetres; with Shift by feet, with Alt by marks of the tape.
bool BoardTools::nudge(const QKeyEvent& event) {
  const int across = (event.key() == Qt::Key_Right) - (event.key() == Qt::Key_Left);
  const int up = (event.key() == Qt::Key_Up) - (event.key() == Qt::Key_Down);
  const auto& parts = session_.chosenParts();
  const bool movable = std::any_of(parts.begin(), parts.end(),
                                   [](const Part& part) { return isMovedDirectly(part) || isMovedWhenChosen(part); });
  if ((across == 0 && up == 0) || !movable || drag_ || (event.modifiers() & Qt::ControlModifier)) return false;
  const bool feet = session_.newest().units == UnitSystem::FeetInches;
  const Length usual = feet ? Length::inches(1) : Length::millimetres(10);
  const Length far = feet ? Length::feet(1) : Length::millimetres(100);
  const Length step = event.modifiers() & Qt::ShiftModifier ? far
                      : event.modifiers() & Qt::AltModifier ? tapeMark(session_.newest().units)
                                                            : usual;
  const std::string name = editName("edit.nudge", parts, session_.words(), session_.style());
  const auto faults = session_.edit(
      name, [&](const Job& job) { return partsMoved(job, parts, step * across, step * up); }, "nudge");
  if (!faults.empty()) emit told(QString::fromStdString(faults.front().message));
  return true;
}

bool BoardTools::openTyping(const QString& first) {
  session_.settle();
  if (!drag_) hover(pixel_, {});
  if (!drag_) return false;
  typing_->open(pixel_.toPoint(), first,
                hovering_ ? tr("place from the left corner and the concrete") : tr("length, or width × height"));
  return true;
}

void BoardTools::takeTyped(const QString& text) {
  if (!drag_) return;
  const auto faults = drag_->takeTyped(text.toStdString());
  typing_->tell(faults.empty() ? QString() : QString::fromStdString(faults.front().message));
  if (faults.empty()) hovering_ ? void(picture_ = drag_->picture()) : showDrag();
  board_->update();
}

void BoardTools::enterTyped() {
  if (!drag_) return typing_->shut();
  const auto faults = drag_->takeTyped(typing_->text().toStdString());
  if (!faults.empty()) return typing_->tell(QString::fromStdString(faults.front().message));
  if (!drag_->made()) return typing_->tell(QString::fromStdString(drag_->made().faults().front().message));
  if (!hovering_ || putsAtPlaces(tool_)) return finish();
  const FacePoint corner = drag_->to();
  typing_->shut();
  beginCorner(corner);
  picture_ = drag_->picture();
  board_->update();
}

void BoardTools::menuAsked(const std::optional<QPointF>& pixel, const QPoint& onScreen) {
  if (!session_.isOpen() || session_.wall() < 0) return;
  drop();
  session_.settle();
  if (!pixel) return emit menuWanted({}, onScreen);
  // What a grip is of goes before what lies under it.
  const auto grip = gripAt(*pixel);
  if (!grip) chooseForMenu(board_->partAt(*pixel));
  emit menuWanted({faceAt(*pixel), grip}, onScreen);
}

// Steel and openings; with sheets and screws there is nothing to be done here.
void BoardTools::chooseForMenu(const std::optional<Part>& part) {
  const bool steel = part && part->kind != Part::Kind::Piece && part->kind != Part::Kind::Screw;
  const auto& chosen = session_.chosenParts();
  if (!steel) return session_.choose(std::nullopt);
  if (std::find(chosen.begin(), chosen.end(), *part) == chosen.end()) session_.choose(part);
}

Qt::CursorShape BoardTools::cursorAt(const QPointF& pixel) const {
  if (tool_ != ToolKind::Choose) return Qt::CrossCursor;
  const auto grip = gripAt(pixel);
  if (!grip) {
    const std::optional<Part> part = board_->partAt(pixel);
    return part && isMovedDirectly(*part) ? Qt::SizeAllCursor : Qt::ArrowCursor;
  }
  if (grip->alongU && grip->alongZ)
    return grip->edge.across * grip->edge.up > 0   ? Qt::SizeBDiagCursor
           : grip->edge.across * grip->edge.up < 0 ? Qt::SizeFDiagCursor
                                                   : Qt::SizeAllCursor;
  return grip->alongU ? Qt::SizeHorCursor : Qt::SizeVerCursor;
}

}  // namespace ribwright
