#include "ui/panels/wall_state.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

#include "ui/panels/grade_text.h"

namespace ribwright {

namespace {

struct WallStateTexts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::WallState)
};

QString claddingText(const Wall& wall, const WallLayout& layout) {
  if (layout.face.top.vertices().empty()) return WallStateTexts::tr("not laid out");
  if (wall.cladding == Cladding::ByOthers) return WallStateTexts::tr("by others");
  if (wall.cladding == Cladding::Open) return WallStateTexts::tr("open");
  return {};
}

QRectF boxOf(const CutRegion& cut) {
  const double bottom = cut.reachesFloor ? 0 : cut.bottom.inMetres();
  return {cut.left.inMetres(), bottom, (cut.right - cut.left).inMetres(), cut.top.inMetres() - bottom};
}

void addFace(WallState& state, const WallLayout& layout) {
  const WallFace& face = layout.face;
  if (face.top.vertices().empty()) return;
  state.width = face.width.inMetres();
  state.tallest = face.steel.highest(Length(), face.width).inMetres();
  state.outline << QPointF(0, 0);
  // A level line is one vertex; beyond its ends it goes straight on.
  state.outline << QPointF(0, face.steel.heightAt(Length(), Beside::Right).inMetres());
  for (const FaceVertex& vertex : face.steel.vertices()) {
    if (vertex.u > Length() && vertex.u < face.width)
      state.outline << QPointF(vertex.u.inMetres(), vertex.z.inMetres());
  }
  state.outline << QPointF(state.width, face.steel.heightAt(face.width, Beside::Left).inMetres());
  state.outline << QPointF(state.width, 0);
  for (const CutRegion& cut : layout.cuts) {
    if (!cut.penetration) state.openings.push_back(boxOf(cut));
  }
}

void addFindings(WallState& state, const Plan& plan, const std::string& letter) {
  for (const Finding& finding : plan.findings) {
    if (finding.wall != letter) continue;
    state.stops += finding.grade == Grade::Stop;
    state.looks += finding.grade == Grade::Look;
    state.notes += finding.grade == Grade::Note;
  }
}

}  // namespace

WallState wallState(const Session& session, std::size_t index) {
  const Wall& wall = session.job().walls[index];
  const WallPlan& planned = *session.plan().walls[index];
  WallState state;
  state.letter = QString::fromStdString(wall.letter);
  state.name = QString::fromStdString(wall.name);
  state.cladding = claddingText(wall, planned.layout);
  state.sheeted = planned.layout.sheeted;
  state.hand = planned.layout.direction.hand;
  for (const SheetRun& run : planned.layout.runs) state.sheets += static_cast<int>(run.modules.size());
  state.batches = static_cast<int>(planned.batches.size());
  for (const DrillBatch& batch : planned.batches) state.cleared += batch.isCleared();
  addFace(state, planned.layout);
  addFindings(state, session.plan(), wall.letter);
  return state;
}

QString WallState::title() const {
  return name.isEmpty() ? WallStateTexts::tr("Wall %1").arg(letter)
                        : WallStateTexts::tr("Wall %1, %2").arg(letter, name);
}

QString WallState::sheetWords() const {
  if (!cladding.isEmpty()) return cladding;
  return sheets == 1 ? WallStateTexts::tr("1 sheet") : WallStateTexts::tr("%1 sheets").arg(sheets);
}

QString WallState::signWords() const {
  QStringList words;
  if (stops > 0) words << gradeSign(Grade::Stop) + QChar::Nbsp + QString::number(stops);
  if (looks > 0) words << gradeSign(Grade::Look) + QChar::Nbsp + QString::number(looks);
  if (batches > 0) words << batchWords();
  return words.join(QStringLiteral("  "));
}

QString WallState::batchWords() const {
  if (cleared == 0) return WallStateTexts::tr("held");
  return cleared == batches ? WallStateTexts::tr("cleared")
                            : WallStateTexts::tr("%1/%2 cleared").arg(cleared).arg(batches);
}

QString WallState::sentences() const {
  QStringList lines{title() + QStringLiteral(": ") + sheetWords()};
  if (sheeted)
    lines << (hand == Hand::LeftToRight ? WallStateTexts::tr("Hangs from left to right.")
                                        : WallStateTexts::tr("Hangs from right to left."));
  lines << WallStateTexts::tr("Findings: stop %1, look %2, note %3.").arg(stops).arg(looks).arg(notes);
  if (batches > 0)
    lines << WallStateTexts::tr("Drill batches: %1 of %2 cleared. Drill nothing in a batch that is held.")
                 .arg(cleared)
                 .arg(batches);
  return lines.join(QLatin1Char('\n'));
}

}  // namespace ribwright
