#include "ui/panels/pattern_rows.h"

#include <QCoreApplication>
#include <algorithm>

#include "core/job/by_id.h"
#include "core/job/pattern_numbers.h"
#include "ui/panels/grade_text.h"
#include "ui/session/window_text.h"

namespace ribwright {

namespace {

struct PatternRowsTexts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::Pattern)
};

// In the order of SupportKind.
constexpr const char* kindIds[] = {"base", "girt", "eave", "rake", "jamb", "head", "sill", "end-lap"};

QString lengthText(const Session& session, Length length) { return text(fineText(length, session.style())); }

// What is turned in, by its sizes.
QString screwText(const Session& session, const std::string& id) {
  const Screw* screw = byId(session.job().screws, id);
  if (!screw) return PatternRowsTexts::tr("not among the job's screws");
  return PatternRowsTexts::tr("diameter %1, washer %2, length %3, pilot %4")
      .arg(lengthText(session, screw->diameter), lengthText(session, screw->washer), lengthText(session, screw->length),
           lengthText(session, screw->pilot));
}

PatternRowText rowText(const Session& session, const PatternRow& row) {
  const std::string kind = std::string("screws.kind.").append(kindIds[static_cast<std::size_t>(row.support)]);
  std::vector<Length> offsets = row.offsets;
  std::sort(offsets.begin(), offsets.end());
  QStringList numbers;
  for (const Length offset : offsets) numbers << lengthText(session, offset);
  const QString zone = row.zone == Zone::Corner ? PatternRowsTexts::tr("corner zone") : PatternRowsTexts::tr("field");
  return {text(session.words().say(kind, {}, session.style())) + QStringLiteral(", ") + zone,
          numbers.isEmpty() ? PatternRowsTexts::tr("no place across the sheet") : numbers.join(QStringLiteral(", ")),
          text(row.screw)};
}

// Each once, as they come.
std::vector<std::string> screwsOf(const ScrewPattern& pattern) {
  std::vector<std::string> all;
  const auto add = [&](const std::string& id) {
    if (!id.empty() && std::find(all.begin(), all.end(), id) == all.end()) all.push_back(id);
  };
  for (const PatternRow& row : pattern.rows) add(row.screw);
  add(pattern.stitchScrew);
  return all;
}

// In the order of ScrewPattern::Limits.
QString limitsText(const Session& session, const ScrewPattern& pattern) {
  const QString sets[] = {PatternRowsTexts::tr("the plans' own"), QStringLiteral("UFGS 07413"),
                          PatternRowsTexts::tr("New Zealand code"), QStringLiteral("BRANZ 146")};
  QStringList all{sets[static_cast<std::size_t>(pattern.limits)]};
  if (pattern.spacingLimit > Length()) all << lengthText(session, pattern.spacingLimit);
  all << PatternRowsTexts::tr("jambs %1").arg(lengthText(session, pattern.jambSpacingLimit));
  return all.join(QStringLiteral(", "));
}

}  // namespace

std::vector<PatternRowText> patternRows(const Session& session, const ScrewPattern& pattern) {
  std::vector<PatternRowText> all;
  for (const PatternRow& row : pattern.rows) all.push_back(rowText(session, row));
  all.push_back({PatternRowsTexts::tr("side laps, from screw to screw"),
                 pattern.stitchSpacing ? lengthText(session, *pattern.stitchSpacing) : PatternRowsTexts::tr("none"),
                 text(pattern.stitchScrew)});
  for (const std::string& id : screwsOf(pattern))
    all.push_back({PatternRowsTexts::tr("screw %1").arg(text(id)), screwText(session, id), {}});
  const bool both = pattern.lapHoles == ScrewPattern::LapHoles::BothSheets;
  all.push_back({PatternRowsTexts::tr("holes in laps"),
                 both ? PatternRowsTexts::tr("both sheets") : PatternRowsTexts::tr("upper sheet only"),
                 {}});
  all.push_back({PatternRowsTexts::tr("limits of spacing"), limitsText(session, pattern), {}});
  all.push_back({PatternRowsTexts::tr("profile"), text(pattern.profile), {}});
  return all;
}

QString standingText(const Session& session, const ScrewPattern& pattern) {
  const Confirmed is = confirmedIs(pattern, session.job().screws);
  if (is == Confirmed::No) return gradeSign(Grade::Stop) + QLatin1Char(' ') + PatternRowsTexts::tr("Not confirmed.");
  const Confirmation& by = *pattern.confirmation;
  const QString who = PatternRowsTexts::tr("plan sheet %1, %2, %3").arg(text(by.planSheet), text(by.by), text(by.date));
  if (is == Confirmed::Yes) return QStringLiteral("✓ ") + PatternRowsTexts::tr("Confirmed: %1.").arg(who);
  return gradeSign(Grade::Stop) + QLatin1Char(' ') +
         PatternRowsTexts::tr("Its confirmation has fallen, its numbers have changed since: %1.").arg(who);
}

}  // namespace ribwright
