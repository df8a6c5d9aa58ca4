#include "ui/panels/stated_model.h"

#include <QFont>
#include <QGuiApplication>
#include <QPalette>
#include <algorithm>
#include <set>

#include "core/drawing/shown_length.h"
#include "core/job/by_id.h"
#include "ui/panels/mixed_colour.h"
#include "ui/panels/stated_words.h"
#include "ui/session/window_text.h"

namespace ribwright {

namespace {

std::optional<Part::Kind> partKind(StatedList list) {
  switch (list) {
    case StatedList::Openings:
      return Part::Kind::Opening;
    case StatedList::Penetrations:
      return Part::Kind::Penetration;
    case StatedList::Girts:
      return Part::Kind::Girt;
    case StatedList::Bands:
      break;
  }
  return std::nullopt;
}

}  // namespace

StatedModel::StatedModel(Session& session, StatedList list, QObject* parent)
    : PartModel(parent), session_(session), list_(list) {
  connect(&session_, &Session::jobOpened, this, [this] { unread_.clear(), draft_.clear(); });
}

std::string StatedModel::idOf(std::size_t stated) const {
  const Wall& of = session_.chosenWall();
  if (stated >= statedCount(of, list_)) return {};
  return list_ == StatedList::Bands ? std::to_string(stated) : statedText(session_.job(), wall(), list_, stated, 0);
}

PartRows StatedModel::statedRows() const {
  PartRows all;
  for (const StatedColumn& column : statedColumns(list_))
    all.columns.push_back({columnTitle(list_, column.name), column.form == CellForm::Length});
  if (list_ == StatedList::Openings) {
    all.columns.push_back({tr("Left jamb"), true});
    all.columns.push_back({tr("Head"), true});
  }
  if (!hasWall()) return all;
  all.style = session_.style();
  for (std::size_t row = 0; row < statedCount(session_.chosenWall(), list_); ++row) {
    PartRows::Row shown;
    if (const auto kind = partKind(list_)) shown.part = Part{*kind, session_.chosenWall().letter, idOf(row)};
    for (int column = 0; column < int(all.columns.size()); ++column) {
      const bool stated = isStated(column);
      const std::string cell =
          stated ? statedText(session_.job(), wall(), list_, row, static_cast<std::size_t>(column)) : std::string();
      shown.cells << (stated ? choiceWords(session_, cell) : derivedAt(row, column));
    }
    all.rows.push_back(std::move(shown));
  }
  return all;
}

QString StatedModel::derivedAt(std::size_t stated, int column) const {
  const Opening& opening = session_.chosenWall().openings[stated];
  const bool left = column == int(statedColumns(list_).size());
  if (!left) return text(dimensionText(opening.sill + opening.height, session_.style()));
  const CutRegion* cut = byId(session_.chosenPlan().layout.cuts, opening.id);
  return cut && cut->steelLeft ? text(dimensionText(*cut->steelLeft, session_.style())) : QStringLiteral("?");
}

void StatedModel::takeWall() {
  const std::string letter = hasWall() ? session_.chosenWall().letter : std::string();
  if (letter != draftWall_) draft_.clear();
  draftWall_ = letter;
}

bool StatedModel::isStated(int column) const {
  return column >= 0 && column < static_cast<int>(statedColumns(list_).size());
}

int StatedModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : PartModel::rowCount() + (hasWall() ? 1 : 0);
}

StatedModel::Place StatedModel::placeOf(int row, int column) const {
  return {draftWall_, isDraft(row) ? std::string("\n") : idOf(statedAt(row)), column};
}

const StatedModel::Unread* StatedModel::unreadAt(int row, int column) const {
  if (!hasWall()) return nullptr;
  const auto found = unread_.find(placeOf(row, column));
  return found == unread_.end() ? nullptr : &found->second;
}

std::vector<std::string> StatedModel::choicesOf(int column) const {
  if (!hasWall() || !isStated(column)) return {};
  return statedChoices(session_.job(), wall(), list_, static_cast<std::size_t>(column));
}

