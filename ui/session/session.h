// What is open: the states of a job from its file, the plan that follows from the one that stands, the wall and the
// parts that are chosen. The window's panels look at it and are told when it changes.
//
// Three jobs, mostly one and the same. newest(): with every edit, what is saved and what the next edit is made from.
// job() and plan(): the newest that is planned; a large job is planned in another thread, and comes a moment later.
// seenJob() and seenPlan(): those, or a preview (a drag under way, a start that is pointed at), which is in no history.
#pragma once

#include <QObject>
#include <QString>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/drawing/drawing.h"
#include "core/editing/batch_changes.h"
#include "core/editing/history.h"
#include "core/editing/order_changes.h"
#include "core/job/job.h"
#include "core/plan/plan.h"
#include "core/units/outcome.h"
#include "core/words/words.h"
#include "ui/session/job_on_disk.h"
#include "ui/session/planner.h"
#include "ui/session/read_ahead.h"
#include "ui/session/window_language.h"

namespace ribwright {

class Session : public QObject {
  Q_OBJECT

 public:
  explicit Session(QObject* parent = nullptr);

  // Reads and plans the job of a file. When it cannot be read, what was open stays open, `faults` tells why, and false
  // is given back.
  bool open(const QString& path);
  // The same with what was read before.
  bool open(ReadJob read);
  // The same file again; the wall and the part that were chosen stay chosen while the job has them.
  bool reload();
  // A job that no file holds yet, in place of what was open; path() is empty until it is saved.
  void begin(const Job& job);
  // Work that was kept, as unsaved changes of a file that is not touched; `digest`: of what stood in the file when the
  // work was done. Empty path: as begin().
  void openKept(const Job& job, const QString& path, const QByteArray& digest);

  bool isOpen() const { return opened_.has_value(); }
  // Only when isOpen().
  const Job& job() const { return *opened_->job; }
  const Plan& plan() const { return *opened_->plan; }
  // To be read by another thread while this one goes on.
  std::shared_ptr<const Job> sharedJob() const { return opened_->job; }
  std::shared_ptr<const Plan> sharedPlan() const { return opened_->plan; }
  std::shared_ptr<const Job> sharedNewest() const { return opened_->newest; }
  const QString& path() const { return file_.path(); }
  // Where files that belong to the job are looked for: its own folder, or a person's own while it has no file.
  QString folder() const;
  // Of what was read from the job's file or written into it last.
  const QByteArray& fileDigest() const { return file_.digest(); }
  // Of the last attempt to open; empty when it went well.
  const std::vector<Fault>& faults() const { return faults_; }
  LengthStyle style() const { return {job().units, job().decimalSign}; }
  // Of particulars, findings and paper.
  const Words& words() const { return Words::of(language_); }
  const std::string& language() const { return language_; }

  // What the last edit did to the drill batches, or undoing it, or reading the same file again.
  const BatchChanges& batchChanges() const { return batchChanges_; }
  // The same of the sheets and what is ordered.
  const OrderChanges& orderChanges() const { return orderChanges_; }

  // Null while nothing is open.
  const History* history() const { return isOpen() ? &opened_->history : nullptr; }
  // Only when isOpen(): the job with every edit, also with those that are not planned yet.
  const Job& newest() const { return *opened_->newest; }
  // Goes on to a job under the name of the edit; a preview ends. `merging`: as History::push. False: nothing is open,
  // or the job is what stands already.
  bool apply(const std::string& name, const Job& job, std::string_view merging = {});
  // Applies what an edit makes of the newest job. Its faults when it could not; nothing is changed then.
  using Edit = std::function<Outcome<Job>(const Job&)>;
  std::vector<Fault> edit(const std::string& name, const Edit& edit, std::string_view merging = {});
  // The next edit is a step of its own, whatever it is merged under.
  void endMerging();
  void undo();
  void redo();
  // What led to the job that stands: an edit, or going back or forward over one.
  enum class Step { Edited, Undone, Redone };
  Step lastStep() const { return lastStep_; }

  // A newer job than job() is being planned. settle() waits for it: job() is the newest then. A preview stays, unless
  // the newest job waits behind it.
  bool isPlanning() const { return planner_.isBusy(); }
  void settle();

  // Shows a job without going on to it, until endPreview() or the next edit.
  void preview(const Job& job);
  void endPreview();
  bool isPreview() const { return preview_.job != nullptr; }
  // What board and plan show.
  const Job& seenJob() const { return isPreview() ? *preview_.job : job(); }
  const Plan& seenPlan() const { return isPreview() ? *preview_.plan : plan(); }
  // The chosen wall's picture of those, where it was made along with the plan; else null.
  std::shared_ptr<const BoardPicture> drawn() const;

