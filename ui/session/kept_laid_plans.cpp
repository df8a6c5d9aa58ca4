#include "ui/session/kept_laid_plans.h"

#include <QCryptographicHash>
#include <QStringList>
#include <optional>

#include "core/units/length_text.h"
#include "ui/session/kept_settings.h"
#include "ui/session/lock_file.h"

namespace ribwright {

namespace {

constexpr int textDigits = 17;  // that a double is read back from as it was

// A path has separators, which settings take for groups of their own.
QString groupOf(const QString& jobPath) {
  const QByteArray digest = QCryptographicHash::hash(realPath(jobPath).toUtf8(), QCryptographicHash::Sha1);
  return QStringLiteral("laid-plans/") + QString::fromLatin1(digest.toHex());
}

QString textOf(const QPointF& point) {
  return QStringLiteral("%1 %2").arg(point.x(), 0, 'g', textDigits).arg(point.y(), 0, 'g', textDigits);
}

QString textOf(const FacePoint& place) {
  const auto text = [](Length length) { return QString::fromStdString(decimalMillimetres(length)); };
  return text(place.u) + QLatin1Char(' ') + text(place.z);
}

std::optional<QPointF> pointOf(const QString& text) {
  const QStringList parts = text.split(QLatin1Char(' '));
  if (parts.size() != 2) return std::nullopt;
  bool x = false, y = false;
  const QPointF point(parts[0].toDouble(&x), parts[1].toDouble(&y));
  return x && y ? std::optional(point) : std::nullopt;
}

std::optional<FacePoint> placeOf(const QString& text) {
  const QStringList parts = text.split(QLatin1Char(' '));
  if (parts.size() != 2) return std::nullopt;
  const LengthStyle millimetres{UnitSystem::Millimetres, '.'};
  const auto u = parseLength(parts[0].toStdString(), millimetres), z = parseLength(parts[1].toStdString(), millimetres);
  return u && z ? std::optional(FacePoint{u.value(), z.value()}) : std::nullopt;
}

std::optional<LaidPlan> read(const QSettings& settings) {
  LaidPlan plan;
  plan.file = settings.value(QStringLiteral("picture")).toString();
  for (std::size_t i = 0; i < plan.points.size(); ++i) {
    const auto point = pointOf(settings.value(QStringLiteral("point-%1").arg(i + 1)).toString());
    const auto place = placeOf(settings.value(QStringLiteral("place-%1").arg(i + 1)).toString());
    if (!point || !place) return std::nullopt;
    plan.points[i] = *point;
    plan.places[i] = *place;
  }
  plan.percent = settings.value(QStringLiteral("percent"), plan.percent).toInt();
  plan.shown = settings.value(QStringLiteral("shown"), plan.shown).toBool();
  return plan;
}

void write(QSettings& settings, const LaidPlan& plan) {
  settings.setValue(QStringLiteral("picture"), plan.file);
  for (std::size_t i = 0; i < plan.points.size(); ++i) {
    settings.setValue(QStringLiteral("point-%1").arg(i + 1), textOf(plan.points[i]));
    settings.setValue(QStringLiteral("place-%1").arg(i + 1), textOf(plan.places[i]));
  }
  settings.setValue(QStringLiteral("percent"), plan.percent);
  settings.setValue(QStringLiteral("shown"), plan.shown);
}

}  // namespace

LaidPlans keptLaidPlans(const QString& jobPath) {
  QSettings settings = keptSettings();
  settings.beginGroup(groupOf(jobPath));
  LaidPlans plans;
  for (const QString& letter : settings.childGroups()) {
    settings.beginGroup(letter);
    if (const auto plan = read(settings)) plans[letter.toStdString()] = *plan;
    settings.endGroup();
  }
  return plans;
}

void keepLaidPlans(const QString& jobPath, const LaidPlans& plans) {
  QSettings settings = keptSettings();
  settings.beginGroup(groupOf(jobPath));
  settings.remove(QString());
  if (!plans.empty()) settings.setValue(QStringLiteral("job"), jobPath);  // for whoever reads the settings
  for (const auto& [letter, plan] : plans) {
    settings.beginGroup(QString::fromStdString(letter));
    write(settings, plan);
    settings.endGroup();
  }
}

}  // namespace ribwright