// What there is to be typed over.
QString StatedModel::textAt(int row, int column) const {
  if (const Unread* unread = unreadAt(row, column)) return unread->text;
  if (isDraft(row)) {
    const auto typed = draft_.find(column);
    return typed == draft_.end() ? QString() : typed->second;
  }
  return shown().rows.at(statedAt(row)).cells.value(column);
}

QString StatedModel::plainText(int row, int column) const { return textAt(row, column); }

QString StatedModel::shownAtCell(int row, int column) const {
  const QString plain = textAt(row, column);
  if (unreadAt(row, column)) return QStringLiteral("? ") + plain;
  if (!plain.isEmpty() || !isStated(column)) return plain;
  if (isDraft(row)) return column == 0 && draft_.empty() ? newItemWords(list_) + QStringLiteral(" …") : QString();
  return blankWords(list_, statedColumns(list_)[static_cast<std::size_t>(column)].name, statedAt(row));
}

QString StatedModel::sentence(int row, int column) const {
  if (!hasWall() || row < 0 || column < 0 || column >= columnCount()) return {};
  const QString at = tr("%1, %2").arg(nameOfRow(row), headerData(column, Qt::Horizontal, Qt::DisplayRole).toString());
  if (const Unread* unread = unreadAt(row, column)) return tr("%1: %2").arg(at, unread->why);
  if (isDraft(row)) return tr("Type here for a %1; it is put in when all it needs is there.").arg(newItemWords(list_));
  if (!isStated(column)) return tr("%1: follows from what is stated").arg(at);
  return at;
}

QString StatedModel::nameOfRow(int row) const {
  if (isDraft(row)) return newItemWords(list_);
  const std::size_t stated = statedAt(row);
  if (list_ == StatedList::Bands) return tr("Band %1").arg(stated + 1);
  return text(idOf(stated));
}

Qt::ItemFlags StatedModel::flags(const QModelIndex& index) const {
  if (!index.isValid()) return Qt::NoItemFlags;
  const Qt::ItemFlags all = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
  return isStated(index.column()) ? all | Qt::ItemIsEditable : all;
}

QVariant StatedModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || !hasWall()) return {};
  const int row = index.row(), column = index.column();
  const bool blank = textAt(row, column).isEmpty();
  switch (role) {
    case Qt::DisplayRole:
      return shownAtCell(row, column);
    case Qt::EditRole:
      return textAt(row, column);
    case UnreadRole:
      return isUnread(row, column);
    case BlankRole:
      return blank || !isStated(column);
    case ChoicesRole: {
      QStringList all;
      for (const std::string& choice : choicesOf(column)) all << choiceWords(session_, choice);
      return all;
    }
    case Qt::ToolTipRole:
    case Qt::AccessibleDescriptionRole:
      return sentence(row, column);
    case Qt::FontRole: {
      QFont font;
      font.setItalic(isUnread(row, column));
      return isUnread(row, column) ? font : QVariant();
    }
    case Qt::ForegroundRole:
      return blank || !isStated(column) ? mixed(QGuiApplication::palette(), 70) : QVariant();
    default:
      return PartModel::data(index, role);
  }
}

bool StatedModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (role != Qt::EditRole || !index.isValid() || !isStated(index.column())) return false;
  return enter(index.row(), index.column(), value.toString());
}

// Rows may have come or gone in the newest job that are not planned yet.
std::size_t StatedModel::newestRow(int row) const {
  const Wall& newest = session_.newest().walls.at(wall());
  const std::size_t stated = statedAt(row), count = statedCount(session_.chosenWall(), list_);
  const std::size_t newestCount = statedCount(newest, list_);
  if (stated >= count) return newestCount + (stated - count);
  if (list_ == StatedList::Bands) return std::min(stated, newestCount);
  for (std::size_t i = 0; i < newestCount; ++i) {
    if (statedText(session_.newest(), wall(), list_, i, 0) == idOf(stated)) return i;
  }
  return newestCount;
}

std::vector<CellFault> StatedModel::apply(const QString& name, const std::vector<TypedCell>& cells) {
  std::vector<CellFault> wrong;
  session_.edit(name.toStdString(), [&](const Job& newest) -> Outcome<Job> {
    EnteredCells entered = enterCells(newest, wall(), list_, cells);
    if (entered.faults.empty()) return std::move(entered.job);
    wrong = std::move(entered.faults);
    return Fault{"", wrong.front().message};
  });
  return wrong;
}

