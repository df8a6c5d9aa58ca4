#include "ui/panels/grade_text.h"

#include <QCoreApplication>

namespace ribwright {

namespace {

struct GradeTextTexts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::Grade)
};

}  // namespace

QString gradeSign(Grade grade) {
  switch (grade) {
    case Grade::Stop:
      return QStringLiteral("■");
    case Grade::Look:
      return QStringLiteral("▲");
    case Grade::Note:
      break;
  }
  return QStringLiteral("○");
}

QString gradeText(Grade grade) {
  const QString sign = gradeSign(grade) + QLatin1Char(' ');
  switch (grade) {
    case Grade::Stop:
      return sign + GradeTextTexts::tr("stop");
    case Grade::Look:
      return sign + GradeTextTexts::tr("look");
    case Grade::Note:
      break;
  }
  return sign + GradeTextTexts::tr("note");
}

}  // namespace ribwright
