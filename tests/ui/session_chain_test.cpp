// Chains of random edits through the session as a window's hand goes: previews in between, undone, redone, saved and
// read anew at any moment, planned at once and in another thread. Whatever comes of it is held against a tape of what
// was done, which knows nothing but the bytes that the job file would hold.
#include <QTemporaryDir>
#include <QtTest>
#include <map>

#include "core/job/job_file.h"
#include "tests/fuzz/dice.h"
#include "tests/fuzz/layout_text.h"
#include "tests/fuzz/random_edits.h"
#include "tests/ui/window_tests.h"
#include "ui/session/session.h"

using namespace ribwright;
using fuzz::Dice;

namespace {

constexpr std::uint64_t seed = 20'261'127;
constexpr int editsInAChain = 30;

// What was done, in bytes of the job file, and what the file holds.
class Tape {
 public:
  explicit Tape(const std::string& opened) { reopen(opened); }

  void reopen(std::string file) {
    file_ = std::move(file);
    states_ = {{file_, true}};
    place_ = 0;
    merging_.clear();
  }

  // False: nothing new.
  bool edit(const std::string& bytes, const std::string& merging) {
    if (bytes == now()) return false;
    const bool merged = !merging.empty() && merging == merging_;
    states_.resize(merged ? place_ : place_ + 1);
    merging_ = merging;
    if (states_.back().bytes == bytes) {  // back where the step began
      merging_.clear();
    } else {
      states_.push_back({bytes, false});
    }
    place_ = states_.size() - 1;
    return true;
  }
  void endMerging() { merging_.clear(); }
  void undo() { go(place_ > 0 ? place_ - 1 : place_); }
  void redo() { go(canRedo() ? place_ + 1 : place_); }
  void save() {
    merging_.clear();
    for (State& state : states_) state.saved = false;
    states_[place_].saved = true;
    file_ = now();
  }

  const std::string& now() const { return states_[place_].bytes; }
  const std::string& file() const { return file_; }
  const std::string& first() const { return states_.front().bytes; }
  bool isSaved() const { return states_[place_].saved; }
  bool canUndo() const { return place_ > 0; }
  bool canRedo() const { return place_ + 1 < states_.size(); }
  std::size_t size() const { return states_.size(); }

 private:
  struct State {
    std::string bytes;
    bool saved;
  };
  void go(std::size_t place) {
    merging_.clear();
    place_ = place;
  }

  std::vector<State> states_;
  std::size_t place_ = 0;
  std::string merging_, file_;
};

std::string bytesIn(const QString& path) { return jobText(path.toStdString()).value(); }

std::size_t holesOf(const Plan& plan) {
  std::size_t holes = 0;
  for (const auto& wall : plan.walls) holes += wall->holes.holes.size();
  return holes;
}

// The plan that a job comes to when nothing is known before.
bool isPlanOf(const Plan& plan, const Job& job) {
  const Plan fresh = ribwright::plan(job);
  return plan.findings == fresh.findings && holesOf(plan) == holesOf(fresh) &&
         fuzz::planText(plan) == fuzz::planText(fresh);
}

class Chain {
 public:
  Chain(const QString& path, int index) : dice_(seed, index), path_(path), tape_("") {
    QObject::connect(&session_, &Session::jobChanged, [this] { seen(); });
    opened_ = session_.open(path);
    if (opened_) tape_.reopen(writeJob(session_.job()));
    stand();
  }

  bool isOpen() const { return opened_; }

  // What is wrong after it; empty: nothing.
  QString goOn() {
    while (edits < editsInAChain) {
      const QString done = step();
      const QString wrong = lookAt();
      if (!wrong.isEmpty()) return QStringLiteral("after \"%1\", edit %2: %3").arg(done).arg(edits).arg(wrong);
    }
    return end();
  }

  int edits = 0, previews = 0, undone = 0, reloaded = 0, planning = 0;