bool StatedModel::enter(int row, int column, const QString& typed) {
  if (isDraft(row)) return enterDraft(column, typed);
  const QString title = headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
  const Place place = placeOf(row, column);
  const std::string stated = statedWords(session_, choicesOf(column), typed);
  // What it was called under its old id is its own no more.
  unread_.erase(place);
  const auto wrong = apply(tr("%1 of %2: %3").arg(title, nameOfRow(row), typed.trimmed()),
                           {{newestRow(row), static_cast<std::size_t>(column), stated}});
  if (!wrong.empty()) unread_[place] = {typed, text(wrong.front().message)};
  emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
  return wrong.empty();
}

bool StatedModel::enterDraft(int column, const QString& typed) {
  const int row = rowCount() - 1;
  unread_.erase(placeOf(row, column));
  if (typed.trimmed().isEmpty())
    draft_.erase(column);
  else
    draft_[column] = typed.trimmed();
  const std::size_t newRow = statedCount(session_.newest().walls.at(wall()), list_);
  std::vector<TypedCell> cells;
  for (const auto& [at, words] : draft_)
    cells.push_back({newRow, static_cast<std::size_t>(at), statedWords(session_, choicesOf(at), words)});
  if (cells.empty()) return true;
  const std::string letter = session_.chosenWall().letter;
  const auto wrong = apply(tr("Add a %1").arg(newItemWords(list_)), cells);
  bool read = true;
  for (const CellFault& fault : wrong) {
    const auto cell = draft_.find(static_cast<int>(fault.column));
    if (cell == draft_.end()) continue;  // still to be typed
    unread_[placeOf(row, cell->first)] = {cell->second, text(fault.message)};
    read = read && cell->first != column;
  }
  if (wrong.empty()) draft_.clear();
  emit dataChanged(index(rowCount() - 1, 0), index(rowCount() - 1, columnCount() - 1));
  return read;
}

void StatedModel::dropDraft() {
  draft_.clear();
  std::erase_if(unread_, [](const auto& each) { return std::get<1>(each.first) == "\n"; });
  emit dataChanged(index(rowCount() - 1, 0), index(rowCount() - 1, columnCount() - 1));
}

QStringList StatedModel::enterAll(const std::vector<Entry>& entries) {
  std::vector<TypedCell> cells;
  std::map<std::size_t, int> rows;  // of the newest job, to what is seen
  for (const Entry& entry : entries) {
    const std::size_t row = newestRow(entry.row);
    rows[row] = entry.row;
    cells.push_back(
        {row, static_cast<std::size_t>(entry.column), statedWords(session_, choicesOf(entry.column), entry.text)});
  }
  QStringList all;
  for (const CellFault& fault : apply(tr("Paste cells: %1").arg(cells.size()), cells)) {
    const QString title = headerData(int(fault.column), Qt::Horizontal, Qt::DisplayRole).toString();
    all << tr("row %1, %2: %3").arg(rows[fault.row] + 1).arg(title, text(fault.message));
  }
  if (all.isEmpty()) {
    for (const Entry& entry : entries) unread_.erase(placeOf(entry.row, entry.column));
  }
  return all;
}

void StatedModel::giveUp(int row, int column) {
  if (isDraft(row)) draft_.erase(column);
  if (unread_.erase(placeOf(row, column)) > 0 || isDraft(row)) emit dataChanged(index(row, 0), index(row, column));
}

QStringList StatedModel::remove(const std::vector<int>& rows) {
  std::set<std::size_t> stated;
  QStringList names, all;
  for (const int row : rows) {
    if (isDraft(row)) {
      dropDraft();
    } else {
      stated.insert(newestRow(row));
      names << nameOfRow(row);
    }
  }
  if (stated.empty()) return all;
  const auto faults =
      session_.edit(tr("Remove %1").arg(names.join(QStringLiteral(", "))).toStdString(), [&](const Job& newest) {
        return withoutRows(newest, wall(), list_, {stated.begin(), stated.end()});
      });
  for (const Fault& fault : faults) all << text(oneLine(fault));
  return all;
}

}  // namespace ribwright
