#include "ui/panels/survey_words.h"

#include <QCoreApplication>

#include "core/editing/reading_text.h"
#include "ui/session/window_text.h"

namespace ribwright {

namespace {

struct SurveyWordsTexts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::Survey)
};

// What the tape would read if the steel stood as planned.
QString plannedSentence(const Session& session, const SurveyLine& line, Length u) {
  const Wall& wall = session.chosenWall();
  const WallLayout& layout = session.chosenPlan().layout;
  if (line.of == SurveyLine::Of::Slab)
    return SurveyWordsTexts::tr("By the plans %1 from the top of concrete.")
        .arg(text(fineText(plannedHeight(wall, layout, line, u), session.style())));
  const Length reading = -deviationOf(wall, layout, line, {u, Length(), {}, {}, {}});
  return SurveyWordsTexts::tr("By the plans %1 above the chalk line.").arg(text(fineText(reading, session.style())));
}

QString measuredSentence(const Session& session, const SurveyLine& line, const GirtReading& reading) {
  const Length off = deviationOf(session.chosenWall(), session.chosenPlan().layout, line, reading);
  const QString measured = SurveyWordsTexts::tr("Measured %1 (%2).")
                               .arg(text(readingText({reading.height, reading.within}, session.style())),
                                    deviationText(off, session.style()));
  QStringList who;
  for (const std::string& word : {reading.by, reading.date}) {
    if (!word.empty()) who << text(word);
  }
  return who.isEmpty() ? measured
                       : measured + QLatin1Char(' ') + SurveyWordsTexts::tr("Read by %1.").arg(who.join(", "));
}

}  // namespace

QString lineText(const SurveyLine& line) {
  switch (line.of) {
    case SurveyLine::Of::Eave:
      return SurveyWordsTexts::tr("Eave");
    case SurveyLine::Of::Slab:
      return SurveyWordsTexts::tr("Slab edge");
    case SurveyLine::Of::Girt:
      break;
  }
  return line.id.empty() ? SurveyWordsTexts::tr("Girt without an id")
                         : SurveyWordsTexts::tr("Girt %1").arg(text(line.id));
}

QString stationText(const SurveyStation& station, const LengthStyle& style) {
  if (station.at == SurveyStation::At::Column) return SurveyWordsTexts::tr("column %1").arg(station.column);
  if (station.at == SurveyStation::At::Midspan && station.column > 0)
    return SurveyWordsTexts::tr("mid %1-%2").arg(station.column).arg(station.column + 1);
  return text(fineText(station.u, style));
}

QString deviationText(Length deviation, const LengthStyle& style) {
  if (deviation == Length()) return QStringLiteral("0");
  return (deviation > Length() ? QStringLiteral("+") : QString()) + text(fineText(deviation, style));
}

QString readingSentences(const Session& session, const SurveyLine& line, const SurveyStation& station) {
  const QString place =
      SurveyWordsTexts::tr("%1, %2, %3 from the left corner.")
          .arg(lineText(line), stationText(station, session.style()), text(fineText(station.u, session.style())));
  if (!line.reaches(station.u)) return place + QLatin1Char(' ') + SurveyWordsTexts::tr("It does not reach to here.");
  QStringList sentences{place, plannedSentence(session, line, station.u)};
  const auto reading = readingAt(session.chosenWall(), line, station.u);
  sentences << (reading ? measuredSentence(session, line, *reading) : SurveyWordsTexts::tr("Not measured yet."));
  return sentences.join(QLatin1Char(' '));
}

}  // namespace ribwright