 private:
  QString step() {
    if (session_.isPlanning()) ++planning;
    switch (dice_.small(0, 15)) {
      case 0:
      case 1:
        return undo();
      case 2:
        if (tape_.canRedo()) previewed_.clear();
        session_.redo();
        tape_.redo();
        return "redo";
      case 3:
        return save();
      case 4:
        return dice_.oneIn(4) ? reload() : edit();
      case 5:
        session_.endPreview();
        previewed_.clear();
        return "end of the preview";
      case 6:
        settle();
        return "settle";
      case 7:
        QTest::qWait(dice_.small(0, 8));
        return "wait";
      case 8:
        session_.choose(std::nullopt);
        tape_.endMerging();
        return "choose";
      case 9:
      case 10:
      case 11:
        return preview();
      default:
        return edit();
    }
  }

  QString undo() {
    for (int times = dice_.small(1, 3); times > 0; --times) {
      undone += tape_.canUndo() ? 1 : 0;
      if (tape_.canUndo()) previewed_.clear();
      session_.undo();
      tape_.undo();
    }
    return "undo";
  }

  QString save() {
    if (session_.save() != Session::Saved::Yes) return "a save that was refused";
    tape_.save();
    if (bytesIn(path_) != tape_.now()) strange_ = "the file holds other bytes than the newest job's";
    return "save";
  }

  // What was not saved is gone with it.
  QString reload() {
    if (!session_.reload()) return "a reload that was refused";
    tape_.reopen(tape_.file());
    previewed_.clear();
    ++reloaded;
    return "reload";
  }

  QString preview() {
    for (int times = dice_.small(1, 3); times > 0; --times) {
      const Outcome<Job> made = anyEdit(session_.newest()).outcome;
      if (!made) continue;
      session_.preview(made.value());
      previewed_ = writeJob(made.value());
      ++previews;
    }
    return "preview";
  }

  QString edit() {
    const std::string merging = dice_.oneIn(2) ? "" : "typed";
    std::string name, made;
    const auto faults = session_.edit(
        "edit",
        [&](const Job& job) {
          const fuzz::TriedEdit tried = anyEdit(job);
          name = tried.name;
          if (tried.outcome) made = writeJob(tried.outcome.value());
          return tried.outcome;
        },
        merging);
    if (!made.empty()) previewed_.clear();
    if (faults.empty() && tape_.edit(made, merging)) ++edits;
    return QString::fromStdString(name);
  }

  // Now and then down to one wall, so that a job which was planned in another thread is planned at once.
  fuzz::TriedEdit anyEdit(const Job& job) {
    if (!dice_.oneIn(8)) return fuzz::randomEdit(job, nullptr, dice_);
    Job alone = job;
    alone.walls.resize(1);
    if (const auto faults = faultsOf(alone); !faults.empty()) return {"one wall alone", faults};
    return {"one wall alone", alone};
  }

  // What is shown as the job is the newest, or stood once, and then no earlier than what was shown before.
  void seen() {
    const std::string shown = writeJob(session_.job());
    if (!opened_ || shown == writeJob(session_.newest())) return;
    const auto stood = stood_.find(shown);
    if (stood == stood_.end()) {
      strange_ = "a job is shown that never stood";
    } else if (std::exchange(shown_, stood->second) > stood->second) {
      strange_ = "a job is shown that stood before the one shown last";
    }
  }

  void stand() {
    int& at = stood_[tape_.now()];
    if (at == 0 || at < last_) at = ++last_;
    if (session_.job() == session_.newest()) shown_ = at;
  }

  // A preview stays, unless the newest job waits behind it.
  void settle() {
    const bool behind = !(session_.job() == session_.newest());
    session_.settle();
    settled_ = true;
    if (behind && !session_.isPreview()) previewed_.clear();
  }

