// Work that was not saved when its window went: all of it listed, what is kept held against what the file holds, and what
// a person wants done. Nothing of either is changed before that.
#pragma once

#include <QDialog>
#include <optional>
#include <vector>

class QFrame;
class QGridLayout;
class QLabel;
class QPushButton;
class QTreeWidget;

namespace ribwright {

struct JobCounts {
  int walls = 0, openings = 0, sheets = 0;
};

struct KeptCard {
  QString name, file, when;         // of the job; empty file: it has none yet
  JobCounts kept;
  std::optional<JobCounts> inFile;  // absent: there is no file that reads
  QString differs;                  // one or two sentences
};

class KeptDialog : public QDialog {
  Q_OBJECT

 public:
  explicit KeptDialog(QWidget* parent = nullptr);

  // Never empty; the first is chosen.
  void setCards(const std::vector<KeptCard>& cards);

 signals:
  // Of the cards, by their index. The dialog stays; whoever is told closes it or gives it new cards.
  void openKeptAsked(int card);
  void openFileAsked(int card);
  void discardAsked(int card);

 private:
  void makeCounts(QGridLayout* grid);
  QFrame* makeQuestion();
  QPushButton* button(const QString& words, const char* name);
  void showCard();
  void ask(bool really);
  int chosen() const;

  std::vector<KeptCard> cards_;
  QTreeWidget* list_;
  QLabel* counts_[3][2];  // walls, openings, sheets; kept, in the file
  QLabel* differs_;
  QFrame* question_;
  QPushButton *openKept_, *openFile_, *discard_, *later_;
};

}  // namespace ribwright
