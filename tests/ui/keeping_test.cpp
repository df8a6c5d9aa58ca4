// Unsaved work is kept beside the job or in the user's folder, goes when it is no more needed, and is offered back when
// its window went without a word.
#include <QAction>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QStatusBar>
#include <QTreeWidget>

#include "core/job/job_file.h"
#include "tests/ui/open_window.h"
#include "tests/ui/window_tests.h"
#include "ui/panels/kept_dialog.h"
#include "ui/session/kept_search.h"
#include "ui/session/recent_jobs.h"

using namespace ribwright;

class KeepingTest : public QObject {
  Q_OBJECT

 private slots:
  void init();
  void cleanup();
  void unsavedWorkIsKeptBesideTheJobAndGoesWhenItIsSaved();
  void undoingBackToWhatIsSavedKeepsNothing();
  void editingOnAndOnIsKeptAllTheSame();
  void nothingIsKeptInTheMiddleOfADrag();
  void aPreviewThatStandsHoldsKeepingUpNotForLong();
  void aJobWithoutAFileIsKeptInTheUsersFolder();
  void closingAndDiscardingLeaveNothing();
  void whereNothingCanBeWrittenTheUsersFolderTakesIt();
  void whatCannotBeKeptIsToldAndTriedAgain();
  void workOfAWindowThatIsGoneOpensAsUnsavedChanges();
  void theOfferSaysWhatDiffers();
  void workOfAJobWithoutAFileOpensWithoutAFile();
  void openingTheFileKeepsTheWorkForLater();
  void discardingAsksOnce();
  void openingAJobOffersWhatBelongsToIt();
  void workOfALivingWindowIsNotOffered();
  void whatTheFileHoldsAlreadyIsNotOffered();
  void whatDoesNotReadIsNotOfferedButWhatWasBeforeIt();
  void aFileChangedSinceIsNotOverwrittenUnasked();

 private:
  template <class Kind>
  Kind* find(const char* name) {
    return window_->find<Kind>(name);
  }
  Session& session() { return window_->session(); }
  QString keptFolder() const { return folder_->filePath("kept"); }
  void rename(const char* name) {
    Job job = session().newest();
    job.name = name;
    QVERIFY(session().apply("Rename the job", job));
  }
  static QStringList keptIn(const QString& folder) {
    QStringList kept = QDir(folder).entryList({".*.kept-*"}, QDir::Files | QDir::Hidden);
    const auto isNone = [&](const QString& file) { return !keptPlaceOf(folder.toStdString(), file.toStdString()); };
    kept.erase(std::remove_if(kept.begin(), kept.end(), isNone), kept.end());
    return kept;
  }
  static QStringList hiddenIn(const QString& folder) {
    return QDir(folder).entryList({".*"}, QDir::Files | QDir::Hidden);
  }
  // The window goes as if it was killed: what it kept stays, its locks go.
  void leaveBehind(const char* name) {
    QVERIFY((*window_)->openJob(path_));
    rename(name);
    QTRY_COMPARE(keptIn(folder_->path()).size(), 1);
    window_->window.reset();
  }
  // Name of the newest that is kept beside the job; while its window lives, the lock is its own.
  std::string keptName() {
    const QStringList files = keptIn(folder_->path());
    if (files.isEmpty()) return "(none)";
    const auto place = keptPlaceOf(folder_->path().toStdString(), files.front().toStdString());
    const auto found = newestKept(*place);
    return found ? found->job.name : "(none)";
  }
  KeptDialog* offered() {
    KeptDialog* dialog = nullptr;
    if (!QTest::qWaitFor([&] { return (dialog = find<KeptDialog>("keptWork")) != nullptr; }, 3000)) return nullptr;
    return dialog;
  }
  QString label(const char* name) { return find<QLabel>(name)->text(); }
  void press(const char* name) { find<QPushButton>(name)->click(); }
  void answer(const char* question, const char* name) {
    auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
    if (!box) return QTimer::singleShot(20, this, [this, question, name] { answer(question, name); });
    asked_ = box->objectName() == QLatin1String(question);
    auto* button = box->findChild<QPushButton*>(QLatin1String(name));
    button ? button->click() : box->reject();
  }

  std::unique_ptr<OpenWindow> window_;
  std::unique_ptr<QTemporaryDir> folder_;
  QString path_;
  bool asked_ = false;
};

void KeepingTest::init() {
  folder_ = std::make_unique<QTemporaryDir>(QDir::tempPath() + "/keeping é ");
  path_ = folder_->filePath("my shop.json");
  QVERIFY(writeFile(path_, readFile(workshop())));
  window_ = std::make_unique<OpenWindow>();
  window_->keeping = {30, 200, keptFolder(), true, true};
  window_->renew();
}

