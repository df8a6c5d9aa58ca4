#include "ui/session/window_language.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QStringList>
#include <QTranslator>

namespace ribwright {

namespace {

std::string& spoken() {
  static std::string language = "en";
  return language;
}

QString wordsOf(const std::string& language) {
  return QStringLiteral(":/words/ribwright_%1.qm").arg(QString::fromStdString(language));
}

// Belongs to the application; false where there are no such words.
bool install(const QString& file, const QString& folder = QString()) {
  auto* translator = new QTranslator(QCoreApplication::instance());
  if (translator->load(file, folder)) return QCoreApplication::installTranslator(translator);
  delete translator;
  return false;
}

}  // namespace

std::string windowLanguage(const QLocale& system) {
  for (const QString& name : system.uiLanguages()) {
    const std::string language = name.section(QLatin1Char('-'), 0, 0).toStdString();
    if (language == "en" || QTranslator().load(wordsOf(language))) return language;
  }
  return "en";
}

std::string speakIn(const std::string& language) {
  if (language != "en" && install(wordsOf(language))) {
    spoken() = language;
    install(QStringLiteral("qtbase_%1").arg(QString::fromStdString(language)),
            QLibraryInfo::path(QLibraryInfo::TranslationsPath));
  }
  return spoken();
}

const std::string& spokenLanguage() { return spoken(); }

}  // namespace ribwright
