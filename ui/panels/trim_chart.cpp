#include "ui/panels/trim_chart.h"

#include <QHelpEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>

#include "core/drawing/shown_length.h"
#include "core/drawing/trim_sticks.h"
#include "ui/session/window_text.h"

namespace ribwright {

namespace {}  // namespace

TrimChart::TrimChart(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("trimChart"));
  setAccessibleName(tr("Stock lengths of trim and what is cut from each"));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Minimum);
}

void TrimChart::show(const TrimTakeoff& takeoff, const std::vector<TrimBatch>& batches, const Words& words,
                     const LengthStyle& style) {
  takeoff_ = takeoff;
  batches_ = batches;
  words_ = &words;
  style_ = style;
  lines_.clear();
  longest_ = Length();
  for (std::size_t batch = 0; batch < batches_.size(); ++batch) {
    lines_.push_back({static_cast<int>(batch), -1});
    const auto& sticks = batches_[batch].sticks;
    for (std::size_t stick = 0; stick < sticks.size(); ++stick) {
      lines_.push_back({static_cast<int>(batch), static_cast<int>(stick)});
      longest_ = std::max(longest_, sticks[stick].stock);
    }
  }
  chosen_ = -1;
  updateGeometry();
  update();
}

void TrimChart::choose(int piece) {
  if (piece == chosen_) return;
  chosen_ = piece;
  update();
}

int TrimChart::lineHeight() const { return fontMetrics().height() * 7 / 4; }
int TrimChart::labelWidth() const { return fontMetrics().horizontalAdvance(QStringLiteral("00  00' 00-00/00\"  ")); }

QSize TrimChart::sizeHint() const {
  return {labelWidth() + 30 * fontMetrics().averageCharWidth(), lineHeight() * static_cast<int>(lines_.size()) + 4};
}

QRectF TrimChart::barOf(std::size_t line) const {
  const TrimStick& stick =
      batches_[static_cast<std::size_t>(lines_[line].batch)].sticks[static_cast<std::size_t>(lines_[line].stick)];
  const double room = std::max(10, width() - labelWidth() - fontMetrics().averageCharWidth());
  const double wide = room * stick.stock.inMillimetres() / longest_.inMillimetres();
  const int gap = fontMetrics().height() / 6;
  return {double(labelWidth()), double(lineHeight()) * static_cast<double>(line) + gap, wide,
          double(lineHeight() - 2 * gap)};
}

QRectF TrimChart::partOf(const QRectF& bar, const TrimStick& stick, Length from, Length to) const {
  const double scale = bar.width() / stick.stock.inMillimetres();
  return {bar.left() + from.inMillimetres() * scale, bar.top(), (to - from).inMillimetres() * scale, bar.height()};
}

QString TrimChart::headingOf(const TrimBatch& batch) const {
  const Length bought = batch.total(&TrimStick::stock);
  const int used = bought > Length() ? static_cast<int>(100 * batch.cut().inMetres() / bought.inMetres()) : 0;
  const QString result = batch.madeToLength ? tr("ordered to length")
                         : batch.proved()   ? tr("proved: no less would do")
                                            : tr("not proved");
  const QString trim = batch.colour.empty() ? text(batch.trim) : tr("%1, %2").arg(text(batch.trim), text(batch.colour));
  return tr("%1. Lengths: %2, together %3; used %4 %, waste %5; %6")
      .arg(trim, QString::number(batch.sticks.size()), text(dimensionText(bought, style_)), QString::number(used),
           text(dimensionText(batch.total(&TrimStick::waste), style_)), result);
}

QString TrimChart::nameOf(const TrimCut& cut) const {
  const TrimPiece& piece = takeoff_.pieces[static_cast<std::size_t>(cut.piece)];
  return text(partText(piece, cut.part, {words_, style_}));
}

void TrimChart::paintRest(QPainter& painter, const QRectF& bar, const TrimStick& stick) const {
  const QRectF rest = partOf(bar, stick, stick.restAt(), stick.restAt() + stick.drop + stick.waste);
  if (stick.drop > Length()) {
    const QString kept = tr("kept %1").arg(text(dimensionText(stick.drop, style_)));
    const QRectF room = rest.adjusted(3, 0, -3, 0);
    painter.drawText(room, Qt::AlignCenter, fontMetrics().elidedText(kept, Qt::ElideRight, int(room.width())));
  } else if (stick.waste > Length()) {
    painter.fillRect(rest, QBrush(palette().color(QPalette::Text), Qt::BDiagPattern));
  }
}

