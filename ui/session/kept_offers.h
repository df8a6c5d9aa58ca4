// Looks for work that was left behind, in a thread of its own, and offers it in one dialog.
#pragma once

#include <QObject>
#include <QPointer>
#include <QThread>
#include <functional>
#include <memory>
#include <vector>

#include "ui/panels/kept_dialog.h"
#include "ui/session/kept_search.h"

class QWidget;

namespace ribwright {

class KeptOffers : public QObject {
  Q_OBJECT

 public:
  KeptOffers(const QString& keptFolder, QWidget* window);
  // Waits for the search.
  ~KeptOffers() override;

  // Of all these jobs and of those without a file; what belongs to `first` stands on top.
  void offerAll(const QStringList& jobs, const QString& first);
  // What belongs to this job's file.
  void offerOf(const QString& job);
  // How many jobs had some when it was looked for last, less what was decided since.
  int count() const { return count_; }

 signals:
  void openKeptAsked(int offer);
  void openFileAsked(const QString& path);
  void countChanged();

 public:
  // It is no more offered, and nothing else either until it is searched for again; its spots are held.
  KeptOffer takeOut(int offer);

 private:
  struct Found {
    std::vector<KeptOffer> offers;
    std::vector<KeptCard> cards;
  };
  void search(const std::function<std::vector<KeptOffer>()>& look);
  void show(Found found);
  void discard(int offer);
  void setCount(int count);

  QString keptFolder_;
  QWidget* window_;
  QPointer<KeptDialog> dialog_;
  Found found_;
  int count_ = 0;
  std::unique_ptr<QThread> thread_;
};

}  // namespace ribwright
