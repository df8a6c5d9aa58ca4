// The window in Spanish: its words are inside the program, and asked for by the person's own languages.
#include <QtTest>

#include "tests/ui/window_tests.h"
#include "ui/session/window_language.h"

using namespace ribwright;

class SpanishWindowTest : public QObject {
  Q_OBJECT

 private slots:
  void theSystemsLanguageIsSpokenWhereThereAreWords() {
    QCOMPARE(windowLanguage(QLocale(QLocale::Spanish, QLocale::Mexico)), std::string("es"));
    QCOMPARE(windowLanguage(QLocale(QLocale::Spanish, QLocale::Chile)), std::string("es"));
    QCOMPARE(windowLanguage(QLocale(QLocale::English, QLocale::UnitedStates)), std::string("en"));
    QCOMPARE(windowLanguage(QLocale(QLocale::Icelandic)), std::string("en"));
    QCOMPARE(windowLanguage(QLocale::c()), std::string("en"));
  }

  void aLanguageWithoutWordsLeavesEnglish() {
    QCOMPARE(speakIn("tlh"), std::string("en"));
    QCOMPARE(speakIn(""), std::string("en"));
    QCOMPARE(spokenLanguage(), std::string("en"));
    QCOMPARE(noJob(), QStringLiteral("No job is open"));
  }

  void theWindowSpeaksSpanish() {
    QCOMPARE(speakIn("es"), std::string("es"));
    QCOMPARE(spokenLanguage(), std::string("es"));
    QCOMPARE(noJob(), QStringLiteral("No hay ningún trabajo abierto"));
  }

 private:
  static QString noJob() { return QCoreApplication::translate("ribwright::StartPage", "No job is open"); }
};

WINDOWLESS_TEST(SpanishWindowTest)
#include "spanish_window_test.moc"
