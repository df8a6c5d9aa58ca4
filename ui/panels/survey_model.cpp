#include "ui/panels/survey_model.h"

#include <algorithm>

#include "core/units/typed_text.h"
#include "ui/panels/survey_words.h"
#include "ui/session/window_text.h"

namespace ribwright {

namespace {

bool isBlank(const QString& words) { return words.trimmed().isEmpty(); }

}  // namespace

SurveyModel::SurveyModel(Session& session, QObject* parent) : QAbstractTableModel(parent), session_(session) {
  connect(&session_, &Session::jobOpened, this, [this] { unread_.clear(); });
}

bool SurveyModel::isCurrent() const {
  return session_.isOpen() && session_.wall() >= 0 && session_.chosenWall().letter == wall_ &&
         session_.sharedPlan() == plan_;
}

void SurveyModel::refill() {
  std::vector<SurveyLine> lines;
  std::vector<SurveyStation> stations;
  std::string letter;
  if (session_.isOpen() && session_.wall() >= 0) {
    const Wall& wall = session_.chosenWall();
    const WallPlan& planned = session_.chosenPlan();
    letter = wall.letter;
    lines = surveyLines(wall, planned.layout, planned.holes.supports);
    stations = surveyStations(wall, planned.layout, lines);
  }
  if (lines.empty()) stations.clear();
  plan_ = session_.isOpen() ? session_.sharedPlan() : nullptr;
  const bool same = letter == wall_ && lines == lines_ && stations == stations_;
  if (same && rowCount() > 0) {
    emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
    emit headerDataChanged(Qt::Vertical, 0, rowCount() - 1);
    return;
  }
  beginResetModel();
  wall_ = letter;
  lines_ = std::move(lines);
  stations_ = std::move(stations);
  endResetModel();
}

bool SurveyModel::takesReading(int row, int column) const {
  if (row < 0 || row >= rowCount() || column < 0 || column >= columnCount()) return false;
  const bool named = line(row).of == SurveyLine::Of::Slab || !line(row).id.empty();
  return named && line(row).reaches(station(column).u);
}

int SurveyModel::measured() const {
  int count = 0;
  for (const SurveyLine& each : lines_) count += static_cast<int>(readingsOf(session_.chosenWall(), each).size());
  return count;
}

SurveyModel::Place SurveyModel::placeOf(int row, int column) const {
  return {wall_, line(row).of, line(row).id, station(column).u};
}

const SurveyModel::Unread* SurveyModel::unreadAt(int row, int column) const {
  const auto found = unread_.find(placeOf(row, column));
  return found == unread_.end() ? nullptr : &found->second;
}

bool SurveyModel::enter(const std::vector<Entry>& entries) {
  const auto wall = static_cast<std::size_t>(session_.wall());
  Job job = session_.newest();
  std::vector<Entry> wrong;
  for (const Entry& entry : entries) {
    const auto next = enterReading(job, wall, line(entry.row), station(entry.column).u, entry.text.toStdString(), who_);
    if (next) {
      job = next.value();
      unread_.erase(placeOf(entry.row, entry.column));
    } else {
      unread_[placeOf(entry.row, entry.column)] = {entry.text, text(oneLine(next.faults().front()))};
      wrong.push_back(entry);
    }
  }
  // Stations may come and go with the job: places are told before.
  if (!wrong.empty()) emit refused(wrong.front().row, wrong.front().column);
  if (!session_.apply(nameOf(entries), job)) refill();
  emit entered();
  return wrong.empty();
}

std::string SurveyModel::nameOf(const std::vector<Entry>& entries) const {
  if (entries.empty()) return {};
  const bool strikes = std::all_of(entries.begin(), entries.end(), [](const Entry& e) { return isBlank(e.text); });
  const auto count = static_cast<int>(entries.size());
  if (count > 1) return (strikes ? tr("Strike out %1 readings") : tr("%1 readings")).arg(count).toStdString();
  const QString where = lineText(line(entries.front().row));
  const QString station = stationText(this->station(entries.front().column), session_.style());
  return (strikes ? tr("Strike out the reading: %1, %2") : tr("Reading: %1, %2")).arg(where, station).toStdString();
}

void SurveyModel::giveUp(int row, int column) {
  if (takesReading(row, column) && unread_.erase(placeOf(row, column)) > 0) refill();
}

QString SurveyModel::sentences(int row, int column) const {
  if (const Unread* unread = unreadAt(row, column))
    return tr("%1, %2: %3").arg(lineText(line(row)), stationText(station(column), session_.style()), unread->why);
  return readingSentences(session_, line(row), station(column));
}

int SurveyModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(lines_.size());
}

int SurveyModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(stations_.size());
}

Qt::ItemFlags SurveyModel::flags(const QModelIndex& index) const {
  if (!index.isValid()) return Qt::NoItemFlags;
  const Qt::ItemFlags all = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
  return takesReading(index.row(), index.column()) ? all | Qt::ItemIsEditable : all;
}

QString SurveyModel::textAt(int row, int column) const {
  if (const Unread* unread = unreadAt(row, column)) return unread->text;
  return text(typedText(session_.job(), static_cast<std::size_t>(session_.wall()), line(row), station(column).u));
}

QString SurveyModel::deviationAt(int row, int column) const {
  const auto reading = readingAt(session_.chosenWall(), line(row), station(column).u);
  if (!reading || unreadAt(row, column)) return {};
  return deviationText(deviationOf(session_.chosenWall(), session_.chosenPlan().layout, line(row), *reading),
                       session_.style());
}

QVariant SurveyModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || !isCurrent()) return {};
  const int row = index.row(), column = index.column();
  switch (role) {
    case Qt::DisplayRole:
      return unreadAt(row, column) ? QStringLiteral("? ") + textAt(row, column) : textAt(row, column);
    case Qt::EditRole:
      return textAt(row, column);
    case DeviationRole:
      return deviationAt(row, column);
    case UnreadRole:
      return unreadAt(row, column) != nullptr;
    case ReachedRole:
      return line(row).reaches(station(column).u);
    case Qt::ToolTipRole:
    case Qt::AccessibleTextRole:
      return sentences(row, column);
    default:
      return {};
  }
}

bool SurveyModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (role != Qt::EditRole || !index.isValid() || !takesReading(index.row(), index.column())) return false;
  return enter({{index.row(), index.column(), value.toString()}});
}

QVariant SurveyModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (section < 0 || section >= (orientation == Qt::Horizontal ? columnCount() : rowCount())) return {};
  if (role == Qt::TextAlignmentRole) return int(Qt::AlignVCenter | Qt::AlignLeft);
  if (role != Qt::DisplayRole || !isCurrent()) return {};
  if (orientation == Qt::Horizontal) return stationText(station(section), session_.style());
  const SurveyLine& edge = line(section);
  const Length planned = plannedHeight(session_.chosenWall(), session_.chosenPlan().layout, edge, edge.from);
  return QStringLiteral("%1   %2").arg(lineText(edge), text(fineText(planned, session_.style())));
}

}  // namespace ribwright
