// Two windows on one file: the second is told who has it, never writes it, and goes on when the first has closed.
#include <QAction>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QMessageBox>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QStatusBar>
#include <QSysInfo>

#include "core/job/job_file.h"
#include "tests/ui/open_window.h"
#include "tests/ui/window_tests.h"
#include "ui/session/job_lock.h"

using namespace ribwright;

class JobLockTest : public QObject {
  Q_OBJECT

 private slots:
  void init();
  void cleanup();
  void theSecondWindowIsToldAndLooks();
  void whatIsLookedAtIsSavedUnderAnotherNameAlone();
  void whenTheFirstHasClosedTheSecondGoesOn();
  void aFileChangedByTheFirstIsOfferedToTheSecond();
  void aLinkLeadsToTheSameLock();
  void aFileOpenElsewhereIsNotOverwrittenBySavingAs();
  void aLockOfAnotherComputerStandsUntilAPersonSaysItIsGone();
  void aLockThatSaysNothingIsTakenOver();
  void aLockOfAProgramThatIsGoneIsTakenOver();
  void closingAndOpeningAnotherLetGo();
  void whatCannotBeLockedIsToldAndOpensAllTheSame();

 private:
  template <class Kind>
  Kind* find(const char* name) {
    return second_->find<Kind>(name);
  }
  QString lockPath() const { return folder_->filePath(".shop.json.lock"); }
  QString told() { return find<QWidget>("lockBar")->accessibleName(); }
  void rename(MainWindow& window, const char* name) {
    Job job = window.session().newest();
    job.name = name;
    QVERIFY(window.session().apply("Rename the job", job));
  }
  std::string nameIn(const QString& path) {
    const auto job = loadJob(path.toStdString());
    return job ? job.value().name : std::string("(none)");
  }
  void typePath(const QString& path) {
    auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
    if (!dialog) return QTimer::singleShot(20, this, [this, path] { typePath(path); });
    auto* line = dialog->findChild<QLineEdit*>("fileNameEdit");
    line->setText(path);
    if (QFileInfo::exists(path)) QTimer::singleShot(20, this, [] { replace(); });
    QTest::keyClick(line, Qt::Key_Return);
  }
  // What the file dialog asks about a name that is there.
  static void replace() {
    auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
    if (!box) qFatal("the dialog does not ask");
    box->button(QMessageBox::Yes)->click();
  }
  void saveAs(const char* action, const QString& path) {
    QTimer::singleShot(0, this, [this, path] { typePath(path); });
    find<QAction>(action)->trigger();
  }
  // As QLockFile writes it: number, program and computer of the window.
  void writeLock(const QByteArray& process, const QByteArray& host) {
    QVERIFY(writeFile(lockPath(), process + "\nribwright\n" + host + "\n"));
  }

  std::unique_ptr<QTemporaryDir> folder_;
  std::unique_ptr<OpenWindow> second_;
  std::unique_ptr<MainWindow> first_;
  QString path_, other_;  // two jobs of this test's own: it runs twice at a time, and a sample is locked but once
};

void JobLockTest::init() {
  QApplication::setAttribute(Qt::AA_DontUseNativeDialogs);
  folder_ = std::make_unique<QTemporaryDir>();
  path_ = folder_->filePath("shop.json");
  other_ = folder_->filePath("other-shop.json");
  for (const QString& path : {path_, other_}) QVERIFY(writeFile(path, readFile(workshop())));
  second_ = std::make_unique<OpenWindow>();
  KeepingManner locking = noKeeping();
  locking.locks = true;
  first_ = std::make_unique<MainWindow>(locking);
  second_->keeping = locking;
  second_->renew();
}

void JobLockTest::cleanup() {
  first_.reset();
  second_.reset();
}

void JobLockTest::theSecondWindowIsToldAndLooks() {
  QVERIFY(first_->openJob(path_));
  QVERIFY(!first_->session().isLookedAt());
  QVERIFY(QFileInfo::exists(lockPath()));
  QVERIFY((*second_)->openJob(path_));
  QVERIFY(second_->session().isLookedAt());
  QVERIFY(find<QWidget>("lockBar")->isVisible());
  QVERIFY2(told().startsWith("shop.json is open in another window on " + QSysInfo::machineHostName() + " since "),
           qPrintable(told()));
  QVERIFY(!find<QPushButton>("goOnHere")->isVisible());
  QVERIFY(!find<QPushButton>("otherIsGone")->isVisible());
  QVERIFY((*second_)->windowTitle().contains("shop.json, to look at"));
  QVERIFY((*second_)->openJob(other_));
  QVERIFY(!second_->session().isLookedAt());
  QVERIFY(!find<QWidget>("lockBar")->isVisible());
}

void JobLockTest::whatIsLookedAtIsSavedUnderAnotherNameAlone() {
  QVERIFY(first_->openJob(path_));
  QVERIFY((*second_)->openJob(path_));
  rename(*second_->window, "A try");
  QVERIFY(second_->session().save() == Session::Saved::LookedAt);
  saveAs("save", path_);  // the same name all the same
  QVERIFY(find<QPlainTextEdit>("faults")->isVisible());
  QVERIFY(readFile(path_) == readFile(workshop()));
  const QString other = folder_->filePath("try.json");
  saveAs("save", other);
  QCOMPARE(nameIn(other), std::string("A try"));
  QVERIFY(readFile(path_) == readFile(workshop()));
  QVERIFY(!second_->session().isLookedAt());
  QVERIFY(!find<QWidget>("lockBar")->isVisible());
  QCOMPARE(second_->session().path(), other);
}

