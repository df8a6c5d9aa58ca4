#include "ui/panels/stated_words.h"

#include <QCoreApplication>
#include <QMap>
#include <iterator>

#include "core/drawing/opening_kind.h"
#include "core/job/stated_words.h"

namespace ribwright {

namespace {

struct Texts {
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
  return {{QStringLiteral("left corner"), Texts::tr("left corner")},
          {QStringLiteral("right corner"), Texts::tr("right corner")},
          {QStringLiteral("near jamb"), Texts::tr("near jamb")},
          {QStringLiteral("centre"), Texts::tr("centre")},
          {QStringLiteral("round"), Texts::tr("round")},
          {QStringLiteral("rectangular"), Texts::tr("rectangular")},
          {QStringLiteral("web line"), Texts::tr("web line")},
          {QStringLiteral("bottom"), Texts::tr("bottom")},
          {QStringLiteral("top"), Texts::tr("top")},
          {QStringLiteral("up"), Texts::tr("up")},
          {QStringLiteral("down"), Texts::tr("down")}};
}

QMap<QString, QString> titles(StatedList list) {
  QMap<QString, QString> all{{QStringLiteral("id"), Texts::tr("Id")},
                             {QStringLiteral("kind"), Texts::tr("Kind")},
                             {QStringLiteral("shape"), Texts::tr("Shape")},
                             {QStringLiteral("from"), Texts::tr("From")},
                             {QStringLiteral("distance"), Texts::tr("Distance")},
                             {QStringLiteral("to"), Texts::tr("To")},
                             {QStringLiteral("width"), Texts::tr("Width")},
                             {QStringLiteral("height"), Texts::tr("Height")},
                             {QStringLiteral("sill"), Texts::tr("Sill")},
                             {QStringLiteral("jamb_trim"), Texts::tr("Jamb trim")},
                             {QStringLiteral("centre"), Texts::tr("Centre height")},
                             {QStringLiteral("clearance"), Texts::tr("Clearance")},
                             {QStringLiteral("typed_by"), Texts::tr("Typed by")},
                             {QStringLiteral("flange"), Texts::tr("Flange turns")},
                             {QStringLiteral("member"), Texts::tr("Member")},
                             {QStringLiteral("clip_slot"), Texts::tr("Clip slot")},
                             {QStringLiteral("profile"), Texts::tr("Profile")},
                             {QStringLiteral("colour"), Texts::tr("Colour")},
                             {QStringLiteral("pattern"), Texts::tr("Hole pattern")},
                             {QStringLiteral("thickness"), Texts::tr("Thickness")},
                             {QStringLiteral("gap"), Texts::tr("Gap above the limit")}};
  if (list == StatedList::Bands) all[QStringLiteral("from")] = Texts::tr("From height");
  return all;
}

QString qt(std::string_view text) { return QString::fromUtf8(text.data(), qsizetype(text.size())); }

}  // namespace

QString columnTitle(StatedList list, std::string_view column) { return titles(list).value(qt(column)); }

QString newItemWords(StatedList list) {
  switch (list) {
    case StatedList::Openings:
      return Texts::tr("new opening");
    case StatedList::Penetrations:
      return Texts::tr("new penetration");
    case StatedList::Girts:
      return Texts::tr("new girt");
    case StatedList::Bands:
      break;
  }
  return Texts::tr("new band");
}

QString choiceWords(const Session& session, const std::string& choice) {
  if (const QString number = columnNumber(choice); !number.isEmpty()) return Texts::tr("column %1").arg(number);
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
  if (list == StatedList::Girts && (column == "from" || column == "to")) return Texts::tr("corner");
  if (list != StatedList::Bands) return {};
  if (column == "from" && row == 0) return Texts::tr("sheets' lower end");
  if (column == "thickness") return Texts::tr("as the profile");
  return column == "pattern" ? Texts::tr("as the wall") : QString();
}

}  // namespace ribwright