  QString lookAt() {
    stand();
    const bool settled = std::exchange(settled_, false);
    if (!strange_.isEmpty()) return strange_;
    if (writeJob(session_.newest()) != tape_.now()) return "another newest job than was made";
    const History& history = *session_.history();
    if (history.size() != tape_.size()) return "other steps in the history than were made";
    if (history.canUndo() != tape_.canUndo() || history.canRedo() != tape_.canRedo()) return "undo or redo";
    if (history.isSaved() != tape_.isSaved()) return "saved or not saved";
    if (!session_.isPlanning() && previewed_.empty() && !(session_.job() == session_.newest()))
      return "nothing is planned, and what is shown is not the newest";
    if (previewed_.empty() && session_.isPreview()) return "a preview that was over";
    if (settled && !(session_.job() == session_.newest())) return "settled, and what is shown is not the newest";
    if (settled && !previewed_.empty() && writeJob(session_.seenJob()) != previewed_) return "not the last preview";
    if (settled && !isPlanOf(session_.seenPlan(), session_.seenJob())) return "what is seen has another job's plan";
    return {};
  }

  QString end() {
    session_.endPreview();
    session_.settle();
    if (session_.isPlanning() || session_.isPreview()) return "it does not come to an end";
    if (!(session_.job() == session_.newest())) return "what is shown in the end is not the newest";
    if (!isPlanOf(session_.plan(), session_.job())) return "the plan in the end is not the job's";
    if (session_.save() != Session::Saved::Yes) return "it cannot be saved in the end";
    const auto read = loadJob(path_.toStdString());
    if (!read || !(read.value() == session_.newest())) return "the file does not give the job back";
    if (bytesIn(path_) != tape_.now()) return "the file holds other bytes";
    return undoAll();
  }

  QString undoAll() {
    const std::string first = tape_.first(), last = tape_.now();
    while (session_.history()->canUndo()) session_.undo();
    session_.settle();
    if (writeJob(session_.job()) != first) return "undone to the start it is not what was opened";
    if (!isPlanOf(session_.plan(), session_.job())) return "undone to the start the plan is not the job's";
    while (!(writeJob(session_.newest()) == last) && session_.history()->canRedo()) session_.redo();
    session_.settle();
    return writeJob(session_.job()) == last ? QString() : "redone it is not what was saved";
  }

  Dice dice_;
  QString path_;
  Session session_;
  Tape tape_;
  std::string previewed_;             // bytes of the preview that should be seen; empty: none
  std::map<std::string, int> stood_;  // when each job stood last, in bytes
  int last_ = 0, shown_ = 0;
  QString strange_;
  bool opened_ = false, settled_ = false;
};

QString sampleFolder() { return QStringLiteral(RIBWRIGHT_ROOT "/sample-jobs/"); }

}  // namespace

class SessionChainTest : public QObject {
  Q_OBJECT

 private slots:
  void whateverIsDoneTheNewestIsShownSavedAndUndone_data() {
    QTest::addColumn<QString>("sample");
    QTest::addColumn<int>("chains");
    QTest::addColumn<bool>("beside");
    QTest::newRow("planned at once") << "gable-workshop.json" << 5 << false;
    QTest::newRow("planned in another thread") << "metric-hall.json" << 3 << true;
    QTest::newRow("planned in another thread, the largest") << "doe-warehouse.json" << 3 << true;
  }

  void whateverIsDoneTheNewestIsShownSavedAndUndone() {
    QFETCH(QString, sample);
    QFETCH(int, chains);
    QFETCH(bool, beside);
    int previews = 0, undone = 0, reloaded = 0, planning = 0;
    for (int index = 0; index < chains; ++index) {
      QTemporaryDir folder;
      const QString path = folder.filePath("job.json");
      QVERIFY(QFile::copy(sampleFolder() + sample, path));
      Chain chain(path, index);
      QVERIFY(chain.isOpen());
      const QString wrong = chain.goOn();
      QVERIFY2(wrong.isEmpty(), qPrintable(QStringLiteral("seed %1, chain %2: %3").arg(seed).arg(index).arg(wrong)));
      previews += chain.previews, undone += chain.undone, reloaded += chain.reloaded, planning += chain.planning;
    }
    qInfo("seed %llu: %d chains, %d previews, %d undone, %d read anew, %d steps while planning",
          static_cast<unsigned long long>(seed), chains, previews, undone, reloaded, planning);
    QVERIFY(previews > 5 * chains && undone > 2 * chains && reloaded >= chains);
    QCOMPARE(planning > chains, beside);
  }
};

WINDOW_TEST(SessionChainTest)
#include "session_chain_test.moc"