  // The job's file is another window's to write: it is never written here, whoever asks, until this is taken back. Work
  // on it can be saved into another file.
  bool isLookedAt() const { return lookedAt_; }
  void setLookedAt(bool lookedAt);

  // Into the job's own file, whole or not at all; not when someone else has changed it since it was read or saved last,
  // when it is only looked at, or when it has none yet.
  enum class Saved { Yes, ChangedOnDisk, Faulty, Unnamed, LookedAt };
  Saved save();
  // Into a file that is the job's own from then on, whatever stood there; its own file: as save().
  Saved saveAs(const QString& path);
  // Of the last attempt to save; empty when it went well.
  const std::vector<Fault>& saveFaults() const { return saveFaults_; }

  // Index into the job's walls; -1 when it has none or nothing is open.
  int wall() const { return wall_; }
  const Wall& chosenWall() const { return job().walls[static_cast<std::size_t>(wall_)]; }
  const WallPlan& chosenPlan() const { return *plan().walls[static_cast<std::size_t>(wall_)]; }
  // A part of another wall is let go.
  void chooseWall(int wall);
  void chooseWall(const std::string& letter);

  // The part that is chosen, shared by board, tables, findings and particulars. Choosing a part of another wall chooses
  // that wall; choosing a whole face chooses its wall and no part; what the job has not is not chosen.
  const std::optional<Part>& chosen() const { return chosen_; }
  // A part that comes with an edit which is not planned yet is chosen as soon as it is there.
  void choose(const std::optional<Part>& part);
  // All that are chosen, of one wall, chosen() last.
  const std::vector<Part>& chosenParts() const { return chosenParts_; }
  // Those that the job has, all of the last one's wall.
  void chooseParts(const std::vector<Part>& parts);
  // Adds a part, or takes it out where it is among them.
  void chooseAlso(const Part& part);
  // What the plan's findings point at, in their order.
  const std::vector<std::optional<Part>>& findingParts() const { return findingParts_; }

  PaperSize paper() const { return paper_; }
  void choosePaper(PaperSize paper);
  // Of the chosen wall, on the chosen paper; made when they are first asked for.
  const std::vector<Page>& pages() const;

 signals:
  // Another job than before is open; jobChanged() follows.
  void jobOpened();
  void jobChanged();
  void historyChanged();
  // A preview came, changed or went. (When the job changes: jobChanged() alone.)
  void previewChanged();
  void wallChanged();
  void chosenChanged();
  void pagesChanged();
  void faultsChanged();

 private:
  struct Opened {
    History history;
    std::shared_ptr<const Job> newest;
    std::shared_ptr<const Job> job;
    std::shared_ptr<const Plan> plan;
  };
  void take(History history, std::shared_ptr<const Plan> plan, bool sameFile);
  // Plans the newest job at once where that is quick, else in another thread.
  void goOn(Step step);
  void takePlanned(const Planned& result);
  void dropPreview();
  // What is chosen is kept as far as it is still there.
  void show(std::shared_ptr<const Job> job, std::shared_ptr<const Plan> plan, const Plan& previous, bool sameFile);
  void keepChosen(const std::string& letter);
  bool isThere(const Part& part) const;
  std::vector<Part> thoseThere(const std::vector<Part>& parts) const;

  Saved write(const QString& path);

  JobOnDisk file_;
  bool lookedAt_ = false;
  std::optional<Opened> opened_;
  Step lastStep_ = Step::Edited;
  BatchChanges batchChanges_;
  OrderChanges orderChanges_;
  std::vector<Fault> faults_, saveFaults_;
  std::string language_ = spokenLanguage();  // pages and findings read as the window does
  int wall_ = -1;
  std::optional<Part> chosen_;
  std::vector<Part> chosenParts_;
  std::vector<Part> wanted_;  // to be chosen when the newest job is planned
  std::vector<std::optional<Part>> findingParts_;
  Planner planner_;
  Planned preview_;                // its job is null: none
  Planned drawn_;                  // the last that was planned beside the window
  std::uint64_t previewFrom_ = 0;  // number of the planner's asking with which the preview began; 0: none
  std::uint64_t newestAsked_ = 0;  // number of the planner's asking for the newest job
  PaperSize paper_ = PaperSize::Letter;
  mutable std::optional<std::vector<Page>> pages_;
};

}  // namespace ribwright
