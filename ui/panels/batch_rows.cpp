#include "ui/panels/batch_rows.h"

#include <QCoreApplication>

#include "core/checks/batch_words.h"
#include "ui/panels/grade_text.h"

namespace ribwright {

namespace {

struct Texts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::Batches)
};

QString said(const Session& session, const Phrase& phrase) {
  return QString::fromStdString(session.words().say(phrase, session.style()));
}

// "girt g1 3' 7-3/4"": every row from the lower end of its sheets.
QString rowsText(const Session& session, const DrillBatch& batch) {
  QStringList rows;
  for (const BatchRow& row : batch.rows)
    rows << said(session, rowWords(row)) + QLatin1Char(' ') + QString::fromStdString(fineText(row.s, session.style()));
  return rows.join(QStringLiteral(", "));
}

QString whyText(const Session& session, const DrillBatch& batch) {
  QStringList sentences;
  for (const HoldReason& reason : batch.reasons) sentences << said(session, whyHeld(batch, reason));
  for (const Remedy& remedy : batch.remedies) sentences << said(session, whatToDo(batch, remedy));
  return sentences.join(QLatin1Char(' '));
}

PartRows::Row rowOf(const Session& session, const DrillBatch& batch) {
  const bool cleared = batch.isCleared();
  const QString standing = cleared ? QStringLiteral("✓ ") + Texts::tr("cleared")
                                   : gradeSign(Grade::Stop) + QLatin1Char(' ') + Texts::tr("held");
  return {
      Part{Part::Kind::Batch, session.chosenWall().letter, batch.id},
      {QString::fromStdString(batch.id), said(session, sheetsOf(batch, session.chosenPlan().layout)),
       QString::number(batch.pieces.size()), standing, cleared ? rowsText(session, batch) : whyText(session, batch)}};
}

QString joined(const std::vector<std::string>& ids) {
  QStringList all;
  for (const std::string& id : ids) all << QString::fromStdString(id);
  return all.join(QStringLiteral(", "));
}

}  // namespace

PartRows batchRows(const Session& session) {
  PartRows all;
  all.columns = {{Texts::tr("Batch")},
                 {Texts::tr("Sheets")},
                 {Texts::tr("How many"), true},
                 {Texts::tr("May be drilled")},
                 {Texts::tr("Rows from the lower end; or why it is held and what to do")}};
  if (!session.isOpen() || session.wall() < 0) return all;
  all.style = session.style();
  for (const DrillBatch& batch : session.chosenPlan().batches) all.rows.push_back(rowOf(session, batch));
  return all;
}

QString changeText(const BatchChanges& changes) {
  QStringList words;
  const auto tell = [&](Grade grade, const std::vector<std::string>& ids, const QString& one, const QString& several) {
    if (!ids.empty()) words << gradeSign(grade) + QLatin1Char(' ') + (ids.size() == 1 ? one : several).arg(joined(ids));
  };
  tell(Grade::Stop, changes.heldAgain, Texts::tr("%1 is held again"), Texts::tr("%1 are held again"));
  tell(Grade::Look, changes.redrawn, Texts::tr("%1: print its template anew"),
       Texts::tr("%1: print their templates anew"));
  tell(Grade::Note, changes.cleared, Texts::tr("%1 is cleared"), Texts::tr("%1 are cleared"));
  return words.join(QStringLiteral("   "));
}

}  // namespace ribwright
