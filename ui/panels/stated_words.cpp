#include "ui/panels/stated_words.h"

#include <QCoreApplication>
#include <QMap>
#include <iterator>

#include "core/drawing/opening_kind.h"
#include "core/job/stated_words.h"

namespace ribwright {

namespace {

struct StatedWordsTexts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::StatedWords)
};

QString columnNumber(const std::string& choice) {
  constexpr std::string_view word = "column ";
  return choice.starts_with(word) ? QString::fromStdString(choice.substr(word.size())) : QString();
}

QString kindWords(const Session& session, const std::string& choice) {
  for (std::size_t i = 0; i < std::size(openingKindWords); ++i) {
    if (choice == openingKindWords[i])
      return QString::fromStdString(
          session.words().say(openingKindId(static_cast<Opening::Kind>(i)), {}, session.style()));
  }
  return {};
}

QMap<QString, QString> plainChoices() {
  return {{QStringLiteral("left corner"), StatedWordsTexts::tr("left corner")},
          {QStringLiteral("right corner"), StatedWordsTexts::tr("right corner")},
          {QStringLiteral("near jamb"), StatedWordsTexts::tr("near jamb")},
          {QStringLiteral("centre"), StatedWordsTexts::tr("centre")},
          {QStringLiteral("round"), StatedWordsTexts::tr("round")},
          {QStringLiteral("rectangular"), StatedWordsTexts::tr("rectangular")},
          {QStringLiteral("web line"), StatedWordsTexts::tr("web line")},
          {QStringLiteral("bottom"), StatedWordsTexts::tr("bottom")},
          {QStringLiteral("top"), StatedWordsTexts::tr("top")},
          {QStringLiteral("up"), StatedWordsTexts::tr("up")},
          {QStringLiteral("down"), StatedWordsTexts::tr("down")}};
}

QMap<QString, QString> titles(StatedList list) {
  QMap<QString, QString> all{{QStringLiteral("id"), StatedWordsTexts::tr("Id")},
                             {QStringLiteral("kind"), StatedWordsTexts::tr("Kind")},
                             {QStringLiteral("shape"), StatedWordsTexts::tr("Shape")},
                             {QStringLiteral("from"), StatedWordsTexts::tr("From")},
                             {QStringLiteral("distance"), StatedWordsTexts::tr("Distance")},
                             {QStringLiteral("to"), StatedWordsTexts::tr("To")},
                             {QStringLiteral("width"), StatedWordsTexts::tr("Width")},
                             {QStringLiteral("height"), StatedWordsTexts::tr("Height")},
                             {QStringLiteral("sill"), StatedWordsTexts::tr("Sill")},
                             {QStringLiteral("jamb_trim"), StatedWordsTexts::tr("Jamb trim")},
                             {QStringLiteral("centre"), StatedWordsTexts::tr("Centre height")},
                             {QStringLiteral("clearance"), StatedWordsTexts::tr("Clearance")},
                             {QStringLiteral("typed_by"), StatedWordsTexts::tr("Typed by")},
                             {QStringLiteral("flange"), StatedWordsTexts::tr("Flange turns")},
                             {QStringLiteral("member"), StatedWordsTexts::tr("Member")},
                             {QStringLiteral("clip_slot"), StatedWordsTexts::tr("Clip slot")},
                             {QStringLiteral("profile"), StatedWordsTexts::tr("Profile")},
                             {QStringLiteral("colour"), StatedWordsTexts::tr("Colour")},
                             {QStringLiteral("pattern"), StatedWordsTexts::tr("Hole pattern")},
                             {QStringLiteral("thickness"), StatedWordsTexts::tr("Thickness")},
                             {QStringLiteral("gap"), StatedWordsTexts::tr("Gap above the limit")}};
  if (list == StatedList::Bands) all[QStringLiteral("from")] = StatedWordsTexts::tr("From height");
  return all;
}

QString qt(std::string_view text) { return QString::fromUtf8(text.data(), qsizetype(text.size())); }

}  // namespace

QString columnTitle(StatedList list, std::string_view column) { return titles(list).value(qt(column)); }

QString newItemWords(StatedList list) {
  switch (list) {
    case StatedList::Openings:
      return StatedWordsTexts::tr("new opening");
    case StatedList::Penetrations:
      return StatedWordsTexts::tr("new penetration");
    case StatedList::Girts:
      return StatedWordsTexts::tr("new girt");
    case StatedList::Bands:
      break;
  }
  return StatedWordsTexts::tr("new band");
}

QString choiceWords(const Session& session, const std::string& choice) {
  if (const QString number = columnNumber(choice); !number.isEmpty())
    return StatedWordsTexts::tr("column %1").arg(number);
  if (const QString kind = kindWords(session, choice); !kind.isEmpty()) return kind;
  const QString plain = QString::fromStdString(choice);
  return plainChoices().value(plain, plain);
}

std::string statedWords(const Session& session, const std::vector<std::string>& choices, const QString& typed) {
  const QString plain = typed.trimmed();
  for (const std::string& choice : choices) {
    if (choiceWords(session, choice).compare(plain, Qt::CaseInsensitive) == 0) return choice;
  }
  return plain.toStdString();
}

QString blankWords(StatedList list, std::string_view column, std::size_t row) {
  if (list == StatedList::Girts && (column == "from" || column == "to")) return StatedWordsTexts::tr("corner");
  if (list != StatedList::Bands) return {};
  if (column == "from" && row == 0) return StatedWordsTexts::tr("sheets' lower end");
  if (column == "thickness") return StatedWordsTexts::tr("as the profile");
  return column == "pattern" ? StatedWordsTexts::tr("as the wall") : QString();
}

}  // namespace ribwright
