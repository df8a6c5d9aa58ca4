// A program that edits, saves and keeps is killed a hundred times at random moments: whatever it had reported as kept
// is found again, byte for byte, and the job's file is always whole.
//
// Started with --edit or --edit-in-window, this program is the one that is killed: its edits follow from a seed, so
// that the other knows every state it went through.
#include <QAction>
#include <QApplication>
#include <QProcess>
#include <QSettings>
#include <QTemporaryDir>
#include <QtTest>
#include <cstdio>
#include <functional>
#include <map>
#include <random>
#include <set>

#include "core/job/job_file.h"
#include "tests/ui/window_tests.h"
#include "ui/session/file_digest.h"
#include "ui/session/keeper.h"
#include "ui/session/kept_search.h"
#include "ui/session/main_window.h"
#include "ui/session/session.h"

using namespace ribwright;

namespace {

constexpr int kills = 100, mostSteps = 160;
constexpr int latestKill = 90;  // ms after the program is started, or has reported first
constexpr int stepMilliseconds = 1;
constexpr const char *plainly = "--edit", *inWindow = "--edit-in-window";

QString jobPath(const QString& folder) { return folder + "/shed with é.json"; }
QString keptFolder(const QString& folder) { return folder + "/kept"; }

Job firstJob() { return loadJob(RIBWRIGHT_ROOT "/sample-jobs/lean-to.json").value(); }

enum class Step { Edit, Undo, Redo, Save };

// What is done at each step, the same for the same seed.
class Steps {
 public:
  explicit Steps(unsigned seed) : dice_(seed) {}
  Step next() {
    const auto throwOf20 = dice_() % 20;
    return throwOf20 < 2 ? Step::Undo : throwOf20 < 3 ? Step::Redo : throwOf20 < 4 ? Step::Save : Step::Edit;
  }
  Job edited(Job job, int step) {
    job.name = "State " + std::to_string(step);
    job.note = std::string(dice_() % 9000, 'a' + static_cast<char>(dice_() % 26));
    return job;
  }

 private:
  std::mt19937 dice_;
};

// Every state the edited job goes through, by the step after which it stands.
struct Course {
  std::vector<QByteArray> digests;  // of the job as it is after each step; the first as it was opened
  std::set<QByteArray> saved;       // what the file may hold
};

QByteArray digestOfJob(const Job& job) { return digestOf(writeJob(job)); }

Course courseOf(unsigned seed) {
  Steps steps(seed);
  History history(firstJob());
  Course course;
  course.digests.push_back(digestOfJob(history.job()));
  course.saved.insert(course.digests.back());
  for (int step = 1; step <= mostSteps; ++step) {
    const Step what = steps.next();
    if (what == Step::Edit) history.push("Edit", steps.edited(history.job(), step));
    if (what == Step::Undo) history.undo();
    if (what == Step::Redo) history.redo();
    course.digests.push_back(digestOfJob(history.job()));
    if (what == Step::Save) course.saved.insert(course.digests.back());
  }
  return course;
}

void report(const char* what, int step) {
  std::fprintf(stdout, "%s %d\n", what, step);
  std::fflush(stdout);
}

KeepingManner quickly(const QString& folder) {
  KeepingManner manner;
  manner.idle = 2;
  manner.latest = 5;
  manner.folder = keptFolder(folder);
  return manner;
}

// What is done to the job of a session, and what is reported of it.
class Editing : public QObject {
 public:
  Editing(Session& session, Keeper& keeper, unsigned seed, std::function<void()> save)
      : session_(session), steps_(seed), save_(std::move(save)) {
    connect(&keeper, &Keeper::kept, this, [this](qulonglong state) { report("kept", stepOf_.at(state)); });
    connect(&keeper, &Keeper::failed, this, [](const QString& why) { qFatal("%s", qPrintable(why)); });
    connect(&timer_, &QTimer::timeout, this, &Editing::go);
    timer_.start(stepMilliseconds);
  }

 private:
  void go() {
    if (++step_ > mostSteps) return timer_.stop();
    const Step what = steps_.next();
    if (what == Step::Edit) session_.apply("Edit", steps_.edited(session_.newest(), step_));
    if (what == Step::Undo) session_.undo();
    if (what == Step::Redo) session_.redo();
    stepOf_[session_.history()->id()] = step_;
    if (what != Step::Save) return;
    save_();
    if (session_.history()->isSaved()) report("saved", step_);
  }

