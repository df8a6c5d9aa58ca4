// Openings, penetrations, girts or bands of the chosen wall as cells to be typed into, and a row at the end for a new
// one.
//
// What is typed goes through the session as one named edit. What cannot be read stays in its cell as it was typed,
// until it is typed anew; a new one stays a draft until all is there that it needs.
#pragma once

#include <map>
#include <tuple>

#include "core/editing/stated_cells.h"
#include "ui/panels/part_model.h"
#include "ui/session/session.h"

namespace ribwright {

class StatedModel : public PartModel {
  Q_OBJECT

 public:
  enum Role { UnreadRole = Qt::UserRole, BlankRole, ChoicesRole };
  struct Entry {
    int row, column;  // as they are seen; rows past the last: new ones
    QString text;
  };

  StatedModel(Session& session, StatedList list, QObject* parent = nullptr);

  // As the chosen wall states them.
  PartRows statedRows() const;
  // The draft is of the wall that it was typed for.
  void takeWall();

  bool isDraft(int row) const { return row == rowCount() - 1 && hasWall(); }
  bool isStated(int column) const;
  // One cell; false: it could not be read, or the draft still needs more.
  bool enter(int row, int column, const QString& text);
  // All of them or none; what is wrong, row and column named. Empty: all went in.
  QStringList enterAll(const std::vector<Entry>& entries);
  // Forgets what was typed there and could not be read.
  void giveUp(int row, int column);
  void dropDraft();
  // What is wrong when it could not be done.
  QStringList remove(const std::vector<int>& rows);

  // What there is to be said of a cell, and whether it is a fault.
  QString sentence(int row, int column) const;
  bool isUnread(int row, int column) const { return unreadAt(row, column) != nullptr; }

  QString plainText(int row, int column) const override;
  int rowCount(const QModelIndex& parent = {}) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role) override;

 signals:
  // A new one was put in; it is chosen as soon as it is planned.
  void added();

 private:
  using Place = std::tuple<std::string, std::string, int>;  // wall, id or number of the row, column
  struct Unread {
    QString text, why;
  };
  bool hasWall() const { return session_.isOpen() && session_.wall() >= 0; }
  std::size_t wall() const { return static_cast<std::size_t>(session_.wall()); }
  std::string idOf(std::size_t stated) const;
  Place placeOf(int row, int column) const;
  const Unread* unreadAt(int row, int column) const;
  std::vector<std::string> choicesOf(int column) const;
  QString textAt(int row, int column) const;
  QString shownAtCell(int row, int column) const;
  QString derivedAt(std::size_t stated, int column) const;
  // Row of the newest job for one that is seen; past its last for new ones.
  std::size_t newestRow(int row) const;
  std::vector<CellFault> apply(const QString& name, const std::vector<TypedCell>& cells);
  bool enterDraft(int column, const QString& text);
  QString nameOfRow(int row) const;

  Session& session_;
  StatedList list_;
  std::string draftWall_;  // letter
  std::map<int, QString> draft_;
  std::map<Place, Unread> unread_;
};

}  // namespace ribwright