void JobLockTest::whenTheFirstHasClosedTheSecondGoesOn() {
  QVERIFY(first_->openJob(path_));
  QVERIFY((*second_)->openJob(path_));
  rename(*second_->window, "Gone on with");
  QVERIFY(first_->close());
  QTRY_VERIFY(find<QPushButton>("goOnHere")->isVisible());
  QVERIFY(second_->session().isLookedAt());
  find<QPushButton>("goOnHere")->click();
  QVERIFY(!find<QWidget>("lockBar")->isVisible());
  find<QAction>("save")->trigger();
  QCOMPARE(nameIn(path_), std::string("Gone on with"));
  QVERIFY(first_->openJob(path_));
  QVERIFY(first_->session().isLookedAt());
}

void JobLockTest::aFileChangedByTheFirstIsOfferedToTheSecond() {
  QVERIFY(first_->openJob(path_));
  QVERIFY((*second_)->openJob(path_));
  rename(*first_, "By the first");
  QVERIFY(first_->session().save() == Session::Saved::Yes);
  QTRY_VERIFY(find<QWidget>("reloadBar")->isVisible());
  QVERIFY(find<QWidget>("lockBar")->isVisible());
  find<QPushButton>("readAgain")->click();
  QCOMPARE(second_->session().job().name, std::string("By the first"));
  QVERIFY(find<QWidget>("lockBar")->isVisible());
  QVERIFY(second_->session().isLookedAt());
}

void JobLockTest::aLinkLeadsToTheSameLock() {
  const QString link = folder_->filePath("link.json");
  QVERIFY(QFile::link(path_, link));
  QVERIFY(first_->openJob(link));
  QVERIFY((*second_)->openJob(path_));
  QVERIFY(second_->session().isLookedAt());
}

void JobLockTest::aFileOpenElsewhereIsNotOverwrittenBySavingAs() {
  QVERIFY(first_->openJob(path_));
  QVERIFY((*second_)->openJob(other_));
  saveAs("saveAs", path_);
  QVERIFY(find<QPlainTextEdit>("faults")->toPlainText().contains("open in another window"));
  QCOMPARE(second_->session().path(), other_);
  QVERIFY(readFile(path_) == readFile(workshop()));
}

void JobLockTest::aLockOfAnotherComputerStandsUntilAPersonSaysItIsGone() {
  writeLock("4711", "the-other-desk");
  QVERIFY((*second_)->openJob(path_));
  QVERIFY(second_->session().isLookedAt());
  QVERIFY(told().contains("another window on the-other-desk"));
  QVERIFY(find<QPushButton>("otherIsGone")->isVisible());
  find<QPushButton>("otherIsGone")->click();
  QVERIFY(!second_->session().isLookedAt());
  QVERIFY(first_->openJob(path_));
  QVERIFY(first_->session().isLookedAt());
}

void JobLockTest::aLockThatSaysNothingIsTakenOver() {
  QVERIFY(writeFile(lockPath(), ""));
  QVERIFY((*second_)->openJob(path_));
  QVERIFY(second_->session().isLookedAt());  // its window may be about to write it
  QFile lock(lockPath());
  QVERIFY(lock.open(QIODevice::ReadWrite));
  QVERIFY(lock.setFileTime(QDateTime::currentDateTime().addSecs(-60), QFileDevice::FileModificationTime));
  QVERIFY((*second_)->openJob(path_));
  QVERIFY(!second_->session().isLookedAt());
}

void JobLockTest::aLockOfAProgramThatIsGoneIsTakenOver() {
  writeLock("999999999", QSysInfo::machineHostName().toUtf8());
  QVERIFY((*second_)->openJob(path_));
  QVERIFY(!second_->session().isLookedAt());
}

void JobLockTest::closingAndOpeningAnotherLetGo() {
  QVERIFY(first_->openJob(path_));
  QVERIFY(first_->openJob(other_));
  QVERIFY(!QFileInfo::exists(lockPath()));
  QVERIFY(first_->openJob(path_));
  QVERIFY(QFileInfo::exists(lockPath()));
  first_->session().begin(Job());
  QVERIFY(!QFileInfo::exists(lockPath()));
  QVERIFY(!first_->session().isLookedAt());
}

void JobLockTest::whatCannotBeLockedIsToldAndOpensAllTheSame() {
  const QString name = QString(248, 'x') + ".json";  // with more letters round it, no name of a file
  QVERIFY(QFile::rename(path_, folder_->filePath(name)));
  QVERIFY((*second_)->openJob(folder_->filePath(name)));
  QVERIFY(!second_->session().isLookedAt());
  QVERIFY2(second_->window->statusBar()->currentMessage().startsWith("Nothing can be written beside xxx"),
           qPrintable(second_->window->statusBar()->currentMessage()));
}

WINDOW_TEST(JobLockTest)
#include "job_lock_test.moc"
