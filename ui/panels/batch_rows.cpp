#include "ui/panels/batch_rows.h"

#include <QCoreApplication>

#include "core/checks/batch_words.h"
#include "ui/panels/grade_text.h"

namespace ribwright {

namespace {

struct BatchRowsTexts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::Batches)
};

QString sentenceOf(const Session& session, const Phrase& phrase) {
  return QString::fromStdString(session.words().say(phrase, session.style()));
}

// "girt g1 3' 7-3/4"": every row from the lower end of its sheets.
QString rowsText(const Session& session, const DrillBatch& batch) {
  QStringList rows;
  for (const BatchRow& row : batch.rows)
    rows << sentenceOf(session, rowWords(row)) + QLatin1Char(' ') +
                QString::fromStdString(fineText(row.s, session.style()));
  return rows.join(QStringLiteral(", "));
}

QString whyText(const Session& session, const DrillBatch& batch) {
  QStringList sentences;
  for (const HoldReason& reason : batch.reasons) sentences << sentenceOf(session, whyHeld(batch, reason));
  for (const Remedy& remedy : batch.remedies) sentences << sentenceOf(session, whatToDo(batch, remedy));
  return sentences.join(QLatin1Char(' '));
}

PartRows::Row rowOf(const Session& session, const DrillBatch& batch) {
  const bool cleared = batch.isCleared();
  const QString standing = cleared ? QStringLiteral("✓ ") + BatchRowsTexts::tr("cleared")
                                   : gradeSign(Grade::Stop) + QLatin1Char(' ') + BatchRowsTexts::tr("held");
  return {
      Part{Part::Kind::Batch, session.chosenWall().letter, batch.id},
      {QString::fromStdString(batch.id), sentenceOf(session, sheetsOf(batch, session.chosenPlan().layout)),
       QString::number(batch.pieces.size()), standing, cleared ? rowsText(session, batch) : whyText(session, batch)}};
}

QString joinedIds(const std::vector<std::string>& ids) {
  QStringList all;
  for (const std::string& id : ids) all << QString::fromStdString(id);
  return all.join(QStringLiteral(", "));
}

}  // namespace

PartRows batchRows(const Session& session) {
  PartRows all;
  all.columns = {{BatchRowsTexts::tr("Batch")},
                 {BatchRowsTexts::tr("Sheets")},
                 {BatchRowsTexts::tr("How many"), true},
                 {BatchRowsTexts::tr("May be drilled")},
                 {BatchRowsTexts::tr("Rows from the lower end; or why it is held and what to do")}};
  if (!session.isOpen() || session.wall() < 0) return all;
  all.style = session.style();
  for (const DrillBatch& batch : session.chosenPlan().batches) all.rows.push_back(rowOf(session, batch));
  return all;
}

QString changeText(const BatchChanges& changes) {
  QStringList words;
  const auto tell = [&](Grade grade, const std::vector<std::string>& ids, const QString& one, const QString& several) {
    if (!ids.empty())
      words << gradeSign(grade) + QLatin1Char(' ') + (ids.size() == 1 ? one : several).arg(joinedIds(ids));
  };
  tell(Grade::Stop, changes.heldAgain, BatchRowsTexts::tr("%1 is held again"), BatchRowsTexts::tr("%1 are held again"));
  tell(Grade::Look, changes.redrawn, BatchRowsTexts::tr("%1: print its template anew"),
       BatchRowsTexts::tr("%1: print their templates anew"));
  tell(Grade::Note, changes.cleared, BatchRowsTexts::tr("%1 is cleared"), BatchRowsTexts::tr("%1 are cleared"));
  return words.join(QStringLiteral("   "));
}

}  // namespace ribwright