void KeepingTest::cleanup() { window_.reset(); }

void KeepingTest::unsavedWorkIsKeptBesideTheJobAndGoesWhenItIsSaved() {
  QVERIFY((*window_)->openJob(path_));
  QTest::qWait(150);
  QVERIFY(keptIn(folder_->path()).isEmpty());
  for (const char* name : {"One", "Two", "Three", "Four"}) {
    rename(name);
    QTRY_COMPARE(keptName(), std::string(name));
  }
  QCOMPARE(keptIn(folder_->path()).size(), 3);
  QVERIFY(readFile(path_) == readFile(workshop()));
  find<QAction>("save")->trigger();
  QCOMPARE(hiddenIn(folder_->path()), QStringList{".my shop.json.lock"});
  QVERIFY(keptIn(keptFolder()).isEmpty());
}

void KeepingTest::undoingBackToWhatIsSavedKeepsNothing() {
  QVERIFY((*window_)->openJob(path_));
  rename("One");
  QTRY_COMPARE(keptName(), std::string("One"));
  session().undo();
  QVERIFY(keptIn(folder_->path()).isEmpty());
  session().redo();
  QTRY_COMPARE(keptName(), std::string("One"));
}

void KeepingTest::editingOnAndOnIsKeptAllTheSame() {
  QVERIFY((*window_)->openJob(path_));
  for (int i = 0; i < 60 && keptIn(folder_->path()).isEmpty(); ++i) {  // never idle for 30 ms
    rename(qPrintable(QString("State %1").arg(i)));
    QTest::qWait(10);
  }
  QVERIFY(!keptIn(folder_->path()).isEmpty());
}

void KeepingTest::nothingIsKeptInTheMiddleOfADrag() {
  QVERIFY((*window_)->openJob(path_));
  rename("Before the drag");
  Job dragged = session().newest();
  dragged.name = "Dragged";
  session().preview(dragged);
  QVERIFY(session().isPreview());
  QTest::qWait(100);  // idle for longer than it takes, and not yet at the latest
  QVERIFY(keptIn(folder_->path()).isEmpty());
  session().endPreview();
  QTRY_COMPARE(keptName(), std::string("Before the drag"));
}

void KeepingTest::aPreviewThatStandsHoldsKeepingUpNotForLong() {
  QVERIFY((*window_)->openJob(path_));
  rename("Under a preview");
  Job pointedAt = session().newest();
  pointedAt.name = "Pointed at";
  session().preview(pointedAt);
  QTRY_COMPARE(keptName(), std::string("Under a preview"));
  QVERIFY(session().isPreview());
}

void KeepingTest::aJobWithoutAFileIsKeptInTheUsersFolder() {
  Job job;
  job.name = "Begun";
  session().begin(job);
  QTRY_COMPARE(keptIn(keptFolder()).size(), 1);
  QVERIFY(keptIn(keptFolder()).front().startsWith(".unnamed.kept-"));
  QVERIFY(session().saveAs(path_) == Session::Saved::Yes);
  QVERIFY(hiddenIn(keptFolder()).isEmpty());
}

void KeepingTest::closingAndDiscardingLeaveNothing() {
  QVERIFY((*window_)->openJob(path_));
  rename("Not wanted");
  QTRY_COMPARE(keptName(), std::string("Not wanted"));
  QTimer::singleShot(0, this, [this] { answer("unsavedChanges", "discardChanges"); });
  QVERIFY((*window_)->close());
  QVERIFY(asked_);
  QVERIFY(hiddenIn(folder_->path()).isEmpty());
}

void KeepingTest::whereNothingCanBeWrittenTheUsersFolderTakesIt() {
  QVERIFY((*window_)->openJob(path_));
  const QString moved = folder_->path() + " moved";
  QVERIFY(QDir().rename(folder_->path(), moved));  // the folder that the window knows is gone
  rename("Not to be lost");
  QTRY_COMPARE(keptIn(keptFolder()).size(), 1);  // made anew, below a folder made anew
  QVERIFY(QDir(moved).removeRecursively());
}

void KeepingTest::whatCannotBeKeptIsToldAndTriedAgain() {
  QVERIFY(writeFile(keptFolder(), "a file where the folder would be"));
  Job job;
  job.name = "Begun";
  session().begin(job);
  const QStatusBar* line = window_->window->statusBar();
  QTRY_VERIFY2(line->currentMessage().startsWith("Unsaved work could not be kept"), qPrintable(line->currentMessage()));
  QVERIFY(QFile::remove(keptFolder()));
  QTRY_COMPARE(keptIn(keptFolder()).size(), 1);
  QTRY_COMPARE(line->currentMessage(), QString("Unsaved work is kept again."));
}

