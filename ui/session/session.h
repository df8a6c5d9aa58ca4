// What is open: a job from its file, the plan that follows from it, and its pages. The window's panels look at it and
// are told when it changes.
#pragma once

#include <QObject>
#include <QString>
#include <optional>
#include <vector>

#include "core/drawing/drawing.h"
#include "core/job/job.h"
#include "core/plan/plan.h"
#include "core/units/outcome.h"

namespace ribwright {

class Session : public QObject {
  Q_OBJECT

 public:
  explicit Session(QObject* parent = nullptr);

  // Reads, plans and draws the job of a file. When it cannot be read, what was open stays open, `faults` tells why, and
  // false is given back.
  bool open(const QString& path);
  // The same file again; the chosen wall stays chosen while the job has it.
  bool reload();

  bool isOpen() const { return opened_.has_value(); }
  // Only when isOpen().
  const Job& job() const { return opened_->job; }
  const Plan& plan() const { return opened_->plan; }
  const QString& path() const { return path_; }
  // Of the last attempt to open; empty when it went well.
  const std::vector<Fault>& faults() const { return faults_; }
  LengthStyle style() const { return {job().units, job().decimalSign}; }

  // Index into the job's walls; -1 when it has none or nothing is open.
  int wall() const { return wall_; }
  void chooseWall(int wall);
  void chooseWall(const std::string& letter);

  PaperSize paper() const { return paper_; }
  void choosePaper(PaperSize paper);
  // Of the chosen wall, on the chosen paper.
  std::vector<Page> pages() const;

 signals:
  void jobChanged();
  void wallChanged();
  void pagesChanged();
  void faultsChanged();

 private:
  struct Opened {
    Job job;
    Plan plan;
    std::vector<Page> pages;  // of all walls
  };
  void draw();

  QString path_;
  std::optional<Opened> opened_;
  std::vector<Fault> faults_;
  int wall_ = -1;
  PaperSize paper_ = PaperSize::Letter;
};

}  // namespace ribwright
