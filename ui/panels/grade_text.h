// Grades of findings as the window shows them: a sign besides the word, so that nothing hangs on colour.
#pragma once

#include <QString>

#include "core/checks/finding.h"

namespace ribwright {

QString gradeSign(Grade grade);  // "■"
QString gradeText(Grade grade);  // "■ stop"

}  // namespace ribwright