void KeepingTest::workOfAWindowThatIsGoneOpensAsUnsavedChanges() {
  leaveBehind("Left behind");
  rememberJob(path_, "The shop");
  window_->renew();
  QVERIFY(offered());
  QVERIFY(!session().isOpen());
  QCOMPARE(find<QTreeWidget>("keptList")->topLevelItem(0)->text(0), QString("Left behind"));
  press("openKept");
  QCOMPARE(session().job().name, std::string("Left behind"));
  QCOMPARE(session().path(), path_);
  QVERIFY((*window_)->isWindowModified());
  QVERIFY(readFile(path_) == readFile(workshop()));
  QCOMPARE(keptName(), std::string("Left behind"));  // until it is saved
  rename("Gone on with");
  QTRY_COMPARE(keptName(), std::string("Gone on with"));
  find<QAction>("save")->trigger();
  QCOMPARE(loadJob(path_.toStdString()).value().name, std::string("Gone on with"));
  QVERIFY(keptIn(folder_->path()).isEmpty());
}

void KeepingTest::theOfferSaysWhatDiffers() {
  QVERIFY((*window_)->openJob(path_));
  Job job = session().newest();
  const int walls = int(job.walls.size());
  int openings = 0;
  for (const Wall& wall : job.walls) openings += int(wall.openings.size());
  const auto withOpenings =
      std::find_if(job.walls.begin(), job.walls.end(), [](const Wall& wall) { return !wall.openings.empty(); });
  const QString letter = QString::fromStdString(withOpenings->letter);
  withOpenings->openings.pop_back();
  QVERIFY(session().apply("Remove an opening", job));
  QTRY_COMPARE(keptIn(folder_->path()).size(), 1);
  window_->window.reset();
  rememberJob(path_, {});
  window_->renew();
  QVERIFY(offered());
  QCOMPARE(label("keptWalls"), QString::number(walls));
  QCOMPARE(label("fileWalls"), QString::number(walls));
  QCOMPARE(label("keptOpenings"), QString::number(openings - 1));
  QCOMPARE(label("fileOpenings"), QString::number(openings));
  QVERIFY(label("fileSheets").toInt() > 0);
  QVERIFY2(label("keptDiffers").startsWith("In the kept work: walls changed: " + letter + "; "),
           qPrintable(label("keptDiffers")));
  QVERIFY(!label("keptDiffers").contains("since"));
}

void KeepingTest::workOfAJobWithoutAFileOpensWithoutAFile() {
  Job job;
  job.name = "Begun";
  session().begin(job);
  QTRY_COMPARE(keptIn(keptFolder()).size(), 1);
  window_->renew();
  QVERIFY(offered());
  QVERIFY(!find<QPushButton>("openKeptFile")->isEnabled());
  press("openKept");
  QCOMPARE(session().job().name, std::string("Begun"));
  QVERIFY(session().path().isEmpty());
  QVERIFY((*window_)->isWindowModified());
}

void KeepingTest::openingTheFileKeepsTheWorkForLater() {
  leaveBehind("For later");
  rememberJob(path_, {});
  window_->renew();
  QVERIFY(offered());
  press("openKeptFile");
  QCOMPARE(session().path(), path_);
  QVERIFY(session().job().name != "For later");
  QVERIFY(!(*window_)->isWindowModified());
  rename("Other work");  // does not touch what was kept
  QTRY_COMPARE(keptIn(folder_->path()).size(), 2);
  find<QAction>("save")->trigger();
  QCOMPARE(keptName(), std::string("For later"));
  window_->renew();
  QVERIFY(offered());
  QVERIFY(label("keptDiffers").contains("since the kept work was begun"));
}

