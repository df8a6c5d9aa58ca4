// The survey of the chosen wall as cells: an edge of the steel a row, from the top down, a station a column.
//
// What is typed goes through the session as one named edit. What cannot be read stays in its cell as it was typed,
// until it is typed anew or struck out.
#pragma once

#include <QAbstractTableModel>
#include <map>
#include <memory>
#include <tuple>
#include <vector>

#include "core/editing/survey_entry.h"
#include "ui/session/session.h"

namespace ribwright {

class SurveyModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  enum Role { DeviationRole = Qt::UserRole, UnreadRole, ReachedRole };
  struct Entry {
    int row, column;
    QString text;  // blank: strikes the reading out
  };

  explicit SurveyModel(Session& session, QObject* parent = nullptr);

  // As the chosen wall is now.
  void refill();
  void setReadBy(const ReadBy& who) { who_ = who; }

  // Can be typed into: the edge reaches there and has an id.
  bool takesReading(int row, int column) const;
  const SurveyLine& line(int row) const { return lines_[static_cast<std::size_t>(row)]; }
  const SurveyStation& station(int column) const { return stations_[static_cast<std::size_t>(column)]; }
  int measured() const;  // readings of the chosen wall

  // All that can be read as one edit; false when something could not. Every cell must take a reading.
  bool enter(const std::vector<Entry>& entries);
  // Forgets what was typed and could not be read.
  void giveUp(int row, int column);
  // What stands in the cell and where, or why its text cannot be read.
  QString sentences(int row, int column) const;

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role) override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 signals:
  // Each after an entry, in this order: where the first is that could not be read; then that it is over.
  void refused(int row, int column);
  void entered();

 private:
  using Place = std::tuple<std::string, SurveyLine::Of, std::string, Length>;  // wall, edge, its id, station
  struct Unread {
    QString text, why;
  };
  Place placeOf(int row, int column) const;
  const Unread* unreadAt(int row, int column) const;
  QString textAt(int row, int column) const;
  QString deviationAt(int row, int column) const;
  std::string nameOf(const std::vector<Entry>& entries) const;

  Session& session_;
  ReadBy who_;
  // Between a change of the job and refill() there may be questions that the new job cannot answer.
  bool isCurrent() const;

  std::string wall_;                  // letter
  std::shared_ptr<const Plan> plan_;  // that it was filled from
  std::vector<SurveyLine> lines_;
  std::vector<SurveyStation> stations_;
  std::map<Place, Unread> unread_;
};

}  // namespace ribwright
