// The language that the window speaks: what is shipped of the system's own, else English.
#pragma once

#include <QLocale>
#include <string>

namespace ribwright {

// The first of the person's languages that the window has words in: "es", "en"; "en" where it has none of them.
std::string windowLanguage(const QLocale& system);

// Lets the window, and Qt's own buttons where the system has words for them, speak that language from now on. To be
// called once, in a QCoreApplication and before the first widget. Gives what the window then speaks: "en" for a
// language that has no words.
std::string speakIn(const std::string& language);

// What the last speakIn gave; "en" before.
const std::string& spokenLanguage();

}  // namespace ribwright