void KeepingTest::discardingAsksOnce() {
  leaveBehind("Left behind");
  Job job;
  job.name = "Begun";
  window_->renew();
  session().begin(job);
  QTRY_COMPARE(keptIn(keptFolder()).size(), 1);
  window_->window.reset();
  rememberJob(path_, {});
  window_->renew();
  QVERIFY(offered());
  auto* list = find<QTreeWidget>("keptList");
  QCOMPARE(list->topLevelItemCount(), 2);
  press("discardKept");
  QVERIFY(find<QWidget>("discardQuestion")->isVisible());
  press("discardNot");
  QVERIFY(!find<QWidget>("discardQuestion")->isVisible());
  QCOMPARE(list->topLevelItemCount(), 2);
  const QString discarded = list->topLevelItem(0)->text(0);
  press("discardKept");
  press("discardSurely");
  QCOMPARE(list->topLevelItemCount(), 1);
  QVERIFY(list->topLevelItem(0)->text(0) != discarded);
  QCOMPARE(keptIn(folder_->path()).size() + keptIn(keptFolder()).size(), 1);
  press("discardKept");
  press("discardSurely");
  QTRY_VERIFY(!find<KeptDialog>("keptWork"));
  QVERIFY(hiddenIn(folder_->path()).isEmpty() && hiddenIn(keptFolder()).isEmpty());
  QVERIFY(!find<QWidget>("keptNotice")->isVisible());
}

void KeepingTest::openingAJobOffersWhatBelongsToIt() {
  leaveBehind("Left behind");
  forgetJob(path_);
  window_->renew();
  QTest::qWait(200);
  QVERIFY(!find<KeptDialog>("keptWork"));
  const QString other = folder_->filePath("another shop.json");  // no other test's lock is on it
  QVERIFY(writeFile(other, readFile(workshop())));
  QVERIFY((*window_)->openJob(other));
  QTest::qWait(200);
  QVERIFY(!find<KeptDialog>("keptWork"));
  QVERIFY((*window_)->openJob(path_));
  QVERIFY(offered());
  press("keepForLater");
  QTRY_VERIFY(!find<KeptDialog>("keptWork"));
  QCOMPARE(keptName(), std::string("Left behind"));
}

void KeepingTest::workOfALivingWindowIsNotOffered() {
  QVERIFY((*window_)->openJob(path_));
  rename("At work");
  QTRY_COMPARE(keptName(), std::string("At work"));
  QVERIFY(searchKept({folder_->path()}, keptFolder()).empty());
  window_->window.reset();
  const auto offers = searchKept({folder_->path()}, keptFolder());
  QCOMPARE(int(offers.size()), 1);
  QVERIFY(searchKept({folder_->path()}, keptFolder()).empty());  // offered by another window already
}

void KeepingTest::whatTheFileHoldsAlreadyIsNotOffered() {
  leaveBehind("Saved after all");
  const auto offers = searchKept({folder_->path()}, keptFolder());
  QCOMPARE(int(offers.size()), 1);
  QVERIFY(saveJob(offers.front().job, path_.toStdString()));
  for (const KeptSpot& spot : offers.front().spots) spot.lock->unlock();
  QVERIFY(searchKept({folder_->path()}, keptFolder()).empty());
  QVERIFY(hiddenIn(folder_->path()).isEmpty());
}

void KeepingTest::whatDoesNotReadIsNotOfferedButWhatWasBeforeIt() {
  QVERIFY((*window_)->openJob(path_));
  rename("Older");
  QTRY_COMPARE(keptName(), std::string("Older"));
  const QString older = keptIn(folder_->path()).front();
  rename("Newer");
  QTRY_COMPARE(keptName(), std::string("Newer"));
  window_->window.reset();
  for (const QString& file : keptIn(folder_->path())) {
    const QByteArray whole = readFile(folder_->filePath(file));
    if (file != older) QVERIFY(writeFile(folder_->filePath(file), whole.left(whole.size() / 2)));
  }
  {
    const auto offers = searchKept({folder_->path()}, keptFolder());
    QCOMPARE(int(offers.size()), 1);
    QCOMPARE(offers.front().job.name, std::string("Older"));
  }
  QVERIFY(writeFile(folder_->filePath(older), "{}"));
  QVERIFY(searchKept({folder_->path()}, keptFolder()).empty());
  QCOMPARE(keptIn(folder_->path()).size(), 2);  // not judged, not removed
}

void KeepingTest::aFileChangedSinceIsNotOverwrittenUnasked() {
  leaveBehind("Left behind");
  QByteArray changed = readFile(workshop());
  changed.replace("\"ribwright\": 1", "\"ribwright\":  1");
  QVERIFY(writeFile(path_, changed));
  rememberJob(path_, {});
  window_->renew();
  QVERIFY(offered());
  QVERIFY(label("keptDiffers").contains("since the kept work was begun"));
  press("openKept");
  QTRY_VERIFY(find<QWidget>("reloadBar")->isVisible());
  QTimer::singleShot(0, this, [this] { answer("changedFile", "cancelSaving"); });
  find<QAction>("save")->trigger();
  QVERIFY(asked_);
  QVERIFY(readFile(path_) == changed);
}

WINDOW_TEST(KeepingTest)
#include "keeping_test.moc"