void TrimChart::paintStick(QPainter& painter, std::size_t line) const {
  const TrimStick& stick =
      batches_[static_cast<std::size_t>(lines_[line].batch)].sticks[static_cast<std::size_t>(lines_[line].stick)];
  const QRectF bar = barOf(line);
  const QString label = tr("%1  %2").arg(stick.number).arg(text(dimensionText(stick.stock, style_)));
  painter.setPen(palette().color(QPalette::Text));
  painter.drawText(QRectF(0, bar.top(), labelWidth() - fontMetrics().averageCharWidth(), bar.height()),
                   Qt::AlignRight | Qt::AlignVCenter, label);
  painter.fillRect(bar, palette().base());
  paintRest(painter, bar, stick);
  for (const TrimCut& cut : stick.cuts) {
    const QRectF part = partOf(bar, stick, cut.at, cut.at + cut.length);
    const bool chosen = cut.piece == chosen_;
    painter.fillRect(part, chosen ? palette().highlight() : palette().alternateBase());
    painter.setPen(QPen(palette().color(QPalette::Text), chosen ? 2 : 1));
    painter.drawRect(part);
    painter.setPen(palette().color(chosen ? QPalette::HighlightedText : QPalette::Text));
    const QRectF room = part.adjusted(3, 0, -3, 0);
    painter.drawText(room, Qt::AlignCenter,
                     fontMetrics().elidedText(nameOf(cut), Qt::ElideRight, std::max(0, int(room.width()))));
  }
  painter.setPen(palette().color(QPalette::Text));
  painter.drawRect(bar);
}

void TrimChart::paintEvent(QPaintEvent* event) {
  QPainter painter(this);
  for (std::size_t line = 0; line < lines_.size(); ++line) {
    const QRect room(0, lineHeight() * static_cast<int>(line), width(), lineHeight());
    if (!room.intersects(event->rect())) continue;
    if (lines_[line].stick >= 0) {
      paintStick(painter, line);
      continue;
    }
    QFont bold = font();
    bold.setBold(true);
    painter.setFont(bold);
    painter.setPen(palette().color(QPalette::Text));
    const QString heading = headingOf(batches_[static_cast<std::size_t>(lines_[line].batch)]);
    painter.drawText(room.adjusted(4, 0, -4, 0), Qt::AlignLeft | Qt::AlignVCenter,
                     QFontMetrics(bold).elidedText(heading, Qt::ElideRight, width() - 8));
    painter.setFont(font());
  }
}

int TrimChart::pieceAt(const QPoint& at) const {
  const int line = at.y() / std::max(1, lineHeight());
  if (at.y() < 0 || line >= static_cast<int>(lines_.size())) return -1;
  const Line& one = lines_[static_cast<std::size_t>(line)];
  if (one.stick < 0) return -1;
  const TrimStick& stick = batches_[static_cast<std::size_t>(one.batch)].sticks[static_cast<std::size_t>(one.stick)];
  const QRectF bar = barOf(static_cast<std::size_t>(line));
  for (const TrimCut& cut : stick.cuts) {
    if (partOf(bar, stick, cut.at, cut.at + cut.length).contains(at)) return cut.piece;
  }
  return -1;
}

int TrimChart::heightOf(int piece) const {
  for (std::size_t line = 0; line < lines_.size(); ++line) {
    if (lines_[line].stick < 0) continue;
    const TrimBatch& batch = batches_[static_cast<std::size_t>(lines_[line].batch)];
    for (const TrimCut& cut : batch.sticks[static_cast<std::size_t>(lines_[line].stick)].cuts) {
      if (cut.piece == piece) return lineHeight() * static_cast<int>(line) + lineHeight() / 2;
    }
  }
  return 0;
}

void TrimChart::mousePressEvent(QMouseEvent* event) {
  const int piece = pieceAt(event->position().toPoint());
  if (piece >= 0) emit pieceChosen(piece);
}

bool TrimChart::event(QEvent* event) {
  if (event->type() != QEvent::ToolTip) return QWidget::event(event);
  const auto* help = static_cast<QHelpEvent*>(event);
  const int piece = pieceAt(help->pos());
  if (piece < 0) {
    QToolTip::hideText();
    return true;
  }
  const TrimPiece& one = takeoff_.pieces[static_cast<std::size_t>(piece)];
  const std::string name = words_->say(trimPieceName(one), style_);
  QToolTip::showText(help->globalPos(), tr("%1: %2").arg(text(name), text(cutText(one.length, style_))), this);
  return true;
}

}  // namespace ribwright
