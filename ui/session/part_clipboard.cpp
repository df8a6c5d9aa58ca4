#include "ui/session/part_clipboard.h"

#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QApplication>
#include <QClipboard>
#include <QKeyEvent>
#include <QLineEdit>
#include <QMimeData>
#include <QPlainTextEdit>
#include <QTextEdit>
#include <algorithm>

#include "core/editing/part_edits.h"
#include "core/editing/part_names.h"
#include "core/editing/paste_place.h"
#include "core/editing/wall_things.h"

namespace ribwright {

namespace {

constexpr qsizetype mostPasted = 4 << 20;  // far more than any wall holds

QString mimeType() { return QStringLiteral("application/x-ribwright-parts"); }

bool isTextField(const QWidget* widget) {
  return qobject_cast<const QLineEdit*>(widget) || qobject_cast<const QPlainTextEdit*>(widget) ||
         qobject_cast<const QTextEdit*>(widget);
}

// By the menu, a text field that has the keyboard is meant.
bool doneByField(const char* what) {
  QWidget* focus = QApplication::focusWidget();
  return isTextField(focus) && QMetaObject::invokeMethod(focus, what);
}

bool deletedByField() {
  auto* line = qobject_cast<QLineEdit*>(QApplication::focusWidget());
  if (line) line->del();
  return line || isTextField(QApplication::focusWidget());
}

QByteArray clipboardBytes() {
  const QMimeData* held = QApplication::clipboard()->mimeData();
  if (!held) return {};
  return held->hasFormat(mimeType()) ? held->data(mimeType()) : held->text().toUtf8();
}

std::vector<Part> allOf(const Wall& wall) {
  std::vector<Part> parts;
  for (const Opening& opening : wall.openings) parts.push_back({Part::Kind::Opening, wall.letter, opening.id});
  for (const Penetration& through : wall.penetrations)
    parts.push_back({Part::Kind::Penetration, wall.letter, through.id});
  for (std::size_t i = 0; i < wall.girts.size(); ++i) {
    const std::string& id = wall.girts[i].id;
    parts.push_back({Part::Kind::Girt, wall.letter, id.empty() ? std::string("#").append(std::to_string(i + 1)) : id});
  }
  return parts;
}

}  // namespace

PartClipboard::PartClipboard(Session& session, QObject* parent) : QObject(parent), session_(session) {}

bool PartClipboard::belongsToField(const QKeyEvent& event) {
  const QWidget* focus = QApplication::focusWidget();
  if (!isTextField(focus) && !qobject_cast<const QAbstractSpinBox*>(focus) &&
      !qobject_cast<const QAbstractItemView*>(focus))
    return false;
  constexpr QKeySequence::StandardKey keys[] = {QKeySequence::Cut, QKeySequence::Copy, QKeySequence::Paste,
                                                QKeySequence::Delete, QKeySequence::SelectAll};
  return std::any_of(std::begin(keys), std::end(keys), [&](auto key) { return event.matches(key); });
}

bool PartClipboard::put() {
  if (!session_.isOpen() || session_.wall() < 0) return false;
  if (session_.chosenParts().empty()) {
    emit told(tr("Nothing is chosen. Choose openings, penetrations or girts first."));
    return false;
  }
  const auto wall = indexOfWall(session_.newest(), session_.chosenWall().letter);
  if (!wall) return false;
  const auto copied = copiedParts(session_.newest(), *wall, session_.chosenParts());
  if (!copied) {
    tell(copied.faults());
    return false;
  }
  const std::string text = copiedText(copied.value());
  auto* held = new QMimeData;
  held->setData(mimeType(), QByteArray::fromStdString(text));
  held->setText(QString::fromStdString(text));
  QApplication::clipboard()->setMimeData(held);
  return true;
}

void PartClipboard::copy() {
  if (doneByField("copy") || !put()) return;
  const std::string what = session_.words().say(nameOf(session_.chosenParts()), session_.style());
  emit told(tr("Copied: %1").arg(QString::fromStdString(what)));
}

void PartClipboard::cut() {
  if (!doneByField("cut") && put()) remove();
}

void PartClipboard::remove() {
  if (deletedByField() || !session_.isOpen() || session_.chosenParts().empty()) return;
  const std::vector<Part> parts = session_.chosenParts();
  tell(session_.edit(editName("edit.remove", parts, session_.words(), session_.style()),
                     [&](const Job& job) { return partsRemoved(job, parts); }));
}

void PartClipboard::paste() {
  if (doneByField("paste") || !session_.isOpen() || session_.wall() < 0) return;
  const QByteArray bytes = clipboardBytes();
  const auto copied = bytes.size() > mostPasted ? Outcome<CopiedParts>(Fault{}) : parseCopied(bytes.toStdString());
  if (!copied) return emit told(tr("The clipboard holds no parts of a wall."));
  const auto wall = indexOfWall(session_.newest(), session_.chosenWall().letter);
  if (!wall) return;
  const auto made = pastedWhereFree(session_.newest(), *wall, copied.value());
  if (!made) return tell(made.faults());
  session_.apply(editName("edit.paste", made.value().parts, session_.words(), session_.style()), made.value().job);
  session_.chooseParts(made.value().parts);
}

void PartClipboard::chooseAll() {
  if (doneByField("selectAll") || !session_.isOpen() || session_.wall() < 0) return;
  session_.chooseParts(allOf(session_.chosenWall()));
}

void PartClipboard::tell(const std::vector<Fault>& faults) {
  if (!faults.empty()) emit told(QString::fromStdString(oneLine(faults.front())));
}

}  // namespace ribwright