  Session& session_;
  Steps steps_;
  std::function<void()> save_;
  QTimer timer_;
  int step_ = 0;
  std::map<StateId, int> stepOf_;
};

// The programs that are killed: without a window, which starts at once, and the whole window.
int edit(int argc, char** argv, const QString& folder, unsigned seed) {
  const QCoreApplication application(argc, argv);
  Session session;
  Keeper keeper(session, quickly(folder));
  if (!session.open(jobPath(folder))) qFatal("the job cannot be read");
  const Editing editing(session, keeper, seed, [&] { session.save(); });
  return QCoreApplication::exec();
}

int editInWindow(int argc, char** argv, const QString& folder, unsigned seed) {
  const QApplication application(argc, argv);
  QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder + "/settings");
  MainWindow window(quickly(folder));
  if (!window.openJob(jobPath(folder))) qFatal("the job cannot be read");
  window.show();
  const Editing editing(window.session(), *window.findChild<Keeper*>(), seed,
                        [&] { window.findChild<QAction*>("save")->trigger(); });
  return QApplication::exec();
}

}  // namespace

class KeptAfterKillsTest : public QObject {
  Q_OBJECT

 private slots:
  void whatWasReportedAsKeptIsFoundAgain();

 private:
  void killOnce(unsigned seed, const char* how);
  void judge(const QString& folder, const Course& course, const QByteArray& reports);

  int reported_ = 0, offered_ = 0;
};

void KeptAfterKillsTest::judge(const QString& folder, const Course& course, const QByteArray& reports) {
  int last = 0;  // step of the last report; a line that was cut off is none
  for (const QByteArray& line : reports.left(reports.lastIndexOf('\n') + 1).split('\n')) {
    const QList<QByteArray> words = line.split(' ');
    if (words.size() == 2) last = words[1].toInt(), ++reported_;
  }
  const auto job = loadJob(jobPath(folder).toStdString());
  QVERIFY2(job, "the job's file is not whole");
  const QByteArray inFile = digestOfFile(jobPath(folder));
  QVERIFY2(course.saved.count(inFile) == 1, "the job's file is none that was saved");

  const std::vector<KeptOffer> offers = searchKept({folder}, keptFolder(folder));
  QVERIFY(offers.size() <= 1);
  std::set<QByteArray> recoverable{inFile};
  for (const KeptOffer& offer : offers) {
    QCOMPARE(offer.file, jobPath(folder));
    QVERIFY(writeJob(offer.job) == offer.kept.job);
    recoverable.insert(digestOf(offer.kept.job));
    ++offered_;
  }
  const bool found = std::any_of(course.digests.begin() + last, course.digests.end(),
                                 [&](const QByteArray& digest) { return recoverable.count(digest) == 1; });
  QVERIFY2(found, qPrintable(QString("what was reported after step %1 is lost").arg(last)));
}

void KeptAfterKillsTest::killOnce(unsigned seed, const char* how) {
  QTemporaryDir folder(QDir::tempPath() + "/killed é ");
  DiskStorage disk;
  QVERIFY(writeWhole(jobPath(folder.path()).toStdString(), writeJob(firstJob()), disk).empty());
  std::mt19937 dice(seed);
  const int moment = static_cast<int>(dice() % latestKill);
  QProcess program;
  program.start(QCoreApplication::applicationFilePath(),
                {"kept_after_kills_test", how, folder.path(), QString::number(seed)});
  QVERIFY(program.waitForStarted());
  if (seed % 2 == 0 || how != plainly) program.waitForReadyRead();  // half of them while it surely is at work
  QTest::qSleep(moment);
  QVERIFY2(program.state() == QProcess::Running, program.readAllStandardError().constData());
  program.kill();
  QVERIFY(program.waitForFinished());
  QCOMPARE(program.exitStatus(), QProcess::CrashExit);
  judge(folder.path(), courseOf(seed), program.readAllStandardOutput());
}

void KeptAfterKillsTest::whatWasReportedAsKeptIsFoundAgain() {
  bool given = false;
  const int wanted = qEnvironmentVariableIntValue("RIBWRIGHT_SEED", &given);
  const unsigned seed = given ? static_cast<unsigned>(wanted) : std::random_device()();
  qInfo("RIBWRIGHT_SEED=%u", seed);
  for (unsigned kill = 0; kill < kills; ++kill) {
    killOnce(seed + kill, kill % 10 == 9 ? inWindow : plainly);
    if (QTest::currentTestFailed()) QFAIL(qPrintable(QString("kill %1 of seed %2").arg(kill).arg(seed)));
  }
  qInfo("%d reports, %d times work was offered", reported_, offered_);
  QVERIFY2(reported_ > kills && offered_ > kills / 5, "killed too early to tell anything");
}

// The program that is killed is this one too.
static int killingOrKilled(int argc, char** argv) {
  if (argc == 4) {
    const QString folder = QString::fromLocal8Bit(argv[2]);
    const unsigned seed = QByteArray(argv[3]).toUInt();
    if (argv[1] == std::string(plainly)) return edit(argc, argv, folder, seed);
    if (argv[1] == std::string(inWindow)) return editInWindow(argc, argv, folder, seed);
  }
  return runTest<KeptAfterKillsTest, QCoreApplication>(argc, argv);
}

[[maybe_unused]] static const bool knownKilling = addWindowTest(__FILE__, killingOrKilled);

#include "kept_after_kills_test.moc"
